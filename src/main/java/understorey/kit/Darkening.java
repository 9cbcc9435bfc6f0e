package understorey.kit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.kit.camera.Polarising;
import understorey.kit.camera.Things;
import understorey.plan.Bag;
import understorey.plan.Filter;

/**
 * A filter that goes on a lens to take light, on whatever stands on that lens already: neutral density, or a polariser where none
 * is on.
 *
 * @param filters   to put on, nearest the lens first: a step-up ring where one is needed, then the filter
 * @param lossStops light that it takes
 */
public record Darkening(List<Filter> filters, double lossStops) {

    /** Every one of a bag that fits: of each kind those that go straight on, then those that need a ring. */
    public static List<Darkening> of(Bag bag, LensFit fit) {
        List<List<Filter>> all = new ArrayList<>(Polarising.ways(bag, Filter.Kind.NEUTRAL_DENSITY, frontThreadMm(fit)));
        if (fit.filters().isEmpty()) {
            all.addAll(Polarising.ways(bag, Filter.Kind.POLARISER, frontThreadMm(fit)));
        }
        List<Darkening> ways = new ArrayList<>();
        for (List<Filter> way : all) {
            if (way.size() == 1 || !taken(fit, way.get(0))) {
                ways.add(new Darkening(way, way.get(way.size() - 1).lossStops()));
            }
        }
        return List.copyOf(ways);
    }

    /** Of the polariser that is on, or of the close-up lens, or of the lens itself; null for none. */
    private static @Nullable Double frontThreadMm(LensFit fit) {
        if (!fit.filters().isEmpty()) {
            return fit.filters().get(fit.filters().size() - 1).threadMm();
        }
        Filter attachment = fit.camera().attachment();
        return attachment != null && attachment.threadMm() != null ? attachment.threadMm()
                : fit.camera().lens().threadMm();
    }

    private static boolean taken(LensFit fit, Filter ring) {
        return ring == fit.camera().ring() || Things.among(fit.filters(), ring);
    }
}
