package understorey.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class HumidityTest {

    /** The two published sets of constants part by this much. */
    private static final double FITS_PART_C = 0.007;

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/dew-point.csv")
    void findsTheDewPointOfTheTable(double temperatureC, double percent, double dewPointC, double byWmoC) {
        double found = Humidity.dewPointC(temperatureC, percent / 100);
        assertEquals(dewPointC, found, 0.002);
        assertEquals(byWmoC, found, FITS_PART_C);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/saturation-vapour-pressure.csv")
    void saturatesAsTheTablesDo(double temperatureC, double hPa, double byWmoHpa, double tableHpa) {
        double found = Humidity.saturationHpa(temperatureC);
        assertEquals(hPa, found, 0.001);
        assertEquals(byWmoHpa, found, 0.001 * byWmoHpa);
        assertEquals(tableHpa, found, 0.0025 * tableHpa);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/relative-humidity.csv")
    void findsTheHumidityOfTheTable(double temperatureC, double dewPointC, double percent) {
        assertEquals(percent, 100 * Humidity.relative(temperatureC, dewPointC), 0.02);
    }

    @Property
    void leadsBackFromDewPointToHumidity(@ForAll @DoubleRange(min = -60, max = 60) double temperatureC,
            @ForAll @DoubleRange(min = 0.01, max = 1) double humidity) {
        double dewPointC = Humidity.dewPointC(temperatureC, humidity);
        assertEquals(humidity, Humidity.relative(temperatureC, dewPointC), 1e-9);
        assertTrue(dewPointC <= temperatureC + 1e-9);
    }

    @Property
    void leadsBackFromHumidityToDewPoint(@ForAll @DoubleRange(min = -60, max = 60) double temperatureC,
            @ForAll @DoubleRange(min = 0, max = 20) double spreadC) {
        double humidity = Humidity.relative(temperatureC, temperatureC - spreadC);
        assertEquals(temperatureC - spreadC, Humidity.dewPointC(temperatureC, humidity), 1e-9);
    }
}
