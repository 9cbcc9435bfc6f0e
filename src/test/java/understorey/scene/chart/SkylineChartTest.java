package understorey.scene.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.scene.Marks.labels;
import static understorey.scene.Marks.lines;
import static understorey.scene.Marks.points;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import understorey.Places;
import understorey.brief.Brief;
import understorey.light.LightAt;
import understorey.pages.DrawingWords;
import understorey.plan.Position;
import understorey.plan.SkylinePoint;
import understorey.scene.Drawing;
import understorey.scene.Drawing.Label;
import understorey.scene.Drawing.Point;
import understorey.scene.Marks;

class SkylineChartTest {

    private static final LocalTime FIVE = LocalTime.of(5, 0);
    private static final LocalTime TEN = LocalTime.of(10, 0);

    @Test
    void theSunStandsWhereTheTableHasIt() {
        for (Places place : List.of(Places.MID_LATITUDE, Places.SOUTHERN, Places.TROPICS, Places.SHORT_DAY)) {
            Brief brief = Charts.brief(place, List.of(new SkylinePoint(90, 8), new SkylinePoint(270, 8)), 1, FIVE, TEN);
            Drawing drawing = brief.places().get(0).skyline().drawing(DrawingWords.BUILT_IN);
            List<Point> expected = new ArrayList<>();
            for (LightAt row : brief.day().light()) {
                if (row.sun().apparentAltitudeDeg() > 0) {
                    expected.add(onScales(drawing, row));
                }
            }
            List<Point> drawn = new ArrayList<>();
            lines(drawing, "sun").forEach(line -> drawn.addAll(line.points()));
            lines(drawing, "sun-hidden").forEach(line -> drawn.addAll(line.points()));
            assertFalse(expected.isEmpty());
            for (Point point : expected) {
                assertTrue(drawn.stream().anyMatch(at -> Math.hypot(at.x() - point.x(), at.y() - point.y()) < 1.5),
                        point + " on " + place);
            }
        }
    }

    @Test
    void aDotStandsAtEveryFullHourOfSun() {
        Brief brief = Charts.brief(Places.MID_LATITUDE, List.of(), 1, FIVE, TEN);
        List<LightAt> hours = brief.day().light().stream().filter(row -> row.sun().time().getMinute() == 0
                && row.sun().apparentAltitudeDeg() > 0).toList();
        List<Drawing.Dot> dots = brief.places().get(0).skyline().drawing(DrawingWords.BUILT_IN).marks().stream().filter(Drawing.Dot.class::isInstance)
                .map(Drawing.Dot.class::cast).toList();
        assertEquals(hours.size(), dots.size());
        for (int i = 0; i < dots.size(); i++) {
            Point point = onScales(brief.places().get(0).skyline().drawing(DrawingWords.BUILT_IN), hours.get(i));
            assertEquals(point.x(), dots.get(i).at().x(), 1);
            assertEquals(point.y(), dots.get(i).at().y(), 1);
            int hour = hours.get(i).sun().time().getHour();
            assertTrue(labels(brief.places().get(0).skyline().drawing(DrawingWords.BUILT_IN)).stream()
                    .anyMatch(label -> label.text().equals(String.valueOf(hour))
                    && Math.abs(label.at().x() - point.x()) < 1), "hour " + hour);
        }
    }

    @Test
    void theMiddleOfTheSheetIsTheSideOfTheMiddaySun() {
        assertEquals("S", middle(Charts.brief(Places.MID_LATITUDE, List.of(), 1, FIVE, TEN).places().get(0).skyline()
                .drawing(DrawingWords.BUILT_IN)));
        assertEquals("N", middle(Charts.brief(Places.SOUTHERN, List.of(), 1, FIVE, TEN).places().get(0).skyline().drawing(DrawingWords.BUILT_IN)));
        assertEquals("S", middle(Charts.brief(Places.POLAR_NIGHT, List.of(), 1, FIVE, TEN).places().get(0).skyline().drawing(DrawingWords.BUILT_IN)));
        assertEquals("N", middle(Charts.brief(new Places(new Position(-75, 20),
                ZoneId.of("UTC"), LocalDate.of(2027, 6, 21)), List.of(), 1, FIVE, TEN).places().get(0).skyline().drawing(DrawingWords.BUILT_IN)));
    }

    @Test
    void everyPictureIsNamedUnderTheSkyline() {
        Brief brief = Charts.brief(Places.MID_LATITUDE, Charts.ragged(), 12, FIVE, TEN);
        for (int number = 1; number <= 12; number++) {
            String start = number + " ";
            assertEquals(1, labels(brief.places().get(0).skyline().drawing(DrawingWords.BUILT_IN)).stream()
                    .map(label -> label.text().replace("← ", ""))
                    .filter(text -> text.startsWith(start)).count(), "picture " + number);
        }
        assertTrue(labels(brief.places().get(0).skyline().drawing(DrawingWords.BUILT_IN)).stream().anyMatch(label -> label.text().endsWith("…")));
    }

    @Test
    void landHigherThanTheSunStaysOnTheSheet() {
        Drawing drawing = Charts.brief(Places.MID_LATITUDE, List.of(new SkylinePoint(0, 70)), 1, FIVE, TEN)
                .places().get(0).skyline().drawing(DrawingWords.BUILT_IN);
        assertTrue(points(drawing).stream().allMatch(point -> point.y() >= 0));
    }

    @Test
    void treeTopsStandAtTheirAngleOnAverage() {
        for (double angleDeg : new double[] {3, 22, 60, 80}) {
            Drawing drawing = Charts.amongTrees(may(), List.of(), angleDeg, "Footbridge");
            List<Point> outline = crowns(drawing);
            double mean = outline.stream().mapToDouble(point -> degrees(drawing, point.y())).average().orElseThrow();
            assertEquals(angleDeg, mean, 0.3);
            assertTrue(outline.stream().mapToDouble(Point::y).distinct().count() > 10, "ragged");
        }
    }

    @Test
    void treeTopsStayWithinThePlot() {
        for (Drawing drawing : Charts.skylinesAmongTrees()) {
            double bottom = labels(drawing).stream().filter(label -> label.text().equals("0°")).findFirst().orElseThrow().at().y() - 5;
            List<Point> trees = new ArrayList<>(crowns(drawing));
            trees.addAll(Marks.strokes(drawing, "trunks"));
            assertTrue(trees.size() > 100);
            for (Point point : trees) {
                assertTrue(point.x() >= 36 && point.x() <= 348 && point.y() >= 80 && point.y() <= bottom, point + drawing.says());
            }
        }
    }

    @Test
    void theSameSpotHasTheSameTreesAndAnotherHasOthers() {
        Drawing once = Charts.amongTrees(may(), List.of(), 40.0, "Footbridge");
        assertEquals(once, Charts.amongTrees(may(), List.of(), 40.0, "Footbridge"));
        assertFalse(crowns(once).equals(crowns(Charts.amongTrees(may(), List.of(), 40.0, "Old stump"))));
        assertEquals("The sun over a level horizon at Footbridge", once.title());
    }

    @Test
    void theSunIsDrawnAsItIsSeenOverTreesAndLand() {
        Drawing drawing = Charts.amongTrees(may(), List.of(new SkylinePoint(0, 10)), 35.0, "Footbridge");
        assertTrue(heights(drawing, "sun").allMatch(deg -> deg > 34.8));
        assertTrue(heights(drawing, "sun-in-trees").allMatch(deg -> deg > 9.8 && deg < 35.2));
        assertTrue(heights(drawing, "sun-hidden").allMatch(deg -> deg < 10.2));
        assertEquals(List.of("behind skyline", "behind trees, tops at 35°", "sun visible"), labels(drawing).stream()
                .map(Label::text).filter(text -> text.matches("(sun|behind) .*")).toList());
        assertTrue(drawing.says().contains(" It is above the treetops at about 35°, from about "), drawing.says());
    }

    @Test
    void treesTallerThanTheSunLeaveNoClearPath() {
        Drawing drawing = Charts.amongTrees(may(), List.of(), 60.0, "Footbridge");
        assertEquals(List.of(), lines(drawing, "sun"));
        assertTrue(drawing.says().contains(" It does not rise above the treetops at about 60°."), drawing.says());
    }

    @Test
    void aSpotWithoutAClearingHasNoTreeLine() {
        Drawing drawing = Charts.amongTrees(may(), List.of(), null, "Under the beeches");
        assertTrue(drawing.marks().stream().noneMatch(mark -> mark.style().matches("trees|trunks|sun-in-trees")));
    }

    private static Brief may() {
        return Charts.brief(Places.MID_LATITUDE, List.of(), 1, FIVE, TEN);
    }

    /** The outline without the two points at its foot. */
    private static List<Point> crowns(Drawing drawing) {
        List<Point> outline = drawing.marks().stream().filter(mark -> mark instanceof Drawing.Area && mark.style().equals("trees"))
                .map(mark -> ((Drawing.Area) mark).points()).findFirst().orElseThrow();
        return outline.subList(1, outline.size() - 1);
    }

    /** Heights of a part of the path by the figures of the scale; the key above the plot is no part of it. */
    private static DoubleStream heights(Drawing drawing, String style) {
        List<Point> points = new ArrayList<>();
        lines(drawing, style).stream().filter(line -> line.points().get(0).y() > 75).forEach(line -> points.addAll(line.points()));
        assertFalse(points.isEmpty(), style);
        return points.stream().mapToDouble(point -> degrees(drawing, point.y()));
    }

    private static double degrees(Drawing drawing, double y) {
        TreeMap<Double, Double> heights = new TreeMap<>();
        for (Label label : labels(drawing)) {
            if (label.text().matches("\\d+°")) {
                heights.put(label.at().y() - 5, Double.valueOf(label.text().replace("°", "")));
            }
        }
        return line(heights, y);
    }

    /** Where a row of the table belongs by the figures printed on the sheet's own two scales. */
    private static Point onScales(Drawing drawing, LightAt row) {
        TreeMap<Double, Double> heights = new TreeMap<>();
        TreeMap<Double, Double> bearings = new TreeMap<>();
        List<String> points = List.of("N", "NE", "E", "SE", "S", "SW", "W", "NW");
        String middle = middle(drawing);
        for (Label label : labels(drawing)) {
            if (label.text().matches("\\d+°")) {
                heights.put(Double.valueOf(label.text().replace("°", "")), label.at().y() - 5);
            } else if (points.contains(label.text()) && label.at().x() > 60 && label.at().x() < 690) {
                double offset = (points.indexOf(label.text()) * 45 - (middle.equals("S") ? 180 : 0) + 540) % 360 - 180;
                bearings.put(offset, label.at().x());
            }
        }
        bearings.pollFirstEntry();
        bearings.pollLastEntry();
        double offset = (row.sun().azimuthDeg() - (middle.equals("S") ? 180 : 0) + 540) % 360 - 180;
        return new Point(line(bearings, offset), line(heights, row.sun().apparentAltitudeDeg()));
    }

    private static double line(TreeMap<Double, Double> scale, double value) {
        double a = scale.firstKey();
        double b = scale.lastKey();
        return scale.get(a) + (value - a) / (b - a) * (scale.get(b) - scale.get(a));
    }

    private static String middle(Drawing drawing) {
        return labels(drawing).stream().filter(label -> label.text().matches("[NS]") && Math.abs(label.at().x() - 192) < 1)
                .findFirst().orElseThrow().text();
    }
}
