package understorey.yaml;

/** Whether free text stays small as a page: Markdown can grow a thousandfold, by link references and by tables. */
public final class ProseSize {

    private static final int LONGEST = 20_000;
    /** Characters that link references may add. */
    private static final long MOST_LINKED = 200_000;
    private static final long MOST_CELLS = 10_000;

    private ProseSize() {
    }

    /** What is wrong, after the name of the text: "is longer than 20 000 characters"; null for nothing. */
    public static String fault(String text) {
        if (text.codePointCount(0, text.length()) > LONGEST) {
            return "is longer than 20 000 characters";
        }
        if (linked(text) > MOST_LINKED) {
            return "uses long link references so often that its page would grow by more than 200 kB";
        }
        return cells(text) > MOST_CELLS ? "holds a table of more than 10 000 cells" : null;
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
        return text.chars().filter(c -> c == '[').count() * longest;
    }

    /** A short row of a table is filled up to the columns of its header: the most cells that there can be. */
    private static long cells(String text) {
        long rows = 0;
        long columns = 0;
        for (String line : text.indexOf('|') < 0 ? new String[0] : text.split("\n")) {
            rows++;
            columns = Math.max(columns, line.chars().filter(c -> c == '|').count());
        }
        return rows * columns;
    }
}
