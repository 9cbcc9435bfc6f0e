package understorey.advice;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/**
 * A bound of free text in Markdown. Within all of them a text stays small as a page, and its reader needs neither a
 * deep stack nor time that grows with the square of the text. Each bound overrates what a text may need.
 */
public enum ProseLimit {

    /** At most 20 000 characters. */
    LENGTH(text -> text.codePointCount(0, text.length()) > 20_000),
    /** Link references add at most 200 000 characters. */
    LINK_REFERENCES(text -> linked(text) > 200_000),
    /** At most 10 000 cells in a table. */
    TABLE_CELLS(text -> cells(text) > 10_000),
    /** At most 50 quotes and lists in each other on a line, and at most 200 columns in front of a nested one. */
    NESTING(Pattern.compile("(?m)^(?:[ \t]*+(?:>|[-+*](?=[ \t])|[0-9]{1,9}[.)](?=[ \t]))){51}|^[ \t>]{201}").asPredicate()),
    /** At most 2000 lines; for each the parser looks through the lines before it. */
    LINES(text -> text.lines().count() > 2000),
    /** At most 1000 marks of emphasis, links, code, tags and entities; for each the parser looks through the others. */
    MARKS(text -> count(text, "*_[]`<&") > 1000),
    /** At most 300 marks of code; the parser's time grows with the cube of their number. */
    CODE(text -> count(text, "`") > 300),
    /** Tags, titles of links and ruled lines end within 1000 characters. */
    LONG_MARK(Pattern.compile("(?s)<[A-Za-z/][^>]{1000}|[-*_|: \t]{1000}"
            + "|\\][(:]\\s*+\\S++\\s++(?:\"(?:[^\"\\\\]|\\\\.){500}|'(?:[^'\\\\]|\\\\.){500}|\\((?:[^)\\\\]|\\\\.){500})").asPredicate());

    private final Predicate<String> passed;

    ProseLimit(Predicate<String> passed) {
        this.passed = passed;
    }

    /** The first limit that a text passes, if any. */
    public static Optional<ProseLimit> passed(String text) {
        return Arrays.stream(values()).filter(limit -> limit.passed.test(text)).findFirst();
    }

    /** Every opening bracket may stand for the longest link reference: the most that links can add. */
    private static long linked(String text) {
        int longest = 0;
        for (int at = text.indexOf("]:"); at >= 0; at = text.indexOf("]:", at + 2)) {
            int next = text.indexOf("]:", at + 2);
            int blank = text.indexOf("\n\n", at);
            int end = Math.min(next < 0 ? text.length() : next, blank < 0 ? text.length() : blank);
            longest = Math.max(longest, end - at);
        }
        return count(text, "[") * longest;
    }

    /** A short row of a table is filled up to the columns of its header: the most cells that there can be. */
    private static long cells(String text) {
        return text.indexOf('|') < 0 ? 0
                : text.lines().count() * text.lines().mapToLong(line -> count(line, "|")).max().orElse(0);
    }

    private static long count(String text, String marks) {
        return text.chars().filter(mark -> marks.indexOf(mark) >= 0).count();
    }
}
