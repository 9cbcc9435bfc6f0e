package understorey.optics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class PolarisationTest {

    private static final double WATER = Polarisation.WATER_INDEX;

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/brewster.csv")
    void standsAtThePublishedBrewsterAngle(double index, Double printedDeg, double toTwoPlacesDeg, double grazingDeg) {
        double brewsterDeg = Polarisation.brewsterDeg(index);
        assertEquals(toTwoPlacesDeg, brewsterDeg, 0.005);
        if (printedDeg != null) {
            assertEquals(printedDeg, brewsterDeg, 0.5);
        }
        assertEquals(0, Polarisation.reflectanceP(brewsterDeg, index), 1e-15);
        assertEquals(1, Polarisation.sheenShare(grazingDeg, index), 1e-5);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/sky-polarisation.csv")
    void polarisesTheSkyAsRayleighsLawSays(double fromSunDeg, double shareOfMost) {
        assertEquals(0.8 * shareOfMost, Polarisation.skyDegree(fromSunDeg), 0.8 * 0.0001);
        assertEquals(shareOfMost, Polarisation.skyDegree(fromSunDeg) / Polarisation.skyDegree(90), 0.001);
    }

    /** Worked by hand: 1 − P of 0.2, 0.52 and 1 leaves so many stops. */
    @Test
    void darkensTheSkyByWhatPolarisationLeaves() {
        assertEquals(2.32193, Polarisation.skyStops(90), 1e-5);
        assertEquals(0.94342, Polarisation.skyStops(60), 1e-5);
        assertEquals(0, Polarisation.skyStops(0), 1e-12);
        assertEquals(0, Polarisation.skyStops(180), 1e-12);
    }

    /** The mean of Rs and Rp for water, per cent; from memory, as physics tables give it to about a tenth. */
    @ParameterizedTest
    @CsvSource({"0,2.0", "60,6.0", "70,13.4", "80,34.8", "90,100"})
    void mirrorsOnWaterWhatTablesSay(double incidenceDeg, double percent) {
        double s = Polarisation.reflectanceS(incidenceDeg, WATER);
        double p = Polarisation.reflectanceP(incidenceDeg, WATER);
        assertEquals(percent, 50 * (s + p), 0.11);
    }

    /** Identities of Fresnel's equations: ((n − 1)/(n + 1))² at the normal, and Rp = Rs² at 45°. */
    @Property
    void keepsTheIdentitiesOfFresnelsEquations(@ForAll @DoubleRange(min = 1.01, max = 3) double index) {
        double straight = (index - 1) * (index - 1) / ((index + 1) * (index + 1));
        assertEquals(straight, Polarisation.reflectanceS(0, index), 1e-12);
        assertEquals(straight, Polarisation.reflectanceP(0, index), 1e-12);
        double s = Polarisation.reflectanceS(45, index);
        assertEquals(s * s, Polarisation.reflectanceP(45, index), 1e-12);
    }

    @Property
    void takesHalfOfTheSheenAtLeastAndMostAtTheBrewsterAngle(@ForAll @DoubleRange(min = 0, max = 90) double grazingDeg) {
        double share = Polarisation.sheenShare(grazingDeg, WATER);
        assertTrue(share >= 0.5 - 1e-9 && share <= 1);
        assertTrue(share <= Polarisation.sheenShare(90 - Polarisation.brewsterDeg(WATER), WATER));
        assertEquals(0.5, Polarisation.sheenShare(0, WATER), 1e-9);
        assertEquals(0.5, Polarisation.sheenShare(90, WATER), 1e-9);
    }

    @Property
    void darkensAlikeOnBothSidesOfTheBand(@ForAll @DoubleRange(min = 0, max = 90) double fromBandDeg) {
        double stops = Polarisation.skyStops(90 + fromBandDeg);
        assertEquals(stops, Polarisation.skyStops(90 - fromBandDeg), 1e-9);
        assertTrue(stops <= Polarisation.skyStops(90) && stops >= 0);
    }
}
