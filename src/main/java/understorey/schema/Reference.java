package understorey.schema;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What may be written, for people.
 *
 * @param blocks of keys and values, trip first
 * @param values how single values are written
 */
public record Reference(List<Block> blocks, List<Value> values) {

    /** Keys that stand together. */
    public record Block(String title, String about, List<Key> keys) {
    }

    /**
     * One key.
     *
     * @param takes   what its value may be, one or the other
     * @param leftOut what holds without it; null if nothing does
     * @param example null where a block of its own shows one
     */
    public record Key(String name, boolean required, String about, List<Takes> takes, @Nullable String leftOut, @Nullable String example) {
    }

    /**
     * What a value may be.
     *
     * @param what    its name, for example "a length"
     * @param list    whether there may be several, as a list
     * @param words   the only ones allowed; empty where any text will do
     * @param heading of the part that explains it; null if none does
     */
    public record Takes(String what, boolean list, List<Word> words, @Nullable String heading) {
    }

    /** An allowed word; its meaning is empty where the word says it all. */
    public record Word(String word, String meaning) {
    }

    /** How a kind of value is written; units are empty where there are none. */
    public record Value(String title, String about, List<String> units) {
    }

    private static final String WORD = "a word";

    static Reference of(Map<String, Map<String, Object>> definitions) {
        List<Block> blocks = new ArrayList<>();
        List<Value> values = new ArrayList<>();
        definitions.forEach((name, definition) -> {
            String title = String.valueOf(definition.get("title"));
            String about = String.valueOf(definition.get("description"));
            if (definition.get("properties") instanceof Map<?, ?>) {
                blocks.add(new Block(title, about, keys(definition, definitions)));
            } else if (!title.equals(WORD) && !title.startsWith("a list")) {
                values.add(new Value(title, about, definition.get("x-units") instanceof List<?> units ? Keywords.names(units) : List.of()));
            }
        });
        return new Reference(blocks, values);
    }

    private static List<Key> keys(Map<String, Object> block, Map<String, Map<String, Object>> definitions) {
        List<?> required = block.get("required") instanceof List<?> list ? list : List.of();
        List<Key> keys = new ArrayList<>();
        PlanFiles.members(block.get("properties")).forEach((name, tree) -> {
            Map<String, Object> property = PlanFiles.members(tree);
            Object leftOut = property.getOrDefault("x-default", property.get("default"));
            keys.add(new Key(name, required.contains(name), Written.about(property), takes(property, false, definitions),
                    leftOut == null ? null : String.valueOf(leftOut), Written.first(property)));
        });
        return keys;
    }

    private static List<Takes> takes(Map<String, Object> schema, boolean list, Map<String, Map<String, Object>> definitions) {
        if (schema.get("$ref") instanceof String reference) {
            Map<String, Object> definition = PlanFiles.members(definitions.get(reference.substring("#/$defs/".length())));
            Object title = definition.get("title");
            if (WORD.equals(title)) {
                return List.of(new Takes(WORD, list, words(definition), null));
            }
            return String.valueOf(title).startsWith("a list") || String.valueOf(title).endsWith("none")
                    ? takes(definition, list, definitions)
                    : List.of(new Takes(small(String.valueOf(title)), list, List.of(), String.valueOf(title)));
        }
        if (schema.get("anyOf") instanceof List<?> choices) {
            List<Takes> all = new ArrayList<>();
            choices.forEach(choice -> all.addAll(takes(PlanFiles.members(choice), list, definitions)));
            return all;
        }
        if (schema.get("items") instanceof Map<?, ?> items) {
            return takes(PlanFiles.members(items), true, definitions);
        }
        if (schema.get("const") instanceof String word) {
            return List.of(new Takes(WORD, list, List.of(new Word(word, "")), null));
        }
        return List.of();
    }

    private static List<Word> words(Map<String, Object> definition) {
        List<Word> words = new ArrayList<>();
        PlanFiles.members(definition.get("x-words")).forEach((word, meaning) -> words.add(new Word(word, meaning + also(definition, word))));
        return words;
    }

    /** Another name of a word, in brackets; empty if there is none. */
    private static String also(Map<String, Object> definition, String word) {
        return !(definition.get("x-also") instanceof Map<?, ?> also) ? "" : also.entrySet().stream()
                .filter(other -> word.equals(other.getValue())).map(other -> " (also " + other.getKey() + ")").findFirst().orElse("");
    }

    /** A title inside a sentence; Markdown is a name. */
    private static String small(String title) {
        return title.equals("Markdown") ? title : title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1);
    }

    /** A title without its article. */
    static String bare(String title) {
        return title.replaceFirst("^(A|An|a|an) ", "");
    }
}
