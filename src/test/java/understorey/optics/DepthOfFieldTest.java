package understorey.optics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class DepthOfFieldTest {

    private static final double INCH = 25.4;
    private static final double FOOT = 304.8;

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/depth-of-field-published.csv")
    void agreesWithPrintedExamplesWithinOnePercent(double focalIn, double fNumber, double circleIn, double focusFt,
                                                   double hyperfocalFt, double nearFt, Double farFt) {
        DepthOfField sharp = DepthOfField.of(focalIn * INCH, fNumber, circleIn * INCH, focusFt * FOOT);
        assertEquals(hyperfocalFt, sharp.hyperfocalMm() / FOOT, hyperfocalFt * 0.01);
        assertEquals(nearFt, sharp.nearMm() / FOOT, nearFt * 0.01);
        assertFar(farFt, sharp.farMm() / FOOT, 0.01);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/depth-of-field-thin-lens.csv")
    void agreesWithTheThinLensForms(double focalMm, double fNumber, double cocMm, double subjectMm, double hyperfocalMm,
                                    double nearMm, Double farMm, double magnification, double workingFNumber) {
        DepthOfField sharp = DepthOfField.of(focalMm, fNumber, cocMm, subjectMm);
        assertEquals(hyperfocalMm, sharp.hyperfocalMm(), hyperfocalMm * 1e-5);
        assertEquals(nearMm, sharp.nearMm(), nearMm * 1e-5);
        assertFar(farMm, sharp.farMm(), 1e-5);
        double m = ThinLens.magnification(focalMm, subjectMm);
        assertEquals(magnification, m, 1e-6);
        assertEquals(workingFNumber, fNumber * (1 + m), 0.0006);
    }

    private static void assertFar(Double expected, double actual, double share) {
        if (expected == null) {
            assertEquals(Double.POSITIVE_INFINITY, actual);
        } else {
            assertEquals(expected, actual, expected * share);
        }
    }

    /** Lens FAQ, item 11: at an eighth of the hyperfocal distance a ninth before and a seventh behind (simple form). */
    @Test
    void reachesANinthBeforeAndASeventhBehindAtAnEighthOfTheHyperfocal() {
        double subjectMm = DepthOfField.hyperfocalMm(50, 2, 0.03) / 8;
        DepthOfField sharp = DepthOfField.of(50, 2, 0.03, subjectMm);
        assertEquals(8 / 9.0, sharp.nearMm() / subjectMm, 0.002);
        assertEquals(8 / 7.0, sharp.farMm() / subjectMm, 0.002);
    }

    @Property
    void reachesFromHalfTheHyperfocalToInfinity(@ForAll @DoubleRange(min = 4, max = 600) double focalMm,
                                                @ForAll @DoubleRange(min = 1.4, max = 32) double fNumber) {
        double hyperfocalMm = DepthOfField.hyperfocalMm(focalMm, fNumber, 0.02);
        DepthOfField sharp = DepthOfField.of(focalMm, fNumber, 0.02, hyperfocalMm);
        assertEquals(hyperfocalMm / 2, sharp.nearMm(), hyperfocalMm * 1e-9);
        assertEquals(Double.POSITIVE_INFINITY, sharp.farMm());
    }

    @Property
    void neverLosesDepthByStoppingDown(@ForAll @DoubleRange(min = 4, max = 600) double focalMm,
                                       @ForAll @DoubleRange(min = 1.4, max = 22) double fNumber,
                                       @ForAll @DoubleRange(min = 1, max = 4) double times,
                                       @ForAll @DoubleRange(min = 1.5, max = 5000) double focalLengthsAway) {
        DepthOfField open = DepthOfField.of(focalMm, fNumber, 0.03, focalMm * focalLengthsAway);
        DepthOfField stopped = DepthOfField.of(focalMm, fNumber * times, 0.03, focalMm * focalLengthsAway);
        assertTrue(stopped.nearMm() <= open.nearMm());
        assertTrue(stopped.farMm() >= open.farMm());
        assertTrue(stopped.depthPerMm() >= open.depthPerMm());
    }

    @Property
    void dependsOnlyOnTheProductOfFNumberAndCircle(@ForAll @DoubleRange(min = 0.5, max = 2) double times) {
        DepthOfField one = DepthOfField.of(90, 8, 0.02, 1200);
        DepthOfField other = DepthOfField.of(90, 8 * times, 0.02 / times, 1200);
        assertEquals(one.nearMm(), other.nearMm(), 1e-6);
        assertEquals(one.farMm(), other.farMm(), 1e-6);
    }

    @Test
    void growsEvenAboutTheSubjectAsMagnificationGrows() {
        DepthOfField distant = DepthOfField.of(100, 8, 0.03, 10_000);
        DepthOfField lifeSize = DepthOfField.of(100, 8, 0.03, 200);
        assertTrue((distant.farMm() - 10_000) / (10_000 - distant.nearMm()) > 1.5);
        assertEquals(1, (lifeSize.farMm() - 200) / (200 - lifeSize.nearMm()), 0.01);
        assertEquals(lifeSize.farMm() - lifeSize.nearMm(), lifeSize.depthMm());
    }

    /** 1/near - 1/far by the thin-lens forms: 2 N c (1 - f/s) / f^2, whether or not the far limit is infinite. */
    @Test
    void isNearlyAsDeepInDioptresWhereverItIsFocused() {
        for (double subjectMm : new double[] {1000, 3000, 9000}) {
            assertEquals(2 * 8 * 0.03 * (1 - 50 / subjectMm) / 2500,
                    DepthOfField.of(50, 8, 0.03, subjectMm).depthPerMm(), 1e-9);
        }
        DepthOfField beyond = DepthOfField.of(50, 8, 0.03, 20_000);
        assertEquals(1 / beyond.nearMm(), beyond.depthPerMm());
    }

    @Test
    void reachesInwardToTheSpanWhenFocusedAtInfinity() {
        DepthOfField sharp = DepthOfField.of(50, 8, 0.03, Double.POSITIVE_INFINITY);
        assertEquals(sharp.hyperfocalMm() - 50, sharp.nearMm(), 1e-9);
        assertEquals(Double.POSITIVE_INFINITY, sharp.farMm());
    }

    @Test
    void refusesASubjectWithinTheFocalLength() {
        assertThrows(IllegalArgumentException.class, () -> DepthOfField.of(50, 8, 0.03, 50));
        assertThrows(IllegalArgumentException.class, () -> DepthOfField.of(50, 0, 0.03, 500));
        assertThrows(IllegalArgumentException.class, () -> DepthOfField.of(50, 8, 0.03, Double.NaN));
    }
}
