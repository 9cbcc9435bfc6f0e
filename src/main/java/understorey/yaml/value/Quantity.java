package understorey.yaml.value;

import org.jspecify.annotations.Nullable;
import understorey.yaml.finding.Suggestion;
import understorey.yaml.tree.Node;

/**
 * A number that was read with its unit, or what is wrong with it.
 *
 * @param value in the base unit of the dimension; null if there is a fault
 * @param fault text that follows the name of the key, for example "needs a unit after 0.38"
 * @param help  fix
 */
public record Quantity(@Nullable Double value, @Nullable String fault, @Nullable String help) {

    public static Quantity of(double value) {
        return new Quantity(value, null, null);
    }

    public static Quantity fault(String fault, @Nullable String help) {
        return new Quantity(null, fault, help);
    }

    /**
     * Reads {@code 0.4 m}, {@code 0.4m} and sums, for example {@code 1 h 20 min} or {@code 5 ft 3 in}, and a shutter speed such
     * as {@code 1/250 s}; the unit is required after each number.
     */
    public static Quantity read(String written, Dimension dimension) {
        String text = written.strip();
        if (dimension != Dimension.SHUTTER || !text.startsWith("1/")) {
            return sum(text, dimension);
        }
        Quantity divisor = sum(text.substring(2).strip(), dimension);
        return divisor.value == null ? divisor : divisor.value == 0 ? notOne(text, dimension) : of(1 / divisor.value);
    }

    private static Quantity sum(String text, Dimension dimension) {
        double sum = 0;
        int i = 0;
        int parts = 0;
        while (i < text.length()) {
            int end = Numeral.end(text, i);
            Double number = end == i ? null : Numeral.of(text.substring(i, end));
            if (number == null || parts > 0 && dimension == Dimension.TEMPERATURE) {
                return notOne(text, dimension);
            }
            int unitEnd = unitEnd(text, end);
            String name = text.substring(end, unitEnd).strip();
            Dimension.Unit unit = dimension.unit(name);
            if (unit == null) {
                return wrongUnit(text, text.substring(i, end), name, dimension);
            }
            sum += unit.held(number);
            i = unitEnd;
            parts++;
            while (i < text.length() && text.charAt(i) == ' ') {
                i++;
            }
        }
        return parts == 0 ? notOne(text, dimension) : of(sum);
    }

    /** End of a unit: before the blank in front of the next number. */
    private static int unitEnd(String text, int from) {
        for (int i = from + 1; i < text.length(); i++) {
            if (text.charAt(i - 1) == ' ' && i - 1 > from && Numeral.end(text, i) > i) {
                return i - 1;
            }
        }
        return text.length();
    }

    private static Quantity wrongUnit(String text, String number, String name, Dimension dimension) {
        if (name.isEmpty()) {
            return fault("needs a unit after " + number, dimension.missing(number));
        }
        String pointed = Numeral.withPoint(text);
        if (pointed != null) {
            return fault("has a decimal comma", "write " + pointed);
        }
        if (Numeral.help(text) != null) {
            return fault("cannot be the number " + Node.quote(text), Numeral.help(text));
        }
        boolean known = Dimension.anyHas(name);
        String nearest = known ? null : Suggestion.nearest(dimension.unitNames(), name);
        return fault((known ? "has the wrong unit " : "has an unknown unit ") + Node.quote(name),
                nearest != null ? "did you mean '" + nearest + "'?" : "use " + dimension.unitList());
    }

    private static Quantity notOne(String text, Dimension dimension) {
        String help = Numeral.help(text);
        return fault("must be " + dimension.described() + ", not the text " + Node.quote(text), help != null ? help : dimension.example());
    }
}
