package understorey.scene.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import understorey.kit.CoverChoice;
import understorey.scene.Drawing;
import understorey.scene.Drawing.Anchor;
import understorey.scene.Drawing.Label;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Fact;
import understorey.scene.Lettering;
import understorey.scene.Scene;
import understorey.scene.Wording;

/** Share of the ground that flowers cover against focal length, the nearest flowers kept the same size; the planned one marked. */
public final class CoverCurve {

    private static final double WIDTH = 340;
    private static final double LEFT = 54;
    private static final double RIGHT = 326;
    private static final double TOP = 24;
    private static final double FLOOR = 122;
    private static final double STEP = 0.2;
    private static final int LEAST_POINTS = 2;

    private final TreeMap<Double, Double> cover = new TreeMap<>();
    private final double plannedMm;
    private final Wording words;
    private final double top;
    private final List<Mark> marks = new ArrayList<>();

    private CoverCurve(List<CoverChoice> choices, CoverChoice planned, Wording words) {
        choices.forEach(choice -> cover.put((double) Math.round(choice.equivalentMm()), choice.typical().cover()));
        this.plannedMm = Math.round(planned.equivalentMm());
        cover.put(plannedMm, planned.typical().cover());
        this.words = words;
        this.top = STEP * Math.ceil(cover.values().stream().max(Comparator.naturalOrder()).orElseThrow() / STEP);
    }

    /** Null with fewer than two focal lengths to compare. */
    public static @Nullable Scene of(List<CoverChoice> choices) {
        CoverChoice planned = choices.stream().filter(CoverChoice::planned).findFirst().orElse(null);
        long lengths = choices.stream().map(choice -> Math.round(choice.equivalentMm())).distinct().count();
        return planned == null || lengths < LEAST_POINTS ? null : words -> new CoverCurve(choices, planned, words).draw();
    }

    private Drawing draw() {
        for (double share = 0; share <= top + STEP / 2; share += STEP) {
            marks.add(new Drawing.Line("hair", List.of(new Point(LEFT, y(share)), new Point(RIGHT, y(share)))));
            marks.add(new Label("figure", Anchor.END, new Point(LEFT - 8, y(share) + 5), words.of(new Fact.Share(share))));
        }
        marks.add(new Drawing.Line("light", cover.entrySet().stream().map(this::point).toList()));
        for (Map.Entry<Double, Double> one : cover.entrySet()) {
            boolean planned = one.getKey() == plannedMm;
            marks.add(new Drawing.Dot(planned ? "picture" : "lens-dot", point(one), planned ? 6.5 : 4));
        }
        axis();
        Map.Entry<Double, Double> here = Map.entry(plannedMm, cover.get(plannedMm));
        marks.add(new Label("strong", Anchor.END, new Point(RIGHT, FLOOR - 8), words.of(new Fact.CoverAt(here.getValue(), plannedMm))));
        return new Drawing(WIDTH, FLOOR + 28, words.of(Fact.Word.COVER_BY_FOCAL_LENGTH), words.of(says(here)), List.copyOf(marks));
    }

    private Fact says(Map.Entry<Double, Double> here) {
        List<Fact> says = cover.entrySet().stream().<Fact>map(one -> new Fact.CoverAt(one.getValue(), one.getKey())).toList();
        return new Fact.Next(new Fact.Ended(says.stream().reduce(Fact.Then::new).orElseThrow()), new Fact.PlannedFocalLength(here.getKey()));
    }

    /** The planned focal length first, then the ends, then those between that have room. */
    private void axis() {
        List<Double> order = new ArrayList<>(List.of(plannedMm, cover.firstKey(), cover.lastKey()));
        order.addAll(cover.keySet());
        List<double[]> taken = new ArrayList<>();
        for (double mm : order) {
            String text = words.of(new Fact.FocalLength(mm));
            double half = Lettering.width(text) / 2 + 3;
            double centre = Math.max(LEFT - 20 + half, Math.min(WIDTH - half, x(mm)));
            if (taken.stream().noneMatch(other -> centre - half < other[1] && centre + half > other[0])) {
                taken.add(new double[] {centre - half, centre + half});
                marks.add(new Label(mm == plannedMm ? "strong" : "figure", Anchor.MIDDLE, new Point(centre, FLOOR + 22), text));
            }
        }
    }

    private Point point(Map.Entry<Double, Double> one) {
        return new Point(x(one.getKey()), y(one.getValue()));
    }

    private double x(double mm) {
        double first = Math.log(cover.firstKey());
        return LEFT + 8 + (Math.log(mm) - first) / (Math.log(cover.lastKey()) - first) * (RIGHT - LEFT - 16);
    }

    private double y(double share) {
        return FLOOR - share / top * (FLOOR - TOP);
    }
}
