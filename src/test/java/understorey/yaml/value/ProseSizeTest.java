package understorey.yaml.value;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class ProseSizeTest {

    @Test
    void letsOrdinaryTextPass() {
        String linked = "See [the map][map] and [the gate][gate].\n\n".repeat(40)
                + "[map]: https://example.org/map\n[gate]: https://example.org/gate\n";
        String table = "| If | Then |\n|---|---|\n" + "| it rains | go home |\n".repeat(200);
        for (String text : List.of("One line.", "a".repeat(20_000), linked, table)) {
            assertNull(ProseSize.fault(text));
        }
    }

    @Test
    void refusesATextThatIsTooLong() {
        assertEquals("is longer than 20 000 characters", ProseSize.fault("a".repeat(20_001)));
    }

    @Test
    void countsCharactersNotTheirHalves() {
        assertNull(ProseSize.fault("\uD83C\uDF3C".repeat(20_000)));
    }

    @Test
    void refusesLongLinkReferencesThatAreUsedOften() {
        String bomb = "[a]: /" + "u".repeat(2000) + "\n\n" + "[a] ".repeat(2000);
        assertTrue(ProseSize.fault(bomb).startsWith("uses long link references so often"), bomb);
        String titled = "[a]: /u\n  '" + "t".repeat(2000) + "'\n\n" + "[a] ".repeat(2000);
        assertTrue(ProseSize.fault(titled).startsWith("uses long link references so often"), titled);
    }

    @Test
    void refusesAShortTableOfManyCells() {
        String header = "|a".repeat(300) + "|\n" + "|-".repeat(300) + "|\n";
        assertEquals("holds a table of more than 10 000 cells",
                ProseSize.fault(header + String.join("", Collections.nCopies(300, "|\n"))));
    }

    @Test
    void refusesWhatTheMarkdownReaderCouldNotFollow() {
        String nested = "has more than 50 quotes or lists inside each other";
        for (String text : List.of("> ".repeat(51) + "a", ">".repeat(60), "- ".repeat(51) + "a", "a\n" + "1. ".repeat(51) + "a",
                " ".repeat(201) + "- a")) {
            assertEquals(nested, ProseSize.fault(text), text);
        }
        assertEquals("has more than 1000 of the marks * _ [ ] ` < and &", ProseSize.fault("[a](b) ".repeat(501)));
        assertEquals("has more than 300 of the mark `", ProseSize.fault("`a` ".repeat(151)));
        assertEquals("has more than 2000 lines", ProseSize.fault(")\n".repeat(2001)));
        for (String text : List.of("<" + "a".repeat(1001), "-".repeat(1001), "|---".repeat(251), "[a](b \""
                + "\\\"".repeat(501) + "\")", "[a]: /u\n 't\n" + "t".repeat(500))) {
            assertEquals("has a tag, a link title or a ruled line that is too long", ProseSize.fault(text), text);
        }
        for (String text : List.of("> ".repeat(50) + "a", "- a\n".repeat(400), "*a* ".repeat(500), "a < b ".repeat(1000),
                "`a` ".repeat(150), ")\n".repeat(2000),
                "a <" + "b ".repeat(300) + ">", "-".repeat(900), "[a](b \"" + "t".repeat(499) + "\")" + "a".repeat(2000))) {
            assertNull(ProseSize.fault(text), text);
        }
    }
}
