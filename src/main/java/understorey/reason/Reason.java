package understorey.reason;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Why something is advised.
 *
 * @param kind    names the sentence
 * @param figures what the sentence shows, by name
 */
public record Reason(Kind kind, Map<String, Figure> figures) {

    /** An enum of each package that gives advice; the constant's name is the sentence's. */
    public interface Kind {
        String name();
    }

    public Reason {
        figures = Collections.unmodifiableMap(new LinkedHashMap<>(figures));
    }

    public static Reason of(Kind kind) {
        return new Reason(kind, Map.of());
    }

    /** This reason with one figure more. */
    public Reason with(String name, double value, Figure.Measure measure) {
        return with(name, Figure.of(value, measure));
    }

    /** This reason with one name or word more. */
    public Reason with(String name, String text) {
        return with(name, Figure.text(text));
    }

    /** This reason with one figure more. */
    public Reason with(String name, Figure figure) {
        Map<String, Figure> more = new LinkedHashMap<>(figures);
        more.put(name, figure);
        return new Reason(kind, more);
    }
}
