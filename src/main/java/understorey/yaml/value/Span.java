package understorey.yaml.value;

import org.jspecify.annotations.Nullable;
import understorey.yaml.tree.Node;

/**
 * Range of the focal length or the aperture of a zoom; both ends are equal for a single value.
 *
 * @param fault text that follows the name of the key; null if there is none
 * @param help  fix; null if there is none
 */
public record Span(double from, double to, @Nullable String fault, @Nullable String help) {

    /** {@code 50 mm} or {@code 24-70 mm}, millimetres. */
    public static Span focal(String written) {
        String text = written.strip();
        int dash = dash(text);
        if (dash < 0) {
            return single(Quantity.read(text, Dimension.SMALL_LENGTH));
        }
        String first = text.substring(0, dash).strip();
        String second = text.substring(dash + 1).strip();
        if (Numeral.of(first) != null) {
            first += second.substring(Numeral.end(second, 0));
        }
        Quantity from = Quantity.read(first, Dimension.SMALL_LENGTH);
        return both(from, Quantity.read(second, Dimension.SMALL_LENGTH), "write ", " mm");
    }

    /** {@code f/4}, {@code f4} or {@code f/4-6.3}: f-numbers. */
    public static Span aperture(String written) {
        String text = written.strip();
        int dash = dash(text);
        if (dash < 0) {
            return single(fNumber(text, true, text));
        }
        return both(fNumber(text.substring(0, dash).strip(), true, text),
                fNumber(text.substring(dash + 1).strip(), false, text), "write f/", "");
    }

    private static Quantity fNumber(String text, boolean letterOwed, String whole) {
        int i = 0;
        if (i < text.length() && (text.charAt(i) == 'f' || text.charAt(i) == 'F')) {
            i++;
            if (i < text.length() && text.charAt(i) == '/') {
                i++;
            }
        }
        Double number = Numeral.of(text.substring(i).strip());
        if (number == null) {
            String pointed = Numeral.withPoint(text);
            return pointed != null ? Quantity.fault("has a decimal comma", "write " + pointed)
                    : Quantity.fault("must be an f-number, not the text " + Node.quote(text), "for example f/4");
        }
        if (i == 0 && letterOwed) {
            return Quantity.fault("must begin with 'f/'", "write f/" + whole);
        }
        return Quantity.of(number);
    }

    private static int dash(String text) {
        int dash = text.indexOf('-', 1);
        return dash < 0 ? text.indexOf('–', 1) : dash;
    }

    private static Span single(Quantity read) {
        return both(read, read, "", "");
    }

    private static Span both(Quantity from, Quantity to, String swap, String unit) {
        Double least = from.value();
        Double most = to.value();
        if (least == null || most == null) {
            Quantity faulty = least == null ? from : to;
            return new Span(0, 0, faulty.fault(), faulty.help());
        }
        return least <= most ? new Span(least, most, null, null) : new Span(0, 0, "has the larger number first",
                swap + Numeral.show(most) + "-" + Numeral.show(least) + unit);
    }
}
