package understorey.schema;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Replaces our own keywords, which keep the source readable, by standard ones, and lets what is forgiven in all places alike pass
 * there: one entry for a list, words in capitals, other spellings.
 */
final class Keywords {

    private static final String NUMBER = "[-+\u2212]?(\\d+\\.?\\d*|\\.\\d+)";

    private Keywords() {
    }

    /** A part of the schema in standard keywords alone. */
    static Object standard(Object tree) {
        if (tree instanceof List<?> list) {
            return list.stream().map(Keywords::standard).toList();
        }
        return tree instanceof Map<?, ?> ? alone(standard(PlanFiles.members(tree))) : tree;
    }

    private static Map<String, Object> standard(Map<String, Object> source) {
        Map<String, Object> members = new LinkedHashMap<>();
        source.forEach((key, value) -> {
            if (key.equals("description")) {
                members.put(key, Written.description(source));
            } else if (key.equals("x-units")) {
                members.put("pattern", quantity(names(value), source));
            } else if (key.equals("x-words")) {
                List<String> words = new ArrayList<>(PlanFiles.members(value).keySet());
                words.addAll(source.get("x-also") instanceof Map<?, ?> also ? PlanFiles.members(also).keySet() : Set.of());
                members.put("anyOf", List.of(Map.of("enum", words), Map.of("pattern", anyCase(words))));
            } else if (key.equals("const")) {
                members.put("anyOf", List.of(Map.of("const", value), Map.of("pattern", anyCase(List.of(String.valueOf(value))))));
            } else if (key.equals("properties")) {
                members.put(key, properties(PlanFiles.members(value), members));
            } else if (!key.startsWith("x-")) {
                members.put(key, standard(value));
            }
        });
        return members;
    }

    /** Keys in both spellings, one of which may be there. */
    private static Map<String, Object> properties(Map<String, Object> source, Map<String, Object> block) {
        Map<String, Object> properties = new LinkedHashMap<>();
        Map<String, Object> twice = new LinkedHashMap<>();
        source.forEach((key, property) -> {
            properties.put(key, standard(property));
            if (PlanFiles.members(property).get("x-also") instanceof String other) {
                properties.put(other, standard(property));
                twice.put(other, Map.of("properties", Map.of(key, false)));
            }
        });
        if (!twice.isEmpty()) {
            block.put("dependentSchemas", twice);
        }
        return properties;
    }

    /** A list, or its one entry; a list of two or more stays a list. */
    private static Map<String, Object> alone(Map<String, Object> schema) {
        if (!"array".equals(schema.get("type")) || schema.get("minItems") instanceof BigDecimal least && least.intValue() > 1) {
            return schema;
        }
        Map<String, Object> members = new LinkedHashMap<>(schema);
        Map<String, Object> list = new LinkedHashMap<>();
        for (String key : List.of("type", "minItems", "maxItems", "items")) {
            Object value = members.remove(key);
            if (value != null) {
                list.put(key, value);
            }
        }
        members.put("anyOf", List.of(Objects.requireNonNull(list.get("items")), list));
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
