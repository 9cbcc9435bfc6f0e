package understorey.optics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BellowsTest {

    /**
     * US Army course SS0512: bellows 18 in on a 12 in lens, factor 2.25; an 8 in image of a 12 in original,
     * 2.78. A textbook chapter, doi 10.4324/9780080494012-22: 2 1/4 at half life size. Life size, 4: teaching texts.
     */
    @ParameterizedTest
    @CsvSource({"0.5, 2.25", "0.666667, 2.78", "1, 4", "0, 1"})
    void agreesWithPrintedFactors(double magnification, double factor) {
        assertEquals(factor, Bellows.factor(magnification), 0.005);
    }

    /** SS0512: 8 s become 18 s. */
    @Test
    void lengthensEightSecondsToEighteen() {
        assertEquals(18, 8 * Math.pow(2, Bellows.stops(0.5)), 1e-9);
    }

    /** Teaching texts: at life size 1/100 s becomes 1/25 s. */
    @Test
    void takesTwoStopsAtLifeSize() {
        assertEquals(2, Bellows.stops(1), 1e-12);
        assertEquals(0, Bellows.stops(0));
    }
}
