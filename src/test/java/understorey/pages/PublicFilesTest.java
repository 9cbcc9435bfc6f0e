package understorey.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Places;
import understorey.brief.Brief;
import understorey.pages.feeds.TripCalendar;
import understorey.pages.feeds.Waypoints;
import understorey.pages.json.PlanJson;
import understorey.pages.words.Sentences;
import understorey.plan.Contact;
import understorey.plan.Position;
import understorey.plan.Share;
import understorey.plan.Trip;

class PublicFilesTest {

    private static final Places PLACE = new Places(new Position(52.337, -3.548), ZoneId.of("Europe/London"),
            LocalDate.of(2027, 5, 8));
    private static final List<String> SECRETS = List.of("Gorsewell", "Footbridge", "Stone bank", "Hollow", "52.33",
            "-3.54", "187.3", "sister", "Second camera", "By the footpath");

    private static final List<String> MESSAGE = List.of("emergency services", "my sister", "will message you", "I will arrive");

    @Test
    void giveNoSensitivePlaceAway() {
        for (Share share : List.of(Trips.COARSE, Trips.HIDDEN,
                new Share(Share.Audience.PUBLIC, Share.Precision.EXACT))) {
            Brief brief = Trips.brief(Trips.sensitive(PLACE, share));
            for (String file : files(brief)) {
                SECRETS.forEach(secret -> assertFalse(file.contains(secret), secret + " in " + file));
            }
        }
    }

    @Test
    void haveNoMessageForWhoeverKnows() {
        for (Share share : List.of(Trips.COARSE, Trips.HIDDEN, new Share(Share.Audience.PUBLIC, Share.Precision.EXACT))) {
            for (Page page : Briefs.pages(List.of(Trips.full(PLACE, share)), List.of())) {
                String text = page.content();
                for (String words : MESSAGE) {
                    assertFalse(text.contains(words), words + " in " + page.path());
                }
            }
        }
        int told = 0;
        for (Page page : Briefs.pages(List.of(Trips.full(PLACE, Trips.EXACT)), List.of())) {
            told += page.content().contains(MESSAGE.get(0)) ? 1 : 0;
        }
        assertEquals(2, told, "the party's page and its Markdown twin");
    }

    /** The word due limits the last minute to turn back: on a public page that minute is as if nobody waited. */
    @Test
    void doNotTellByTheLastMinuteToTurnBackWhenWordIsDue() {
        Contact due = new Contact("my sister, by text", LocalTime.of(9, 0));
        for (Share share : List.of(Trips.COARSE, Trips.HIDDEN, new Share(Share.Audience.PUBLIC, Share.Precision.EXACT))) {
            Trip trip = Trips.full(PLACE, share);
            assertEquals(contents(Trips.told(trip, null)), contents(Trips.told(trip, due)));
        }
        Trip party = Trips.full(PLACE, Trips.EXACT);
        assertTrue(Trips.brief(Trips.told(party, due)).order().leaveLastSpotBy()
                .isBefore(Trips.brief(Trips.told(party, null)).order().leaveLastSpotBy()), "the group leaves in time for its contact");
    }

    private static List<String> contents(Trip trip) {
        List<String> contents = new ArrayList<>();
        for (Page page : Briefs.pages(List.of(trip), List.of())) {
            contents.add(page.path() + "\n" + page.content());
        }
        assertTrue(contents.size() > 3);
        return contents;
    }

    @Test
    void tellTheAuthorAllOfIt() {
        List<String> files = files(Trips.brief(Trips.sensitive(PLACE, null)));
        files.forEach(file -> assertTrue(file.contains("Footbridge")));
        assertTrue(files.get(1).contains("GEO:52.337;-3.548"));
        assertTrue(files.get(2).contains("lat=\"52.337\""));
        assertEquals(3, files.size());
    }

    private static List<String> files(Brief brief) {
        return List.of(PlanJson.of(brief, Sentences.builtIn()::of), TripCalendar.of(brief), Waypoints.of(brief));
    }
}
