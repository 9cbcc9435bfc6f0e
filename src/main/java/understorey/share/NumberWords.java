package understorey.share;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** English numbers in words, up to 999, with their decimals: "fifty-two point three" reads 52.3. */
final class NumberWords {

    private static final List<String> UNITS = List.of("zero", "one", "two", "three", "four", "five", "six", "seven",
            "eight", "nine", "ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen",
            "eighteen", "nineteen");
    private static final List<String> TENS = List.of("twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty",
            "ninety");
    private static final Map<String, Integer> VALUES = values();

    private NumberWords() {
    }

    private static Map<String, Integer> values() {
        Map<String, Integer> values = new HashMap<>(Map.of("oh", 0, "nought", 0, "fourty", 40));
        for (int i = 0; i < UNITS.size(); i++) {
            values.put(UNITS.get(i), i);
        }
        for (int i = 0; i < TENS.size(); i++) {
            values.put(TENS.get(i), 20 + 10 * i);
        }
        return values;
    }

    /** The text with numbers in digits; the same text if it has no numbers in words. */
    static String inDigits(String text) {
        String[] words = text.split("(?<=[ ,;:-])|(?=[ ,;:-])");
        StringBuilder out = new StringBuilder();
        int at = 0;
        boolean any = false;
        while (at < words.length) {
            int end = number(words, at, out);
            any |= end > at;
            if (end == at) {
                out.append(words[at]);
            }
            at = Math.max(end, at + 1);
        }
        return any ? out.toString() : text;
    }

    /** Appends the number that begins at a word. Returns the index after it, or {@code from} if no number begins there. */
    private static int number(String[] words, int from, StringBuilder out) {
        int whole = 0;
        int end = from;
        int at = from;
        while (at < words.length) {
            Integer value = value(words[at]);
            boolean joins = end == from || (whole % 100 == 0 || whole % 10 == 0 && whole % 100 >= 20 && value != null && value < 10)
                    && whole > 0;
            if (value != null && joins) {
                whole += value;
            } else if (end > from && words[at].equalsIgnoreCase("hundred")) {
                whole *= 100;
            } else {
                break;
            }
            end = at + 1;
            at = end + (end < words.length && words[end].matches("[ -]") ? 1 : 0);
            at += at + 1 < words.length && words[at].equalsIgnoreCase("and") && whole % 100 == 0 ? 2 : 0;
        }
        if (end == from) {
            return from;
        }
        out.append(whole);
        return decimals(words, end, out);
    }

    private static int decimals(String[] words, int from, StringBuilder out) {
        int point = from + 1;
        if (point >= words.length || !words[point].matches("(?i)point|dot|comma|decimal")) {
            return from;
        }
        StringBuilder digits = new StringBuilder();
        int end = point + 1;
        while (end + 1 < words.length && words[end].matches("[ -]") && value(words[end + 1]) != null) {
            digits.append(value(words[end + 1]));
            end += 2;
        }
        out.append(digits.length() == 0 ? "" : "." + digits);
        return digits.length() == 0 ? from : end;
    }

    private static @Nullable Integer value(String word) {
        return VALUES.get(word.toLowerCase(Locale.ROOT).replaceAll("\\.$", ""));
    }
}
