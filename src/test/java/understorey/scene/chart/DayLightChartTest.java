package understorey.scene.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.scene.Marks.labels;
import static understorey.scene.Marks.lines;
import static understorey.scene.Marks.strokes;
import static understorey.scene.Marks.upright;

import java.time.Duration;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import understorey.Places;
import understorey.brief.Brief;
import understorey.light.LightAt;
import understorey.pages.DrawingWords;
import understorey.plan.Shot;
import understorey.plan.SkylinePoint;
import understorey.scene.Drawing;
import understorey.scene.Drawing.Label;
import understorey.scene.Drawing.Point;
import understorey.scene.Lettering;

class DayLightChartTest {

    private static final LocalTime FIVE = LocalTime.of(5, 0);
    private static final LocalTime TEN = LocalTime.of(10, 0);
    private static final List<String> TEXTURES = List.of("night-rules", "dusk-rules", "low-sun", "over-land");
    private static final Brief MAY = Charts.brief(Places.MID_LATITUDE, List.of(new SkylinePoint(90, 8),
            new SkylinePoint(270, 8)), 2, FIVE, TEN);

    @Test
    void hatchingStaysInsideThePlot() {
        int strokes = 0;
        for (Drawing drawing : Charts.daysOfLight()) {
            double top = labels(drawing).stream().filter(label -> label.text().equals("EV")).findFirst().orElseThrow().at().y() - DayFrame.EV_RAISED;
            Drawing.Line axis = lines(drawing, "axis").get(0);
            for (String texture : TEXTURES) {
                for (Point end : strokes(drawing, texture)) {
                    assertTrue(end.x() >= axis.points().get(0).x() && end.x() <= axis.points().get(1).x()
                            && end.y() >= top && end.y() <= axis.points().get(0).y(), texture + " " + end + drawing.says());
                    strokes++;
                }
            }
        }
        assertTrue(strokes > 20_000, "only " + strokes);
    }

    @Test
    void everyDarkHourIsRuledAndNightMoreCloselyThanTwilight() {
        for (Drawing drawing : Charts.daysOfLight()) {
            for (String look : List.of("night", "dusk")) {
                boolean tinted = drawing.marks().stream().anyMatch(mark -> mark.style().equals(look));
                assertEquals(tinted, !strokes(drawing, look + "-rules").isEmpty(), look + " " + drawing.says());
                for (Point end : strokes(drawing, look + "-rules")) {
                    assertTrue(drawing.marks().stream().anyMatch(mark -> mark instanceof Drawing.Box box && box.style().equals(look)
                            && end.x() >= box.x() - 0.11 && end.x() <= box.x() + box.width() + 0.11), end + drawing.says());
                }
            }
        }
        assertTrue(rules("night-rules") > 2 * rules("dusk-rules"));
    }

    private static long rules(String style) {
        return strokes(MAY.places().get(0).dayLight().drawing(DrawingWords.BUILT_IN), style).stream().map(Point::y).distinct().count();
    }

    @Test
    void noRuleRunsThroughAWord() {
        for (Drawing drawing : Charts.daysOfLight()) {
            for (Drawing.Mark mark : drawing.marks()) {
                boolean said = mark instanceof Label label && List.of("night", "twilight", "the sun does not rise on this day")
                        .contains(label.text()) || mark instanceof Drawing.Upright;
                if (said) {
                    Lettering.Stretch word = Lettering.Stretch.of((Drawing.Text) mark);
                    for (String look : List.of("night-rules", "dusk-rules", "hair")) {
                        List<Point> ends = strokes(drawing, look);
                        for (int i = 0; i < ends.size(); i += 2) {
                            assertFalse(word.crossedBy(ends.get(i), ends.get(i + 1)), look + ends.get(i) + ends.get(i + 1) + " " + mark + " " + drawing.says());
                        }
                    }
                }
            }
        }
    }

    @Test
    void anOrdinaryDayNamesAllThatTheSunDoes() {
        List<String> words = labels(MAY.places().get(0).dayLight().drawing(DrawingWords.BUILT_IN)).stream().map(Label::text).toList();
        assertEquals(2, words.stream().filter("low sun"::equals).count(), words.toString());
        assertTrue(words.containsAll(List.of("sun above the skyline", "in a patch of sun")), words.toString());
        assertEquals(List.of("night", "twilight", "twilight", "night"), upright(MAY.places().get(0).dayLight().drawing(DrawingWords.BUILT_IN)));
    }

    @Test
    void lowSunIsHatchedWhenItIs() {
        List<Point> ends = strokes(MAY.places().get(0).dayLight().drawing(DrawingWords.BUILT_IN), "low-sun");
        double noon = x(MAY.day().sun().solarNoon());
        assertEquals(x(MAY.day().sun().lowSunMorning().from()), ends.stream().mapToDouble(Point::x).min().orElseThrow(), 4);
        assertEquals(x(MAY.day().sun().lowSunMorning().to()), ends.stream().mapToDouble(Point::x).filter(x -> x < noon).max()
                .orElseThrow(), 4);
        assertEquals(x(MAY.day().sun().lowSunEvening().from()), ends.stream().mapToDouble(Point::x).filter(x -> x > noon).min()
                .orElseThrow(), 4);
        assertEquals(x(MAY.day().sun().lowSunEvening().to()), ends.stream().mapToDouble(Point::x).max().orElseThrow(), 4);
    }

    @Test
    void aMeasureLineSpansTheSunOverTheLand() {
        List<Point> ends = strokes(MAY.places().get(0).dayLight().drawing(DrawingWords.BUILT_IN), "over-land");
        assertEquals(1, MAY.day().places().get(0).sunlit().size());
        assertEquals(x(MAY.day().places().get(0).sunlit().get(0).from()), ends.stream().mapToDouble(Point::x).min().orElseThrow(), 0.2);
        assertEquals(x(MAY.day().places().get(0).sunlit().get(0).to()), ends.stream().mapToDouble(Point::x).max().orElseThrow(), 0.2);
    }

    /** Where a time of that day in May stands, by two of the hours printed under the chart. */
    private static double x(ZonedDateTime time) {
        double six = hour("06:00");
        double eighteen = hour("18:00");
        double share = Duration.between(time.withHour(6).withMinute(0).withSecond(0).withNano(0), time).toSeconds() / 43_200.0;
        return six + share * (eighteen - six);
    }

    private static double hour(String text) {
        return labels(MAY.places().get(0).dayLight().drawing(DrawingWords.BUILT_IN)).stream().filter(label -> label.text().equals(text)).findFirst().orElseThrow().at().x();
    }

    @Test
    void theLineEndsWhereNobodySaidWhatTheSkyWillBe() {
        Drawing drawing = drawn(row -> row.sun().time().getHour() >= 6 && row.sun().time().getHour() < 10
                || row.sun().time().getHour() >= 15 && row.sun().time().getHour() < 16 ? row.floorEv(3) : Double.NaN);
        List<Drawing.Line> runs = lines(drawing, "light");
        assertEquals(2, runs.size());
        assertEquals(hour("06:00"), runs.get(0).points().get(0).x(), 0.2);
        assertEquals(x(MAY.date().atTime(9, 45).atZone(MAY.day().sun().sunrise().getZone())), last(runs.get(0)).x(), 0.2);
        assertEquals(hour("15:00"), runs.get(1).points().get(0).x(), 0.2);
        assertTrue(drawing.says().contains("Brightest (expected sky) at "), drawing.says());
        assertTrue(drawing.says().endsWith(" Forecast from about 06:00 to 15:45."), drawing.says());
    }

    @Test
    void noLineIsDrawnWhereNobodySaidAnything() {
        Drawing drawing = drawn(row -> Double.NaN);
        assertEquals(List.of(), lines(drawing, "light"));
        assertEquals(1, drawing.marks().stream().filter(mark -> mark.style().equals("band")).count());
        assertTrue(drawing.says().contains("No forecast: brightest at 13:"), drawing.says());
        assertFalse(drawing.says().contains("NaN") || drawing.says().contains("expected"), drawing.says());
        assertFalse(MAY.places().get(0).dayLight().drawing(DrawingWords.BUILT_IN).says().contains("known from"), MAY.places().get(0).dayLight().drawing(DrawingWords.BUILT_IN).says());
    }

    private static Drawing drawn(ToDoubleFunction<LightAt> expected) {
        return DayLightChart.of(MAY.day().light(), MAY.day().sun(), MAY.day().places().get(0).sunlit(), expected, MAY.order(),
                MAY.trip().shots().stream().map(Shot::name).toList(), false, "Footbridge").drawing(DrawingWords.BUILT_IN);
    }

    private static Point last(Drawing.Line line) {
        return line.points().get(line.points().size() - 1);
    }

    @Test
    void namesThePlaceInItsTitle() {
        assertEquals("The day’s light at Footbridge", drawn(row -> row.floorEv(3)).title());
    }

    /** The edges bear the name of a sky that makes them. */
    @Test
    void noLineRunsThroughTheNameOfAnEdgeOfTheBand() {
        int named = 0;
        for (Drawing drawing : Charts.daysOfLight()) {
            for (Label label : labels(drawing)) {
                if (label.style().equals("edge-words")) {
                    for (String style : List.of("light", "fleck")) {
                        for (Drawing.Line line : lines(drawing, style)) {
                            for (int i = 1; i < line.points().size(); i++) {
                                assertFalse(Lettering.Stretch.of(label).crossedBy(line.points().get(i - 1), line.points().get(i)),
                                        label + " " + drawing.says());
                            }
                        }
                    }
                    named++;
                }
            }
        }
        assertTrue(named > 100, "only " + named);
    }
}
