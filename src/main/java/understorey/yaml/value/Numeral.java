package understorey.yaml.value;

import java.math.BigDecimal;
import java.math.MathContext;
import org.jspecify.annotations.Nullable;

/** Numbers as an author writes them: digits, a sign, a decimal point; no exponent, no grouping. */
public final class Numeral {

    private static final int LONGEST = 20;
    /** Digits that a double carries through decimal and back on every Java; JDK 19 changed the 16th and 17th. */
    private static final MathContext SHOWN = new MathContext(15);

    private Numeral() {
    }

    /** The number; null if the text is no number. A minus may be a hyphen or the minus sign U+2212. */
    public static @Nullable Double of(String text) {
        int end = end(text, 0);
        return end == 0 || end != text.length() || end > LONGEST ? null
                : Double.valueOf(text.replace('\u2212', '-'));
    }

    /** End of the number that begins at {@code from}; {@code from} itself if none begins there. */
    public static int end(String text, int from) {
        int i = from;
        if (i < text.length() && (text.charAt(i) == '-' || text.charAt(i) == '+' || text.charAt(i) == '\u2212')) {
            i++;
        }
        int whole = digits(text, i);
        int last = whole;
        if (last < text.length() && text.charAt(last) == '.') {
            last = digits(text, last + 1);
        }
        boolean any = whole > i || last > whole + 1;
        return any ? last : from;
    }

    /** The text with a point instead of a comma between digits; null if there is no such comma. */
    public static @Nullable String withPoint(String text) {
        for (int i = 1; i + 1 < text.length(); i++) {
            if (text.charAt(i) == ',' && digit(text.charAt(i - 1)) && digit(text.charAt(i + 1))) {
                return text.substring(0, i) + '.' + text.substring(i + 1);
            }
        }
        return null;
    }

    /** A number for a sentence, with as few decimals as possible and at most four. */
    public static String show(double value) {
        double rounded = Math.rint(value * 10_000) / 10_000;
        return rounded == Math.rint(rounded) && Math.abs(rounded) < 1e15
                ? Long.toString((long) rounded) : new BigDecimal(rounded).round(SHOWN).stripTrailingZeros().toPlainString();
    }

    /** The way out for a number that is written in an unusual way; null when it is not. */
    public static @Nullable String help(String text) {
        int end = end(text, 0);
        if (end > LONGEST) {
            return "a number has at most " + LONGEST + " digits";
        }
        boolean exponent = end > 0 && end + 1 < text.length() && (text.charAt(end) == 'e' || text.charAt(end) == 'E')
                && end(text, end + 1) > end + 1;
        return exponent ? "write the number out, without an exponent" : null;
    }

    private static int digits(String text, int from) {
        int i = from;
        while (i < text.length() && digit(text.charAt(i))) {
            i++;
        }
        return i;
    }

    private static boolean digit(char c) {
        return c >= '0' && c <= '9';
    }
}
