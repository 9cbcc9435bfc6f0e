package understorey.schema;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Writes a file to begin with: the commonest keys of each block with their examples, each with a comment that says what it is for. */
final class Starter {

    private static final int BESIDE = 44;
    private static final int WIDEST = 132;
    /** A comment has room for so many; there are more points of the compass. */
    private static final int MOST_WORDS = 12;

    private final Map<String, Map<String, Object>> definitions;
    private final Map<String, String> given;
    private final List<String> lines = new ArrayList<>();

    /**
     * @param given values instead of the examples, by block and key, for example {@code trip.date}
     */
    Starter(Map<String, Map<String, Object>> definitions, Map<String, String> given) {
        this.definitions = definitions;
        this.given = given;
    }

    String text(String block) {
        Map<String, Object> definition = Objects.requireNonNull(definitions.get(block));
        lines.add("# " + definition.get("description"));
        lines.add("# A line that begins with # is a comment: take the # away to use its key.");
        keys(block, definition, "", "");
        return String.join("\n", lines) + "\n";
    }

    /**
     * @param first  what the first line begins with
     * @param indent what the others begin with
     */
    private void keys(String block, Map<String, Object> definition, String first, String indent) {
        Map<String, Object> properties = PlanFiles.members(definition.get("properties"));
        String begin = first;
        for (String name : Keywords.names(Objects.requireNonNull(definition.get("x-starter")))) {
            boolean comment = name.startsWith("(");
            String key = comment ? name.substring(1, name.length() - 1) : name;
            Map<String, Object> property = PlanFiles.members(properties.get(key));
            String entries = entries(property);
            if (comment || entries == null) {
                String value = given.getOrDefault(block + "." + key, String.valueOf(Written.first(property)));
                line(begin + (comment && !given.containsKey(block + "." + key) ? "# " : "") + key + ": " + value, comment(property));
            } else {
                line(begin + key + ":", Written.description(property));
                keys(entries, Objects.requireNonNull(definitions.get(entries)), indent + "  - ", indent + "    ");
            }
            begin = indent;
        }
    }

    /** What a key is for, and which words it takes. */
    private String comment(Map<String, Object> property) {
        Set<?> shown = property.get("examples") instanceof List<?> examples && examples.get(0) instanceof Map<?, ?> block ? block.keySet() : Set.of();
        String words = words(property, shown);
        return Written.description(property) + (words.isEmpty() ? "" : "; words: " + words);
    }

    /**
     * The allowed words of a value, or of some keys of a block. Yes and no need no list.
     *
     * @param shown keys of the block that its example shows
     */
    private String words(Object value, Set<?> shown) {
        Map<String, Object> schema = PlanFiles.members(value);
        if (schema.get("$ref") instanceof String reference) {
            return words(Objects.requireNonNull(definitions.get(reference.substring(reference.lastIndexOf('/') + 1))), shown);
        }
        if (schema.get("anyOf") instanceof List<?> choices) {
            return choices.stream().map(choice -> words(Objects.requireNonNull(choice), shown)).filter(words -> !words.isEmpty()).distinct()
                    .collect(Collectors.joining(", "));
        }
        if (schema.get("items") instanceof Map<?, ?> items) {
            return words(items, Set.of());
        }
        if (schema.get("properties") instanceof Map<?, ?> properties) {
            return properties.entrySet().stream().filter(key -> shown.contains(key.getKey()))
                    .map(key -> key.getKey() + ": " + words(key.getValue(), Set.of()))
                    .filter(words -> !words.endsWith(": ")).collect(Collectors.joining("; "));
        }
        return schema.get("x-words") instanceof Map<?, ?> words && words.size() <= MOST_WORDS && !words.containsKey("yes")
                ? words.keySet().stream().map(String::valueOf).collect(Collectors.joining(", ")) : "";
    }

    /** Block that the entries of a list are; null for any other value. */
    private @Nullable String entries(Map<String, Object> property) {
        if (property.get("items") instanceof Map<?, ?> items && items.get("$ref") instanceof String reference) {
            String block = reference.substring(reference.lastIndexOf('/') + 1);
            return Objects.requireNonNull(definitions.get(block)).containsKey("x-starter") ? block : null;
        }
        return null;
    }

    /** A comment stands beside its key, or above it where there is no room. */
    private void line(String text, String comment) {
        String beside = text + " ".repeat(Math.max(2, BESIDE - text.length())) + "# " + comment;
        if (beside.length() <= WIDEST) {
            lines.add(beside);
        } else {
            String indent = " ".repeat(text.length() - text.stripLeading().length());
            if (!text.stripLeading().startsWith("- ")) {
                lines.add(indent + "# " + comment);
            }
            lines.add(text);
        }
    }
}
