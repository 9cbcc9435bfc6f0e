package understorey.yaml.tree;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import understorey.yaml.finding.Pos;

/** A piece of a YAML file, with its place. */
public sealed interface Node {

    Pos pos();

    /** What it is, for a sentence like "must be a list, not …". */
    String described();

    /**
     * A single value, as text.
     *
     * @param text  as written, without quotes
     * @param empty true if there is nothing, or only a word for nothing
     */
    record Scalar(String text, boolean empty, Pos pos) implements Node {

        @Override
        public String described() {
            return empty ? "nothing" : "the text " + quote(text);
        }
    }

    /** A list. */
    record Seq(List<Node> items, Pos pos) implements Node {

        @Override
        public String described() {
            return "a list";
        }
    }

    /** Keys and values, in file order; its place is that of its first key or its opening brace. */
    record Mapping(Map<String, Entry> entries, Pos pos) implements Node {

        /** Entry of a key in either spelling; null if there is none. */
        public @Nullable Entry entry(String key) {
            Entry entry = entries.get(key);
            return entry != null ? entry : entries.entrySet().stream().filter(other -> Spelling.british(other.getKey()).equals(key))
                    .map(Map.Entry::getValue).findFirst().orElse(null);
        }

        @Override
        public String described() {
            return "keys and values";
        }
    }

    /** One key with its value, which is null if it was refused while reading. */
    record Entry(Pos key, @Nullable Node value) {
    }

    /** The author's words between quotes, on one line and not too long. */
    static String quote(String words) {
        return '"' + clip(words) + '"';
    }

    /** As {@link #quote}, without the quotes. */
    static String clip(String words) {
        String line = words.strip();
        int end = line.indexOf('\n');
        boolean cut = end >= 0;
        line = cut ? line.substring(0, end) : line;
        if (line.codePointCount(0, line.length()) > 40) {
            line = line.substring(0, line.offsetByCodePoints(0, 40));
            cut = true;
        }
        return cut ? line + "…" : line;
    }
}
