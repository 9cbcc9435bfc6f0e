package understorey.optics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class SharpnessTest {

    /** US Navy NAVEDTRA 14209: sharp from 9.8 ft to 10.2 ft wants a focus of 10 ft. */
    @Test
    void focusesWhereThePrintedExampleDoes() {
        assertEquals(10, Sharpness.focusMm(9.8, 10.2), 0.01);
    }

    @Test
    void focusesAtTwiceTheNearLimitForInfinity() {
        assertEquals(5000, Sharpness.focusMm(2500, Double.POSITIVE_INFINITY));
        assertEquals(5000, Sharpness.focusMm(2500, 1e12), 0.01);
    }

    /** US Army course SS0507: f/8 with 2 in and a circle of 0.002 in holds 10.4 ft to infinity. */
    @Test
    void stopsDownAsFarAsThePrintedExample() {
        double fNumber = Sharpness.fNumberForRange(2, 0.002, 10.4 * 12, Double.POSITIVE_INFINITY);
        assertEquals(8, fNumber, 8 * 0.015);
    }

    @Property
    void holdsARangeWithTheSmallestFNumberThatCan(@ForAll @DoubleRange(min = 4, max = 600) double focalMm,
                                                  @ForAll @DoubleRange(min = 1.5, max = 1000) double focalLengthsAway,
                                                  @ForAll @DoubleRange(min = 1.01, max = 50) double farOverNear) {
        double nearMm = focalMm * focalLengthsAway;
        double farMm = farOverNear > 40 ? Double.POSITIVE_INFINITY : nearMm * farOverNear;
        double fNumber = Sharpness.fNumberForRange(focalMm, 0.02, nearMm, farMm);
        double focusMm = Sharpness.focusMm(nearMm, farMm);
        assertTrue(covers(DepthOfField.of(focalMm, fNumber, 0.02, focusMm), nearMm, farMm));
        DepthOfField opener = DepthOfField.of(focalMm, fNumber * 0.999, 0.02, focusMm);
        assertTrue(opener.nearMm() > nearMm && opener.farMm() < farMm);
    }

    /** No other focus does with less: moving it by a hundredth loses one end or the other. */
    @Test
    void losesAnEndWhenFocusedElsewhere() {
        double fNumber = Sharpness.fNumberForRange(35, 0.029, 1500, 6000);
        double focusMm = Sharpness.focusMm(1500, 6000);
        assertTrue(covers(DepthOfField.of(35, fNumber, 0.029, focusMm), 1500, 6000));
        assertFalse(covers(DepthOfField.of(35, fNumber, 0.029, focusMm * 1.01), 1500, 6000));
        assertFalse(covers(DepthOfField.of(35, fNumber, 0.029, focusMm * 0.99), 1500, 6000));
    }

    /** Worked out from 2 N c (1 + m) / m^2 (secondary copies); the exact pairs are 5.138 mm and 12.162 mm. */
    @Test
    void holdsTheWorkedDepthsCloseUp() {
        assertEquals(5.137, Sharpness.closeUpDepthMm(8, 0.03, 0.355932), 0.0005);
        assertEquals(12.16, Sharpness.closeUpDepthMm(16, 0.019, 0.25), 1e-9);
        assertEquals(0.96, Sharpness.closeUpDepthMm(8, 0.03, 1), 1e-12);
        assertEquals(DepthOfField.of(105, 8, 0.03, 400).depthMm(), Sharpness.closeUpDepthMm(8, 0.03, 0.355932), 0.005);
        assertEquals(DepthOfField.of(100, 16, 0.019, 500).depthMm(), Sharpness.closeUpDepthMm(16, 0.019, 0.25), 0.005);
    }

    @Test
    void stopsDownForADepthCloseUp() {
        assertEquals(16, Sharpness.fNumberForDepth(12.16, 0.019, 0.25), 1e-9);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/f-number-for-focus-spread.csv")
    void balancesDefocusAndDiffractionAsThePrintedTable(double spreadMm, double fullFNumber, int tenths) {
        double printedStops = 2 * log2(fullFNumber) + tenths / 10.0;
        assertEquals(printedStops, 2 * log2(Sharpness.bestFNumber(spreadMm)), 0.15);
    }

    /** The spread by v = s f / (s - f) between the limits of sharpness. */
    @Property
    void balancesOverTheTravelBetweenNearAndFar(@ForAll @DoubleRange(min = 20, max = 300) double focalMm,
                                                @ForAll @DoubleRange(min = 4, max = 1000) double focalLengthsAway,
                                                @ForAll @DoubleRange(min = 2, max = 22) double fNumber) {
        double focusMm = focalMm * focalLengthsAway;
        DepthOfField sharp = DepthOfField.of(focalMm, fNumber, 0.0288, focusMm);
        Assume.that(Double.isFinite(sharp.farMm()));
        double spreadMm = image(focalMm, sharp.nearMm()) - image(focalMm, sharp.farMm());
        double m = ThinLens.magnification(focalMm, focusMm);
        assertEquals(Sharpness.bestFNumber(spreadMm) / (1 + m), Sharpness.balancedFNumber(fNumber, 0.0288, m),
                Sharpness.balancedFNumber(fNumber, 0.0288, m) * 0.002);
    }

    private static double image(double focalMm, double subjectMm) {
        return 1 / (1 / focalMm - 1 / subjectMm);
    }

    /** f/21.5 is where the Airy disc fills the circle of 36 x 24 mm: there nothing is left to weigh. */
    @Test
    void liesBetweenWhatTheRangeNeedsAndWhatDiffractionAllows() {
        double limit = Diffraction.largestUsefulFNumber(0.0288, 0);
        assertEquals(limit, Sharpness.balancedFNumber(limit, 0.0288, 0), limit * 0.01);
        for (double fNumber : new double[] {2.8, 8, 16, 32, 64}) {
            double balanced = Sharpness.balancedFNumber(fNumber, 0.0288, 0);
            assertTrue(balanced >= Math.min(fNumber, limit) && balanced <= Math.max(fNumber, limit) * 1.01);
        }
        assertEquals(0, Sharpness.balancedFNumber(0, 0.0288, 0));
    }

    private static boolean covers(DepthOfField sharp, double nearMm, double farMm) {
        return sharp.nearMm() <= nearMm * (1 + 1e-9) && sharp.farMm() >= farMm * (1 - 1e-9);
    }

    private static double log2(double value) {
        return Math.log(value) / Math.log(2);
    }

    @Test
    void findsTheLargestMagnificationThatHoldsADepth() {
        for (double magnification : new double[] {0.1, 0.5, 1, 2}) {
            double depthMm = Sharpness.closeUpDepthMm(8, 0.029, magnification);
            assertEquals(magnification, Sharpness.magnificationForDepth(depthMm, 8, 0.029), 1e-9);
        }
    }
}
