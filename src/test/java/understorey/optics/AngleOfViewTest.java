package understorey.optics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
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

    /** A corner lies at atan(18 / 50) aside and, seen along that bearing, at atan(12 / hypot(50, 18)) up. */
    @Test
    void holdsWhatLiesWithinItsFrame() {
        AngleOfView view = AngleOfView.of(50, 36, 24);
        double asideDeg = Math.toDegrees(Math.atan(18 / 50.0));
        double upDeg = Math.toDegrees(Math.atan(12 / Math.hypot(50, 18)));
        assertTrue(view.holds(asideDeg - 0.01, upDeg - 0.01, 0));
        assertTrue(view.holds(0.01 - asideDeg, 0.01 - upDeg, 0));
        assertFalse(view.holds(asideDeg + 0.01, 0, 0));
        assertFalse(view.holds(0, view.verticalDeg() / 2 + 0.01, 0));
        assertFalse(view.holds(180, 0, 0));
    }

    @Test
    void losesTheSunOverheadWhenTiltedDown() {
        AngleOfView view = AngleOfView.of(50, 36, 24);
        double halfDeg = view.verticalDeg() / 2;
        assertTrue(view.holds(0, halfDeg - 5.01, 5));
        assertFalse(view.holds(0, halfDeg - 4.99, 5));
        assertTrue(view.holds(0, halfDeg + 4.99, -5));
        assertTrue(view.holds(180, 85, -90), "straight up, behind the head");
    }
}
