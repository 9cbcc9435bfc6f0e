package understorey.schema;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Replaces our own keywords, which keep the source readable, by standard ones. */
final class Keywords {

    private static final String NUMBER = "[-+\u2212]?(\\d+\\.?\\d*|\\.\\d+)";

    private Keywords() {
    }

    /** A part of the schema in standard keywords alone. */
    static Object standard(Object tree) {
        if (tree instanceof List<?> list) {
            return list.stream().map(Keywords::standard).toList();
        }
        return tree instanceof Map<?, ?> ? standard(PlanFiles.members(tree)) : tree;
    }

    private static Map<String, Object> standard(Map<String, Object> source) {
        Map<String, Object> members = new LinkedHashMap<>();
        source.forEach((key, value) -> {
            if (key.equals("description")) {
                members.put(key, Written.description(source));
            } else if (key.equals("x-units")) {
                members.put("pattern", quantity(names(value), source));
            } else if (key.equals("x-words")) {
                List<String> words = List.copyOf(PlanFiles.members(value).keySet());
                members.put("anyOf", List.of(Map.of("enum", words), Map.of("pattern", anyCase(words))));
            } else if (!key.startsWith("x-")) {
                members.put(key, standard(value));
            }
        });
        return members;
    }

    /** Numbers with units, one or several that add up. */
    private static String quantity(List<String> units, Map<String, Object> source) {
        // No unit holds a character that a pattern would take for its own.
        String one = NUMBER + "\\s*(" + String.join("|", units) + ")";
        return "^\\s*" + (source.containsKey("x-fraction") ? "(1/\\s*)?" : "") + one
                + (source.containsKey("x-single") ? "" : "(\\s+" + one + ")*") + "\\s*$";
    }

    static List<String> names(Object list) {
        return ((List<?>) list).stream().map(String::valueOf).toList();
    }

    /** Patterns of JSON Schema cannot ignore case: each letter is given in both. */
    private static String anyCase(List<String> words) {
        return words.stream().map(word -> word.codePoints().mapToObj(Keywords::bothCases).collect(Collectors.joining()))
                .collect(Collectors.joining("|", "^\\s*(", ")\\s*$"));
    }

    private static String bothCases(int letter) {
        String one = Character.toString(letter);
        return Character.isLetter(letter) ? "[" + one.toLowerCase(Locale.ROOT) + one.toUpperCase(Locale.ROOT) + "]" : one;
    }
}
