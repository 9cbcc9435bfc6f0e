package understorey.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.MACRO;
import static understorey.Samples.ZOOM;
import static understorey.Samples.bag;
import static understorey.Samples.fullFrame;
import static understorey.Samples.kinds;
import static understorey.Samples.picture;
import static understorey.Samples.prime;
import static understorey.Samples.with;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import understorey.Samples;
import understorey.advice.FitAdvice;
import understorey.advice.HelpAdvice;
import understorey.kit.camera.Camera;
import understorey.plan.Lens;
import understorey.plan.Sensor;
import understorey.plan.Viewpoint;

class ShotFitTest {

    private static final Samples.Picture FIFTY = picture("View").equivalent(50).sharp(10, 40);
    private static final Samples.Picture LIFE_SIZE = picture("One star").wide(0.036).deep(0.001)
            .from(Viewpoint.Stance.GROUND);

    static Stream<Sensor> sensors() {
        return Stream.of(Sensor.FULL_FRAME, Sensor.APS_C, Sensor.FOUR_THIRDS);
    }

    @ParameterizedTest
    @MethodSource("sensors")
    void reachesFiftyMillimetresWithAZoomOnEverySensor(Sensor sensor) {
        LensFit best = WholeBag.fit(FIFTY.intent(), bag(Samples.body("Some body", sensor, 20), ZOOM)).best();
        assertEquals(Verdict.FITS, best.verdict());
        assertEquals(50, best.equivalentMm(), 1e-9);
        assertEquals(50 / sensor.crop(), best.focalMm(), 1e-9);
        assertEquals(1, best.cropTimes());
        assertTrue(kinds(best.reasons()).contains(FitAdvice.FocalReached.class));
    }

    @Test
    void stepsBackWithALongerPrimeUpToALimit() {
        ShotFit seventyFive = WholeBag.fit(FIFTY.intent(), bag(fullFrame(24), prime(75)));
        assertEquals(Verdict.COMPROMISE, seventyFive.best().verdict());
        assertEquals(1.5, Samples.the(FitAdvice.FocalLong.class, seventyFive.best().reasons()).times(), 1e-12);
        assertEquals(50, Samples.the(HelpAdvice.HelpWider.class, seventyFive.helps()).focal(), 1e-12);
        assertEquals(Verdict.CANNOT, WholeBag.fit(FIFTY.intent(), bag(fullFrame(24), prime(85))).best().verdict());
        assertEquals(Verdict.FITS, WholeBag.fit(FIFTY.intent(), bag(fullFrame(24), prime(54))).best().verdict());
    }

    @Test
    void cropsAShorterPrimeWhileThePixelsLast() {
        ShotFit fit = WholeBag.fit(FIFTY.intent(), bag(fullFrame(24), prime(35)));
        assertEquals(Verdict.COMPROMISE, fit.best().verdict());
        assertEquals(50 / 35.0, fit.best().cropTimes(), 1e-12);
        assertEquals(50, fit.best().equivalentMm(), 1e-9);
        assertEquals(24 * 0.49, Samples.the(FitAdvice.FocalShort.class, fit.best().reasons()).left(), 1e-9);
        assertEquals(50, Samples.the(HelpAdvice.HelpLonger.class, fit.helps()).focal(), 1e-9);
        assertEquals(Verdict.CANNOT, WholeBag.fit(FIFTY.intent(), bag(fullFrame(12), prime(16))).best().verdict());
        assertEquals(Verdict.COMPROMISE, WholeBag.fit(FIFTY.intent(), bag(fullFrame(24), prime(16))).best().verdict());
    }

    @Test
    void cropsThePhonesMainLensToFifty() {
        LensFit best = WholeBag.fit(picture("The floor").equivalent(50).intent(), bag(Samples.phone())).best();
        assertEquals("main", best.camera().lens().name());
        assertEquals(Verdict.COMPROMISE, best.verdict());
        assertEquals(50, best.equivalentMm(), 1e-9);
        assertTrue(kinds(best.reasons()).contains(FitAdvice.FocalShort.class));
    }

    @Test
    void takesTheCloseUpPrimeToLifeSize() {
        LensFit best = WholeBag.fit(LIFE_SIZE.intent(), bag(fullFrame(24), ZOOM, MACRO)).best();
        assertSame(MACRO, best.camera().lens());
        assertEquals(Verdict.FITS, best.verdict());
        assertEquals(1, best.magnification(), 1e-12);
        assertEquals(0.14, best.distanceM(), 1e-9);
        assertEquals(0.036, best.frameWidthM(), 1e-12);
    }

    /** A 1:2 lens on 36 × 24 mm covers 72 × 48 mm: as lens descriptions commonly state it (secondary copies). */
    @Test
    void coversSeventyTwoByFortyEightMillimetresAtHalfLifeSize() {
        Lens half = new Lens("Half-size prime", "A", null, 60, 60, 2.8, 2.8, 22.0, 0.27, 0.5, null, 0, null);
        LensFit best = WholeBag.fit(picture("a").wide(0.072).deep(0.002).intent(), bag(fullFrame(24), half)).best();
        assertEquals(Verdict.FITS, best.verdict());
        assertEquals(0.5, best.magnification(), 1e-12);
        assertEquals(0.048, best.frameHeightM(), 1e-12);
        assertTrue(WholeBag.fit(picture("a").wide(0.06).deep(0.002).intent(), bag(fullFrame(24), half)).best()
                .cropTimes() > 1);
    }

    /** The tube f·Δm and the power Δm / ((1 + m)·f): thin-lens arithmetic, held by putting both in the bag. */
    @Test
    void saysWhatWouldBringAShortLensToLifeSizeAndUsesItOnceThere() {
        ShotFit alone = WholeBag.fit(LIFE_SIZE.intent(), bag(fullFrame(24), ZOOM));
        assertEquals(Verdict.COMPROMISE, alone.best().verdict());
        assertEquals(1 / 0.3, alone.best().cropTimes(), 1e-9);
        double tubeMm = Samples.the(HelpAdvice.HelpTube.class, alone.helps()).length();
        double dioptres = Samples.the(HelpAdvice.HelpCloseUpLens.class, alone.helps()).power();
        assertEquals(49, tubeMm, 1e-9);
        assertEquals(7.692, dioptres, 0.001);

        LensFit byTube = WholeBag.fit(LIFE_SIZE.intent(), with(bag(fullFrame(24), ZOOM), Samples.tube(tubeMm + 1e-6)))
                .best();
        assertEquals(Verdict.FITS, byTube.verdict());
        assertEquals(1, byTube.magnification(), 1e-6);
        assertTrue(kinds(byTube.reasons()).contains(FitAdvice.WithAttachment.class));

        LensFit byLens = WholeBag.fit(LIFE_SIZE.intent(),
                with(bag(fullFrame(24), ZOOM), Samples.closeUpLens(72, dioptres + 1e-6))).best();
        assertEquals(Verdict.FITS, byLens.verdict());
        assertEquals("Close-up lens", byLens.camera().attachment().name());
    }

    @Test
    void leavesTheAttachmentOffWhatALensTakesByItself() {
        LensFit best = WholeBag.fit(FIFTY.intent(), with(bag(fullFrame(24), ZOOM), Samples.tube(12))).best();
        assertNull(best.camera().attachment());
        List<LensFit> tried = WholeBag.fit(FIFTY.intent(), with(bag(fullFrame(24), ZOOM), Samples.tube(12))).tried();
        assertEquals(Verdict.CANNOT, tried.get(1).verdict());
        assertTrue(kinds(tried.get(1).reasons()).contains(FitAdvice.AttachmentTooClose.class));
    }

    @Test
    void asksForTheStepUpRingThatIsMissing() {
        ShotFit fit = WholeBag.fit(LIFE_SIZE.polarised().intent(), with(bag(fullFrame(24), MACRO), Samples.POLARISER));
        assertEquals(Verdict.COMPROMISE, fit.best().verdict());
        assertEquals(72, Samples.the(HelpAdvice.HelpStepUpRing.class, fit.helps()).thread());
    }

    @Test
    void asksForASupportWhereNothingHoldsTheCamera() {
        ShotFit handHeld = WholeBag.fit(FIFTY.intent(), bag(fullFrame(24), ZOOM));
        assertEquals(List.of(HelpAdvice.HelpSupport.class), kinds(handHeld.helps()));
        assertTrue(WholeBag.fit(FIFTY.intent(), with(bag(fullFrame(24), ZOOM), Samples.LEGS)).helps().isEmpty());
    }

    @Test
    void saysThatThereIsNoCamera() {
        Lens other = new Lens("Other make", "B", null, 50, 50, 2, 2, null, 0.4, null, null, 0, null);
        ShotFit fit = WholeBag.fit(FIFTY.intent(), bag(fullFrame(24), other));
        assertNull(fit.best());
        assertEquals(List.of(HelpAdvice.NoCamera.class), kinds(fit.helps()));
    }

    @Test
    void putsTheBestFirstAndEqualsInTheOrderOfTheBag() {
        ShotFit fit = WholeBag.fit(FIFTY.intent(), bag(fullFrame(24), prime(85), prime(35), prime(50), ZOOM));
        assertEquals(List.of("Prime 50.0", "Short zoom", "Prime 35.0", "Prime 85.0"),
                fit.tried().stream().map(tried -> tried.camera().lens().name()).toList());
        assertEquals(fit, WholeBag.fit(FIFTY.intent(), bag(fullFrame(24), prime(85), prime(35), prime(50), ZOOM)));
        Camera camera = fit.best().camera();
        assertEquals(Craft.pixels(camera).stops(), fit.best().penalty(), 1e-9, "the body alone");
    }
}
