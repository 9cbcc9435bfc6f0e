package understorey.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class FindingTest {

    @Test
    void dressesPlainly() {
        Finding finding = new Finding(Finding.Level.ERROR, "plans/gear/day-bag.yaml", 12, 5, 7,
                "unknown key 'closset' in this lens", "did you mean 'closest'?", "    closset: 0.38 m");
        assertEquals("""
                plans/gear/day-bag.yaml:12:5: error: unknown key 'closset' in this lens
                   |
                12 |     closset: 0.38 m
                   |     ^^^^^^^
                   = help: did you mean 'closest'?""", finding.plain());
    }

    @Test
    void widensTheGutterForLongFiles() {
        Finding finding = new Finding(Finding.Level.WARNING, "a.yaml", 1234, 1, 1, "text", null, "x: 1");
        assertEquals("""
                a.yaml:1234:1: warning: text
                     |
                1234 | x: 1
                     | ^""", finding.plain());
    }

    @Test
    void drawsCaretsByCodePoint() {
        Finding finding = new Finding(Finding.Level.NOTE, "a.yaml", 1, 6, 2, "text", null, "\uD83C\uDF3C\tab: xy");
        assertEquals("""
                a.yaml:1:6: note: text
                   |
                 1 | \uD83C\uDF3C ab: xy
                   |      ^^""", finding.plain());
    }

    @Test
    void leavesThePlaceOutForAWholeFile() {
        assertEquals("a.yaml: error: text\n   = help: way out",
                new Finding(Finding.Level.ERROR, "a.yaml", 0, 0, 0, "text", "way out", null).plain());
    }

    @Test
    void drawsNoCaretBeyondWhatItQuotes() {
        Finding finding = new Finding(Finding.Level.ERROR, "a.yaml", 1, 90, 2, "text", null, "short");
        assertEquals("a.yaml:1:90: error: text\n   |\n 1 | short\n   |", finding.plain());
    }
}
