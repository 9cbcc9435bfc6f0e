package understorey.reading;

import java.util.Locale;

/**
 * One thing about the author's files, with its place.
 *
 * @param file   as shown: from the plans folder's own name on, with slashes
 * @param line   from 1; 0 for the file as a whole
 * @param column from 1, in code points; 0 for the file as a whole
 * @param length in code points, for the carets
 * @param text   what is wrong, in the author's words
 * @param help   the way out; null when there is none to name
 * @param quoted the line itself; null when there is none
 */
public record Finding(Level level, String file, int line, int column, int length, String text, String help,
                      String quoted) {

    public enum Level { ERROR, WARNING, NOTE }

    /** All of it without colour: place and text, the line with carets below, the help. No line end at the end. */
    public String plain() {
        StringBuilder out = new StringBuilder(file);
        if (line > 0) {
            out.append(':').append(line).append(':').append(column);
        }
        out.append(": ").append(level.name().toLowerCase(Locale.ROOT)).append(": ").append(text);
        String number = String.valueOf(line);
        String gutter = " ".repeat(Math.max(2, number.length()));
        if (quoted != null && line > 0) {
            out.append('\n').append(gutter).append(" |\n");
            out.append(" ".repeat(gutter.length() - number.length())).append(number).append(" | ");
            // A tab counts as one column here, so that the carets stand where they should.
            out.append(quoted.replace('\t', ' ')).append('\n');
            int width = quoted.codePointCount(0, quoted.length());
            out.append(gutter).append(" |");
            if (column <= width + 1) {
                int carets = Math.max(1, Math.min(length, width - column + 1));
                out.append(' ').append(" ".repeat(column - 1)).append("^".repeat(carets));
            }
        }
        if (help != null) {
            out.append('\n').append(gutter).append(" = help: ").append(help);
        }
        return out.toString();
    }
}
