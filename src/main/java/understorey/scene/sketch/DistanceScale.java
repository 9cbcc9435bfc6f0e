package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.List;
import understorey.scene.Drawing;
import understorey.scene.Drawing.Anchor;
import understorey.scene.Drawing.Area;
import understorey.scene.Drawing.Hatch;
import understorey.scene.Drawing.Label;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Fact;
import understorey.scene.Scene;
import understorey.scene.Wording;

/**
 * What goes round a large sketch: at its right edge the rows in which the ground has some distances from the lens, with a bar
 * where it is sharp (none close up); below it the bearings of its edges and its middle. The sketch itself fits into the empty part at the top left.
 */
public final class DistanceScale {

    private static final double RIGHT_PX = 128;
    private static final double BELOW_PX = 26;
    private static final double BAR_PX = 5;
    private static final double TICK_PX = 12;
    /** Between the base lines of two words. */
    private static final double APART_PX = 19;
    private static final double TEXT_DOWN_PX = 5;

    private final Setup setup;
    private final Wording words;
    private final Perspective perspective;
    private final List<Mark> marks = new ArrayList<>();
    private final List<Double> rows = new ArrayList<>();

    private DistanceScale(Setup setup, Wording words) {
        this.setup = setup;
        this.words = words;
        perspective = Perspective.of(setup);
    }

    public static Scene of(Setup setup) {
        return words -> new DistanceScale(setup, words).drawing();
    }

    private Drawing drawing() {
        if (!setup.close()) {
            distances();
        }
        bearings();
        return new Drawing(perspective.width + RIGHT_PX, perspective.height + BELOW_PX, words.of(new Fact.FrameOf(setup.fit().intent().shot().name())),
                words.of(new Fact.ScaleOf(setup.fit().focusM(), new Fact.SharpRange(setup.sharpFromM(), setup.sharpToM()))), List.copyOf(marks));
    }

    private void distances() {
        double left = perspective.width + 4;
        double near = row(setup.sharpFromM());
        double far = row(setup.sharpToM());
        if (near > far) {
            marks.add(new Area("sharp-ground", List.of(new Point(left, far), new Point(left + BAR_PX, far),
                    new Point(left + BAR_PX, near), new Point(left, near))));
        }
        tick("figure-bold", setup.fit().focusM(), words.of(new Fact.FocusAt(setup.fit().focusM())));
        tick("words", setup.sharpFromM(), words.of(new Fact.FocusLimit(setup.sharpFromM())));
        tick("words", setup.sharpToM(), words.of(new Fact.FocusLimit(setup.sharpToM())));
        double nearest = perspective.groundM(perspective.height);
        tick("words", nearest, words.of(new Fact.Distance(nearest)));
    }

    /** Row of the ground at a depth along the lens axis; within the frame. */
    private double row(double depthM) {
        return Math.max(0, Math.min(perspective.height, perspective.groundY(depthM)));
    }

    /** A tick and its words, where the ground of that distance is in the frame and no other words are. */
    private void tick(String style, double depthM, String text) {
        double y = perspective.groundY(depthM);
        if (!(y >= -1 && y <= perspective.height + 1) || rows.stream().anyMatch(other -> Math.abs(other - y) < APART_PX)) {
            return;
        }
        rows.add(y);
        double width = perspective.width;
        marks.add(new Hatch("axis", List.of(new Point(width, y), new Point(width + TICK_PX, y))));
        marks.add(new Label(style, Anchor.START, new Point(width + TICK_PX + 3, Math.max(13, Math.min(perspective.height, y + TEXT_DOWN_PX))), text));
    }

    private void bearings() {
        Double facingDeg = setup.fit().intent().shot().facingDeg();
        double y = perspective.height + 19;
        String wide = words.of(new Fact.WideAt(setup.fit().frameWidthM(), setup.fit().distanceM()));
        if (facingDeg == null) {
            marks.add(new Label("words", Anchor.MIDDLE, new Point(perspective.width / 2, y), wide));
            return;
        }
        double half = setup.fit().view().horizontalDeg() / 2;
        marks.add(new Label("words", Anchor.START, new Point(0, y), bearing(facingDeg - half)));
        marks.add(new Label("words", Anchor.MIDDLE, new Point(perspective.width / 2, y),
                words.of(new Fact.Item(new Fact.Towards(around(facingDeg), around(facingDeg)), new Fact.WideAt(setup.fit().frameWidthM(), setup.fit().distanceM())))));
        marks.add(new Label("words", Anchor.END, new Point(perspective.width, y), bearing(facingDeg + half)));
    }

    private String bearing(double deg) {
        return words.of(new Fact.Towards(around(deg), around(deg)));
    }

    private static double around(double deg) {
        return (deg % 360 + 360) % 360;
    }
}
