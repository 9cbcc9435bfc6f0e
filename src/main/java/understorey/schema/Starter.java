package understorey.schema;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Writes a file to begin with: the commonest keys of each block with their examples, each with a comment that says what it is for. */
final class Starter {

    private static final int BESIDE = 44;
    private static final int WIDEST = 132;

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
                line(begin + (comment && !given.containsKey(block + "." + key) ? "# " : "") + key + ": " + value, Written.description(property));
            } else {
                line(begin + key + ":", Written.description(property));
                keys(entries, Objects.requireNonNull(definitions.get(entries)), indent + "  - ", indent + "    ");
            }
            begin = indent;
        }
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
