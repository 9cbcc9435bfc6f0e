package understorey.yaml.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class VisibleTest {

    @Test
    void leavesOrdinaryTextAlone() {
        String text = "Wälder, 6 °C – “ramsons” \uD83C\uDF3C \u00a0 אב";
        assertSame(text, Visible.line(text));
    }

    /** C0 and C1 controls (ECMA-48), line and paragraph separator, and the marks of UAX #9. */
    @ParameterizedTest
    @ValueSource(ints = {0, 7, 8, 9, 10, 13, 0x1b, 0x1f, 0x7f, 0x80, 0x85, 0x9b, 0x9f, 0x61c, 0x200e, 0x200f, 0x2028,
        0x2029, 0x202a, 0x202e, 0x2066, 0x2069, 0xd800, 0xdbff, 0xdc00, 0xdfff})
    void showsWhatSteersATerminal(int character) {
        String hex = String.format(java.util.Locale.ROOT, "%04x", character);
        assertEquals("a\\u" + hex + "b", Visible.line("a" + (char) character + "b"));
        assertEquals("\\u" + hex, Visible.line("" + (char) character));
    }

    @ParameterizedTest
    @ValueSource(ints = {' ', '~', 0xa0, 0x61b, 0x200d, 0x2010, 0x2027, 0x202f, 0x2065, 0x206a, 0xe000, 0xfffd})
    void leavesTheirNeighboursAlone(int character) {
        assertEquals("a" + (char) character + "b", Visible.line("a" + (char) character + "b"));
    }

    @Test
    void tellsHalfASurrogatePairFromAWholeOne() {
        assertEquals("\\ud83c\uD83C\uDF3C\\udf3c", Visible.line("\uD83C\uD83C\uDF3C\uDF3C"));
    }
}
