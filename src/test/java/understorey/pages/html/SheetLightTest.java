package understorey.pages.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.brief.Brief;
import understorey.brief.TimedShot;
import understorey.exposure.Settings;
import understorey.pages.Briefs;
import understorey.pages.tables.Row;
import understorey.pages.words.ClockWords;
import understorey.pages.words.Words;
import understorey.plan.Display;

class SheetLightTest {

    private static final ClockWords CLOCK = new ClockWords(Display.USUAL.clock());

    @Test
    void namesOnlyLightThatCanComeAndOnlyWhatChanges() {
        int skies = 0;
        int hours = 0;
        int mists = 0;
        for (Brief brief : Briefs.all()) {
            for (TimedShot shot : brief.timed()) {
                Settings planned = shot.settings();
                for (Row light : planned == null || !shot.skyKnown() ? List.<Row>of() : SheetLight.of(shot, CLOCK)) {
                    assertFalse(light.text().isEmpty());
                    assertFalse(light.text().contains("ISO\u00a0" + planned.iso() + ","), light + " with " + planned.iso());
                    assertFalse(light.text().startsWith(Words.fNumber(planned.fNumber()) + ","), light.toString());
                    boolean overcast = light.name().contains("overcast");
                    assertFalse(overcast && shot.weather().okta() < 4, "overcast is far from " + shot.weather().okta());
                    assertTrue(!light.name().contains("mist") || shot.ifMist() != null || planned.inMist(), light.name());
                    mists += light.name().equals("if there is mist") ? 1 : 0;
                    skies += light.name().startsWith("if ") ? 1 : 0;
                    for (String clock : light.name().startsWith("at ") ? List.of(light.name().substring(3).split(" or ")) : List.<String>of()) {
                        assertTrue(shot.otherHours().stream().anyMatch(other -> CLOCK.of(other.time()).equals(clock)
                                && !other.time().isBefore(brief.order().arrive()) && !other.time().isAfter(brief.order().leave())), light.name());
                        hours++;
                    }
                }
            }
        }
        assertTrue(mists > 1, mists + " in mist");
        assertTrue(skies > 3 && hours > 3, skies + " skies, " + hours + " hours");
    }

    @Test
    void namesEverySkyInFullIfTheSkyIsUnknown() {
        int unknown = 0;
        for (Brief brief : Briefs.all()) {
            for (TimedShot shot : brief.timed()) {
                if (shot.settings() != null && !shot.skyKnown()) {
                    String names = String.join(" or ", SheetLight.of(shot, CLOCK).stream().map(Row::name).toList());
                    for (String sky : List.of("clear", "broken", "overcast")) {
                        assertTrue(names.contains(sky), names);
                    }
                    assertEquals(-1, names.indexOf("at "), "an hour is no matter while the sky is unknown");
                    unknown++;
                }
            }
        }
        assertTrue(unknown > 0);
    }
}
