package understorey.pages.feeds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

/** RFC 5545 (Desruisseaux 2009), sections 3.1 and 3.3.11. */
class CalendarLinesTest {

    @Test
    void foldsAfter75Octets() {
        String folded = new CalendarLines().line("X", "a".repeat(150)).toString();
        assertEquals("X:" + "a".repeat(73) + "\r\n " + "a".repeat(74) + "\r\n " + "aaa\r\n", folded);
    }

    @Test
    void leavesALineOf75OctetsWhole() {
        assertEquals("X:" + "a".repeat(73) + "\r\n", new CalendarLines().line("X", "a".repeat(73)).toString());
    }

    @Test
    void cutsNoCharacterInTwo() {
        String text = "🌿ü木".repeat(40);
        String folded = new CalendarLines().line("X", text).toString();
        for (String line : folded.split("\r\n")) {
            byte[] octets = line.getBytes(StandardCharsets.UTF_8);
            assertTrue(octets.length <= 75, line);
            assertTrue(!line.contains("?") && !line.contains("�"), line);
        }
        assertEquals("X:" + text + "\r\n", folded.replace("\r\n ", ""));
    }

    @Property
    void unfoldsToWhatWasWritten(@ForAll @StringLength(max = 400) @CharRange(from = ' ', to = '퟿') String text) {
        String folded = new CalendarLines().line("X", text).toString();
        assertEquals("X:" + text + "\r\n", folded.replace("\r\n ", ""));
        for (String line : folded.split("\r\n")) {
            assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= 75);
        }
    }

    @Test
    void escapesWhatHasAMeaningInText() {
        assertEquals("a\\, b\\; c\\\\d\\ne\\nf", CalendarLines.escaped("a, b; c\\d\r\ne\rf"));
        assertEquals("bell: \"quoted\"", CalendarLines.escaped("bell\u0007: \"quoted\""));
    }
}
