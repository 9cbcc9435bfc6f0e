package understorey.pages.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Places;
import understorey.pages.Briefs;
import understorey.pages.Page;
import understorey.pages.Trips;
import understorey.plan.Contact;
import understorey.plan.Share;
import understorey.plan.Site;
import understorey.plan.Trip;

/** The message to leave with somebody, as it stands on the page: to be sent the evening before, read by anybody. */
class WordToLeaveTest {

    private static Trip trip(LocalTime arrive, LocalTime leave, String backBy) {
        return trip(Trips.EXACT, arrive, leave, backBy);
    }

    private static Trip trip(Share share, LocalTime arrive, LocalTime leave, String backBy) {
        Trip trip = Trips.trip(Places.MID_LATITUDE, share, Trips.dayBag(), Trips.pictures(), arrive, leave, List.of());
        return Trips.told(trip, new Contact("my sister", LocalTime.parse(backBy)));
    }

    private static Trip nobodyParks(Trip trip) {
        Site site = trip.site();
        Site open = new Site(site.name(), site.slug(), site.publicName(), site.position(), site.elevationM(), site.zone(), site.skyline(),
                site.canopy(), site.spots(), site.walks(), site.opening(), null, site.seasons(), site.subjects(), site.access(),
                site.reports(), site.sensitive(), site.cautions(), site.notes(), List.of(), null);
        return new Trip(trip.title(), trip.slug(), trip.series(), open, trip.when(), trip.arrive(), trip.leave(), trip.gear(),
                trip.companions(), trip.contact(), trip.sky(), trip.forecast(), trip.story(), trip.shots(), trip.share());
    }

    /** The message of the Markdown twin; that of the page reads the same. */
    private static String message(Trip trip) {
        String message = null;
        int same = 0;
        List<Page> pages = Briefs.pages(List.of(trip), List.of());
        for (Page page : pages) {
            int at = page.content().indexOf("> On ");
            if (page.path().endsWith(".md") && at >= 0) {
                message = page.content().substring(at + 2, page.content().indexOf('\n', at));
            }
        }
        for (Page page : pages) {
            same += page.content().replace("&amp;", "&").contains(message) ? 1 : 0;
        }
        assertEquals(2, same, message);
        return message;
    }

    @Test
    void isNotReadyWhereThePlanHasOneBackAfterTheWord() {
        for (Page page : Briefs.pages(List.of(trip(LocalTime.of(5, 0), LocalTime.of(11, 0), "05:30")), List.of())) {
            assertFalse(page.content().contains("I will arrive"), page.path());
            if (page.path().endsWith("plan.md")) {
                assertTrue(page.content().contains("No message yet: you are back at "), page.content());
            }
        }
    }

    @Test
    void tellsDayAndHourAndWhereTheCarStands() {
        String message = message(trip(LocalTime.of(5, 0), LocalTime.of(11, 0), "12:00"));
        assertTrue(message.startsWith("On Saturday 8 May 2027 I will arrive at 05:00 at Gorsewell"), message);
        assertTrue(message.matches(".*, parking at [^(]+ \\(map position [^)]+\\), and walk to [A-Z].*, then .*\\. I plan to be back there at \\d\\d:\\d\\d and "
                + "will message you by 12:00\\. .*If I do not answer by 12:30, call .*"), message);
    }

    @Test
    void promisesNoWalkWhereNoPictureIsTaken() {
        String message = message(trip(LocalTime.of(5, 0), LocalTime.of(5, 10), "12:00"));
        assertTrue(message.contains("). I plan to leave at 05:10 and will message you by 12:00."), message);
    }

    @Test
    void givesThePositionOfTheSiteWhereNobodyParks() {
        Trip trip = nobodyParks(trip(LocalTime.of(5, 0), LocalTime.of(11, 0), "12:00"));
        String message = message(trip);
        assertTrue(message.contains(" at " + trip.site().name() + " (map position " + PlaceView.position(trip.site().position())
                + "), and walk to "), message);
        assertTrue(message.contains(". I plan to leave at "), message);
    }

    /** The party's page may round the position to a square of kilometres: nobody is to search there. */
    @Test
    void givesNoPositionThatIsNotExact() {
        for (Share.Precision precision : List.of(Share.Precision.COARSE, Share.Precision.HIDDEN)) {
            String message = message(trip(new Share(Share.Audience.PARTY, precision), LocalTime.of(5, 0), LocalTime.of(11, 0), "12:00"));
            assertTrue(message.contains(" at Gorsewell Dingle, parking at Footbridge, and walk to "), message);
        }
    }

    @Test
    void saysWhichDayAfterMidnight() {
        Trip night = trip(LocalTime.of(18, 0), LocalTime.of(22, 0), "00:30");
        assertTrue(message(night).contains("message you by 00:30 the next day. "), message(night));
        assertTrue(message(night).contains("answer by 01:00 the next day, "), message(night));
        String late = message(trip(LocalTime.of(18, 0), LocalTime.of(22, 0), "23:45"));
        assertTrue(late.contains("message you by 23:45. ") && late.contains("answer by 00:15 the next day, "), late);
    }
}
