package understorey.light.illuminance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Exposure values against the standard table. */
class ExposureValueTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/ev-table.csv")
    void agreesWithTheStandardTable(double ev100, double lux) {
        assertEquals(ev100, ExposureValue.ev100(lux), Math.log(1.005) / Math.log(2));
    }
}
