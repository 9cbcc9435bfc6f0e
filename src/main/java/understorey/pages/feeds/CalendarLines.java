package understorey.pages.feeds;

import org.jspecify.annotations.Nullable;

/**
 * Content lines of iCalendar (RFC 5545, section 3.1): CRLF at each end, folded so that no line is longer than 75
 * octets of UTF-8, and no character is cut in two.
 */
final class CalendarLines {

    private static final int LONGEST_OCTETS = 75;

    private final StringBuilder lines = new StringBuilder();

    /** A line whose value is written as it is. */
    CalendarLines line(String name, String value) {
        fold(name + ":" + value);
        return this;
    }

    /** A line whose value is free text (section 3.3.11); none for a value of null. */
    CalendarLines text(String name, @Nullable String value) {
        return value == null ? this : line(name, escaped(value));
    }

    /** Backslash, semicolon, comma and line end are escaped; control characters have no place in a text. */
    static String escaped(String text) {
        StringBuilder escaped = new StringBuilder(text.length() + 16);
        String lines = text.replace("\r\n", "\n").replace('\r', '\n');
        for (int i = 0; i < lines.length(); i++) {
            char letter = lines.charAt(i);
            if (letter == '\n') {
                escaped.append("\\n");
            } else if (letter == '\t' || letter >= ' ' && letter != 0x7F) {
                escaped.append("\\;,".indexOf(letter) >= 0 ? "\\" : "").append(letter);
            }
        }
        return escaped.toString();
    }

    private void fold(String line) {
        int octets = 0;
        for (int i = 0; i < line.length(); ) {
            int character = line.codePointAt(i);
            int more = character < 0x80 ? 1 : character < 0x800 ? 2 : character < 0x10000 ? 3 : 4;
            if (octets + more > LONGEST_OCTETS) {
                lines.append("\r\n ");
                octets = 1;
            }
            lines.appendCodePoint(character);
            octets += more;
            i += Character.charCount(character);
        }
        lines.append("\r\n");
    }

    @Override
    public String toString() {
        return lines.toString();
    }
}
