package understorey.optics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class AngleOfViewTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/angle-of-view.csv")
    void agreesWithThePublishedTable(double focalMm, double widthMm, double heightMm,
                                     double horizontalDeg, double verticalDeg, double diagonalDeg) {
        AngleOfView view = AngleOfView.of(focalMm, widthMm, heightMm);
        assertEquals(horizontalDeg, view.horizontalDeg(), 0.1);
        assertEquals(verticalDeg, view.verticalDeg(), 0.1);
        assertEquals(diagonalDeg, view.diagonalDeg(), 0.1);
    }

    /** The image of a lens at life size lies 2f behind it: geometry. */
    @Test
    void seesAtLifeSizeWhatTwiceTheFocalLengthSeesAtInfinity() {
        AngleOfView closeUp = AngleOfView.of(50, 36, 24, 1);
        AngleOfView distant = AngleOfView.of(100, 36, 24);
        assertEquals(distant.horizontalDeg(), closeUp.horizontalDeg(), 1e-12);
        assertEquals(distant.diagonalDeg(), closeUp.diagonalDeg(), 1e-12);
    }

    /** Half the subject's width over its distance is half the sensor's over the image's: similar triangles. */
    @Test
    void coversTheSubjectWidthThatMagnificationTells() {
        double subjectMm = ThinLens.subjectMm(90, 0.5);
        double halfDeg = AngleOfView.of(90, 36, 24, 0.5).horizontalDeg() / 2;
        assertEquals(36 / 0.5, 2 * subjectMm * Math.tan(Math.toRadians(halfDeg)), 1e-9);
    }

    @Test
    void refusesALensWithoutFocalLength() {
        assertThrows(IllegalArgumentException.class, () -> AngleOfView.of(0, 36, 24));
        assertThrows(IllegalArgumentException.class, () -> AngleOfView.of(50, 36, 24, Double.NaN));
    }
}
