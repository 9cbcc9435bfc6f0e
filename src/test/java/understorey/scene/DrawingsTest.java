package understorey.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import understorey.Places;
import understorey.brief.Brief;
import understorey.light.LightAt;
import understorey.plan.SkylinePoint;
import understorey.scene.Drawing.Label;
import understorey.scene.Drawing.Point;

class DrawingsTest {

    private static final LocalTime FIVE = LocalTime.of(5, 0);
    private static final LocalTime TEN = LocalTime.of(10, 0);

    @Test
    void noTwoWordsTouchAndNoneLeavesTheSheet() {
        int labels = 0;
        for (Brief brief : briefs()) {
            for (Drawing drawing : List.of(brief.dayLight(), brief.skyline())) {
                List<Label> seen = labels(drawing);
                for (int i = 0; i < seen.size(); i++) {
                    Lettering.Stretch stretch = Lettering.Stretch.of(seen.get(i));
                    String where = seen.get(i) + " on " + brief.date() + " " + brief.trip().site().position();
                    assertTrue(stretch.left() >= 0 && stretch.right() <= drawing.width(), where);
                    assertTrue(stretch.top() >= 0 && stretch.bottom() <= drawing.height(), where);
                    for (int j = i + 1; j < seen.size(); j++) {
                        assertFalse(stretch.touches(Lettering.Stretch.of(seen.get(j))), where + " meets " + seen.get(j));
                    }
                    labels++;
                }
            }
        }
        assertTrue(labels > 5000, "only " + labels);
    }

    @Test
    void everyMarkStaysOnTheSheet() {
        for (Brief brief : briefs()) {
            for (Drawing drawing : List.of(brief.dayLight(), brief.skyline())) {
                for (Point point : points(drawing)) {
                    assertTrue(point.x() >= 0 && point.x() <= drawing.width() && point.y() >= 0
                            && point.y() <= drawing.height(), point + " of " + brief.trip().site().position());
                }
            }
        }
    }

    @Test
    void noHangingLineRunsThroughWordsOnAnOrdinaryDay() {
        for (Places place : Places.ALL) {
            Drawing drawing = Charts.brief(place, List.of(new SkylinePoint(90, 14), new SkylinePoint(270, 9)), 2, FIVE,
                    TEN).dayLight();
            for (Drawing.Line line : lines(drawing, "event")) {
                double x = line.points().get(0).x();
                double from = line.points().get(0).y();
                for (Label label : labels(drawing)) {
                    Lettering.Stretch stretch = Lettering.Stretch.of(label);
                    boolean through = label.style().equals("words") && stretch.left() < x && stretch.right() > x
                            && stretch.bottom() > from;
                    assertFalse(through, label.text());
                }
            }
        }
    }

    @Test
    void noCurveRunsThroughTheNameOfAFleck() {
        int named = 0;
        for (Brief brief : briefs()) {
            for (Label label : labels(brief.dayLight())) {
                if (label.style().equals("fleck-words")) {
                    Lettering.Stretch stretch = Lettering.Stretch.of(label);
                    for (Drawing.Line line : lines(brief.dayLight(), "fleck")) {
                        assertTrue(line.points().stream().noneMatch(at -> at.x() > stretch.left() && at.x() < stretch.right()
                                && at.y() > stretch.top() && at.y() < stretch.bottom()), brief.date() + " " + label);
                    }
                    named++;
                }
            }
        }
        assertTrue(named > 50, "only " + named);
    }

    @Test
    void theSamePlanGivesTheSameDrawing() {
        for (Places place : Places.ALL) {
            Brief once = Charts.brief(place, Charts.ragged(), 5, FIVE, TEN);
            Brief again = Charts.brief(place, Charts.ragged(), 5, FIVE, TEN);
            assertEquals(once.dayLight(), again.dayLight());
            assertEquals(once.skyline(), again.skyline());
        }
    }

    @Test
    void theSunStandsWhereTheTableHasIt() {
        for (Places place : List.of(Places.MID_LATITUDE, Places.SOUTHERN, Places.TROPICS, Places.SHORT_DAY)) {
            Brief brief = Charts.brief(place, List.of(new SkylinePoint(90, 8), new SkylinePoint(270, 8)), 1, FIVE, TEN);
            Drawing drawing = brief.skyline();
            List<Point> expected = new ArrayList<>();
            for (LightAt row : brief.light()) {
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
        List<LightAt> hours = brief.light().stream().filter(row -> row.sun().time().getMinute() == 0
                && row.sun().apparentAltitudeDeg() > 0).toList();
        List<Drawing.Dot> dots = brief.skyline().marks().stream().filter(Drawing.Dot.class::isInstance)
                .map(Drawing.Dot.class::cast).toList();
        assertEquals(hours.size(), dots.size());
        for (int i = 0; i < dots.size(); i++) {
            Point point = onScales(brief.skyline(), hours.get(i));
            assertEquals(point.x(), dots.get(i).at().x(), 1);
            assertEquals(point.y(), dots.get(i).at().y(), 1);
            int hour = hours.get(i).sun().time().getHour();
            assertTrue(labels(brief.skyline()).stream().anyMatch(label -> label.text().equals(String.valueOf(hour))
                    && Math.abs(label.at().x() - point.x()) < 1), "hour " + hour);
        }
    }

    @Test
    void theHoursOfTheDayStandUnderTheLight() {
        for (Places place : Places.ALL) {
            List<Label> hours = labels(Charts.brief(place, List.of(), 1, FIVE, TEN).dayLight()).stream()
                    .filter(label -> label.text().matches("\\d\\d:00")).toList();
            assertTrue(hours.size() >= 5, hours.toString());
            for (int i = 1; i < hours.size(); i++) {
                assertTrue(hours.get(i).at().x() > hours.get(i - 1).at().x());
            }
        }
    }

    @Test
    void aPictureStandsOnTheChartAtWhateverHourItIsTaken() {
        Brief brief = Charts.brief(Places.SHORT_DAY, List.of(), 3, LocalTime.of(1, 0), LocalTime.of(3, 40));
        assertEquals(3, labels(brief.dayLight()).stream().filter(label -> label.style().equals("picture-number")).count());
        Brief late = Charts.brief(Places.SHORT_DAY, List.of(), 3, LocalTime.of(22, 0), LocalTime.of(23, 30));
        assertEquals(3, labels(late.dayLight()).stream().filter(label -> label.style().equals("picture-number")).count());
    }

    @Test
    void polarNightSaysSo() {
        Brief brief = Charts.brief(Places.POLAR_NIGHT, List.of(), 1, FIVE, TEN);
        for (Drawing drawing : List.of(brief.dayLight(), brief.skyline())) {
            assertTrue(labels(drawing).stream().anyMatch(label -> label.text().equals("the sun does not rise on this day")),
                    drawing.title());
        }
        assertTrue(brief.dayLight().says().startsWith("The sun does not rise on this day. "));
        assertEquals("The sun does not stand clear of the land on this day.", brief.skyline().says());
        assertTrue(brief.dayLight().marks().stream().anyMatch(mark -> mark.style().equals("night")));
    }

    /** At 67° N on 5 December the sun's edge comes near the horizon, and its centre within a degree of it. */
    @Test
    void aSunThatOnlyNearsTheHorizonDoesNotRise() {
        for (Brief brief : briefs()) {
            assertEquals(brief.sun().downAllDay(), labels(brief.skyline()).stream()
                    .anyMatch(label -> label.text().equals("the sun does not rise on this day")),
                    brief.date() + " " + brief.trip().site().position());
        }
    }

    @Test
    void polarDayIsNeverTinted() {
        Brief brief = Charts.brief(Places.POLAR_DAY, List.of(), 1, FIVE, TEN);
        assertTrue(brief.dayLight().marks().stream().noneMatch(mark -> mark.style().matches("night|dusk")));
        assertTrue(labels(brief.dayLight()).stream().anyMatch(label -> label.text().equals("the sun does not set on this day")));
        assertTrue(labels(brief.dayLight()).stream().noneMatch(label -> label.text().contains("land")));
    }

    /** At 64° N, 22° W on 21 June, clocks on Greenwich, the sun sets a little after midnight: the day begins with it. */
    @Test
    void aDayThatBeginsWithASunsetIsDrawnWhole() {
        Places place = Charts.days().stream().filter(day -> day.zone().getId().equals("Atlantic/Reykjavik")
                && day.date().getMonthValue() == 6).findFirst().orElseThrow();
        Brief brief = Charts.brief(place, List.of(), 1, FIVE, TEN);
        assertTrue(brief.sun().sunset().isBefore(brief.sun().sunrise()));
        List<Drawing.Box> dusk = brief.dayLight().marks().stream().filter(mark -> mark.style().equals("dusk"))
                .map(Drawing.Box.class::cast).toList();
        assertEquals(1, dusk.size());
        assertEquals(660 * (brief.sun().sunrise().toEpochSecond() - brief.sun().sunset().toEpochSecond()) / 85_500.0,
                dusk.get(0).width(), 1);
        assertTrue(labels(brief.dayLight()).stream().filter(label -> label.text().matches("\\d\\d:00")).count() >= 8);
    }

    @Test
    void theMiddleOfTheSheetIsTheSideOfTheMiddaySun() {
        assertEquals("S", middle(Charts.brief(Places.MID_LATITUDE, List.of(), 1, FIVE, TEN).skyline()));
        assertEquals("N", middle(Charts.brief(Places.SOUTHERN, List.of(), 1, FIVE, TEN).skyline()));
        assertEquals("S", middle(Charts.brief(Places.POLAR_NIGHT, List.of(), 1, FIVE, TEN).skyline()));
        assertEquals("N", middle(Charts.brief(new Places(new understorey.plan.Position(-75, 20),
                java.time.ZoneId.of("UTC"), java.time.LocalDate.of(2027, 6, 21)), List.of(), 1, FIVE, TEN).skyline()));
    }

    @Test
    void everyPictureIsNamedUnderTheSkyline() {
        Brief brief = Charts.brief(Places.MID_LATITUDE, Charts.ragged(), 12, FIVE, TEN);
        for (int number = 1; number <= 12; number++) {
            String start = number + " ";
            assertEquals(1, labels(brief.skyline()).stream().map(label -> label.text().replace("← ", ""))
                    .filter(text -> text.startsWith(start)).count(), "picture " + number);
        }
        assertTrue(labels(brief.skyline()).stream().anyMatch(label -> label.text().endsWith("…")));
    }

    @Test
    void landHigherThanTheSunStaysOnTheSheet() {
        Drawing drawing = Charts.brief(Places.MID_LATITUDE, List.of(new SkylinePoint(0, 70)), 1, FIVE, TEN).skyline();
        assertTrue(points(drawing).stream().allMatch(point -> point.y() >= 0));
    }

    @Test
    void othersThanTheExpectedSkyMakeTheBand() {
        Drawing drawing = Charts.brief(Places.MID_LATITUDE, List.of(), 1, FIVE, TEN).dayLight();
        Drawing.Area band = (Drawing.Area) drawing.marks().stream().filter(mark -> mark.style().equals("band"))
                .findFirst().orElseThrow();
        for (Point point : lines(drawing, "light").get(0).points()) {
            double[] ys = band.points().stream().filter(at -> at.x() == point.x()).mapToDouble(Point::y).toArray();
            assertTrue(ys.length >= 2 && Math.min(ys[0], ys[1]) <= point.y() && Math.max(ys[0], ys[1]) >= point.y());
        }
    }

    @Test
    void lanesKeepThingsApart() {
        Lanes lanes = new Lanes();
        assertEquals(0, lanes.count());
        assertEquals(0, lanes.place(0, 50));
        assertEquals(1, lanes.place(55, 80));
        assertEquals(0, lanes.place(58, 80));
        assertEquals(2, lanes.count());
    }

    @Test
    void textsAreMeasuredByTheirLettersAndCutToFit() {
        assertTrue(Lanes.textWidth("木漏れ日") > Lanes.textWidth("abcd"));
        assertEquals("The floor", Lanes.shortened("The floor", 200));
        String cut = Lanes.shortened("A long walk under 🌿🌿🌿🌿", 120);
        assertTrue(cut.endsWith("…") && Lanes.textWidth(cut) <= 120, cut);
        assertFalse(Character.isHighSurrogate(cut.charAt(cut.length() - 2)));
    }

    private static List<Brief> briefs;

    private static synchronized List<Brief> briefs() {
        if (briefs == null) {
            List<Brief> all = new ArrayList<>();
            for (Places day : Charts.days()) {
                all.add(Charts.brief(day, List.of(), 2, null, null));
                all.add(Charts.brief(day, Charts.ragged(), 12, FIVE, TEN));
            }
            briefs = List.copyOf(all);
        }
        return briefs;
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
        double offset = (row.sun().azimuthDeg() - (middle.equals("S") ? 180 : 0) + 540) % 360 - 180;
        return new Point(line(bearings, offset), line(heights, row.sun().apparentAltitudeDeg()));
    }

    private static double line(TreeMap<Double, Double> scale, double value) {
        double a = scale.firstKey();
        double b = scale.lastKey();
        return scale.get(a) + (value - a) / (b - a) * (scale.get(b) - scale.get(a));
    }

    private static String middle(Drawing drawing) {
        return labels(drawing).stream().filter(label -> label.text().matches("[NS]") && Math.abs(label.at().x() - 370) < 1)
                .findFirst().orElseThrow().text();
    }

    private static List<Label> labels(Drawing drawing) {
        return drawing.marks().stream().filter(Label.class::isInstance).map(Label.class::cast).toList();
    }

    private static List<Drawing.Line> lines(Drawing drawing, String style) {
        return drawing.marks().stream().filter(mark -> mark instanceof Drawing.Line && mark.style().equals(style))
                .map(Drawing.Line.class::cast).toList();
    }

    private static List<Point> points(Drawing drawing) {
        List<Point> points = new ArrayList<>();
        for (Drawing.Mark mark : drawing.marks()) {
            if (mark instanceof Drawing.Line line) {
                points.addAll(line.points());
            } else if (mark instanceof Drawing.Area area) {
                points.addAll(area.points());
            } else if (mark instanceof Drawing.Box box) {
                points.add(new Point(box.x(), box.y()));
                points.add(new Point(box.x() + box.width(), box.y() + box.height()));
            } else if (mark instanceof Drawing.Dot dot) {
                points.add(dot.at());
            }
        }
        return points;
    }
}
