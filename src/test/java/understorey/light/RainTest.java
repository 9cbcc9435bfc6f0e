package understorey.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Common practice, no source. */
class RainTest {

    @ParameterizedTest
    @CsvSource({"0, 1, 1", "0.4, 1, 1", "0.5, 1, 0.5", "1.5, 1, 0.35", "6, 1, 0.2", "0.5, 0.2, 0.9", "6, 0, 1"})
    void leavesLessOfAPictureTheMoreItRains(double rainMm, double chance, double left) {
        assertEquals(left, Rain.leaves(rainMm, chance), 1e-9);
        assertTrue(Rain.leaves(rainMm + 1, chance) <= left);
    }

    /** An unknown amount is no reason against a picture. */
    @Test
    void leavesAllWhereTheAmountIsUnknown() {
        assertEquals(1, Rain.leaves(Double.NaN, 1));
    }
}
