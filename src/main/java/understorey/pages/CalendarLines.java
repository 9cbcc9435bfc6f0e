package understorey.pages;

import java.nio.charset.StandardCharsets;

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
    CalendarLines text(String name, String value) {
        return value == null ? this : line(name, escaped(value));
    }

    /** Backslash, semicolon, comma and line end are escaped; control characters have no place in a text. */
    static String escaped(String text) {
        return text.replace("\r\n", "\n").replace('\r', '\n')
                .replaceAll("[\\p{Cntrl}&&[^\n\t]]", "")
                .replace("\\", "\\\\").replace(";", "\\;").replace(",", "\\,").replace("\n", "\\n");
    }

    private void fold(String line) {
        int octets = 0;
        for (int i = 0; i < line.length(); ) {
            String character = Character.toString(line.codePointAt(i));
            int more = character.getBytes(StandardCharsets.UTF_8).length;
            if (octets + more > LONGEST_OCTETS) {
                lines.append("\r\n ");
                octets = 1;
            }
            lines.append(character);
            octets += more;
            i += character.length();
        }
        lines.append("\r\n");
    }

    @Override
    public String toString() {
        return lines.toString();
    }
}
