package understorey.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;
import static understorey.Samples.bag;
import static understorey.Samples.fullFrame;
import static understorey.Samples.picture;
import static understorey.Samples.prime;
import static understorey.Samples.with;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import understorey.Samples;
import understorey.advice.FitAdvice;
import understorey.plan.Bag;
import understorey.plan.Lens;

class LensFitTest {

    private static final Lens SUPERZOOM =
            new Lens("Superzoom", "A", null, 28, 300, 3.5, 6.3, 22.0, 0.5, 0.3, 67.0, 0, 500.0);

    private static LensFit best(Samples.Picture picture, Bag bag) {
        return WholeBag.fit(picture.intent(), bag).best();
    }

    /** B. Claff, Angle of View Values for Common Focal Lengths, 2006, on 24 × 36 mm. */
    @ParameterizedTest
    @CsvSource({"24, 73.7, 53.1, 84.1", "28, 65.5, 46.4, 75.4", "50, 39.6, 27.0, 46.8", "100, 20.4, 13.7, 24.4"})
    void seesWhatTheTableOfAnglesSays(double focalMm, double width, double height, double diagonal) {
        Samples.Picture far = picture("a").equivalent(focalMm).sharp(1000, Double.POSITIVE_INFINITY);
        LensFit fit = best(far, bag(fullFrame(24), prime(focalMm)));
        assertEquals(width, fit.view().horizontalDeg(), 0.1);
        assertEquals(height, fit.view().verticalDeg(), 0.1);
        assertEquals(diagonal, fit.view().diagonalDeg(), 0.1);
        assertEquals(height, best(far.upright(), bag(fullFrame(24), prime(focalMm))).view().horizontalDeg(), 0.1);
    }

    /** The same table; a zoom that magnifies 0.3 at its long end is no wider for it at any marked length. */
    @ParameterizedTest
    @CsvSource({"28, 65.5, 46.4, 75.4", "50, 39.6, 27.0, 46.8", "100, 20.4, 13.7, 24.4", "200, 10.3, 6.9, 12.3",
        "300, 6.9, 4.6, 8.2"})
    void seesWhatTheTableOfAnglesSaysThroughALongZoom(double focalMm, double width, double height, double diagonal) {
        LensFit fit = best(picture("a").equivalent(focalMm).sharp(1000, Double.POSITIVE_INFINITY),
                bag(fullFrame(24), SUPERZOOM));
        assertEquals(width, fit.view().horizontalDeg(), 0.1);
        assertEquals(height, fit.view().verticalDeg(), 0.1);
        assertEquals(diagonal, fit.view().diagonalDeg(), 0.1);
    }

    /**
     * Sharp from 1 to 12 m, focused at 2·12·1 / 13 = 1.846 m (US Navy NAVEDTRA 14209): 36 mm of sensor times
     * (1846 − 28) / 28 is 2.338 m, and the hyperfocal distance 28² / (5.6 · 0.02884) + 28 mm.
     */
    @Test
    void framesAndHoldsAtTheShortEndWhatTheMarkedFocalLengthDoes() {
        LensFit fit = best(picture("a").equivalent(28).sharp(1, 12), bag(fullFrame(24), SUPERZOOM));
        assertEquals(2.338, fit.frameWidthM(), 0.001);
        assertEquals(4.882, fit.depthOfField(5.6, fit.focusM() * 1000).hyperfocalMm() / 1000, 0.005);
        assertEquals(65, fit.view().horizontalDeg(), 0.5);
    }

    /** The same table: at life size 50 mm stand as far from the sensor as 100 mm at infinity. */
    @Test
    void seesHalfAsMuchAtLifeSize() {
        Lens macro = new Lens("Old macro", "A", null, 50, 50, 2.8, 2.8, null, 0.2, 1.0, null, 0, null);
        assertEquals(20.4, best(picture("a").wide(0.036), bag(fullFrame(24), macro)).view().horizontalDeg(), 0.1);
    }

    @Test
    void usesThePartOfTheSensorThatTheCropLeaves() {
        LensFit fit = best(picture("a").equivalent(50).sharp(10, 40), bag(fullFrame(24), prime(25)));
        assertEquals(18, fit.usedWidthMm(), 1e-9);
        assertEquals(12, fit.usedHeightMm(), 1e-9);
        assertEquals(Math.hypot(18, 12) / 1500, fit.circleOfConfusionMm(), 1e-12);
        assertEquals(39.6, fit.view().horizontalDeg(), 0.15);
    }

    /** Thin lenses in contact: f / (1 + f·D). US Army SS0512: light is lost as the lens moves off, (1 + m)². */
    @Test
    void losesNoLightToACloseUpLens() {
        Lens plain = new Lens("Plain", "A", null, 50, 50, 2, 2, 22.0, 0.45, 0.15, 62.0, 0, null);
        LensFit fit = best(picture("a").wide(0.072).deep(0.001),
                with(bag(fullFrame(24), plain), Samples.closeUpLens(62, 10)));
        assertEquals(0.5, fit.magnification(), 1e-12);
        assertEquals(50 / 1.5, fit.actingFocalMm(), 1e-9);
        assertEquals(1.5, fit.closeUpTimes(), 1e-12);
        assertEquals(0, fit.closenessStops(), 1e-9);
        assertEquals(0.1, fit.distanceM(), 1e-9);
    }

    @Test
    void losesTwoStopsAtLifeSize() {
        assertEquals(2, best(picture("a").wide(0.036), bag(fullFrame(24), Samples.MACRO)).closenessStops(), 1e-9);
    }

    /** Working f-number N (1 + m): f/8 at life size works as f/16 (teaching texts); the disc of f/21.5 fills the circle. */
    @Test
    void countsTheExtensionInLightAndInDiffraction() {
        LensFit fit = best(picture("a").wide(0.036).deep(0.02), bag(fullFrame(24), Samples.MACRO));
        assertEquals(16, fit.workingFNumber(8), 1e-9);
        assertEquals(fit.circleOfConfusionMm() / (2.44 * 550e-6) / 2, fit.fNumberUnsoftened(), 1e-9);
        assertEquals(1.5, fit.fNumberUseful() / fit.fNumberUnsoftened(), 1e-9);
    }

    /** √(375 · spread) (Hansma's rule, from memory), the spread 2 N c of a view that the f-number N just holds. */
    @Test
    void balancesDefocusAndDiffractionOfAView() {
        LensFit fit = best(picture("a").equivalent(50).sharp(8, 40), bag(fullFrame(24), prime(50)));
        double spreadMm = 2 * fit.fNumberNeeded() * fit.circleOfConfusionMm();
        assertEquals(Math.sqrt(375 * spreadMm), fit.fNumberBalanced(), fit.fNumberBalanced() * 0.01);
    }

    @Test
    void namesWhatSpeaksAgainstIt() {
        assertInstanceOf(FitAdvice.FocalShort.class,
                best(picture("a").equivalent(50).sharp(10, 40), bag(fullFrame(24), prime(25))).objection());
        assertNull(best(picture("a").equivalent(50).sharp(10, 40), bag(fullFrame(24), prime(50))).objection());
    }
}
