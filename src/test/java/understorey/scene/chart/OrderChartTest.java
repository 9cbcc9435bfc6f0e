package understorey.scene.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.brief.Brief;
import understorey.order.Leg;
import understorey.order.RunningOrder;
import understorey.pages.DrawingWords;
import understorey.scene.Drawing;
import understorey.scene.Drawing.Label;
import understorey.scene.Drawing.Point;
import understorey.scene.Lettering;
import understorey.scene.Marks;
import understorey.sky.Interval;

class OrderChartTest {

    private static final ZonedDateTime SIX = ZonedDateTime.parse("2027-05-08T06:00+01:00[Europe/London]");

    private static Leg leg(int from, int to, Leg.What what, String shot) {
        return new Leg(SIX.plusMinutes(from), SIX.plusMinutes(to), what, "Bank", shot);
    }

    private static RunningOrder outing(Leg... legs) {
        return new RunningOrder(SIX, SIX.plusHours(2), SIX.plusHours(1), List.of(legs), List.of(), null, null);
    }

    private static final RunningOrder MORNING = outing(leg(0, 9, Leg.What.WALK, "b"), leg(9, 12, Leg.What.SET_UP, "b"),
            leg(12, 30, Leg.What.WAIT, "b"), leg(30, 60, Leg.What.SHOOT, "b"), leg(60, 65, Leg.What.SET_UP, "a"),
            leg(65, 70, Leg.What.SHOOT, "a"), leg(70, 80, Leg.What.WALK, null));
    private static final List<OrderChart.Picture> PICTURES = List.of(new OrderChart.Picture(1, "a", List.of()),
            new OrderChart.Picture(2, "b", List.of(new Interval(SIX.minusHours(1), SIX.plusMinutes(60)))),
            new OrderChart.Picture(3, "c", List.of()));

    private static List<Drawing.Box> boxes(Drawing drawing, String style) {
        return drawing.marks().stream().filter(mark -> mark.style().equals(style)).map(Drawing.Box.class::cast).toList();
    }

    /** Two hours on 700 px: a minute is 700 / 120 px. */
    @Test
    void laysEveryLegToTheScaleOfTheHours() {
        Drawing drawing = OrderChart.of(MORNING, PICTURES).drawing(DrawingWords.BUILT_IN);
        assertEquals(List.of("2 b", "1 a", "walk back"), Marks.labels(drawing).stream().filter(label -> label.style().equals("words"))
                .map(Label::text).toList(), "in the order taken, without the one left out");
        Drawing.Box shoot = boxes(drawing, "picture").get(0);
        assertEquals(10 + 30 * 700 / 120.0, shoot.x(), 0.06);
        assertEquals(30 * 700 / 120.0, shoot.width(), 0.06);
        Drawing.Box window = boxes(drawing, "window").get(0);
        assertEquals(10, window.x(), "what lies before the chart is cut off");
        assertEquals(350, window.width(), 0.06);
        assertTrue(drawing.marks().indexOf(window) < drawing.marks().indexOf(shoot), "the light lies behind");
        assertEquals(2, Marks.lines(drawing, "walk").size());
        assertEquals(1, Marks.lines(drawing, "wait").size());
        assertEquals("2 b 06:30 to 07:00, light it needs 05:00 to 07:00; 1 a 07:05 to 07:10; back at 07:20.", drawing.says());
    }

    @Test
    void showsTheWaitForAGateInTheFirstRow() {
        RunningOrder gated = outing(leg(0, 30, Leg.What.WAIT, null), leg(30, 40, Leg.What.WALK, "b"), leg(40, 60, Leg.What.SHOOT, "b"),
                leg(60, 80, Leg.What.SHOOT, "a"));
        List<Drawing.Line> waits = Marks.lines(OrderChart.of(gated, PICTURES).drawing(DrawingWords.BUILT_IN), "wait");
        assertEquals(1, waits.size());
        assertEquals(10 + 30 * 700 / 120.0, waits.get(0).points().get(1).x(), 0.06);
    }

    @Test
    void isNotDrawnForAVisitWithoutPictures() {
        assertNull(OrderChart.of(outing(), PICTURES));
    }

    @Test
    void noTwoWordsTouchAndNothingLeavesTheSheet() {
        int drawn = 0;
        for (Brief brief : Charts.briefs()) {
            if (brief.timeLine() != null) {
                onSheet(brief.timeLine().drawing(DrawingWords.BUILT_IN));
                drawn++;
            }
        }
        assertTrue(drawn > 50, "only " + drawn);
    }

    static void onSheet(Drawing drawing) {
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
