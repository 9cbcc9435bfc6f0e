package understorey.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Places;
import understorey.plan.Trip;

/** The pages of a visit from an evening to the next morning, under a full moon. */
class NightPagesTest {

    private static final Places PLACE = new Places(Places.MID_LATITUDE.position(), Places.MID_LATITUDE.zone(), LocalDate.of(2027, 5, 20));
    private static final Trip TRIP = Trips.trip(PLACE, Trips.EXACT, Trips.dayBag(), Trips.pictures(), LocalTime.of(20, 30), LocalTime.of(5, 45),
            List.of());
    private static final List<Page> PAGES = Briefs.pages(List.of(TRIP), List.of(TRIP.gear()));

    private static String page(String name) {
        return SitePagesTest.page(PAGES, name).replace("\r\n ", "");
    }

    @Test
    void saysOnceThatTheVisitEndsOnTheNextDay() {
        assertTrue(page("first-light/index.html").contains("20 May 2027, 20:30 to 05:45 the next day,"));
        assertTrue(page("first-light/plan.md").contains("20 May 2027, 20:30 to 05:45 the next day,"));
        assertTrue(page("index.html").contains("20:30–05:45 the next day"));
        assertTrue(page("first-light/field-sheet.html").contains("Times of the visit, 20:30 to 05:45 the next day"));
    }

    @Test
    void givesTheEveningAndTheMorningAfterItInOrder() {
        String plan = page("first-light/plan.md");
        assertTrue(plan.contains("- **Hours:** 12:00 to 12:00 the next day; each event is the first in them"), plan);
        List<String> events = List.of("- sunset ", "- head torch on ", "- civil dusk ", "- civil dawn ", "- head torch off ", "- sunrise ");
        assertEquals(events, events.stream().sorted((one, other) -> plan.indexOf(one) - plan.indexOf(other)).toList());
        assertTrue(events.stream().allMatch(plan::contains), plan);
        assertTrue(plan.contains("head torch from "));
        assertTrue(plan.contains("| Moon alone: open | floor |"));
    }

    @Test
    void endsItsCalendarEventOnTheNextDay() {
        String calendar = page("first-light/trip.ics");
        assertTrue(calendar.contains("DTSTART:20270520T193000Z\r\nDTEND:20270521T044500Z"), calendar);
        assertTrue(calendar.contains("by 12:00 the next day."), calendar);
    }

    @Test
    void tablesTheLightFromNoonToNoon() {
        String json = page("first-light/plan.json");
        assertTrue(json.contains("\"2027-05-20T12:00:00+01:00\""));
        assertTrue(json.contains("\"2027-05-21T11:45:00+01:00\""));
    }
}
