package understorey.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.brief.SmallTrip.FULL_BAG;
import static understorey.brief.SmallTrip.WOOD;
import static understorey.brief.SmallTrip.forecast;
import static understorey.brief.SmallTrip.planned;
import static understorey.brief.SmallTrip.visit;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import understorey.exposure.Settings;

/** What a photographer has ready for mist that may come over a picture planned for other light. All of it is common practice, no source. */
class MistDecisionsTest {

    private static final String MIST = forecast(3, 12, "temperature: 3 °C, dew_point: 2 °C, wind: 0.5 m/s, gust: 1 m/s, cloud: 0, rain: 0 mm");
    private static final String NO_MIST = MIST.replace("dew_point: 2", "dew_point: -6");

    @TempDir
    private Path folder;

    private TimedShot shot(String weather, String light) throws IOException {
        return planned(folder, WOOD, FULL_BAG, visit("06:00", "07:00"), weather,
                "shots: [{name: Carpet, subject: ramsons, role: opening, viewpoint: standing, facing: E, light: [" + light + "]}]\n").shot("Carpet");
    }

    /** Brighter than the meter says, one frame because mist has little contrast, and the lowest ISO on a tripod. */
    @ParameterizedTest
    @ValueSource(strings = {"backlight", "soft"})
    void hasSettingsReadyForLikelyMist(String light) throws IOException {
        TimedShot carpet = shot(MIST, light);
        TimedShot.Other mist = carpet.ifMist();
        assertNotNull(mist, carpet.toString());
        Settings settings = mist.settings();
        assertTrue(settings.inMist() && settings.lessStops() >= -1, settings.toString());
        assertEquals(List.of(0), settings.bracketStops());
        assertEquals(100, settings.iso());
        assertEquals(carpet.time().middle(), mist.time());
    }

    @Test
    void needsNoneWhereMistIsUnlikely() throws IOException {
        assertNull(shot(NO_MIST, "backlight").ifMist());
    }

    @Test
    void needsNoOtherWhereThePlanCountsOnMist() throws IOException {
        TimedShot carpet = shot(MIST, "mist");
        assertTrue(carpet.countsOnMist());
        assertNull(carpet.ifMist());
    }

    /** Mist that thins may still hide the sun: the page says until when. */
    @Test
    void hasThemReadyUntilTheMistIsGone() throws IOException {
        Brief brief = planned(folder, WOOD, FULL_BAG, visit("06:00", "11:00"), MIST, """
                shots:
                  - {name: Thinning, subject: ramsons, role: opening, facing: E, light: [backlight], start: "06:30", duration: 10 min}
                  - {name: After, subject: ramsons, role: approach, facing: E, light: [backlight], start: "07:30"}
                """);
        TimedShot thinning = brief.shot("Thinning");
        assertTrue(thinning.fitted().place().mist().at(thinning.time().middle()) < 0.5);
        assertNotNull(thinning.ifMist());
        assertNull(brief.shot("After").ifMist());
    }

    /** The air between lens and flower is too short to be veiled. */
    @Test
    void needsNoneForACloseUp() throws IOException {
        assertNull(planned(folder, WOOD, FULL_BAG, visit("06:00", "07:00"), MIST,
                "shots: [{name: Head, subject: ramsons, role: closing, light: [soft]}]\n").shot("Head").ifMist());
    }
}
