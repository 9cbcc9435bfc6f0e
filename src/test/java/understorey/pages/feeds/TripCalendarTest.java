package understorey.pages.feeds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.ParseWarning;
import java.time.Instant;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import understorey.Places;
import understorey.brief.Brief;
import understorey.brief.TimedShot;
import understorey.pages.Trips;
import understorey.plan.Share;
import understorey.plan.Trip;

class TripCalendarTest {

    @Test
    void isAValidCalendarOnEveryKindOfDay() {
        for (Places place : Places.ALL) {
            for (Trip trip : List.of(Trips.full(place, Trips.EXACT), Trips.bare(place, Trips.phone()))) {
                String text = TripCalendar.of(Trips.brief(trip));
                ICalendar calendar = parse(text);
                assertEquals("-//Understorey//EN", calendar.getProductId().getValue());
                assertEquals("", calendar.validate(ICalVersion.V2_0).toString().strip(), place.toString());
                assertEquals(text.length(), text.replaceAll("(?<!\r)\n", "").length(), "every line ends in CRLF");
            }
        }
    }

    @Test
    void holdsTheVisitAndEachPictureThatHasATime() {
        Brief brief = Trips.brief(Trips.full(Places.MID_LATITUDE, Trips.EXACT));
        List<VEvent> events = parse(TripCalendar.of(brief)).getEvents();
        List<TimedShot> timed = brief.timed().stream().filter(shot -> shot.time() != null).toList();
        assertEquals(1 + timed.size(), events.size());
        assertEquals(brief.order().arrive().toInstant(), start(events.get(0)));
        assertEquals(brief.order().leave().toInstant(), end(events.get(0)));
        assertEquals(Instant.parse("2027-05-08T04:00:00Z"), start(events.get(0)), "05:00 of British summer");
        for (int i = 0; i < timed.size(); i++) {
            assertEquals(timed.get(i).time().from().toInstant(), start(events.get(i + 1)));
            assertEquals(timed.get(i).time().to().toInstant(), end(events.get(i + 1)));
        }
    }

    @Test
    void leavesOutAPictureThatTheVisitHasNoTimeFor() {
        Trip trip = Trips.trip(Places.MID_LATITUDE, Trips.EXACT, Trips.dayBag(), Trips.pictures(),
                LocalTime.of(5, 0), LocalTime.of(5, 30), List.of());
        assertEquals(2, parse(TripCalendar.of(Trips.brief(trip))).getEvents().size());
    }

    @Test
    void keepsTextThroughEscapingAndFolding() {
        List<VEvent> events = parse(TripCalendar.of(Trips.brief(Trips.full(Places.MID_LATITUDE, Trips.EXACT)))).getEvents();
        assertEquals("First light; ramsons, stream & \"stone\" <bank>", events.get(0).getSummary().getValue());
        assertEquals("2 Along the bank, über Moos: 木漏れ日 🌿", events.get(2).getSummary().getValue());
        String[] order = events.get(0).getDescription().getValue().split("\n");
        assertEquals("Gorsewell Dingle; times are local, Europe/London.", order[0]);
        assertTrue(order[1].matches("05:00 to 05:\\d\\d (?:walk to .*|set up)"), order[1]);
        assertTrue(List.of(order).stream().anyMatch(line -> line.matches("\\d\\d:\\d\\d to \\d\\d:\\d\\d 1 The white floor")));
        assertEquals("Check in with your contact (my sister, by text) by 12:00.", order[order.length - 1]);
    }

    @Test
    void givesPlacesOnlyWhereTheyMayBeKnownExactly() {
        Places place = Places.MID_LATITUDE;
        VEvent bank = parse(TripCalendar.of(Trips.brief(Trips.full(place, Trips.EXACT)))).getEvents().get(2);
        assertEquals("Stone bank, Gorsewell Dingle", bank.getLocation().getValue());
        assertEquals(place.position().latitude() + 0.001235, bank.getGeo().getLatitude(), 1e-9);
        for (Share share : List.of(Trips.COARSE, Trips.HIDDEN)) {
            String text = TripCalendar.of(Trips.brief(Trips.full(place, share)));
            for (VEvent event : parse(text).getEvents()) {
                assertNull(event.getLocation());
                assertNull(event.getGeo());
            }
            assertFalse(text.contains("sister"), "the contact is for no public file");
        }
    }

    @Test
    void namesEachEventAlikeInEveryBuild() {
        Trip trip = Trips.full(Places.MID_LATITUDE, Trips.EXACT);
        String text = TripCalendar.of(Trips.brief(trip));
        assertEquals(text, TripCalendar.of(Trips.brief(trip)));
        Set<String> names = new HashSet<>();
        for (VEvent event : parse(text).getEvents()) {
            assertTrue(names.add(event.getUid().getValue()));
            assertEquals(Instant.parse("2027-05-08T00:00:00Z"), event.getDateTimeStamp().getValue().toInstant());
        }
        assertTrue(names.contains("first-light-2027-05-08-visit@understorey"), names.toString());
    }

    @Test
    void keepsTheLengthOfAVisitThroughAChangeOfTheClock() {
        Trip trip = Trips.trip(Places.SHORT_DAY, Trips.EXACT, Trips.phone(), Trips.pictures(),
                LocalTime.of(1, 0), LocalTime.of(6, 0), List.of());
        VEvent visit = parse(TripCalendar.of(Trips.brief(trip))).getEvents().get(0);
        assertEquals(4 * 60, ChronoUnit.MINUTES.between(start(visit), end(visit)), "five by the clock");
    }

    private static Instant start(VEvent event) {
        return event.getDateStart().getValue().toInstant();
    }

    private static Instant end(VEvent event) {
        return event.getDateEnd().getValue().toInstant();
    }

    private static ICalendar parse(String text) {
        List<List<ParseWarning>> warnings = new ArrayList<>();
        ICalendar calendar = Biweekly.parse(text).warnings(warnings).first();
        assertTrue(warnings.stream().allMatch(List::isEmpty), warnings.toString());
        return calendar;
    }
}
