package understorey.yaml.finding;

/**
 * Text that cannot steer a terminal. A file name, key or value of the author's may hold an escape sequence, or marks
 * that turn the reading direction round. Each such character is shown as a backslash, a u and four hexadecimal
 * digits, which is also its escape in JSON.
 */
public final class Visible {

    private Visible() {
    }

    /** One line: line ends are shown as well. */
    public static String line(String text) {
        int i = 0;
        while (i < text.length() && !steers(text, i)) {
            i++;
        }
        if (i == text.length()) {
            return text;
        }
        StringBuilder shown = new StringBuilder(text.length() + 10).append(text, 0, i);
        for (; i < text.length(); i++) {
            if (steers(text, i)) {
                shown.append('\\').append('u').append(hex(text.charAt(i)));
            } else {
                shown.append(text.charAt(i));
            }
        }
        return shown.toString();
    }

    /** Four hexadecimal digits, in small letters. */
    private static String hex(char c) {
        String digits = Integer.toHexString(c);
        return "0".repeat(4 - digits.length()) + digits;
    }

    private static boolean steers(String text, int i) {
        char c = text.charAt(i);
        if (Character.isHighSurrogate(c)) {
            return i + 1 == text.length() || !Character.isLowSurrogate(text.charAt(i + 1));
        }
        if (Character.isLowSurrogate(c)) {
            return i == 0 || !Character.isHighSurrogate(text.charAt(i - 1));
        }
        return Character.isISOControl(c) || c == '\u2028' || c == '\u2029' || turns(c);
    }

    /** The marks, embeddings, overrides and isolates of the Unicode bidirectional algorithm (UAX #9, table 4). */
    private static boolean turns(char c) {
        return c == '\u061c' || c == '\u200e' || c == '\u200f' || c >= '\u202a' && c <= '\u202e'
                || c >= '\u2066' && c <= '\u2069';
    }
}
