package understorey.scene.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import understorey.pages.DrawingWords;
import understorey.scene.Drawing;
import understorey.scene.Drawing.Point;
import understorey.scene.Lettering;
import understorey.scene.Marks;
import understorey.visit.GroundPlan;
import understorey.visit.GroundPlan.Place;
import understorey.visit.GroundPlan.Way;

class SpotPlanTest {

    private static final Place GATE = new Place("Gate", 0, 0);
    private static final Place BANK = new Place("Bank", 300, 400);
    private static final Place STUMP = new Place("Stump", -100, 200);
    private static final GroundPlan PLAN = new GroundPlan(List.of(GATE, BANK, STUMP), List.of(new Way(GATE, BANK, 500, 9)));

    private static List<Point> dots(Drawing drawing) {
        return drawing.marks().stream().filter(mark -> mark instanceof Drawing.Dot).map(mark -> ((Drawing.Dot) mark).at()).toList();
    }

    private static double apart(Point a, Point b) {
        return Math.hypot(a.x() - b.x(), a.y() - b.y());
    }

    @Test
    void laysTheSpotsToTheScaleOfItsBarWithNorthUp() {
        Drawing drawing = SpotPlan.of(PLAN).drawing(DrawingWords.BUILT_IN);
        List<Point> dots = dots(drawing);
        assertTrue(dots.get(1).y() < dots.get(0).y() && dots.get(1).x() > dots.get(0).x(), "Bank lies north-east of the gate");
        Drawing.Hatch bar = drawing.marks().stream().filter(mark -> mark instanceof Drawing.Hatch).map(Drawing.Hatch.class::cast)
                .findFirst().orElseThrow();
        double barPx = apart(bar.ends().get(0), bar.ends().get(1));
        assertEquals("100\u00a0m", Marks.labels(drawing).get(0).text());
        assertEquals(500 / 100.0, apart(dots.get(0), dots.get(1)) / barPx, 0.01);
        assertEquals(Math.hypot(100, 200) / 100, apart(dots.get(0), dots.get(2)) / barPx, 0.01);
        assertEquals("Gate to Bank: 500\u00a0m in a straight line, 9\u00a0min by day.", drawing.says());
        assertTrue(Marks.labels(drawing).stream().anyMatch(label -> label.text().equals("500\u00a0m")));
    }

    /** A mile is 1609.344 m, a foot 0.3048 m (NIST SP 811). */
    @Test
    void drawsABarOfARoundLengthInTheUnitOfTheReader() {
        assertBar(PLAN, "500\u00a0ft", 500 * 0.3048);
        assertBar(new GroundPlan(List.of(GATE, new Place("Far", 9000, 0)), List.of()), "2\u00a0miles", 2 * 1609.344);
    }

    private static void assertBar(GroundPlan plan, String says, double metres) {
        Drawing drawing = SpotPlan.of(plan).drawing(DrawingWords.IN_FEET);
        Drawing.Hatch bar = drawing.marks().stream().filter(mark -> mark instanceof Drawing.Hatch).map(Drawing.Hatch.class::cast)
                .findFirst().orElseThrow();
        assertEquals(says, Marks.labels(drawing).get(0).text());
        List<Point> dots = dots(drawing);
        double spotsM = Math.hypot(plan.places().get(1).eastM(), plan.places().get(1).northM());
        assertEquals(spotsM / metres, apart(dots.get(0), dots.get(1)) / apart(bar.ends().get(0), bar.ends().get(1)), 0.01);
    }

    @Test
    void noTwoWordsTouchWhereverTheSpotsLie() {
        Random random = new Random(14);
        for (int i = 0; i < 200; i++) {
            double reach = Math.pow(10, 1 + 4 * random.nextDouble());
            List<Place> places = new ArrayList<>();
            List<Way> ways = new ArrayList<>();
            for (int spot = 0; spot < 2 + i % 9; spot++) {
                places.add(new Place(Charts.NAMES.get(spot % 5), reach * random.nextDouble(), reach * random.nextDouble() * (i % 3)));
                if (spot > 0) {
                    ways.add(new Way(places.get(spot - 1), places.get(spot), reach, spot));
                }
            }
            onSheet(SpotPlan.of(new GroundPlan(places, ways)).drawing(DrawingWords.BUILT_IN));
        }
    }

    /** Up to seven spots within a few steps, and two far away. */
    @Test
    void namesEverySpotOfACrowd() {
        Random random = new Random(41);
        int leaders = 0;
        for (int i = 0; i < 100; i++) {
            List<Place> places = new ArrayList<>();
            List<Way> ways = new ArrayList<>();
            places.add(new Place("Car park", 600, -200));
            places.add(new Place("Spring", -600, 200));
            for (int spot = 2; spot < 4 + i % 6; spot++) {
                places.add(new Place("Beech stump " + spot, 12 * random.nextDouble(), 12 * random.nextDouble()));
                ways.add(new Way(places.get(spot - 1), places.get(spot), 10, 1));
            }
            Drawing drawing = SpotPlan.of(new GroundPlan(places, ways)).drawing(DrawingWords.BUILT_IN);
            List<String> words = Marks.labels(drawing).stream().map(Drawing.Label::text).toList();
            places.forEach(place -> assertTrue(words.contains(place.name()), place.name() + " in " + words));
            for (Drawing.Line leader : Marks.lines(drawing, "leader")) {
                Marks.labels(drawing).forEach(label -> assertFalse(Lettering.Stretch.of(label)
                        .crossedBy(leader.points().get(0), leader.points().get(1)) && apart(leader.points().get(1), label.at()) > 7, label.text()));
                leaders++;
            }
            onSheet(drawing);
        }
        assertTrue(leaders > 100, leaders + " leaders");
    }

    private static void onSheet(Drawing drawing) {
        List<Lettering.Stretch> words = Marks.words(drawing);
        for (int i = 0; i < words.size(); i++) {
            Lettering.Stretch one = words.get(i);
            assertTrue(one.left() >= 0 && one.right() <= drawing.width() && one.top() >= 0 && one.bottom() <= drawing.height(),
                    one + " of " + drawing.says());
            for (Lettering.Stretch other : words.subList(i + 1, words.size())) {
                assertFalse(one.touches(other), one + " meets " + other + " of " + drawing.says());
            }
        }
        for (Point point : Marks.points(drawing)) {
            assertTrue(point.x() >= 0 && point.x() <= drawing.width() && point.y() >= 0 && point.y() <= drawing.height(),
                    point + " of " + drawing.says());
        }
    }
}
