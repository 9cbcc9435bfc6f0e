package understorey.yaml.value;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SpanTest {

    @ParameterizedTest
    @CsvSource({"50 mm, 50, 50", "24-70 mm, 24, 70", "24–70mm, 24, 70", "24 mm - 70 mm, 24, 70", "3 in, 76.2, 76.2"})
    void readsFocalLengths(String written, double from, double to) {
        Span span = Span.focal(written);
        assertNull(span.fault());
        assertEquals(from, span.from());
        assertEquals(to, span.to());
    }

    @ParameterizedTest
    @CsvSource({"f/4, 4, 4", "f/1.8, 1.8, 1.8", "f4, 4, 4", "F/4, 4, 4", "f/4-6.3, 4, 6.3", "f/4–f/6.3, 4, 6.3"})
    void readsApertures(String written, double from, double to) {
        Span span = Span.aperture(written);
        assertNull(span.fault());
        assertEquals(from, span.from());
        assertEquals(to, span.to());
    }

    @ParameterizedTest
    @ValueSource(strings = {"70-24 mm", "24-70", "24-", "mm", "24-70-200 mm", "24 70 mm -"})
    void refusesOtherFocalLengths(String written) {
        assertNotNull(Span.focal(written).fault());
    }

    @ParameterizedTest
    @ValueSource(strings = {"4", "f/", "f/x", "f/6.3-4", "1/4", "f/1,8", "-", "f-4"})
    void refusesOtherApertures(String written) {
        assertNotNull(Span.aperture(written).fault());
    }

    @Test
    void saysHowToWriteABareFNumber() {
        assertEquals("write f/4", Span.aperture("4").help());
        assertEquals("write f/1.8", Span.aperture("f/1,8").help());
    }
}
