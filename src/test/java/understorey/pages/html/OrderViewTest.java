package understorey.pages.html;

import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import understorey.Places;
import understorey.brief.Brief;
import understorey.kit.Intent;
import understorey.order.Leg;
import understorey.pages.Trips;
import understorey.pages.tables.Row;
import understorey.pages.tables.Tables;
import understorey.pages.words.Caption;
import understorey.pages.words.Dates;
import understorey.pages.words.Sentences;
import understorey.plan.Share;
import understorey.plan.Shot;
import understorey.plan.Subject;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.picture;


class OrderViewTest {

    private static final Brief FULL = Trips.brief(Trips.full(Places.MID_LATITUDE, Trips.EXACT));

    @Test
    void tiesTheStoryAndTheOrderOfTakingToEachOther() {
        OrderView order = OrderView.of(FULL, Sentences.builtIn());
        List<String> shooting = new ArrayList<>();
        List<String> told = new ArrayList<>();
        for (int i = 0; i < order.steps().size(); i++) {
            Map<String, String> step = Tables.rows(order.table()).get(i);
            if (order.steps().get(i).shoot()) {
                shooting.add(step.get("What").substring(2));
                told.add(step.get("In the story"));
            } else {
                assertEquals("", step.get("In the story"));
            }
        }
        assertEquals(4, shooting.size());
        for (int i = 0; i < order.taken().size(); i++) {
            String name = FULL.story().sequence().get(i).shot().name();
            int taken = shooting.indexOf(name);
            assertTrue(order.taken().get(i).startsWith("taken " + List.of("1st", "2nd", "3rd", "4th").get(taken) + ", "), order.taken().toString());
            assertEquals(List.of("1st", "2nd", "3rd", "4th").get(i), told.get(taken));
        }
    }

    @Test
    void saysWhatAWaitIsFor() {
        OrderView order = OrderView.of(FULL, Sentences.builtIn());
        long waits = FULL.order().legs().stream().filter(leg -> leg.what() == Leg.What.WAIT).count();
        List<String> worded = Tables.rows(order.table()).stream().map(step -> step.get("What")).filter(what -> what.startsWith("wait: ")).toList();
        assertTrue(waits > 0);
        assertEquals(waits, worded.size());
        worded.forEach(what -> assertFalse(what.endsWith("."), what));
    }

    @Test
    void keepsToTheFieldSheetWalksPicturesAndLongWaits() {
        int longWaits = 0;
        for (Places place : Places.ALL) {
            Brief brief = Trips.brief(Trips.full(place, Trips.EXACT));
            List<String> expected = new ArrayList<>();
            for (Leg leg : brief.order().legs()) {
                boolean wait = leg.what() == Leg.What.WAIT;
                boolean longWait = wait && !leg.to().isBefore(leg.from().plusMinutes(15));
                longWaits += longWait ? 1 : 0;
                if (longWait || leg.what() == Leg.What.WALK || leg.what() == Leg.What.SHOOT) {
                    expected.add(Dates.clock(leg.from()) + (longWait ? " wait" : ""));
                }
            }
            assertEquals(expected, OrderView.of(brief, Sentences.builtIn()).steps().stream().filter(step -> step.brief() != null)
                    .map(step -> step.from() + (step.brief().equals("wait") ? " wait" : "")).toList());
        }
        assertTrue(longWaits > 0);
    }

    @Test
    void tellsTheWaitForAGateFromOthersOnTheFieldSheet() {
        ZonedDateTime six = ZonedDateTime.parse("2027-05-08T06:00+01:00[Europe/London]");
        assertEquals("wait for opening", OrderView.brief(new Leg(six, six.plusMinutes(30), Leg.What.WAIT, null, null), "wait: …"));
        assertEquals("wait", OrderView.brief(new Leg(six, six.plusMinutes(15), Leg.What.WAIT, "Bank", "a"), "wait: …"));
        assertNull(OrderView.brief(new Leg(six, six.plusMinutes(14), Leg.What.WAIT, "Bank", "a"), "wait: …"), "a short one");
    }

    @Test
    void leavesAMessageWithTheOneWhoKnowsAndNobodyElse() {
        OrderView.Message message = OrderView.of(FULL, Sentences.builtIn()).message();
        assertEquals("my sister, by text", message.tell());
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
    void saysThatAPictureIsNotTaken() {
        Brief brief = Trips.brief(Trips.trip(Places.MID_LATITUDE, Trips.EXACT, Trips.dayBag(), Trips.pictures(), LocalTime.of(5, 0),
                LocalTime.of(5, 30), List.of()));
        assertEquals(3, OrderView.of(brief, Sentences.builtIn()).taken().stream().filter("not taken"::equals).count());
    }

    @Test
    void countsAsPeopleDo() {
        assertEquals(List.of("1st", "2nd", "3rd", "4th", "11th", "12th", "13th", "21st", "22nd", "23rd", "101st", "111th"),
                IntStream.of(0, 1, 2, 3, 10, 11, 12, 20, 21, 22, 100, 110).mapToObj(Dates::ordinal).toList());
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
