package understorey.yaml;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import understorey.yaml.finding.Pos;
import understorey.yaml.finding.Suggestion;
import understorey.yaml.tree.Node;

/** Names of one kind, each given once, which other keys can use. */
public final class Names {

    private final String kind;
    private final @Nullable String ifNone;
    private final Map<String, Pos> places = new LinkedHashMap<>();
    private boolean complete = true;

    /**
     * @param kind in sentences, for example "spot"
     */
    public Names(String kind) {
        this(kind, null);
    }

    /**
     * Names of that kind.
     *
     * @param ifNone fix for a name that is used while the list is empty
     */
    public Names(String kind, @Nullable String ifNone) {
        this.kind = kind;
        this.ifNone = ifNone;
    }

    /** Name of a record, which must be new; null if it has none. */
    public @Nullable String claim(Fields block, String key) {
        String name = block.text(key);
        if (name == null) {
            complete = false;
            return null;
        }
        Pos earlier = places.putIfAbsent(name, block.at(key));
        if (earlier != null) {
            block.refuse(key, "the name " + Node.quote(name) + " is already used for a " + kind + " on line "
                    + earlier.line(), "use another name");
        }
        return name;
    }

    /** Name under a key, which must be one of these. It is not checked while some of these could not be read. */
    public @Nullable String pointed(Fields block, String key) {
        String name = block.text(key);
        if (name != null && complete && !places.containsKey(name)) {
            block.refuse(key, "there is no " + kind + " " + Node.quote(name),
                    places.isEmpty() ? ifNone : Suggestion.among(places.keySet(), name, "known names"));
        }
        return name;
    }

    /** Notes that some names could not be read; from then on, unknown names are not reported. */
    public void doubt() {
        complete = false;
    }

    public boolean isEmpty() {
        return places.isEmpty();
    }
}
