package understorey.yaml;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import understorey.yaml.tree.Node;
import understorey.yaml.value.Numeral;

/** Latitudes and longitudes: decimal degrees, north and east positive. */
public final class Coordinate {

    /** Degrees, and perhaps minutes and seconds, with the letter of a hemisphere or without. */
    private static final Pattern SEXAGESIMAL = Pattern.compile("([-\u2212]?)(\\d{1,3}(?:\\.\\d{1,9})?) *\u00b0? *"
            + "(?:(\\d{1,2}(?:\\.\\d{1,9})?) *['\u2032\u2019] *)?"
            + "(?:(\\d{1,2}(?:\\.\\d{1,9})?) *(?:\"|''|\u2033|\u201d) *)?([NSEWnsew]?)");

    private Coordinate() {
    }

    /** Degrees, -90 to 90; null after a finding. */
    public static @Nullable Double latitude(Scalars scalars, @Nullable Node node, String name, @Nullable String help) {
        return degrees(scalars, node, name, 90, help);
    }

    /** Degrees, -180 to 180; null after a finding. */
    public static @Nullable Double longitude(Scalars scalars, @Nullable Node node, String name, @Nullable String help) {
        return degrees(scalars, node, name, 180, help);
    }

    private static @Nullable Double degrees(Scalars scalars, @Nullable Node node, String name, double most, @Nullable String help) {
        String text = node instanceof Node.Scalar scalar ? scalar.text().strip() : "";
        Double decimal = Numeral.of(text) == null ? decimal(text) : null;
        if (node != null && decimal != null) {
            return scalars.refuse(node, name + " must be a number, not the text " + Node.quote(text),
                    "write decimal degrees, south and west negative: " + Numeral.show(decimal));
        }
        return scalars.number(node, name, -most, most, help);
    }

    /** What was meant by degrees, minutes and a hemisphere; null for any other text. */
    private static @Nullable Double decimal(String text) {
        Matcher match = SEXAGESIMAL.matcher(text);
        if (!match.matches()) {
            return null;
        }
        double degrees = Double.parseDouble(match.group(2));
        degrees += match.group(3) == null ? 0 : Double.parseDouble(match.group(3)) / 60;
        degrees += match.group(4) == null ? 0 : Double.parseDouble(match.group(4)) / 3600;
        boolean negative = !match.group(1).isEmpty() || "SWsw".contains(match.group(5)) && !match.group(5).isEmpty();
        return negative ? -degrees : degrees;
    }
}
