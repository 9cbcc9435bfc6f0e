package understorey.optics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class BackgroundBlurTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/background-blur.csv")
    void agreesWithTheWorkedDiscs(double focalMm, double fNumber, double subjectMm, Double pointMm, double discMm) {
        double point = pointMm == null ? Double.POSITIVE_INFINITY : pointMm;
        assertEquals(discMm, BackgroundBlur.discMm(focalMm, fNumber, subjectMm, point), discMm * 1e-4);
    }

    /** What the limits of sharpness mean. */
    @Test
    void equalsTheCircleOfConfusionAtBothLimits() {
        DepthOfField sharp = DepthOfField.of(85, 5.6, 0.0288, 3000);
        assertEquals(0.0288, BackgroundBlur.discMm(85, 5.6, 3000, sharp.nearMm()), 1e-9);
        assertEquals(0.0288, BackgroundBlur.discMm(85, 5.6, 3000, sharp.farMm()), 1e-9);
        assertEquals(0, BackgroundBlur.discMm(85, 5.6, 3000, 3000));
    }

    /** Far away the disc is m f / N: the entrance pupil times the magnification. */
    @Test
    void tendsToTheImageOfThePupil() {
        double m = ThinLens.magnification(105, 400);
        assertEquals(m * 105 / 8, BackgroundBlur.discMm(105, 8, 400, Double.POSITIVE_INFINITY), 1e-9);
        assertEquals(m * 105 / 8, BackgroundBlur.discMm(105, 8, 400, 1e9), 1e-5);
    }
}
