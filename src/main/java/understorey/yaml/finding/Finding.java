package understorey.yaml.finding;

import java.util.Locale;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * One thing about the author's files, with its place.
 *
 * @param file   as shown: from the plans folder's own name on, with slashes
 * @param line   from 1; 0 for the file as a whole
 * @param column from 1, in code points; 0 for the file as a whole
 * @param length in code points, for the carets
 * @param text   what is wrong, in the author's words
 * @param help   the fix; null when there is none to name
 * @param quoted the line itself; null when there is none
 */
public record Finding(Level level, String file, int line, int column, int length, String text, @Nullable String help,
                      @Nullable String quoted) {

    public enum Level { ERROR, WARNING, NOTE }

    private static final String INDENT = "    ";

    /** All of it without colour: place and text, the line with carets below, the fix. No line end at the end. */
    public String plain() {
        return dressed(UnaryOperator.identity(), UnaryOperator.identity());
    }

    /**
     * All of it, in colour or not.
     *
     * @param place  dresses the file with line and column
     * @param signal dresses the level and the carets
     */
    public String dressed(UnaryOperator<String> place, UnaryOperator<String> signal) {
        String at = Visible.line(file) + (line > 0 ? ":" + line + ":" + column : "");
        StringBuilder out = new StringBuilder(place.apply(at)).append(": ")
                .append(signal.apply(level.name().toLowerCase(Locale.ROOT))).append(": ").append(Visible.line(text));
        if (quoted != null && line > 0) {
            excerpt(quoted, out, signal);
        }
        if (help != null) {
            out.append('\n').append(INDENT).append("fix: ").append(Visible.line(help));
        }
        return out.toString();
    }

    /** The line without its indentation, as far as the finding begins behind it, and carets below what is wrong. */
    private void excerpt(String quoted, StringBuilder out, UnaryOperator<String> signal) {
        // A tab counts as one column, so that the carets are in the right place.
        String shown = quoted.replace('\t', ' ');
        int cut = 0;
        while (cut < shown.length() && cut < column - 1 && shown.charAt(cut) == ' ') {
            cut++;
        }
        out.append('\n').append(INDENT).append(Visible.line(shown.substring(cut)));
        int width = shown.codePointCount(0, shown.length());
        if (column > width + 1) {
            return;
        }
        int from = shown.offsetByCodePoints(0, column - 1);
        int to = shown.offsetByCodePoints(from, Math.min(length, width - column + 1));
        out.append('\n').append(INDENT).append(" ".repeat(columns(shown.substring(cut, from))))
                .append(signal.apply("^".repeat(Math.max(1, columns(shown.substring(from, to))))));
    }

    private static int columns(String part) {
        String visible = Visible.line(part);
        return visible.codePointCount(0, visible.length());
    }
}
