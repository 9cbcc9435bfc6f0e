package understorey.light.illuminance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Illuminances against the IES practice and the twilight tables. */
class DaylightTest {

    private static final double LUX_PER_FOOTCANDLE = 10.76391;
    private static final int ANY_DAY = 100;

    @ParameterizedTest
    @CsvSource({"2,131.835", "80,128.480", "172,123.265", "355,131.743"})
    void followsTheEarthRoundTheSun(int dayOfYear, double klx) {
        // IES 1984, worked from its formula.
        assertEquals(klx, Daylight.extraterrestrialLux(dayOfYear) / 1000, 0.001);
    }

    /** Kasten and Young, Applied Optics 28 (1989) 4735, worked from its formula; three of these stand in pvlib's tests. */
    @ParameterizedTest
    @CsvSource({"90,0.9997", "30,1.9943", "15,3.8129", "10,5.5860", "5,10.306", "0,37.920"})
    void passesAsMuchAirAsKastenAndYoungHaveIt(double altitudeDeg, double airMass) {
        assertEquals(airMass, Daylight.airMass(altitudeDeg), 0.001);
    }

    /**
     * The table holds 127.5 klx outside the atmosphere, so the direct part is brought to that, and 1 / sin h for the
     * air mass, so its direct part is brought to that of Kasten and Young: from 30° up they differ by 0.15 %.
     */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/ies-daylight.csv")
    void agreesWithTheIesPractice(double altitudeDeg, double directNormal, double directLevel, double clearSky,
            double clearTotal, double partlyTotal, double cloudyTotal) {
        double sine = Math.sin(Math.toRadians(altitudeDeg));
        double air = Daylight.airMass(altitudeDeg) - 1 / sine;
        double clear = Math.exp(-0.21 * air);
        double partly = Math.exp(-0.80 * air);
        if (altitudeDeg >= 30) {
            assertEquals(1, clear, 0.0015);
        }
        assertKilolux(directNormal * clear, mean(altitudeDeg, 0));
        assertKilolux(directLevel * clear, mean(altitudeDeg, 2) * sine);
        assertKilolux(clearSky, Daylight.skyLux(altitudeDeg, 1));
        assertKilolux(directLevel * clear + clearTotal - directLevel, total(altitudeDeg, 0));
        double partlySky = 0.3 + 45 * sine;
        assertKilolux((partlyTotal - partlySky) * partly + partlySky, total(altitudeDeg, 4.5));
        assertKilolux(cloudyTotal, total(altitudeDeg, 8));
    }

    /** Seidelmann's table of sun and sky together; the IES practice is a mean of many skies, so within a stop. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.5, 1, 2, 3, 4, 5})
    void keepsToTheTwilightTableWhileTheSunIsLow(double altitudeDeg) {
        double both = total(altitudeDeg, 0);
        assertEquals(ExposureValue.ev100(Twilight.lux(altitudeDeg)), ExposureValue.ev100(both), 0.6);
        assertTrue(Daylight.skyLux(altitudeDeg + 0.1, 0) > Daylight.skyLux(altitudeDeg, 0));
    }

    private static double mean(double altitudeDeg, double okta) {
        return Daylight.directNormalLux(altitudeDeg, okta, ANY_DAY) * 127_500 / Daylight.extraterrestrialLux(ANY_DAY);
    }

    private static double total(double altitudeDeg, double okta) {
        return mean(altitudeDeg, okta) * Math.sin(Math.toRadians(altitudeDeg)) + Daylight.skyLux(altitudeDeg, okta);
    }

    private static void assertKilolux(double klx, double lux) {
        assertEquals(klx, lux / 1000, klx * 0.001);
    }

    /** IESNA Lighting Handbook, as quoted on the Radiance mailing list, 2003-10-16: clear summer solstice noon at 40° N. */
    @Test
    void gives8821FootcandlesInThePrintedExample() {
        double lux = Daylight.directNormalLux(73.45, 0, 172) * Math.sin(Math.toRadians(73.45));
        assertEquals(8821, lux / LUX_PER_FOOTCANDLE, 8821 * 0.002);
    }

    @Test
    void standsHalfWayBetweenTheSkiesHalfWayInOkta() {
        double between = (Daylight.skyLux(40, 2) + Daylight.skyLux(40, 4.5)) / 2;
        assertEquals(between, Daylight.skyLux(40, 3.25), 0.01);
        assertEquals(0.25, Daylight.directNormalLux(40, 7.125, 1) / Daylight.directNormalLux(40, 4.5, 1), 1e-9);
        assertEquals(0, Daylight.directNormalLux(40, 8, 1), 0);
        assertEquals(0, Daylight.directNormalLux(0, 0, 1), 0);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/twilight-illuminance.csv")
    void agreesWithTheTwilightTable(double altitudeDeg, double lux, double ev100) {
        assertEquals(lux, Twilight.lux(altitudeDeg), lux * 0.005);
        assertEquals(ev100, ExposureValue.ev100(Twilight.lux(altitudeDeg)), 0.01);
    }

    /** American Meteorological Society, Glossary of Meteorology, "twilight": ranges of a clear evening's illuminance. */
    @Test
    void agreesWithTheGlossaryOfMeteorology() {
        double sunset = Twilight.lux(-50 / 60.0);
        assertTrue(sunset >= 410 && sunset <= 585, "sunset " + sunset);
        assertTrue(Twilight.lux(-6) >= 2 && Twilight.lux(-6) <= 3.5);
        assertEquals(0.008, Twilight.lux(-12), 0.0005);
        assertEquals(6e-4, Twilight.lux(-18), 1e-4);
        assertEquals(Twilight.lux(-18), Twilight.lux(-40), 0);
    }

    /** Below the horizon the clear sky keeps within the 6 % by which the two sources meet there, down to the starlight. */
    @ParameterizedTest
    @ValueSource(doubles = {0, -1, -3, -6, -9})
    void fadesAsThePublishedTwilightDoes(double altitudeDeg) {
        assertEquals(1, Daylight.skyLux(altitudeDeg, 0) / (Twilight.lux(altitudeDeg) + 0.002), 0.06);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 3, 4.5, 6, 8})
    void doesNotJumpAtTheHorizon(double okta) {
        assertEquals(0, ExposureValue.ev100(Daylight.skyLux(0, okta)) - ExposureValue.ev100(Daylight.skyLux(-1e-6, okta)), 1e-3);
        assertEquals(0.002, Daylight.skyLux(-60, okta), 0.001);
    }
}
