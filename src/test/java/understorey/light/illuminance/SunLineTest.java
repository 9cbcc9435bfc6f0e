package understorey.light.illuminance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class SunLineTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/sun-line.csv")
    void isClearOfCloudsAsOftenAsTheTableSays(double okta, double altitudeDeg, double chance) {
        assertEquals(chance, SunLine.clear(okta, altitudeDeg), 0.005 + 1e-9);
    }

    /** A day's sunshine is taken at all altitudes: that of a sun at 30° is within 0.1 of it. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/sunshine-by-okta.csv")
    void agreesWithRecordedSunshine(double okta, double share) {
        assertEquals(share, SunLine.clear(okta, 30), 0.1);
    }
}
