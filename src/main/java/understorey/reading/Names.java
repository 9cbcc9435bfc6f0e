package understorey.reading;

import java.util.LinkedHashMap;
import java.util.Map;

/** Names that may be given once each, and may be pointed to from elsewhere. */
final class Names {

    private final String kind;
    private final String ifNone;
    private final Map<String, Pos> places = new LinkedHashMap<>();
    private boolean complete = true;

    /**
     * @param kind in sentences, such as "spot"
     */
    Names(String kind) {
        this(kind, null);
    }

    /**
     * Names of that kind.
     *
     * @param ifNone the help against a name that points into an empty list
     */
    Names(String kind, String ifNone) {
        this.kind = kind;
        this.ifNone = ifNone;
    }

    /** Takes the name of a block; one that was taken before is an error. Null when it has none. */
    String claim(Fields block, String key) {
        String name = block.text(key);
        if (name == null) {
            complete = false;
            return null;
        }
        Pos earlier = places.putIfAbsent(name, block.at(key));
        if (earlier != null) {
            block.refuse(key, "another " + kind + " has the name " + Node.quote(name),
                    "first given on line " + earlier.line());
        }
        return name;
    }

    /** The name under a key, which must be one of these. As long as a name is unknown, nothing is said. */
    String pointed(Fields block, String key) {
        String name = block.text(key);
        if (name != null && complete && !places.containsKey(name)) {
            block.refuse(key, "no " + kind + " has the name " + Node.quote(name),
                    places.isEmpty() ? ifNone : Suggestion.among(places.keySet(), name, "known names"));
        }
        return name;
    }

    /** Says that there may be names which could not be read; from then on nothing is said to dangle. */
    void doubt() {
        complete = false;
    }

    boolean isEmpty() {
        return places.isEmpty();
    }
}
