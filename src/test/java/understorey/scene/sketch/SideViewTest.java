package understorey.scene.sketch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.pages.DrawingWords;
import understorey.plan.Viewpoint;
import understorey.scene.Drawing;
import understorey.scene.Drawing.Point;
import understorey.scene.Lettering;
import understorey.scene.Marks;

class SideViewTest {

    private static Setup setup(double heightM, double mm, double tiltDeg, double slopeDeg) {
        return Setups.inTheWood(Samples.picture("Floor").from(new Viewpoint.Height(heightM)).equivalent(mm).tilt(tiltDeg)
                .sharp(2, 20), slopeDeg);
    }

    @Property(tries = 300)
    void noTwoWordsTouchAndNothingLeavesTheSheet(@ForAll @DoubleRange(min = 0.02, max = 3) double heightM,
            @ForAll @DoubleRange(min = 18, max = 400) double mm, @ForAll @DoubleRange(min = -90, max = 90) double tiltDeg,
            @ForAll @DoubleRange(min = -40, max = 40) double slopeDeg) {
        Setup setup = setup(heightM, mm, tiltDeg, slopeDeg);
        if (setup == null) {
            return;
        }
        Drawing drawing = SideView.of(setup).drawing(DrawingWords.BUILT_IN);
        List<Lettering.Stretch> words = Marks.words(drawing);
        assertTrue(words.size() >= 4);
        for (int i = 0; i < words.size(); i++) {
            Lettering.Stretch word = words.get(i);
            assertTrue(word.left() >= 0 && word.right() <= drawing.width() && word.top() >= 0
                    && word.bottom() <= drawing.height(), word + " of " + drawing);
            for (int j = i + 1; j < words.size(); j++) {
                assertFalse(word.touches(words.get(j)), word + " meets " + words.get(j));
            }
        }
        for (Point point : Marks.points(drawing)) {
            assertTrue(point.x() >= 0 && point.x() <= drawing.width() && point.y() >= -0.05
                    && point.y() <= drawing.height() + 0.05, point + " of " + drawing);
        }
    }

    /** Lens 1.5 m up and the plant's 0.375 m: both on the scale of the distances along the ground. */
    @Test
    void heightsAndDistancesShareAScale() {
        Setup setup = setup(1.5, 50, 20, 0);
        Drawing drawing = SideView.of(setup).drawing(DrawingWords.BUILT_IN);
        List<Point> upright = Marks.strokes(drawing, "camera-height");
        List<Point> plant = Marks.lines(drawing, "plant").get(0).points();
        double pxPerM = (upright.get(0).y() - upright.get(1).y()) / setup.fit().heightM();
        assertEquals(0.375 * pxPerM, plant.get(0).y() - plant.get(1).y(), 0.2);
        double aheadM = (setup.fit().distanceM() - setup.fit().heightM() * Math.sin(Math.toRadians(setup.fit().tiltDeg())))
                / Math.cos(Math.toRadians(setup.fit().tiltDeg()));
        assertEquals(aheadM * pxPerM, plant.get(0).x() - upright.get(0).x(), 0.3);
    }

    /** Sharp to 20 m and framed for 6 m at the most: the far limit is not on the scale. Without depth beyond the frame there is no break. */
    @Test
    void breaksTheScaleWhereTheFarLimitLiesBeyondIt() {
        Drawing far = SideView.of(setup(1.5, 50, 20, 0)).drawing(DrawingWords.BUILT_IN);
        assertEquals(1, Marks.areas(far, "scale-break").size());
        double end = Marks.areas(far, "sharp-ground").get(0).points().stream().mapToDouble(Point::x).max().orElseThrow();
        assertTrue(Marks.areas(far, "scale-break").get(0).points().stream().allMatch(point -> point.x() < end && point.x() > end - 30));
        Setup close = Setups.inTheWood(Samples.picture("Head").from(new Viewpoint.Height(0.4)).wide(0.1).deep(0.01), 0);
        assertTrue(Marks.areas(SideView.of(close).drawing(DrawingWords.BUILT_IN), "scale-break").isEmpty());
    }

    @Test
    void noLineOfASignRunsThroughWords() {
        for (double slopeDeg : new double[] {-10, 0, 15}) {
            Drawing drawing = SideView.of(setup(0.15, 20, -1, slopeDeg)).drawing(DrawingWords.BUILT_IN);
            List<Point> ends = Marks.strokes(drawing, "event");
            for (int i = 1; i < ends.size(); i += 2) {
                double x = ends.get(i).x();
                double top = ends.get(i - 1).y();
                assertTrue(Marks.words(drawing).stream().noneMatch(word -> word.left() < x && x < word.right()
                        && word.top() > top && word.bottom() < 70), drawing.toString());
            }
        }
    }

    @Test
    void saysEachFigureWithItsUnit() {
        String says = SideView.of(setup(1.5, 50, 20, 0)).drawing(DrawingWords.BUILT_IN).says();
        assertTrue(says.startsWith("The lens is 1.5\u00a0m above the ground, 20° down. Subject at "), says);
        assertTrue(says.contains("ramsons") && says.contains("38\u00a0cm high. Depth of field: "), says);
    }
}
