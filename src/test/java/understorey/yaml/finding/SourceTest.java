package understorey.yaml.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import org.junit.jupiter.api.Test;

class SourceTest {

    @Test
    void countsLinesAsYamlDoes() {
        Source source = new Source("a.yaml", "one\r\ntwo\rthree\u2028four\u0085five\n\nseven");
        assertEquals("one", source.line(1));
        assertEquals("two", source.line(2));
        assertEquals("three", source.line(3));
        assertEquals("four", source.line(4));
        assertEquals("five", source.line(5));
        assertEquals("", source.line(6));
        assertEquals("seven", source.line(7));
        assertNull(source.line(8));
        assertNull(source.line(0));
    }

    @Test
    void cutsLongLines() {
        String line = new Source("a.yaml", "x".repeat(500)).line(1);
        assertEquals(161, line.length());
        assertEquals('…', line.charAt(160));
    }

    @Test
    void placesACharacterByCodePoints() {
        assertEquals(new Pos(2, 3, 1), new Source("a.yaml", "a\n\uD83C\uDF3Cbc").at(5));
        assertEquals('b', new Source("a.yaml", "\uD83C\uDF3Cb").character(1));
        assertEquals(0, new Source("a.yaml", "b").character(1));
    }

    @Test
    void hasNoLinesWithoutText() {
        assertNull(Source.unread("a.yaml").line(1));
    }
}
