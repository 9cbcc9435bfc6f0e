package understorey.pages.html;

import static understorey.pages.words.Words.orDash;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import understorey.kit.Camera;
import understorey.kit.CameraFigures;
import understorey.pages.words.Words;
import understorey.plan.Bag;
import understorey.plan.Filter;
import understorey.plan.Support;

/**
 * A bag in words.
 *
 * @param cameras every body with every lens that fits it
 * @param others  supports, filters and extras
 * @param weight  of all that has a weight
 * @param unweighed how many things have none; null if all have one
 */
public record BagView(String name, @Nullable String slug, List<Line> cameras, List<Item> others, @Nullable String cards,
                      @Nullable String batteries, boolean remoteRelease, String weight, @Nullable String unweighed) {

    /** One camera. */
    public record Line(String body, String lens, String equivalent, String view, String closest,
                       String magnification, String aperture, String thread, String weight) {
    }

    /** Anything else, and what it is. */
    public record Item(String name, String kind, String weight) {
    }

    public static BagView of(Bag bag) {
        List<Line> lines = CameraFigures.of(bag).stream().map(BagView::line).toList();
        List<Item> others = new ArrayList<>();
        for (Support support : bag.supports()) {
            others.add(item(support.name(), Words.word(support.kind())
                    + (support.lowestM() == null || support.highestM() == null ? "" : ", "
                    + Words.metres(support.lowestM()) + " to " + Words.metres(support.highestM())), support.weightG()));
        }
        bag.filters().forEach(filter -> others.add(item(filter.name(), kind(filter.kind()), filter.weightG())));
        bag.extras().forEach(extra -> others.add(item(extra.name(), "", extra.weightG())));
        List<@Nullable Double> weights = weights(bag);
        long unweighed = weights.stream().filter(Objects::isNull).count();
        String cards = bag.cardsGb().stream().map(gb -> Words.number(gb, 0) + " GB").collect(Collectors.joining(" + "));
        return new BagView(bag.name(), bag.slug(), lines, others,
                cards.isEmpty() ? null : cards,
                bag.batteries() == 0 ? null : String.valueOf(bag.batteries()), bag.remoteRelease(),
                Words.weight(weights.stream().filter(Objects::nonNull).mapToDouble(Double::doubleValue).sum()),
                unweighed == 0 ? null : String.valueOf(unweighed));
    }

    private static List<@Nullable Double> weights(Bag bag) {
        List<@Nullable Double> weights = new ArrayList<>();
        bag.bodies().forEach(body -> weights.add(body.weightG()));
        bag.lenses().stream().filter(lens -> !lens.builtIn()).forEach(lens -> weights.add(lens.weightG()));
        bag.supports().forEach(support -> weights.add(support.weightG()));
        bag.filters().forEach(filter -> weights.add(filter.weightG()));
        bag.extras().forEach(extra -> weights.add(extra.weightG()));
        return weights;
    }

    private static Line line(CameraFigures figures) {
        Camera camera = figures.camera();
        boolean zooms = camera.lens().zooms();
        return new Line(camera.body().name(), camera.lens().name(),
                zooms ? Words.number(figures.shortestEquivalentMm(), 0) + "–"
                        + Words.millimetres(figures.longestEquivalentMm())
                        : Words.millimetres(figures.shortestEquivalentMm()),
                zooms ? Words.degrees(figures.widestViewDeg()) + "–" + Words.degrees(figures.narrowestViewDeg())
                        : Words.degrees(figures.widestViewDeg()),
                Words.metres(camera.lens().closestM()), Words.number(figures.magnification(), 2),
                Words.fNumber(camera.lens().widestShort()) + (camera.lens().widestLong() == camera.lens().widestShort()
                        ? "" : "–" + Words.number(camera.lens().widestLong(), 1)),
                orDash(camera.lens().threadMm(), Words::millimetres),
                orDash(camera.lens().builtIn() ? camera.body().weightG() : camera.lens().weightG(), Words::weight));
    }

    private static String kind(Filter.Kind kind) {
        return switch (kind) {
            case STEP_UP_RING -> "step-up ring";
            case CLOSE_UP_LENS -> "close-up lens";
            default -> Words.word(kind);
        };
    }

    private static Item item(String name, String kind, @Nullable Double weightG) {
        return new Item(name, kind, orDash(weightG, Words::weight));
    }
}
