package understorey.pages.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import understorey.advice.Measure;
import understorey.kit.camera.CameraFigures;
import understorey.pages.tables.BagColumns;
import understorey.pages.tables.Table;
import understorey.pages.tables.TableView;
import understorey.pages.words.Sentences;
import understorey.pages.words.Words;
import understorey.plan.Bag;

/**
 * A bag in words.
 *
 * @param cameras every body with every lens that fits it
 * @param others  supports, filters and extras
 * @param weight  of all that has a weight
 * @param unweighed how many things have none; null if all have one
 */
public record BagView(String name, @Nullable String slug, TableView cameras, TableView others, @Nullable String cards,
                      @Nullable String batteries, boolean remoteRelease, String weight, @Nullable String unweighed) {

    private static final String CAPTION = "Full-frame equivalents; horizontal angle of view at infinity; minimum focus distance from the sensor";

    public static BagView of(Bag bag, Sentences sentences) {
        List<@Nullable Double> weights = weights(bag);
        long unweighed = weights.stream().filter(Objects::isNull).count();
        String cards = bag.cardsGb().stream().map(gb -> Words.number(gb, 0) + "\u00a0GB").collect(Collectors.joining(" + "));
        return new BagView(bag.name(), bag.slug(), new Table<>(BagColumns.CAMERAS, CameraFigures.of(bag)).view(CAPTION, sentences),
                new Table<>(BagColumns.OTHERS, BagColumns.Other.of(bag)).view("", sentences), cards.isEmpty() ? null : cards,
                bag.batteries() == 0 ? null : String.valueOf(bag.batteries()), bag.remoteRelease(),
                sentences.of(weights.stream().filter(Objects::nonNull).mapToDouble(Double::doubleValue).sum(), Measure.GRAMS),
                unweighed == 0 ? null : String.valueOf(unweighed));
    }

    private static List<@Nullable Double> weights(Bag bag) {
        List<@Nullable Double> weights = new ArrayList<>();
        bag.bodies().forEach(body -> weights.add(body.weightG()));
        bag.lenses().stream().filter(lens -> !lens.builtIn()).forEach(lens -> weights.add(lens.weightG()));
        BagColumns.Other.of(bag).forEach(other -> weights.add(other.weightG()));
        return weights;
    }
}
