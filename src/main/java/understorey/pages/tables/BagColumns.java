package understorey.pages.tables;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Measure;
import understorey.kit.camera.CameraFigures;
import understorey.pages.words.Sentences;
import understorey.pages.words.Words;
import understorey.plan.Bag;
import understorey.plan.Filter;
import understorey.plan.Lens;
import understorey.plan.Support;

/** The cameras of a bag, and what else is in it. */
public final class BagColumns {

    /**
     * A support, a filter or an extra.
     *
     * @param support null for anything else
     * @param filter  null for anything else
     */
    public record Other(String name, @Nullable Support support, Filter.@Nullable Kind filter, @Nullable Double weightG) {

        /** All of a bag, in this order. */
        public static List<Other> of(Bag bag) {
            List<Other> others = new ArrayList<>();
            bag.supports().forEach(support -> others.add(new Other(support.name(), support, null, support.weightG())));
            bag.filters().forEach(filter -> others.add(new Other(filter.name(), null, filter.kind(), filter.weightG())));
            bag.extras().forEach(extra -> others.add(new Other(extra.name(), null, null, extra.weightG())));
            return List.copyOf(others);
        }
    }

    /** Every body with every lens that fits it. */
    public static final List<Column<CameraFigures>> CAMERAS = List.of(
            Column.text("Lens", Measure.WORD, (figures, wording) -> lens(figures).name()),
            Column.text("Body", Measure.WORD, (figures, wording) -> figures.camera().body().name()),
            Column.text("Equivalent", Measure.MILLIMETRES, BagColumns::equivalent),
            Column.text("View", Measure.DEGREES, (figures, wording) -> upTo(figures, wording.of(figures.widestViewDeg(), Measure.DEGREES),
                    wording.of(figures.narrowestViewDeg(), Measure.DEGREES))),
            Column.text("Min. focus", Measure.METRES, (figures, wording) -> wording.of(lens(figures).closestM(), Measure.METRES)),
            Column.text("Max. magnification", Measure.MAGNIFICATION,
                    (figures, wording) -> wording.of(figures.magnification(), Measure.MAGNIFICATION)),
            Column.text("Aperture", Measure.F_NUMBER, BagColumns::aperture),
            Column.text("Thread", Measure.MILLIMETRES, (figures, wording) -> wording.of(lens(figures).threadMm(), Measure.MILLIMETRES)),
            Column.text("Weight", Measure.GRAMS, (figures, wording) -> wording.of(
                    lens(figures).builtIn() ? figures.camera().body().weightG() : lens(figures).weightG(), Measure.GRAMS)));

    /** What else is in the bag. */
    public static final List<Column<Other>> OTHERS = List.of(
            Column.text("Item", Measure.WORD, (other, wording) -> other.name()),
            Column.text("Kind", Measure.WORD, BagColumns::kind),
            Column.text("Weight", Measure.GRAMS, (other, wording) -> wording.of(other.weightG(), Measure.GRAMS)));

    private BagColumns() {
    }

    private static Lens lens(CameraFigures figures) {
        return figures.camera().lens();
    }

    private static String upTo(CameraFigures figures, String shortest, String longest) {
        return lens(figures).zooms() ? shortest + "–" + longest : shortest;
    }

    private static String equivalent(CameraFigures figures, Sentences wording) {
        return lens(figures).zooms() ? Words.number(figures.shortestEquivalentMm(), 0) + "–"
                + wording.of(figures.longestEquivalentMm(), Measure.MILLIMETRES)
                : wording.of(figures.shortestEquivalentMm(), Measure.MILLIMETRES);
    }

    private static String aperture(CameraFigures figures, Sentences wording) {
        Lens lens = lens(figures);
        return wording.of(lens.widestShort(), Measure.F_NUMBER)
                + (lens.widestLong() == lens.widestShort() ? "" : "–" + Words.number(lens.widestLong(), 1));
    }

    private static String kind(Other other, Sentences wording) {
        Support support = other.support();
        if (support == null) {
            return other.filter() == null ? "" : kind(other.filter());
        }
        return Words.word(support.kind()) + (support.lowestM() == null || support.highestM() == null ? ""
                : ", " + wording.of(support.lowestM(), Measure.METRES) + " to " + wording.of(support.highestM(), Measure.METRES));
    }

    private static String kind(Filter.Kind kind) {
        return switch (kind) {
            case STEP_UP_RING -> "step-up ring";
            case CLOSE_UP_LENS -> "close-up lens";
            default -> Words.word(kind);
        };
    }
}
