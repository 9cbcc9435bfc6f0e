package understorey.yaml.value;

import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.yaml.finding.Suggestion;
import understorey.yaml.tree.Node;

/** Directions from true north: degrees, or one of the 32 points of the compass, 11.25° apart. */
public final class Bearing {

    public static final List<String> POINTS = List.of(
            "N", "NbE", "NNE", "NEbN", "NE", "NEbE", "ENE", "EbN",
            "E", "EbS", "ESE", "SEbE", "SE", "SEbS", "SSE", "SbE",
            "S", "SbW", "SSW", "SWbS", "SW", "SWbW", "WSW", "WbS",
            "W", "WbN", "WNW", "NWbW", "NW", "NWbN", "NNW", "NbW");

    private Bearing() {
    }

    /** Degrees, 0 to below 360. */
    public static Quantity read(String written) {
        String text = written.strip();
        for (int i = 0; i < POINTS.size(); i++) {
            if (POINTS.get(i).equalsIgnoreCase(text)) {
                return Quantity.of(i * 11.25);
            }
        }
        Double degrees = degrees(text);
        if (degrees == null) {
            if (Numeral.withPoint(text) != null) {
                return Quantity.fault("has a decimal comma", "write " + Numeral.withPoint(text));
            }
            String nearest = Suggestion.nearest(POINTS, text);
            return Quantity.fault("must be a bearing in degrees or a compass point, not the text " + Node.quote(text),
                    nearest != null ? "did you mean '" + nearest + "'?" : "for example 65 or ENE");
        }
        if (degrees < 0 || degrees > 360) {
            return Quantity.fault("must be from 0 to 360 degrees, not " + Numeral.show(degrees),
                    "degrees clockwise from north, or a compass point, for example ENE");
        }
        return Quantity.of(degrees == 360 ? 0 : degrees);
    }

    /** A bare number, or one with a degree sign; null when the text is neither. */
    public static @Nullable Double degrees(String text) {
        String bare = text.endsWith("°") ? text.substring(0, text.length() - 1).strip() : text;
        return Numeral.of(bare);
    }
}
