package understorey.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class BeaufortTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/beaufort.csv")
    void holdsFromLimitToLimit(int force, String name, double fromMs, double toMs) {
        for (double speedMs : new double[] {fromMs, (fromMs + toMs) / 2, toMs}) {
            assertEquals(name, Beaufort.of(speedMs).name());
            assertEquals(force, Beaufort.of(speedMs).force());
        }
        if (force > 0) {
            assertEquals(force - 1, Beaufort.of(fromMs - 0.001).force());
        }
    }
}
