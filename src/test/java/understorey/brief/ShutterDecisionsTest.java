package understorey.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.brief.SmallTrip.FULL_BAG;
import static understorey.brief.SmallTrip.WOOD;
import static understorey.brief.SmallTrip.forecast;
import static understorey.brief.SmallTrip.has;
import static understorey.brief.SmallTrip.planned;
import static understorey.brief.SmallTrip.visit;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import understorey.Samples;
import understorey.advice.Advice;
import understorey.advice.MotionAdvice;
import understorey.advice.ShutterAdvice;
import understorey.exposure.Feasibility;
import understorey.exposure.motion.MotionBlur;
import understorey.exposure.Settings;
import understorey.kit.Verdict;

/** Which shutter speed an expert sets among flowers, on legs and by hand. All of it is common practice, no source. */
class ShutterDecisionsTest {

    private static final String BY_HAND = FULL_BAG.replaceAll("(?s)  supports:\n.*?\n  filters:", "  filters:");
    private static final String CARPET = "shots: [{name: Shot, subject: ramsons, role: opening}]\n";
    private static final String STILL = "temperature: 3 °C, dew_point: 2 °C, wind: 0 m/s, gust: 0 m/s, cloud: 0, rain: 0 mm";
    private static final String MIST = CARPET.replace("opening", "opening, facing: ENE, light: [mist]");

    @TempDir
    private Path folder;

    private TimedShot shot(String bag, String... more) throws IOException {
        return planned(folder, WOOD, bag, String.join("", more)).shot("Shot");
    }

    /** Air is never that still: ten seconds at ISO 100 are two at ISO 500. */
    @Test
    void planNoSecondsAmongFlowersInStillMist() throws IOException {
        Settings dawn = shot(FULL_BAG, visit("05:00", "05:45"), forecast(3, 9, STILL), MIST).settings();
        assertTrue(dawn.iso() > 100 && dawn.iso() <= 800, dawn.toString());
        assertTrue(dawn.shutterS() <= 2.5 || dawn.iso() == 800, dawn.toString());
        MotionAdvice.IsoForStillness why = Samples.the(MotionAdvice.IsoForStillness.class, dawn.reasons());
        assertTrue(why.time() > 2 && why.iso() == dawn.iso(), why.toString());
    }

    @Test
    void keepTheSecondsThatTheAuthorAsks() throws IOException {
        Settings asked = shot(FULL_BAG, visit("05:00", "05:45"), forecast(3, 9, STILL), MIST.replace("opening", "opening, shutter: 8 s")).settings();
        assertEquals(List.of(8.0, 100), List.of(asked.shutterS(), asked.iso()));
    }

    /** In an hour of light nothing has to yield. */
    @Test
    void keepTheLowestIsoWhereTwoSecondsAreEnough() throws IOException {
        Settings later = shot(FULL_BAG, visit("07:00", "08:00"), forecast(3, 9, STILL), CARPET).settings();
        assertEquals(100, later.iso(), later.toString());
        assertFalse(has(MotionAdvice.IsoForStillness.class, later.reasons()), later.reasons().toString());
    }

    /** A stabiliser of three stops promises 1/8 s, and many of those frames are soft. */
    @ParameterizedTest
    @ValueSource(strings = {"07:00", "08:00", "09:00"})
    void areNoSlowerThanAThirtiethByHandAsFarAsIsoIsClean(String from) throws IOException {
        Settings settings = shot(BY_HAND, visit(from, "10:00"), forecast(5, 11, STILL.replace("cloud: 0", "cloud: 8")), CARPET).settings();
        MotionAdvice.IsoForSlowHands why = Samples.the(MotionAdvice.IsoForSlowHands.class, settings.reasons());
        assertTrue(settings.iso() <= 800 && why.time() > settings.shutterS(), settings.toString());
        assertTrue(settings.shutterS() <= 1 / 25.0 || settings.iso() == 800, settings.toString());
    }

    /** The headline is what succeeds in the wind as forecast: more frames sharp than not. */
    @ParameterizedTest
    @CsvSource({"0.5, 1.5", "1, 2", "2, 4", "3, 6"})
    void succeedMoreOftenThanNotBetweenGusts(String wind, String gust) throws IOException {
        int gusty = 0;
        for (String role : List.of("opening", "approach", "detail", "closing")) {
            Settings settings = shot(FULL_BAG, visit("06:00", "07:00"), forecast(5, 8, "temperature: 9 °C, wind: " + wind + " m/s, gust: " + gust
                    + " m/s, cloud: 8, rain: 0 mm"), CARPET.replace("opening", role)).settings();
            boolean between = settings.motionBlur() != null && settings.motionBlur().degree() == MotionBlur.Degree.IN_GUSTS;
            assertEquals(between, has(MotionAdvice.GustsBlur.class, settings.reasons()), settings.toString());
            if (between && settings.verdict() == Verdict.FITS) {
                MotionAdvice.GustsBlur gusts = Samples.the(MotionAdvice.GustsBlur.class, settings.reasons());
                assertTrue(gusts.share() > 0.5 && gusts.share() < 1 && gusts.longest() < settings.shutterS(), gusts + " " + settings);
                gusty++;
            }
        }
        assertTrue(gusty > 0, "no picture between gusts");
    }

    /** At 1/1000 s neither a finger nor a mirror shows. */
    @Test
    void needNoSelfTimerAndNoReleaseInSunshine() throws IOException {
        String open = WOOD.replaceAll("canopy: .*", "canopy: none") + FULL_BAG + visit("11:00", "12:00") + forecast(9, 13, STILL);
        for (String bag : List.of(open, open.replace("  remote_release: yes\n", ""))) {
            List<Advice> fast = planned(folder, bag, CARPET.replace("opening", "opening, aperture: f/4")).shot("Shot").settings().reasons();
            assertFalse(has(ShutterAdvice.Release.class, fast) || has(ShutterAdvice.SettleFirst.class, fast), fast.toString());
            assertTrue(has(ShutterAdvice.Release.class, planned(folder, bag, CARPET.replace("opening", "opening, shutter: 1/30 s"))
                    .shot("Shot").settings().reasons()));
        }
    }

    /** A start is judged by the settings that the plan gives. */
    @Test
    void areTheSameWhereTheOrderIsPlanned() throws IOException {
        String edge = WOOD.replace("country: GB\n", "country: GB\n  edges: [{bearing: ENE, distance: 40 m}]\n");
        Brief brief = planned(folder, edge, FULL_BAG, visit("05:00", "08:00"), forecast(3, 9, STILL.replace("cloud: 0", "cloud: 1")),
                MIST.replace("[mist]", "[mist, backlight]"));
        TimedShot mist = brief.shot("Shot");
        assertTrue(mist.settings().inMist() && mist.light().flecked(), mist.settings().toString());
        FeasibleQuality quality = FeasibleQuality.of(time -> 1, brief.day(), mist.fitted(), mist.fit().best(),
                Sky.expected(brief.day()).get(0), 0);
        assertEquals(Feasibility.of(mist.settings()), quality.feasibility(mist.time().middle()), 0.02);
    }
}
