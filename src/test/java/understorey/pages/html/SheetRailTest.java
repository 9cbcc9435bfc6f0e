package understorey.pages.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Places;
import understorey.brief.Brief;
import understorey.pages.Briefs;
import understorey.pages.Trips;
import understorey.pages.words.Sentences;
import understorey.plan.Shot;
import understorey.scene.Fact;
import understorey.scene.chart.VisitFigure;

class SheetRailTest {

    @Test
    void keepsBlocksApartAndOnTheRailHoweverLongTheVisit() {
        List<Brief> briefs = new ArrayList<>(Briefs.all());
        List<Shot> many = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            many.add(Trips.shot("Number " + i, null, null, null, null, null, null, null, List.of(), null));
        }
        briefs.add(Trips.brief(Trips.trip(Places.MID_LATITUDE, Trips.EXACT, Trips.dayBag(), many, LocalTime.of(4, 0),
                LocalTime.of(21, 0), List.of())));
        for (Brief brief : briefs) {
            double end = -0.01;
            List<SheetRail.Mark> blocks = SheetRail.of(brief, Sentences.builtIn()).blocks();
            assertEquals(brief.order().shooting().stream().map(leg -> String.valueOf(brief.shot(leg.shot()).number())).toList(),
                    blocks.stream().map(SheetRail.Mark::text).toList());
            for (SheetRail.Mark block : blocks) {
                assertTrue(percent(block.at()) >= end, block + " after " + end);
                assertTrue(percent(block.width()) > 5.3, "as wide as two figures on a phone");
                end = percent(block.at()) + percent(block.width());
            }
            assertTrue(end <= 100.01, "off the rail: " + end);
        }
    }

    /** A fifth of an em more than the widest of the system faces needs on average: half an em a letter at 10 pt on 190 mm. */
    @Test
    void letsNoTwoLabelsMeet() {
        int second = 0;
        for (Brief brief : Briefs.all()) {
            List<SheetRail.Label> labels = SheetRail.of(brief, Sentences.builtIn()).events();
            for (SheetRail.Label one : labels) {
                second += one.row() > 0 ? 1 : 0;
                for (SheetRail.Label other : labels) {
                    assertTrue(one == other || one.row() != other.row() || right(one) <= left(other) + 0.01 || right(other) <= left(one) + 0.01,
                            one + " and " + other);
                }
            }
        }
        assertTrue(second > 0, "labels in a lower row");
    }

    private static double percent(String width) {
        return Double.parseDouble(width.replace("%", ""));
    }

    private static double left(SheetRail.Label label) {
        double edge = percent(label.edge());
        return label.end() ? 100 - edge - width(label) : edge;
    }

    private static double right(SheetRail.Label label) {
        return left(label) + width(label);
    }

    private static double width(SheetRail.Label label) {
        return 0.95 * (label.time().length() + 1 + label.name().length());
    }

    @Test
    void showsEventsOfTheVisitAloneInOrder() {
        int torches = 0;
        for (Brief brief : Briefs.all()) {
            ZonedDateTime last = brief.order().arrive().minusMinutes(30);
            for (VisitFigure.Event event : brief.events()) {
                assertTrue(!event.time().isBefore(last) && !event.time().isAfter(brief.order().leave()), event.toString());
                last = event.time();
                torches += event.what() == Fact.Word.HEAD_TORCH_OFF ? 1 : 0;
            }
        }
        assertTrue(torches > 0);
    }
}
