package understorey.pages.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalTime;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import understorey.Places;
import understorey.advice.CautionAdvice;
import understorey.brief.Brief;
import understorey.pages.Briefs;
import understorey.pages.Trips;
import understorey.pages.markdown.Prose;
import understorey.pages.tables.TableView;
import understorey.pages.templates.Templates;
import understorey.pages.words.ClockWords;
import understorey.pages.words.Sentences;
import understorey.plan.Display;
import understorey.plan.Share;
import understorey.sky.Interval;

class SheetPageTest {

    private static final ClockWords CLOCK = new ClockWords(Display.USUAL.clock());

    private static final Sentences SENTENCES = Sentences.builtIn();
    private static final Prose PROSE = new Prose();

    static SheetPage sheet(Brief brief) {
        return SheetPage.of(brief, PlanView.of(brief, Templates.html(""), SENTENCES, PROSE, new PlanView.Around(null, null, null)),
                Templates.html(""), SENTENCES, PROSE);
    }

    @Test
    void showsEachPictureInTheOrderTakenOrSaysWhyItIsLeftOut() {
        int left = 0;
        for (Brief brief : Briefs.all()) {
            SheetPage sheet = sheet(brief);
            assertEquals(brief.order().shooting().stream().map(leg -> CLOCK.of(leg.from())).toList(),
                    sheet.shots().stream().map(SheetShot::from).toList());
            assertEquals(brief.shots().size(), sheet.shots().size() + sheet.leftOut().size());
            assertTrue(sheet.leftOut().stream().allMatch(why -> why.contains("“") && why.length() > 30), sheet.leftOut().toString());
            left += sheet.leftOut().size();
        }
        assertTrue(left > 0);
    }

    @Test
    void marksTheStartsThatDifferFromThePlan() {
        int same = 0;
        int differ = 0;
        for (Brief brief : Briefs.all()) {
            TableView days = sheet(brief).days();
            for (TableView.Line row : days.lines()) {
                for (int i = 1; i < row.cells().size(); i++) {
                    int number = Integer.parseInt(days.flat().get(i).text());
                    Interval planned = brief.order().timeOf(brief.timed().get(number - 1).intent().shot().name());
                    TableView.Cell start = row.cells().get(i);
                    assertEquals(!start.text().equals(planned == null ? "—" : CLOCK.of(planned.from())), start.strong());
                    same += start.strong() ? 0 : 1;
                    differ += start.strong() ? 1 : 0;
                }
            }
        }
        assertTrue(same > 0 && differ > 0, same + " and " + differ);
    }

    @Test
    void saysOnceWhatAllPicturesHaveInCommon() {
        SheetPage sheet = sheet(Trips.brief(Trips.full(Places.MID_LATITUDE, Trips.EXACT)));
        assertEquals(List.of("Main body", "remote release"), sheet.shared());
        for (SheetShot shot : sheet.shots()) {
            assertTrue(shot.setUp().stream().noneMatch(row -> row.name().contains("Main body")
                    || row.text().equals("remote release")), shot.setUp().toString());
        }
    }

    /** The sheet never says more than the plan, and no public sheet names the contact. */
    @Test
    void tellsWhoKnowsToTheGroupAlone() {
        int told = 0;
        for (Brief brief : Briefs.all()) {
            boolean contact = sheet(brief).home().stream().anyMatch(row -> row.name().equals("Contact") || row.name().equals("Check in by"));
            assertFalse(contact && brief.trip().audience() == Share.Audience.PUBLIC);
            told += contact ? 1 : 0;
        }
        assertTrue(told > 0);
    }

    @Test
    void leavesToThePlanWhatDoesNotMatterOnTheWay() {
        Set<Boolean> sun = new HashSet<>();
        for (Brief brief : Briefs.all()) {
            SheetPage sheet = sheet(brief);
            String all = String.join(" ", sheet.cautions());
            assertTrue(all.startsWith(String.join(" ", brief.trip().site().cautions())), all);
            assertFalse(all.contains("by law:"), all);
            assertEquals(!brief.weather().isEmpty() || brief.cautions().stream()
                    .noneMatch(caution -> caution instanceof CautionAdvice.BranchesInWind),
                    !all.contains("dead branches") || !brief.weather().isEmpty(), all);
            sun.add(all.contains("Never look at the sun"));
        }
        assertEquals(Set.of(true, false), sun);
        Brief night = Trips.brief(Trips.trip(Places.MID_LATITUDE, Trips.EXACT, Trips.dayBag(), Trips.pictures(),
                LocalTime.of(22, 30), LocalTime.of(23, 50), List.of()));
        assertFalse(sheet(night).cautions().stream().anyMatch(caution -> caution.contains("the sun")), "the sun is down");
    }

    @Test
    void saysHowFarTheWalkIsAndWhatAWaitIsFor() {
        int walks = 0;
        int waits = 0;
        int same = 0;
        for (Brief brief : Briefs.all()) {
            String spot = null;
            for (SheetShot shot : sheet(brief).shots()) {
                assertEquals(shot.view().spot().equals(spot), "same spot".equals(shot.walk()), shot.walk());
                spot = shot.view().spot();
                walks += shot.walk() != null && shot.walk().matches("\\d+\u00a0min from .+") ? 1 : 0;
                same += "same spot".equals(shot.walk()) ? 1 : 0;
                waits += shot.pause() != null && shot.pause().matches("wait .*\u00a0min for .+") ? 1 : 0;
            }
        }
        assertTrue(walks > 0 && waits > 0 && same > 0, walks + " walks, " + waits + " waits, " + same + " at the same spot");
    }

    @Test
    void isLargeForFewPicturesWithFewWords() {
        Brief bare = Trips.brief(Trips.bare(Places.MID_LATITUDE, Trips.phone()));
        assertEquals("large", sheet(bare).size());
        assertNotNull(sheet(bare).rail());
    }
}
