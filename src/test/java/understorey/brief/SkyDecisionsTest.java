package understorey.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.brief.SmallTrip.EDGE_TO_THE_WEST;
import static understorey.brief.SmallTrip.FULL_BAG;
import static understorey.brief.SmallTrip.WOOD;
import static understorey.brief.SmallTrip.forecast;
import static understorey.brief.SmallTrip.planned;
import static understorey.brief.SmallTrip.visit;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import understorey.plan.SkyWord;

/** For which sky an expert notes the settings without a forecast: one, not a mix of all. All of it is common practice, no source. */
class SkyDecisionsTest {

    private static final String EVENING = visit("19:30", "20:50");
    private static final String LOW_SUN = "shots: [{name: Shot, subject: ramsons, role: opening, facing: WNW, light: [low-sun, backlight]}]\n";

    @TempDir
    private Path folder;

    private static void assertSettingsAreFor(SkyWord sky, TimedShot shot) {
        assertEquals(sky, shot.settingsSky());
        TimedShot.Other other = shot.otherSkies().stream().filter(one -> one.sky() == sky).findFirst().orElseThrow();
        assertEquals(other.settings(), shot.settings());
        assertTrue(shot.otherSkies().stream().anyMatch(one -> !one.settings().equals(shot.settings())));
    }

    /** A closed sky has no low sun, so a photographer does not wait for it. */
    @Test
    void isTheClearOneForLowSun() throws IOException {
        assertSettingsAreFor(SkyWord.CLEAR, planned(folder, EDGE_TO_THE_WEST, FULL_BAG, EVENING, LOW_SUN).shot("Shot"));
    }

    @Test
    void isTheMiddleOneWhereTheSkyIsNoMatter() throws IOException {
        assertSettingsAreFor(SkyWord.BROKEN, planned(folder, WOOD, FULL_BAG, EVENING, LOW_SUN.replace(", light: [low-sun, backlight]", ""))
                .shot("Shot"));
    }

    @Test
    void isTheOneForecast() throws IOException {
        assertNull(planned(folder, EDGE_TO_THE_WEST, FULL_BAG, EVENING, forecast(18, 22, "wind: 1 m/s, cloud: 8, rain: 0 mm"), LOW_SUN)
                .shot("Shot").settingsSky());
    }
}
