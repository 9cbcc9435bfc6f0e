package understorey.yaml.tree;

import java.util.ArrayList;
import java.util.List;
import understorey.yaml.finding.Findings;
import understorey.yaml.finding.Pos;

/** Keys that are given more than once in one place. */
final class DuplicateKeys {

    private final List<Key> keys = new ArrayList<>();

    /**
     * Notes a key.
     *
     * @param earlier the line that it was first written on
     */
    void add(String name, Pos pos, int earlier) {
        keys.add(new Key(name, pos, earlier));
    }

    /**
     * Reports the keys. Several of them in one entry of a list are probably the next entry without its dash, so they
     * are one finding.
     *
     * @param listed false if no list can be meant
     */
    void report(Findings findings, boolean listed) {
        if (listed && keys.size() > 1) {
            Key first = keys.get(0);
            List<String> names = keys.stream().map(key -> "'" + Node.clip(key.name()) + "'").distinct().toList();
            findings.error(first.pos(), (names.size() == 1 ? "the key " : "the keys ") + String.join(", ", names)
                    + (names.size() == 1 ? " is" : " are") + " given again from this line on",
                    "if a new entry begins here, add '- ' before '" + Node.clip(first.name()) + "'");
            return;
        }
        for (Key key : keys) {
            findings.error(key.pos(), "the key '" + Node.clip(key.name()) + "' is given twice, first on line "
                    + key.earlier(), "delete one of them");
        }
    }

    private record Key(String name, Pos pos, int earlier) {
    }
}
