package understorey.reading.subject;

import java.time.DateTimeException;
import java.time.MonthDay;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import understorey.yaml.Fields;
import understorey.yaml.tree.Node;

/**
 * Cells of the catalogue, which are nearly all required. After a finding a cell has a value that raises no other, and the
 * reader discards the row.
 */
record Row(Fields f) {

    static final int LONGEST = 1000;
    private static final Pattern SRGB = Pattern.compile("#[0-9A-F]{6}");
    /** A mark with what it is about; several for several parts. */
    private static final Pattern MARK = Pattern.compile("(C2?|D|M|DESC)\\b.*");

    String text(String column) {
        String text = f.require(column).text(column, LONGEST);
        return text == null ? "" : text;
    }

    @Nullable String maybe(String column) {
        return f.text(column, LONGEST);
    }

    double number(String column, double least, double most) {
        Double number = f.require(column).number(column, least, most);
        return number == null ? Double.NaN : number;
    }

    int whole(String column, int least, int most) {
        Integer number = f.require(column).whole(column, least, most);
        return number == null ? least : number;
    }

    <E extends Enum<E>> E word(String column, E[] constants) {
        E word = f.require(column).word(column, constants);
        return word == null ? constants[0] : word;
    }

    String mark(String column) {
        return matching(column, MARK, "a mark", "begin with C, C2, D, M or DESC");
    }

    String srgb(String column) {
        return matching(column, SRGB, "a colour", "for example #F3F4EC");
    }

    static boolean isMark(String text) {
        return MARK.matcher(text).matches();
    }

    static boolean isSrgb(String text) {
        return SRGB.matcher(text).matches();
    }

    MonthDay monthDay(String column) {
        String text = text(column);
        try {
            return text.isEmpty() ? MonthDay.of(1, 1) : MonthDay.parse("--" + text);
        } catch (DateTimeException noDay) {
            f.refuse(column, "'" + column + "' must be a month and a day, not the text " + Node.quote(text), "for example 05-12");
            return MonthDay.of(1, 1);
        }
    }

    private String matching(String column, Pattern pattern, String what, String help) {
        String text = text(column);
        if (!text.isEmpty() && !pattern.matcher(text).matches()) {
            f.refuse(column, "'" + column + "' must be " + what + ", not the text " + Node.quote(text), help);
        }
        return text;
    }

    /** Refuses a range whose ends are in the wrong columns. */
    void rising(String low, double lower, String high, double higher) {
        if (lower > higher) {
            f.refuse(high, "'" + high + "' is below '" + low + "'", "swap them");
        }
    }
}
