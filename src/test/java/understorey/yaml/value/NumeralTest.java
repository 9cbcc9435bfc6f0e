package understorey.yaml.value;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumeralTest {

    @ParameterizedTest
    @CsvSource({"0, 0", "20.5, 20.5", "-3.548, -3.548", "−2, -2", "+3, 3", ".5, 0.5", "5., 5", "007, 7"})
    void readsPlainNumbers(String written, double value) {
        assertEquals(value, Numeral.of(written));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "-", ".", "1e3", "0x1F", "NaN", "Infinity", "1 000", "1_000", "1,5", "1.2.3", "٣",
        "123456789012345678901234567890"})
    void refusesTheRest(String written) {
        assertNull(Numeral.of(written));
    }

    @Test
    void showsNoMoreDecimalsThanNeeded() {
        assertEquals("8", Numeral.show(8.0));
        assertEquals("-0.5", Numeral.show(-0.5));
        assertEquals("0.0001", Numeral.show(0.0001));
        assertEquals("0.3333", Numeral.show(1 / 3.0));
        assertEquals("1000000", Numeral.show(1e6));
        assertEquals("100000000000000000000000", Numeral.show(99999999999999999999.0 * 1000));
    }

    @Test
    void putsAPointForACommaBetweenDigitsOnly() {
        assertEquals("0.38 m", Numeral.withPoint("0,38 m"));
        assertNull(Numeral.withPoint("one, two"));
    }

    @Property(tries = 200)
    void readsWhatItShows(@ForAll @DoubleRange(min = -1e6, max = 1e6) double value) {
        assertEquals(value, Numeral.of(Numeral.show(value)), 0.00005);
    }
}
