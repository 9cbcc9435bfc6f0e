package understorey.yaml.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class FindingTest {

    private static Finding at(int line, int column, int length, String quoted) {
        return new Finding(Finding.Level.ERROR, "a.yaml", line, column, length, "text", null, quoted);
    }

    @Test
    void showsPlaceTextLineCaretsAndFix() {
        Finding finding = new Finding(Finding.Level.ERROR, "plans/gear/day-bag.yaml", 12, 5, 7,
                "unknown key 'closset' in this lens", "did you mean 'closest'?", "    closset: 0.38 m");
        assertEquals("""
                plans/gear/day-bag.yaml:12:5: error: unknown key 'closset' in this lens
                    closset: 0.38 m
                    ^^^^^^^
                    fix: did you mean 'closest'?""", finding.plain());
    }

    @Test
    void keepsTheIndentationFromTheFindingOn() {
        assertEquals("a.yaml:3:2: error: text\n       deep: 1\n    ^", at(3, 2, 1, "    deep: 1").plain());
    }

    @Test
    void drawsCaretsByCodePoint() {
        Finding finding = new Finding(Finding.Level.NOTE, "a.yaml", 1, 6, 2, "text", null, "\uD83C\uDF3C\tab: xy");
        assertEquals("""
                a.yaml:1:6: note: text
                    \uD83C\uDF3C ab: xy
                         ^^""", finding.plain());
    }

    @Test
    void drawsCaretsBelowCharactersThatAreShownLonger() {
        assertEquals("""
                a.yaml:1:3: error: text
                    a\\u001bb\\u202ec
                           ^^^^^^^""", at(1, 3, 2, "a\u001bb\u202ec").plain());
    }

    @Test
    void showsOnlyTheFileForAFindingAboutAllOfIt() {
        assertEquals("a.yaml: error: text\n    fix: do it",
                new Finding(Finding.Level.ERROR, "a.yaml", 0, 0, 0, "text", "do it", null).plain());
    }

    @Test
    void drawsNoCaretBeyondWhatItQuotes() {
        assertEquals("a.yaml:1:90: error: text\n    short", at(1, 90, 2, "short").plain());
    }

    @Test
    void drawsOneCaretAtTheEndOfALine() {
        assertEquals("a.yaml:1:6: error: text\n    short\n         ^", at(1, 6, 1, "short").plain());
    }

    @Test
    void dressesPlaceAndSignalOnly() {
        assertEquals("<a.yaml:1:1>: [error]: text\n    short\n    [^^]",
                at(1, 1, 2, "short").dressed(place -> "<" + place + ">", signal -> "[" + signal + "]"));
    }

    @Test
    void showsControlCharactersOfEveryPart() {
        Finding finding = new Finding(Finding.Level.ERROR, "\u001b[2J.yaml", 0, 0, 0, "key '\n'", "\u009b1m", null);
        assertEquals("\\u001b[2J.yaml: error: key '\\u000a'\n    fix: \\u009b1m", finding.plain());
    }
}
