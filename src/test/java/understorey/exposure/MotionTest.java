package understorey.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.LEGS;
import static understorey.Samples.kinds;
import static understorey.Samples.picture;
import static understorey.Samples.the;
import static understorey.Samples.with;
import static understorey.exposure.Fits.CIRCLE_MM;
import static understorey.exposure.Fits.PRIME;
import static understorey.exposure.Fits.fit;
import static understorey.exposure.Fits.starOnLegs;
import static understorey.exposure.Fits.wind;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import understorey.advice.HelpAdvice;
import understorey.advice.MotionAdvice;
import understorey.exposure.motion.MotionBlur;
import understorey.exposure.motion.StemSway;
import understorey.kit.LensFit;

/** Thin lens, m = f/(s − f): 50 mm at two metres magnify 50/1950. */
class MotionTest {

    private static LensFit meadow(double farM) {
        return fit(picture("Meadow").equivalent(50).sharp(2, farM), with(PRIME, LEGS));
    }

    @Test
    void judgesTheStemsAtTheNearestSharpFlowersNotAtTheFocus() {
        Motion motion = Motion.of(meadow(6), wind(9, 0.6, 1.4), null);
        assertEquals(2, motion.sway().nearestM(), 1e-9);
        assertEquals(50 / 1950.0, motion.sway().magnification(), 0.0002);
        assertTrue(motion.sway().magnification() > 1.4 * meadow(6).magnification(), "the focus lies at three metres");
        assertEquals(StemSway.longestS(CIRCLE_MM, 1.7, StemSway.amplitudeMm(0.6), 50 / 1950.0), motion.stemsS(), 0.001);
        assertEquals(StemSway.longestS(CIRCLE_MM, 1.7, StemSway.amplitudeMm(1.4), 50 / 1950.0), motion.gustS(), 0.001);
    }

    @Test
    void standsNoLongerForAFartherEnd() {
        Motion one = Motion.of(meadow(6), wind(9, 0.6, 1.4), null);
        Motion other = Motion.of(meadow(40), wind(9, 0.6, 1.4), null);
        assertEquals(one.stemsS(), other.stemsS(), one.stemsS() * 0.02);
    }

    /** What one frame does not hold sharp may sway as it likes. */
    @Test
    void leavesAsideFlowersThatOneFrameDoesNotHold() {
        LensFit deep = fit(picture("Deep").equivalent(50).sharp(0.6, 40), with(PRIME, LEGS));
        Settings settings = Exposure.of(deep, List.of(), wind(9, 0.6, 1.4));
        assertEquals(1, settings.stackFrames());
        double nearestM = Motion.of(deep, wind(9, 0.6, 1.4), null).sway().nearestM();
        assertTrue(nearestM > 0.6 && nearestM <= settings.sharpFromM() * 1.05, nearestM + " m");
    }

    /** A little more wind costs a stop at most: two alike pictures never differ by more. */
    @Test
    void changesTheShutterSpeedWithoutALeap() {
        for (double ev : new double[] {1, 2, 3, 4, 6, 8}) {
            for (double meanMs = 0.11; meanMs < 1.5; meanMs += 0.01) {
                double less = Exposure.of(meadow(6), List.of(), wind(ev, meanMs - 0.01, 1.6 * (meanMs - 0.01))).shutterS();
                double more = Exposure.of(meadow(6), List.of(), wind(ev, meanMs, 1.6 * meanMs)).shutterS();
                assertTrue(more <= less && less <= 2.1 * more, less + " s and " + more + " s at " + meanMs + " m/s, EV " + ev);
            }
        }
    }

    /** A frame between gusts is at most two stops slower than a gust allows, while ISO 800 does that: common practice, no source. */
    @Test
    void staysWithinTwoStopsOfWhatAGustAllows() {
        for (double ev = 2; ev < 12; ev += 0.5) {
            for (double meanMs = 0; meanMs < 1; meanMs += 0.05) {
                Conditions gusty = wind(ev, meanMs, meanMs + 0.5);
                Settings settings = Exposure.of(meadow(6), List.of(), gusty);
                assertTrue(settings.iso() >= 800 || settings.shutterS() <= 4 * 1.3 * Motion.of(meadow(6), gusty, null).gustS(),
                        meanMs + " m/s " + settings);
            }
        }
    }

    @Test
    void saysWhichStemsItJudged() {
        Settings settings = Exposure.of(meadow(6), List.of(), wind(11, 2.0, null));
        assertEquals(2, the(MotionAdvice.IsoForWind.class, settings.reasons()).nearest(), 1e-9);
        assertTrue(kinds(Exposure.of(meadow(6), List.of(), wind(9, 0.0, 0.0)).reasons()).contains(MotionAdvice.StemsStill.class));
    }

    /** The headline holds in the mean wind wherever it claims to, and no note asks for another shutter speed than it. */
    @Test
    void neverContradictsItsOwnNote() {
        int raised = 0;
        for (double ev = 2; ev < 16; ev += 0.25) {
            for (double meanMs = 0; meanMs <= 2; meanMs += 0.1) {
                Settings settings = Exposure.of(meadow(6), List.of(), wind(ev, meanMs, null));
                if (kinds(settings.reasons()).contains(MotionAdvice.IsoForWind.class)) {
                    raised++;
                    double longestS = the(MotionAdvice.IsoForWind.class, settings.reasons()).longest();
                    assertTrue(settings.shutterS() <= longestS, "EV " + ev + ", " + meanMs + " m/s");
                }
                assertEquals(kinds(settings.reasons()).contains(MotionAdvice.WindTooStrong.class), settings.limits().contains(Settings.Limit.STEMS));
            }
        }
        assertTrue(raised > 20, raised + " raised");
    }

    /** Twice the wind gives four times the swing. The reason says how much the flowers blur, and which shutter speed stops them. */
    @Test
    void saysHowMuchTheFlowersBlurAndWhatWouldHelp() {
        Settings settings = Exposure.of(starOnLegs(), List.of(), wind(11, 1.0, null));
        MotionAdvice.WindTooStrong wind = the(MotionAdvice.WindTooStrong.class, settings.reasons());
        assertEquals(StemSway.blurMm(settings.shutterS(), 1.7, StemSway.amplitudeMm(1.0), Fits.nearMagnification(starOnLegs())) / CIRCLE_MM,
                wind.times(), wind.times() * 0.15);
        assertTrue(wind.times() > 1);
        HelpAdvice.HelpShelter shelter = the(HelpAdvice.HelpShelter.class, settings.helps());
        assertTrue(shelter.wind() < 1);
        assertEquals(0, Exposure.of(starOnLegs(), List.of(), wind(11, shelter.wind() * 0.99, null)).motionStops());
    }

    /** A gust is no reason for a higher ISO: between gusts the flowers are sharp. */
    @Test
    void warnsOfGustsThatTheMeanWindHides() {
        Settings even = Exposure.of(meadow(6), List.of(), wind(9, 0.6, null));
        Settings gusty = Exposure.of(meadow(6), List.of(), wind(9, 0.6, 1.4));
        assertEquals(even.iso(), gusty.iso());
        assertTrue(kinds(gusty.reasons()).contains(MotionAdvice.GustsBlur.class));
        assertEquals(MotionBlur.Degree.IN_GUSTS, gusty.motionBlur().degree());
    }

    /** Common practice, no source: within a second one shoots between gusts, a longer frame meets one. */
    @Test
    void countsTheGustForFramesOfMoreThanASecond() {
        Settings still = Exposure.of(meadow(6), List.of(), wind(3, 0.05, 0.05));
        Settings gusty = Exposure.of(meadow(6), List.of(), wind(3, 0.05, 0.6));
        assertTrue(still.shutterS() > 2, still.shutterS() + " s");
        assertTrue(gusty.shutterS() <= 1, gusty.shutterS() + " s");
        assertTrue(kinds(gusty.reasons()).contains(MotionAdvice.IsoForGusts.class), kinds(gusty.reasons()).toString());
    }

    /** The stems are a limit of their own, though the dark is the graver one. */
    @Test
    void smearsInTheDarkToo() {
        Settings dark = Exposure.of(meadow(6), List.of(), wind(-12, 8.0, 8.0));
        assertEquals(List.of(Settings.Limit.STEMS, Settings.Limit.DARK), dark.limits());
        assertTrue(dark.limits().contains(Settings.Limit.STEMS));
        assertEquals(Settings.Limit.DARK, dark.limit());
    }

    /** The fact that decisions use always agrees with the advice on the page. */
    @Test
    void holdsAsAFactHowOftenTheFlowersBlur() {
        Set<MotionBlur.Degree> seen = EnumSet.noneOf(MotionBlur.Degree.class);
        for (double ev = -6; ev <= 14; ev += 0.5) {
            for (double meanMs = 0; meanMs <= 3; meanMs += 0.25) {
                Settings settings = Exposure.of(meadow(6), List.of(), wind(ev, meanMs, meanMs * 1.5));
                List<Class<?>> advice = kinds(settings.reasons());
                MotionBlur.Degree expected = advice.contains(MotionAdvice.WindTooStrong.class)
                        ? settings.lull() == null ? MotionBlur.Degree.ALWAYS : MotionBlur.Degree.UNLESS_IN_LULL
                        : advice.contains(MotionAdvice.GustsBlur.class) ? MotionBlur.Degree.IN_GUSTS : null;
                MotionBlur blur = settings.motionBlur();
                assertEquals(expected, blur == null ? null : blur.degree(), "EV " + ev + ", " + meanMs + " m/s");
                assertEquals(advice.contains(MotionAdvice.InLull.class), settings.lull() != null);
                if (blur != null) {
                    seen.add(blur.degree());
                }
            }
        }
        assertEquals(EnumSet.allOf(MotionBlur.Degree.class), seen);
    }
}
