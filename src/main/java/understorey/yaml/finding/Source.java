package understorey.yaml.finding;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Text of a file, with its lines for findings. */
public final class Source {

    /** Longer lines are cut, so that a finding stays readable. */
    private static final int SHOWN = 160;

    private final String file;
    private final String text;
    private final boolean isRead;
    private @Nullable List<String> lines;
    private int @Nullable [] codePoints;

    /**
     * @param file the name shown in findings
     * @param text all of it
     */
    public Source(String file, String text) {
        this(file, text, true);
    }

    private Source(String file, String text, boolean isRead) {
        this.file = file;
        this.text = text;
        this.isRead = isRead;
    }

    /** A file that could not be read, and has no text. */
    public static Source unread(String file) {
        return new Source(file, "", false);
    }

    public boolean isRead() {
        return isRead;
    }

    public String file() {
        return file;
    }

    public String text() {
        return text;
    }

    /** Line of that number, from 1, shortened if it is long; null if there is none. */
    public @Nullable String line(int number) {
        if (lines == null) {
            lines = split(text);
        }
        if (number < 1 || number > lines.size()) {
            return null;
        }
        return lines.get(number - 1);
    }

    /** The character at an index that counts code points from 0; 0 beyond the end. */
    public int character(long index) {
        if (codePoints == null) {
            codePoints = text.codePoints().toArray();
        }
        return index >= 0 && index < codePoints.length ? codePoints[(int) index] : 0;
    }

    /** The place of a character, counted from 0, in chars. */
    public Pos at(int index) {
        int line = 1;
        int start = 0;
        for (int i = 0; i < index; i++) {
            if (breaks(text, i)) {
                line++;
                start = i + 1;
            }
        }
        return new Pos(line, text.codePointCount(start, index) + 1, 1);
    }

    /** Where words stand in a text, at its first line or below; the start of the text where they are not to be found. */
    public Pos find(String words, Pos start) {
        int from = 0;
        for (int line = 1; line < start.line() && from < text.length(); from++) {
            line += breaks(text, from) ? 1 : 0;
        }
        int at = words.isEmpty() ? -1 : text.indexOf(words, from);
        if (at < 0) {
            return start;
        }
        Pos found = at(at);
        return new Pos(found.line(), found.column(), words.codePointCount(0, words.length()));
    }

    /** Code points from a column to the end of its line, blanks at the end left out. */
    public int lengthToEnd(int number, int column) {
        String line = line(number);
        if (line == null) {
            return 1;
        }
        String written = line.stripTrailing();
        return Math.max(1, written.codePointCount(0, written.length()) - column + 1);
    }

    private static List<String> split(String text) {
        List<String> lines = new ArrayList<>();
        int start = 0;
        for (int i = 0; i < text.length(); i++) {
            if (breaks(text, i)) {
                int end = i > start && text.charAt(i - 1) == '\r' ? i - 1 : i;
                lines.add(cut(text.substring(start, end)));
                start = i + 1;
            }
        }
        if (start < text.length()) {
            lines.add(cut(text.substring(start)));
        }
        return lines;
    }

    private static String cut(String line) {
        return line.codePointCount(0, line.length()) <= SHOWN ? line
                : line.substring(0, line.offsetByCodePoints(0, SHOWN)) + "…";
    }

    /** The characters that YAML 1.1 counts as the end of a line; of \r\n the second one. */
    private static boolean breaks(String text, int i) {
        char c = text.charAt(i);
        return c == '\n' || c == '\u0085' || c == '\u2028' || c == '\u2029'
                || c == '\r' && (i + 1 >= text.length() || text.charAt(i + 1) != '\n');
    }
}
