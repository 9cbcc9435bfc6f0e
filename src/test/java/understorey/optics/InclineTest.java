package understorey.optics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InclineTest {

    /** Reda and Andreas, NREL/TP-560-34302, Table A5.1: incidence 25.187° on a slope of 30° turned 10° east of south. */
    @Test
    void meetsTheSunAsInTheSpaExample() {
        double cosine = Incline.incidence(30, 170, 194.340241, 90 - 50.111622);
        assertEquals(25.18700, Math.toDegrees(Math.acos(cosine)), 0.0001);
    }

    @Test
    void hasNoSunFromBehind() {
        assertEquals(0, Incline.incidence(30, 170, 350, 20), 0);
        assertEquals(Math.sin(Math.toRadians(40)), Incline.incidence(0, 170, 350, 40), 1e-12);
    }

    /** Apparent dips of a plane of 40° seen 0°, 30°, 60° and 90° from its dip: tables of structural geology, from memory. */
    @ParameterizedTest
    @CsvSource({"0,40", "30,36.0", "60,22.8", "90,0", "180,-40"})
    void risesAlongABearingAsTheApparentDipDoes(double offUphillDeg, double riseDeg) {
        assertEquals(riseDeg, Incline.riseDeg(40, 100, 280 + offUphillDeg), 0.05);
        assertEquals(riseDeg, Incline.riseDeg(40, 100, 280 - offUphillDeg), 0.05);
    }

    /** A wall faces half of the sky, level ground all of it. */
    @Test
    void facesLessSkyTheSteeperItIs() {
        assertEquals(1, Incline.skyShare(0), 0);
        assertEquals(0.75, Incline.skyShare(60), 1e-12);
        assertEquals(0.5, Incline.skyShare(90), 1e-12);
    }
}
