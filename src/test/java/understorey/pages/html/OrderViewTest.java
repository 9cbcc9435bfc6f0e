package understorey.pages.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.picture;

import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import understorey.Places;
import understorey.brief.Brief;
import understorey.kit.Intent;
import understorey.pages.Trips;
import understorey.pages.tables.Row;
import understorey.pages.words.Caption;
import understorey.pages.words.Sentences;
import understorey.plan.Share;
import understorey.plan.Shot;
import understorey.plan.Subject;

class OrderViewTest {

    private static final Brief FULL = Trips.brief(Trips.full(Places.MID_LATITUDE, Trips.EXACT));

    @Test
    void leavesAMessageWithTheOneWhoKnowsAndNobodyElse() {
        OrderView.Message message = OrderView.of(FULL, Sentences.builtIn()).message();
        assertEquals("Saturday 8 May 2027", message.day());
        assertEquals("05:00", message.arrive());
        assertEquals("12:00", message.backBy());
        assertEquals("12:30", message.actFrom());
        assertNull(OrderView.of(Trips.brief(Trips.full(Places.MID_LATITUDE, Trips.COARSE)), Sentences.builtIn()).message());
    }

    @Test
    void beginsACaptionAPictureInTheOrderTold() {
        List<String> captions = OrderView.of(FULL, Sentences.builtIn()).captions();
        assertEquals(FULL.story().sequence().size(), captions.size());
        String subject = FULL.story().sequence().get(0).shot().subject().name();
        assertEquals(subject.substring(0, 1).toUpperCase(Locale.ROOT) + subject.substring(1) + ". " + FULL.trip().site().name()
                + ", May 2027. …", captions.get(0).replace(", Allium ursinum", ""));
        assertTrue(captions.get(0).contains(", Allium ursinum. "), captions.get(0));
        assertTrue(captions.get(3).endsWith(" 2027. …"), captions.get(3));
    }

    @Test
    void captionsACommonNameWithoutWhatStandsInBracketsBesideIt() {
        assertEquals("Fly agaric, Amanita muscaria. ", caption("fly agaric (fungus)", "Amanita muscaria"));
        assertEquals("Oak of ours, Quercus. ", caption("oak (the old one) of ours", "Quercus"));
        assertEquals("Star (unclosed, Aster. ", caption("star (unclosed", "Aster"));
        assertEquals("Wood sorrel. ", caption("wood sorrel", null));
    }

    /** What stands before the place. */
    private static String caption(String name, String scientificName) {
        Subject named = new Subject("one", name, scientificName, null, false, null, null, null, null, null, null, null, null, null,
                null, null, null, null, null, null);
        Shot shot = picture("One").of(named).shot();
        String caption = Caption.of(FULL, Intent.of(List.of(shot), null).get(0));
        return caption.substring(0, caption.indexOf(FULL.trip().site().name()));
    }

    @Test
    void keepsASensitivePlaceOutOfACaptionWhoeverReadsThePlan() {
        for (Share share : Arrays.asList(null, Trips.EXACT, Trips.COARSE, Trips.HIDDEN)) {
            Brief brief = Trips.brief(Trips.sensitive(Places.MID_LATITUDE, share));
            for (String caption : OrderView.of(brief, Sentences.builtIn()).captions()) {
                assertFalse(caption.contains("Gorsewell") || caption.contains("Footbridge") || caption.contains("Stone bank"), caption);
            }
        }
    }

    @Test
    void drawsThePlanOfTheSpotsOnlyWhereTheyMayBeKnownExactly() {
        assertNotNull(OrderView.of(FULL, Sentences.builtIn()).spotPlan());
        assertNull(OrderView.of(Trips.brief(Trips.full(Places.MID_LATITUDE, Trips.COARSE)), Sentences.builtIn()).spotPlan());
        assertNull(OrderView.of(Trips.brief(Trips.sensitive(Places.MID_LATITUDE, Trips.HIDDEN)), Sentences.builtIn()).spotPlan());
    }

    @Test
    void givesTheWalkBackAndTheLastLightOnlyWhereItIsClose() {
        assertEquals(List.of("Back", "Head torch", "Walk back"), OrderView.of(FULL, Sentences.builtIn()).safety().stream().map(Row::name).toList());
        Brief evening = Trips.brief(Trips.trip(Places.MID_LATITUDE, Trips.EXACT, Trips.dayBag(), Trips.pictures(), LocalTime.of(18, 0),
                LocalTime.of(21, 0), List.of()));
        List<Row> late = OrderView.of(evening, Sentences.builtIn()).safety();
        assertEquals("Last light", late.get(1).name());
        assertTrue(late.get(1).text().matches("2\\d:\\d\\d, (?:1\u00a0h )?\\d+\u00a0min after you are back"), late.get(1).text());
    }
}
