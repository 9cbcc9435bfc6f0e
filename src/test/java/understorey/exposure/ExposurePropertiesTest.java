package understorey.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.LEGS;
import static understorey.Samples.MACRO;
import static understorey.Samples.ZOOM;
import static understorey.Samples.bag;
import static understorey.Samples.fullFrame;
import static understorey.Samples.kinds;
import static understorey.Samples.picture;
import static understorey.Samples.prime;
import static understorey.Samples.released;
import static understorey.Samples.with;
import static understorey.exposure.Fits.CIRCLE_MM;
import static understorey.exposure.Fits.PRIME;
import static understorey.exposure.Fits.fit;
import static understorey.exposure.Fits.starOnLegs;
import static understorey.exposure.Fits.viewAt;
import static understorey.exposure.Fits.wind;

import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import understorey.Samples;
import understorey.advice.MotionAdvice;
import understorey.exposure.motion.HandHeld;
import understorey.exposure.motion.Posture;
import understorey.exposure.motion.StemSway;
import understorey.kit.LensFit;
import understorey.kit.Verdict;
import understorey.kit.WholeBag;
import understorey.plan.Bag;
import understorey.plan.Body;
import understorey.plan.Frame;
import understorey.plan.Sensor;

/** What holds for any light, any wind and any picture. */
class ExposurePropertiesTest {

    /** A third of a stop of tolerance, a sixth to the nearest exact step, 0.09 EV from there to its marking. */
    private static final double OVER_THE_LIMIT = Math.pow(2, 1 / 3.0 + 1 / 6.0 + 0.09);

    /** The exposure equation (ASA PH2.5-1960, through secondary copies), a third of a stop for the markings. */
    @Property(tries = 500)
    void reproducesTheLight(@ForAll @DoubleRange(min = -4, max = 16) double ev100,
                            @ForAll @DoubleRange(min = 2, max = 22) double fNumber, @ForAll boolean onLegs,
                            @ForAll @DoubleRange(min = 0, max = 4) double windMs) {
        Settings settings = Fits.settings(fit(viewAt(fNumber), onLegs ? with(PRIME, LEGS) : PRIME), ev100, 0, windMs);
        double exposed = settings.lossStops() + Math.log(settings.fNumber() * settings.fNumber() * 100
                / settings.shutterS() / settings.iso()) / Math.log(2);
        assertEquals(ev100, exposed, 1 / 3.0);
        assertTrue(settings.iso() >= 100 && settings.iso() <= 3200);
    }

    @Property(tries = 300)
    void reachesWhatHandAndStemsAllowOrSaysThatItDoesNot(@ForAll @DoubleRange(min = -2, max = 15) double ev100,
                                                        @ForAll @DoubleRange(min = 0, max = 4) double windMs) {
        LensFit fit = fit(viewAt(8), PRIME);
        Settings settings = Fits.settings(fit, ev100, 0, windMs);
        double limitS = Math.min(HandHeld.longestS(CIRCLE_MM, fit.actingFocalMm(), fit.magnification(), Posture.STANDING, 0),
                StemSway.longestS(CIRCLE_MM, 1.7, StemSway.amplitudeMm(windMs), Fits.nearMagnification(fit)));
        if (settings.verdict() == Verdict.FITS) {
            assertTrue(settings.shutterS() <= limitS * OVER_THE_LIMIT);
        } else {
            assertEquals(3200, settings.iso());
            assertTrue(settings.shutterS() > limitS);
        }
    }

    @Property(tries = 300)
    void neverStopsDownForLessDepth(@ForAll @DoubleRange(min = 1, max = 10) double nearM,
                                    @ForAll @DoubleRange(min = 1, max = 10) double times,
                                    @ForAll @DoubleRange(min = 1, max = 4) double deeper) {
        Bag bag = with(PRIME, LEGS);
        double focusM = 2 * nearM * times / (1 + times);
        double nearerM = Math.max(0.51 * focusM, nearM / deeper);
        Assume.that(nearerM < nearM);
        double fartherM = 1 / (2 / focusM - 1 / nearerM);
        Settings shallow = Fits.settings(fit(picture("a").equivalent(50).sharp(nearM, nearM * times), bag), 9, 0, null);
        Settings deep = Fits.settings(fit(picture("a").equivalent(50).sharp(nearerM, fartherM), bag), 9, 0, null);
        assertTrue(deep.fNumber() >= shallow.fNumber());
        assertTrue(deep.sharpFromM() <= shallow.sharpFromM() * (1 + 1e-9));
        assertTrue(deep.sharpToM() >= shallow.sharpToM() * (1 - 1e-9));
    }

    /** However near the author puts the camera, there is an image to set an exposure for. */
    @Property(tries = 300)
    void findsSettingsFromAnyDistance(@ForAll @DoubleRange(min = 0.01, max = 1) double wideM,
                                      @ForAll @DoubleRange(min = 0.01, max = 2) double distanceM,
                                      @ForAll @IntRange(min = 0, max = 2) int attachment) {
        Bag bag = bag(fullFrame(24), ZOOM, MACRO);
        bag = attachment == 0 ? bag : with(bag, attachment == 1 ? Samples.tube(36) : Samples.closeUpLens(72, 10));
        for (LensFit fit : WholeBag.fit(picture("a").framed(new Frame(wideM, null, null, distanceM)).intent(), bag).tried()) {
            Settings settings = Fits.settings(fit, 9, 0, 1.0);
            assertTrue(settings.sharpFromM() > 0 && settings.sharpFromM() <= fit.focusM() + 1e-12);
            assertTrue(settings.sharpToM() >= fit.focusM() - 1e-12);
            assertTrue(settings.shutterS() > 0);
        }
    }

    /** Of pictures that one frame holds; where a gust ends a stack, its one frame is stopped down further. */
    @Property(tries = 300)
    void neverLengthensTheTimeInMoreWind(@ForAll @DoubleRange(min = 0, max = 16) double ev100,
                                         @ForAll @DoubleRange(min = 0, max = 3) double meanMs,
                                         @ForAll @DoubleRange(min = 0, max = 3) double gustMore,
                                         @ForAll @DoubleRange(min = 0, max = 3) double more,
                                         @ForAll @IntRange(min = 0, max = 2) int which) {
        LensFit fit = which == 0 ? fit(viewAt(8), with(PRIME, LEGS)) : which == 1 ? starOnLegs() : fit(viewAt(5), PRIME);
        Settings less = Exposure.of(fit, List.of(), wind(ev100, meanMs, meanMs + gustMore));
        Settings windier = Exposure.of(fit, List.of(), wind(ev100, meanMs + more / 2, meanMs + gustMore + more));
        assertTrue(windier.shutterS() <= less.shutterS() * 1.000001);
        assertTrue(windier.iso() >= less.iso() && windier.fNumber() <= less.fNumber());
    }

    /** Half a stop for the tolerance and the marking of the time. */
    @Property(tries = 300)
    void keepsStemsWithinTheCircleUnlessAReasonSaysOtherwise(@ForAll @DoubleRange(min = 0, max = 16) double ev100,
                                                             @ForAll @DoubleRange(min = 0, max = 3) double meanMs,
                                                             @ForAll @DoubleRange(min = 0, max = 3) double gustMore,
                                                             @ForAll boolean near) {
        LensFit fit = near ? starOnLegs() : fit(viewAt(8), with(PRIME, LEGS));
        Settings settings = Exposure.of(fit, List.of(), wind(ev100, meanMs, meanMs + gustMore));
        boolean said = kinds(settings.reasons()).contains(MotionAdvice.WindTooStrong.class);
        assertTrue(said || settings.swayBlurMm() <= CIRCLE_MM * OVER_THE_LIMIT);
        assertTrue(settings.swayBlurMm() <= 2 * StemSway.amplitudeMm(meanMs) * Fits.nearMagnification(fit) + 1e-9);
    }

    /** The exposure equation: twice the ISO halves the time, in light that asks for no frame of seconds; a sixth of a stop for each marking. */
    @Property(tries = 200)
    void halvesTheTimeAtTwiceTheIso(@ForAll @DoubleRange(min = 6.5, max = 14) double ev100) {
        Body fast = new Body("Fast body", Sensor.FULL_FRAME, 24, "A", 200, 3200, 0, null, null, null, List.of());
        double base = Fits.settings(fit(viewAt(8), released(with(PRIME, LEGS))), ev100, 0, null).shutterS();
        double twice = Fits.settings(fit(viewAt(8), released(with(bag(fast, prime(50)), LEGS))), ev100, 0, null).shutterS();
        assertEquals(1, Math.log(base / twice) / Math.log(2), 0.2);
    }
}
