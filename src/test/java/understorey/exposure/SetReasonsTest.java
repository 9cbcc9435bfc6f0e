package understorey.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.LEGS;
import static understorey.Samples.MACRO;
import static understorey.Samples.bag;
import static understorey.Samples.fullFrame;
import static understorey.Samples.kinds;
import static understorey.Samples.picture;
import static understorey.Samples.the;
import static understorey.Samples.with;
import static understorey.exposure.Fits.PRIME;
import static understorey.exposure.Fits.fit;
import static understorey.exposure.Fits.viewAt;
import static understorey.exposure.Fits.wind;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.advice.ApertureAdvice;
import understorey.advice.SetAdvice;
import understorey.kit.LensFit;
import understorey.kit.Verdict;
import understorey.plan.CameraSettings;

/** Exposure by the APEX equation: N²/t = 2^EV · ISO/100. */
class SetReasonsTest {

    private static LensFit view(CameraSettings set, boolean onLegs) {
        return fit(viewAt(8), set, onLegs ? with(PRIME, LEGS) : PRIME);
    }

    /** f/8 and 1/60 s need 64 · 60 / 2^9 · 100 = ISO 750 at EV 9. */
    @Test
    void keepApertureAndShutterSpeedAndLetIsoFollow() {
        Settings settings = Fits.settings(view(new CameraSettings(8.0, 1 / 60.0, null, null), true), 9, 0, null);
        assertEquals(List.of(8.0, 1 / 60.0, 800), List.of(settings.fNumber(), settings.shutterS(), settings.iso()));
        assertEquals(0, settings.overStops());
        assertEquals(Verdict.FITS, settings.verdict());
        assertTrue(kinds(settings.reasons()).containsAll(List.of(SetAdvice.ApertureSet.class, SetAdvice.ShutterSet.class,
                SetAdvice.IsoForShutterSet.class)));
        assertNull(settings.lull());
    }

    /** f/8, 1/60 s and ISO 100 are for log2(64 · 60) = EV 11.91: 2.91 stops too little at EV 9, and 3.09 too much at EV 15. */
    @Test
    void saysByHowManyStopsTheFrameIsUnderOrOverexposed() {
        LensFit all = view(new CameraSettings(8.0, 1 / 60.0, 100, null), true);
        Settings dark = Fits.settings(all, 9, 0, null);
        assertEquals(2.91, the(SetAdvice.Underexposed.class, dark.reasons()).stops(), 0.02);
        assertEquals(-2.91, dark.overStops(), 0.02);
        assertEquals(Verdict.COMPROMISE, dark.verdict());
        Settings bright = Fits.settings(all, 15, 0, null);
        assertEquals(3.09, the(ApertureAdvice.TooBright.class, bright.reasons()).stops(), 0.02);
        assertEquals(Verdict.CANNOT, bright.verdict(), "clipped");
        assertEquals(List.of(8.0, 1 / 60.0, 100), List.of(bright.fNumber(), bright.shutterS(), bright.iso()));
    }

    @Test
    void stopDownForAShutterSpeedThatIsTooSlowForTheLight() {
        Settings settings = Fits.settings(view(new CameraSettings(null, 1 / 30.0, null, null), true), 14, 0, null);
        assertTrue(settings.fNumber() > 13, "f/" + settings.fNumber());
        assertTrue(kinds(settings.reasons()).contains(SetAdvice.ApertureForShutterSet.class));
    }

    @Test
    void judgeAnApertureThatTheLensDoesNotHave() {
        Settings wide = Fits.settings(view(new CameraSettings(1.4, null, null, null), true), 9, 0, null);
        assertEquals(2, the(SetAdvice.ApertureNotOnLens.class, wide.reasons()).nearest());
        assertEquals(1.4, wide.fNumber());
        assertEquals(Verdict.COMPROMISE, wide.verdict());
        Settings small = Fits.settings(view(new CameraSettings(32.0, null, null, null), true), 9, 0, null);
        assertEquals(22, the(SetAdvice.ApertureNotOnLens.class, small.reasons()).nearest());
        LensFit phone = fit(picture("a").equivalent(25), new CameraSettings(8.0, null, null, null), bag(Samples.phone()));
        assertEquals(1.8, the(SetAdvice.ApertureNotOnLens.class, Fits.settings(phone, 9, 0, null).reasons()).nearest());
        assertFalse(kinds(Fits.settings(view(new CameraSettings(2.0, null, null, null), true), 9, 0, null).reasons())
                .contains(SetAdvice.ApertureNotOnLens.class));
    }

    /** Depth of field goes with the f-number: f/4 for a view that needs f/8 is two stops short. */
    @Test
    void saysByHowManyStopsTheDepthOfFieldIsMissed() {
        Settings settings = Fits.settings(view(new CameraSettings(4.0, null, null, null), true), 9, 0, null);
        SetAdvice.ApertureSetShallow shallow = the(SetAdvice.ApertureSetShallow.class, settings.reasons());
        assertEquals(2, shallow.stops(), 0.05);
        assertEquals(shallow.stops(), settings.depthStops());
        assertEquals(Verdict.COMPROMISE, settings.verdict());
    }

    @Test
    void judgeAShutterSpeedByTheHandsAndByTheWind() {
        CameraSettings slow = new CameraSettings(null, 1 / 4.0, null, null);
        Settings held = Fits.settings(view(slow, false), 9, 0, null);
        assertEquals(Settings.Limit.HANDS, held.limit());
        assertTrue(the(SetAdvice.SetBlursByHand.class, held.reasons()).longest() <= 1 / 50.0);
        assertTrue(held.motionStops() > 3);
        Settings blown = Exposure.of(view(slow, true), List.of(), wind(9, 2.0, null));
        assertTrue(the(SetAdvice.BlurAsSet.class, blown.reasons()).times() > 1.3);
        assertEquals(Verdict.FITS, blown.verdict(), "a slow shutter speed is set for its blur");
        Settings base = Exposure.of(view(new CameraSettings(null, null, 100, null), true), List.of(), wind(9, 2.0, null));
        assertTrue(the(SetAdvice.SetBlursFlowers.class, base.reasons()).times() > 1.3);
        assertEquals(Settings.Limit.STEMS, base.limit());
    }

    @Test
    void keepIsoAndJudgeWhatItLeaves() {
        Settings settings = Fits.settings(view(new CameraSettings(null, null, 100, null), false), 6, 0, null);
        assertEquals(100, settings.iso());
        assertTrue(kinds(settings.reasons()).contains(SetAdvice.SetBlursByHand.class));
        assertEquals(50, the(SetAdvice.IsoNotOnBody.class, Fits.settings(view(new CameraSettings(null, null, 50, null), true), 9, 0, null)
                .reasons()).iso());
        assertEquals(3200, the(SetAdvice.IsoSetHigh.class, Fits.settings(view(new CameraSettings(null, null, 6400, null), true), 9, 0, null)
                .reasons()).top());
    }

    @Test
    void takeOneFrameWhereTheAuthorWantsNoStack() {
        Samples.Picture deep = picture("Deep star").wide(0.036).deep(0.02);
        assertTrue(Fits.settings(fit(deep, with(bag(fullFrame(24), MACRO), LEGS)), 9, 0, 0.0).stackFrames() > 1);
        Settings one = Fits.settings(fit(deep, new CameraSettings(null, null, null, false), with(bag(fullFrame(24), MACRO), LEGS)), 9, 0, 0.0);
        assertEquals(1, one.stackFrames());
        assertTrue(one.depthStops() > 1);
        assertTrue(kinds(one.reasons()).contains(SetAdvice.OneFrameSet.class));
    }

    /** Whatever the light, what is set stays, and the exposure is right or said to be wrong. */
    @Property(tries = 300)
    void stayAsSetAndExposeOrSayByHowMuchNot(@ForAll @DoubleRange(min = -4, max = 17) double ev100,
                                             @ForAll @DoubleRange(min = 0, max = 2) double windMs, @ForAll boolean aperture,
                                             @ForAll boolean shutter, @ForAll boolean iso) {
        CameraSettings set = new CameraSettings(aperture ? 5.6 : null, shutter ? 1 / 125.0 : null, iso ? 400 : null, null);
        Settings settings = Exposure.of(view(set, true), List.of(), wind(ev100, windMs, null));
        assertTrue(!aperture || settings.fNumber() == 5.6);
        assertTrue(!shutter || settings.shutterS() == 1 / 125.0);
        assertTrue(!iso || settings.iso() == 400);
        double over = ev100 - Math.log(settings.fNumber() * settings.fNumber() * 100 / settings.shutterS() / settings.iso()) / Math.log(2)
                - settings.lossStops();
        assertEquals(settings.overStops(), over, 1 / 3.0 + 1e-6);
        assertTrue(Math.abs(over) < 1 / 3.0 + 1e-6 || settings.verdict() != Verdict.FITS, over + " stops");
    }
}
