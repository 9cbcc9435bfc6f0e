package understorey.optics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class FlowerLayerTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/flower-layer.csv")
    void leavesAsMuchGroundBareAsTabled(double areaIndex, double grazingDeg, double spherical, double flat) {
        assertEquals(spherical, bareShare(areaIndex, FlowerLayer.SPHERICAL, grazingDeg), 1e-4);
        assertEquals(flat, bareShare(areaIndex, projection(3, grazingDeg), grazingDeg), 1e-4);
    }

    /** The same law for the sun through leaves: Campbell and Norman 1998, ch. 15, worked from the formula. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/canopy-beam.csv")
    void isTheLawOfLightThroughLeaves(double pai, double at0, double at30, double at45, double at60, double at70) {
        assertEquals(at0, bareShare(pai, 0.5, 90), 2e-5);
        assertEquals(at30, bareShare(pai, 0.5, 60), 2e-5);
        assertEquals(at45, bareShare(pai, 0.5, 45), 2e-5);
        assertEquals(at60, bareShare(pai, 0.5, 30), 2e-5);
        assertEquals(at70, bareShare(pai, 0.5, 20), 2e-5);
    }

    private static double bareShare(double areaIndex, double projection, double grazingDeg) {
        return FlowerLayer.bare(projection, areaIndex / Math.sin(Math.toRadians(grazingDeg)));
    }

    /**
     * Ellipsoidal angles, G = K·sin ε with K = √(x² + cot²ε) / Λ, exact for x above 1: Campbell 1990, eqs 12-13 (as
     * cited in public programs).
     */
    private static double projection(double x, double grazingDeg) {
        double e = Math.sqrt(1 - 1 / (x * x));
        double lambda = x + Math.log((1 + e) / (1 - e)) / (2 * e * x);
        double sine = Math.sin(Math.toRadians(grazingDeg));
        return Math.sqrt(x * x * sine * sine + 1 - sine * sine) / lambda;
    }

    @Test
    void leavesAllGroundBareWithoutFlowers() {
        assertEquals(1, bareShare(0, 0.5, 3), 0);
    }

    @ParameterizedTest
    @CsvSource({"0,1,60", "0.3,-0.1,60", "0.3,1,0", "NaN,1,60", "0.3,NaN,60"})
    void refusesWhatIsNoLayer(double headsM, double areaIndex, double farM) {
        assertThrows(IllegalArgumentException.class, () -> new FlowerLayer(headsM, areaIndex, farM));
    }
}
