package understorey.scene.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.scene.Marks.labels;
import static understorey.scene.Marks.lines;
import static understorey.scene.Marks.points;
import static understorey.scene.Marks.words;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Places;
import understorey.brief.Brief;
import understorey.pages.DrawingWords;
import understorey.plan.SkylinePoint;
import understorey.scene.Drawing;
import understorey.scene.Drawing.Label;
import understorey.scene.Drawing.Point;
import understorey.scene.Lettering;
import understorey.scene.Marks;

class DrawingsTest {

    private static final LocalTime FIVE = LocalTime.of(5, 0);
    private static final LocalTime TEN = LocalTime.of(10, 0);

    @Test
    void noTwoWordsTouchAndNoneLeavesTheSheet() {
        int labels = 0;
        for (Drawing drawing : all()) {
            List<Lettering.Stretch> seen = words(drawing);
            for (int i = 0; i < seen.size(); i++) {
                Lettering.Stretch stretch = seen.get(i);
                String where = stretch + " on " + drawing.title() + ": " + drawing.says();
                assertTrue(stretch.left() >= 0 && stretch.right() <= drawing.width(), where);
                assertTrue(stretch.top() >= 0 && stretch.bottom() <= drawing.height(), where);
                for (int j = i + 1; j < seen.size(); j++) {
                    assertFalse(stretch.touches(seen.get(j)), where + " meets " + seen.get(j));
                }
                labels++;
            }
        }
        assertTrue(labels > 8000, "only " + labels);
    }

    @Test
    void everyMarkStaysOnTheSheet() {
        for (Drawing drawing : all()) {
            for (Point point : points(drawing)) {
                assertTrue(point.x() >= 0 && point.x() <= drawing.width() && point.y() >= 0
                        && point.y() <= drawing.height(), point + " of " + drawing.says());
            }
        }
    }

    private static List<Drawing> all() {
        List<Drawing> all = new ArrayList<>(Charts.daysOfLight());
        all.addAll(Charts.skylines());
        all.addAll(Charts.skylinesAmongTrees());
        return all;
    }

    @Test
    void noHangingLineRunsThroughWordsOnAnOrdinaryDay() {
        for (Places place : Places.ALL) {
            Drawing drawing = Charts.brief(place, List.of(new SkylinePoint(90, 14), new SkylinePoint(270, 9)), 2, FIVE,
                    TEN).places().get(0).dayLight().drawing(DrawingWords.BUILT_IN);
            List<Point> hanging = Marks.strokes(drawing, "event");
            assertTrue(hanging.size() >= 4 || place == Places.POLAR_DAY || place == Places.POLAR_NIGHT, place.toString());
            for (int i = 0; i < hanging.size(); i += 2) {
                double x = hanging.get(i).x();
                double from = hanging.get(i).y();
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
        for (Brief brief : Charts.briefs()) {
            for (Label label : labels(brief.places().get(0).dayLight().drawing(DrawingWords.BUILT_IN))) {
                if (label.style().equals("fleck-words")) {
                    Lettering.Stretch stretch = Lettering.Stretch.of(label);
                    for (Drawing.Line line : lines(brief.places().get(0).dayLight().drawing(DrawingWords.BUILT_IN), "fleck")) {
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
            assertEquals(once.places().get(0).dayLight().drawing(DrawingWords.BUILT_IN), again.places().get(0).dayLight().drawing(DrawingWords.BUILT_IN));
            assertEquals(once.places().get(0).skyline().drawing(DrawingWords.BUILT_IN), again.places().get(0).skyline().drawing(DrawingWords.BUILT_IN));
        }
    }

    @Test
    void theHoursOfTheDayStandUnderTheLight() {
        for (Places place : Places.ALL) {
            List<Label> hours = labels(Charts.brief(place, List.of(), 1, FIVE, TEN).places().get(0).dayLight().drawing(DrawingWords.BUILT_IN)).stream()
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
        assertEquals(3, labels(brief.places().get(0).dayLight().drawing(DrawingWords.BUILT_IN)).stream().filter(label -> label.style().equals("picture-number")).count());
        Brief late = Charts.brief(Places.SHORT_DAY, List.of(), 3, LocalTime.of(22, 0), LocalTime.of(23, 30));
        assertEquals(3, labels(late.places().get(0).dayLight().drawing(DrawingWords.BUILT_IN)).stream().filter(label -> label.style().equals("picture-number")).count());
    }

    @Test
    void polarNightSaysSo() {
        Brief brief = Charts.brief(Places.POLAR_NIGHT, List.of(), 1, FIVE, TEN);
        for (Drawing drawing : List.of(brief.places().get(0).dayLight().drawing(DrawingWords.BUILT_IN), brief.places().get(0).skyline().drawing(DrawingWords.BUILT_IN))) {
            assertTrue(labels(drawing).stream().anyMatch(label -> label.text().equals("the sun does not rise on this day")),
                    drawing.title());
        }
        assertTrue(brief.places().get(0).dayLight().drawing(DrawingWords.BUILT_IN).says().startsWith("The sun does not rise on this day. "));
        assertEquals("The sun stays below a level horizon on this day.", brief.places().get(0).skyline().drawing(DrawingWords.BUILT_IN).says());
        assertTrue(brief.places().get(0).dayLight().drawing(DrawingWords.BUILT_IN).marks().stream().anyMatch(mark -> mark.style().equals("night")));
    }

    /** At 67° N on 5 December the sun's edge comes near the horizon, and its centre within a degree of it. */
    @Test
    void aSunThatOnlyNearsTheHorizonDoesNotRise() {
        for (Brief brief : Charts.briefs()) {
            assertEquals(brief.day().sun().downAllDay(), labels(brief.places().get(0).skyline().drawing(DrawingWords.BUILT_IN)).stream()
                    .anyMatch(label -> label.text().equals("the sun does not rise on this day")),
                    brief.date() + " " + brief.trip().site().position());
        }
    }

    @Test
    void polarDayIsNeverTinted() {
        Brief brief = Charts.brief(Places.POLAR_DAY, List.of(), 1, FIVE, TEN);
        assertTrue(brief.places().get(0).dayLight().drawing(DrawingWords.BUILT_IN).marks().stream().noneMatch(mark -> mark.style().matches("night|dusk")));
        assertTrue(labels(brief.places().get(0).dayLight().drawing(DrawingWords.BUILT_IN)).stream().anyMatch(label -> label.text().equals("the sun does not set on this day")));
        assertTrue(labels(brief.places().get(0).dayLight().drawing(DrawingWords.BUILT_IN)).stream().noneMatch(label -> label.text().contains("land")));
    }

    /** At 64° N, 22° W on 21 June, clocks on Greenwich, the sun sets a little after midnight: the day begins with it. */
    @Test
    void aDayThatBeginsWithASunsetIsDrawnWhole() {
        Places place = Charts.days().stream().filter(day -> day.zone().getId().equals("Atlantic/Reykjavik")
                && day.date().getMonthValue() == 6).findFirst().orElseThrow();
        Brief brief = Charts.brief(place, List.of(), 1, FIVE, TEN);
        assertTrue(brief.day().sun().sunset().isBefore(brief.day().sun().sunrise()));
        List<Drawing.Box> dusk = brief.places().get(0).dayLight().drawing(DrawingWords.BUILT_IN).marks().stream().filter(mark -> mark.style().equals("dusk"))
                .map(Drawing.Box.class::cast).toList();
        assertEquals(1, dusk.size());
        assertEquals(660 * (brief.day().sun().sunrise().toEpochSecond() - brief.day().sun().sunset().toEpochSecond()) / 85_500.0,
                dusk.get(0).width(), 1);
        assertTrue(labels(brief.places().get(0).dayLight().drawing(DrawingWords.BUILT_IN)).stream().filter(label -> label.text().matches("\\d\\d:00")).count() >= 8);
    }

    @Test
    void othersThanTheExpectedSkyMakeTheBand() {
        Drawing drawing = Charts.brief(Places.MID_LATITUDE, List.of(), 1, FIVE, TEN).places().get(0).dayLight().drawing(DrawingWords.BUILT_IN);
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
        assertTrue(Lettering.width("木漏れ日") > Lettering.width("abcd"));
        assertEquals("The floor", Lettering.shortened("The floor", 200));
        String cut = Lettering.shortened("A long walk under 🌿🌿🌿🌿", 120);
        assertTrue(cut.endsWith("…") && Lettering.width(cut) <= 120, cut);
        assertFalse(Character.isHighSurrogate(cut.charAt(cut.length() - 2)));
    }
}
