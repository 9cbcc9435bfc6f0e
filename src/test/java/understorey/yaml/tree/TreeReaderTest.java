package understorey.yaml.tree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import understorey.yaml.finding.Findings;
import understorey.yaml.finding.Pos;
import understorey.yaml.finding.Source;

class TreeReaderTest {

    private Findings findings;

    private Node.Mapping read(String text) {
        findings = new Findings(new Source("a.yaml", text));
        return TreeReader.read(findings);
    }

    private String onlyFault() {
        assertEquals(1, findings.all().size(), () -> findings.all().toString());
        return findings.all().iterator().next().text();
    }

    @ParameterizedTest
    @ValueSource(strings = {"no", "on", "yes", "N", "y", "05:00", "11:00", "2027-05-08", "20.5", "007", "0x1F", "5E2",
        ".inf", "f/8", "1/60 s", "50 mm", "+3", "1_000", "true", "12345678901234567890123"})
    void keepsTheTextThatWasWritten(String written) {
        Node.Scalar scalar = assertInstanceOf(Node.Scalar.class, read("a: " + written + "\n").entries().get("a").value());
        assertEquals(written, scalar.text());
        assertFalse(scalar.empty());
        assertEquals(new Pos(1, 4, written.length()), scalar.pos());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ~", " null", " \"\"", " ''", " '  '"})
    void knowsAnEmptyValue(String written) {
        Node.Scalar scalar = assertInstanceOf(Node.Scalar.class, read("a:" + written + "\n").entries().get("a").value());
        assertTrue(scalar.empty());
    }

    @Test
    void countsColumnsInCodePoints() {
        Node.Mapping root = read("{\uD83C\uDF3C: ä, b: 12}\n");
        assertEquals(new Pos(1, 8, 1), root.entries().get("b").key());
        assertEquals(new Pos(1, 11, 2), root.entries().get("b").value().pos());
    }

    @Test
    void placesBlocksAtTheirFirstKeyAndBracketsAtTheirOpening() {
        Node.Mapping root = read("a:\n  b: 1\n  c: 2\nd: [1, 2]\ne: {f: 1}\n");
        assertEquals(new Pos(2, 3, 1), root.entries().get("a").value().pos());
        assertEquals(new Pos(4, 4, 6), root.entries().get("d").value().pos());
        assertEquals(new Pos(5, 4, 6), root.entries().get("e").value().pos());
    }

    @Test
    void keepsTheFirstOfTwoKeys() {
        Node.Mapping root = read("a: 1\nb: 2\na: 3\n");
        assertEquals("1", ((Node.Scalar) root.entries().get("a").value()).text());
        assertEquals("the key 'a' is given twice, first on line 1", onlyFault());
    }

    @Test
    void tellsTextThatLooksLikeAnAliasFromOne() {
        assertNotNull(read("a: '*x'\nb: \"&y\"\nc: '!z'\nd: x*y\n"));
        assertTrue(findings.all().isEmpty());
    }

    @Test
    void allowsTwentyLevelsAndNotOneMore() {
        assertNotNull(read("a: " + "[".repeat(19) + "]".repeat(19)));
        assertTrue(findings.all().isEmpty());
        assertNull(read("a: " + "[".repeat(20) + "]".repeat(20)));
        assertEquals("nested more than 20 levels deep", onlyFault());
    }

    @Test
    void stopsAtFiftyThousandValues() {
        assertNull(read("a: [" + "1,".repeat(TreeReader.MOST_NODES) + "]"));
        assertEquals("this file has more than 50 000 values", onlyFault());
    }

    @Test
    void survivesNestingThatIsDeeperThanAnyStack() {
        assertNull(read("a: " + "[".repeat(100_000)));
        assertEquals(1, findings.all().size());
    }

    @Test
    void readsLinesThatEndInAnyWay() {
        assertEquals(new Pos(2, 4, 1), read("a: 1\r\nb: 2\r\n").entries().get("b").value().pos());
        assertEquals("b: 2", findings.source().line(2));
        assertEquals(new Pos(2, 4, 1), read("a: 1\rb: 2\r").entries().get("b").value().pos());
        assertEquals("b: 2", findings.source().line(2));
    }
}
