package understorey.scene.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.scene.Marks.labels;
import static understorey.scene.Marks.points;
import static understorey.scene.Marks.words;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Places;
import understorey.brief.Brief;
import understorey.pages.DrawingWords;
import understorey.scene.Drawing;
import understorey.scene.Drawing.Point;
import understorey.scene.Lettering;

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
        assertTrue(labels > 3000, "only " + labels);
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
        List<Drawing> all = new ArrayList<>(Charts.skylines());
        all.addAll(Charts.skylinesAmongTrees());
        return all;
    }

    @Test
    void theSamePlanGivesTheSameDrawing() {
        for (Places place : Places.ALL) {
            Brief once = Charts.brief(place, Charts.ragged(), 5, FIVE, TEN);
            Brief again = Charts.brief(place, Charts.ragged(), 5, FIVE, TEN);
            assertEquals(once.places().get(0).skyline().drawing(DrawingWords.BUILT_IN),
                    again.places().get(0).skyline().drawing(DrawingWords.BUILT_IN));
        }
    }

    @Test
    void polarNightSaysSo() {
        Brief brief = Charts.brief(Places.POLAR_NIGHT, List.of(), 1, FIVE, TEN);
        for (Drawing drawing : List.of(brief.places().get(0).skyline().drawing(DrawingWords.BUILT_IN))) {
            assertTrue(labels(drawing).stream().anyMatch(label -> label.text().equals("the sun does not rise on this day")),
                    drawing.title());
        }
        assertEquals("The sun stays below a level horizon on this day. 1 The floor: towards 0°, 73° wide.",
                brief.places().get(0).skyline().drawing(DrawingWords.BUILT_IN).says());
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
