package understorey.pages.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import understorey.Places;
import understorey.brief.Brief;
import understorey.brief.PlannedShot;
import understorey.brief.TimedShot;
import understorey.exposure.Settings;
import understorey.kit.Verdict;
import understorey.pages.Briefs;
import understorey.pages.Page;
import understorey.pages.SitePagesTest;
import understorey.pages.Trips;
import understorey.pages.markdown.Prose;
import understorey.pages.svg.Glyphs;
import understorey.pages.tables.Row;
import understorey.pages.tables.SettingsColumns;
import understorey.pages.tables.Tables;
import understorey.pages.words.Sentences;
import understorey.pages.words.SettingsWords;
import understorey.pages.words.Words;
import understorey.plan.Trip;

class OtherLightTest {

    @Test
    void tellsBracketAndVerdictOfEveryOtherLight() {
        int brackets = 0;
        Set<String> verdicts = new HashSet<>();
        for (Brief brief : Briefs.all()) {
            for (TimedShot shot : brief.timed()) {
                List<TimedShot.Other> others = new ArrayList<>(shot.otherSkies());
                Stream.ofNullable(shot.ifMist()).forEach(others::add);
                others.addAll(shot.otherHours());
                List<Map<String, String>> told = Tables.rows(SettingsColumns.ifTheLightDiffers(shot).view("", Sentences.builtIn()));
                for (int i = 0; i < told.size(); i++) {
                    Settings settings = others.get(i).settings();
                    String problem = SettingsWords.problem(settings);
                    assertEquals(settings.verdict() == Verdict.FITS, problem == null);
                    assertEquals(settings.tooDark(), told.get(i).get("Shutter").equals("too dark"));
                    if (problem != null) {
                        assertTrue(problem.startsWith(Words.word(settings.verdict()) + ": "), problem);
                        assertTrue(told.get(i).get("Note").endsWith(problem), told.get(i).toString());
                        verdicts.add(problem);
                    }
                    boolean several = settings.bracketStops().size() > 1 && !settings.tooDark();
                    boolean darker = settings.lessStops() > 0 && !settings.tooDark();
                    boolean brighter = settings.inMist() && !settings.tooDark();
                    assertEquals(several || darker || brighter, SettingsWords.exposed(settings) != null);
                    brackets += several ? 1 : 0;
                }
            }
        }
        assertTrue(brackets > 3, brackets + " brackets");
        assertTrue(verdicts.contains("cannot: too dark"), verdicts.toString());
        assertTrue(verdicts.contains("compromise: too slow hand-held") || verdicts.contains("cannot: too slow hand-held"),
                verdicts.toString());
    }

    /** One number, one name: what is called the shade has the EV of the shade, and no other light under trees is called so. */
    @Test
    void callsShadeWhatIsMeteredInTheShade() {
        int shades = 0;
        int together = 0;
        for (Brief brief : Briefs.all()) {
            for (TimedShot shot : brief.timed()) {
                List<Map<String, String>> table = Tables.rows(SettingsColumns.ifTheLightDiffers(shot).view("", Sentences.builtIn()));
                for (int i = 0; i < shot.otherSkies().size(); i++) {
                    String light = table.get(i).get("Light");
                    boolean shade = light.equals("clear, in the shade");
                    shades += shade ? 1 : 0;
                    together += light.equals("clear, sun and shade") ? 1 : 0;
                    if (shade && shot.light().moonLux() == 0) {
                        assertEquals(Words.ev(shot.light().floor().shade()), table.get(i).get("EV"));
                    }
                }
            }
        }
        assertTrue(shades > 3 && together > 0, shades + " in the shade, " + together + " of both");
    }

    /** A quarter of an hour is the longest sensible frame: nothing longer is offered as a time. */
    @Test
    void printsNoTimeForWhatIsTooDark() {
        Trip night = Trips.trip(Places.POLAR_NIGHT, Trips.EXACT, Trips.phone(), Trips.pictures(), LocalTime.of(18, 0),
                LocalTime.of(20, 0), List.of());
        Brief brief = Trips.brief(night);
        assertTrue(brief.timed().stream().flatMap(shot -> shot.otherSkies().stream()).anyMatch(other -> other.settings().tooDark()));
        List<Page> pages = Briefs.pages(List.of(night), List.of());
        for (String name : List.of("index.html", "plan.md", "field-sheet.html")) {
            String page = SitePagesTest.page(pages, "first-light/" + name);
            assertTrue(page.contains("too dark") || name.startsWith("field-sheet"), name);
            assertFalse(page.matches("(?s).*(<td class=\"num\">|\\| |<strong>|<b>)(1[6-9]|[2-9]\\d|\\d{3,})[\u00a0 ]min(<| \\|).*"), name);
        }
        assertTrue(SitePagesTest.page(pages, "first-light/plan.md").contains("cannot: too dark |"));
    }

    @Test
    void tellsADefaultViewpointWithoutACameraByItsNameAlone() {
        Brief brief = Trips.brief(Trips.bare(Places.MID_LATITUDE, Trips.empty()));
        int told = 0;
        for (PlannedShot shot : brief.shots()) {
            ShotView view = ShotView.of(brief, shot, Sentences.builtIn(), new Prose(), new Glyphs());
            for (Row row : view.defaults()) {
                assertFalse(row.text().isBlank() || row.text().endsWith(", "), row.toString());
                told += row.name().equals("viewpoint") ? 1 : 0;
            }
            assertNull(view.settings());
            assertNotNull(view.defaults());
        }
        assertTrue(told > 0);
    }
}
