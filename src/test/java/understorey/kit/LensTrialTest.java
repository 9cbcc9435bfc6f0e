package understorey.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.ZOOM;
import static understorey.Samples.bag;
import static understorey.Samples.fullFrame;
import static understorey.Samples.kinds;
import static understorey.Samples.picture;
import static understorey.Samples.prime;
import static understorey.Samples.the;

import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.advice.FitAdvice;
import understorey.plan.Bag;
import understorey.plan.Sharp;

class LensTrialTest {

    private static LensFit best(Samples.Picture picture, Bag bag) {
        return WholeBag.fit(picture.intent(), bag).best();
    }

    /** US Army SS0507 prints N = f²/(c·H) as H = f²/(N·c): sharp from H/2 on needs the focus at H. */
    @Test
    void stopsDownUntilTheRangeIsSharp() {
        LensFit fit = best(picture("a").equivalent(50).sharp(5, Double.POSITIVE_INFINITY), bag(fullFrame(24), prime(50)));
        assertEquals(10, fit.focusM(), 1e-9);
        assertEquals(2500 / (fit.circleOfConfusionMm() * (10_000 - 50)), fit.fNumberNeeded(), 1e-9);
        assertEquals(Verdict.FITS, fit.verdict());
    }

    @Test
    void cannotHoldAHopelessDepthWithALensThatCannotStackIt() {
        LensFit fit = best(picture("a").equivalent(70).sharp(0.4, Double.POSITIVE_INFINITY), bag(fullFrame(24), ZOOM));
        assertEquals(Verdict.COMPROMISE, fit.verdict());
        assertTrue(kinds(fit.reasons()).contains(FitAdvice.DepthShort.class));
        LensFit phone = best(picture("a").equivalent(25).sharp(0.05, Double.POSITIVE_INFINITY), bag(Samples.phone()));
        assertEquals(Verdict.CANNOT, phone.verdict());
        assertTrue(kinds(phone.reasons()).contains(FitAdvice.DepthFixed.class));
    }

    @Test
    void doesNotHoldAgainstALensADepthThatNobodyAskedFor() {
        Bag tele = bag(fullFrame(24), prime(135));
        LensFit proposed = best(picture("a").equivalent(135), tele);
        Sharp.Range range = (Sharp.Range) picture("a").equivalent(135).intent().sharp();
        assertEquals(Verdict.FITS, proposed.verdict(), () -> range + " " + kinds(proposed.reasons()));
    }

    @Test
    void compromisesOnADepthThatIsNearlyThere() {
        LensFit fit = best(picture("a").equivalent(70).sharp(2, Double.POSITIVE_INFINITY), bag(fullFrame(24), ZOOM));
        assertEquals(Verdict.COMPROMISE, fit.verdict());
        assertTrue(fit.fNumberNeeded() > fit.fNumberUseful());
    }

    @Test
    void compromisesOnAnyDepthCloseUp() {
        LensFit fit = best(picture("a").wide(0.036).deep(0.01), bag(fullFrame(24), Samples.MACRO));
        assertEquals(Verdict.COMPROMISE, fit.verdict());
        assertTrue(kinds(fit.reasons()).contains(FitAdvice.DepthShort.class));
    }

    @Test
    void focusesWhereTheLensStillCanAndCountsTheBlurFromThere() {
        LensFit fit = best(picture("a").equivalent(50).sharp(0.2, 0.3), bag(fullFrame(24), prime(50)));
        assertTrue(kinds(fit.reasons()).contains(FitAdvice.TooNear.class));
        assertTrue(fit.verdict() != Verdict.FITS);
        assertTrue(fit.focusM() > 0.3);
        double blurAtNearMm = 2500 / fit.fNumberNeeded() * (fit.focusM() * 1000 - 200)
                / (200 * (fit.focusM() * 1000 - 50));
        assertEquals(fit.circleOfConfusionMm(), blurAtNearMm, 1e-6);
    }

    @Test
    void callsThePhonesApertureFixed() {
        LensFit fit = best(picture("a").equivalent(25).sharp(1, Double.POSITIVE_INFINITY), bag(Samples.phone()));
        assertTrue(kinds(fit.reasons()).contains(FitAdvice.DepthFixed.class));
        assertEquals(1.8, fit.fNumberUseful());
    }

    /** 60 cm at 150 dots an inch are 3543 dots across, 8.37 Mpx at 3:2: common practice, no source. */
    @Test
    void findsAPrintSoftForWantOfPixels() {
        Samples.Picture picture = picture("a").equivalent(50).sharp(10, 40).print(0.6);
        LensFit few = best(picture, bag(fullFrame(8), ZOOM));
        assertEquals(Verdict.COMPROMISE, few.verdict());
        assertEquals(8.37, the(FitAdvice.PrintSoft.class, few.reasons()).needed(), 0.005);
        assertFalse(kinds(best(picture, bag(fullFrame(9), ZOOM)).reasons()).contains(FitAdvice.PrintSoft.class));
    }

    /** 0.48 mm at arm's length on a print of 1.2 m, 33 times the sensor: half the circle of a print seen whole. */
    @Test
    void asksForMoreDepthInALargePrint() {
        LensFit whole = best(picture("a").equivalent(50).sharp(10, 40), bag(fullFrame(24), ZOOM));
        LensFit large = best(picture("a").equivalent(50).sharp(10, 40).print(1.2), bag(fullFrame(24), ZOOM));
        assertEquals(0.0144, large.circleOfConfusionMm(), 1e-9);
        assertEquals(whole.fNumberNeeded() * whole.circleOfConfusionMm() / 0.0144, large.fNumberNeeded(), 1e-6);
    }
}
