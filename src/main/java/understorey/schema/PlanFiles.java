package understorey.schema;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The schema of the three files of a folder of plans. */
public final class PlanFiles {

    /** A kind of file. */
    public enum Kind {
        TRIP, SITE, BAG;

        /** As commands and file names have it: {@code trip}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    private static final YAMLFactory YAML = YAMLFactory.builder().enable(YAMLParser.Feature.PARSE_BOOLEAN_LIKE_WORDS_AS_STRINGS).build();
    private static final String TO_DEFINITION = "#/$defs/";

    private final Map<String, Map<String, Object>> definitions = new LinkedHashMap<>();
    private final Object edition;

    private PlanFiles(Map<String, Object> source) {
        edition = Objects.requireNonNull(source.get("$schema"));
        members(source.get("$defs")).forEach((name, definition) -> definitions.put(name, members(definition)));
    }

    /** The schema that comes with the tool. */
    public static PlanFiles builtIn() {
        try (InputStream in = Objects.requireNonNull(PlanFiles.class.getResourceAsStream("plan-files.yaml"));
                JsonParser parser = YAML.createParser(in)) {
            parser.nextToken();
            return new PlanFiles(members(value(parser)));
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private static Object value(JsonParser parser) throws IOException {
        return switch (parser.currentToken()) {
            case START_OBJECT -> {
                Map<String, Object> members = new LinkedHashMap<>();
                while (parser.nextToken() != JsonToken.END_OBJECT) {
                    String key = parser.currentName();
                    parser.nextToken();
                    members.put(key, value(parser));
                }
                yield members;
            }
            case START_ARRAY -> {
                List<Object> items = new ArrayList<>();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    items.add(value(parser));
                }
                yield items;
            }
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> parser.getDecimalValue();
            case VALUE_TRUE, VALUE_FALSE -> parser.getBooleanValue();
            default -> parser.getText();
        };
    }

    /** A JSON Schema of one kind of file, complete in itself: maps, lists, numbers, truths and texts. */
    public Map<String, Object> schema(Kind kind) {
        Map<String, Object> schema = new LinkedHashMap<>();
        String name = kind.word();
        schema.put("$schema", edition);
        schema.put("$ref", TO_DEFINITION + name);
        Map<String, Object> used = new LinkedHashMap<>();
        Set<String> reached = new LinkedHashSet<>();
        reach(name, reached);
        reached.forEach(reference -> used.put(reference, Keywords.standard(definition(reference))));
        schema.put("$defs", used);
        return schema;
    }

    private void reach(String name, Set<String> reached) {
        if (reached.add(name)) {
            references(definition(name)).forEach(reference -> reach(reference, reached));
        }
    }

    private static List<String> references(Object tree) {
        List<String> found = new ArrayList<>();
        if (tree instanceof Map<?, ?> map) {
            if (map.get("$ref") instanceof String reference) {
                found.add(reference.substring(TO_DEFINITION.length()));
            }
            map.values().forEach(member -> found.addAll(references(member)));
        } else if (tree instanceof List<?> list) {
            list.forEach(item -> found.addAll(references(item)));
        }
        return found;
    }

    /** What may be written, block by block, as the reference shows it. */
    public Reference reference() {
        return Reference.of(definitions);
    }

    /**
     * A file to begin with, with comments.
     *
     * @param given values instead of the examples, by block and key, for example {@code trip.date}
     */
    public String starter(Kind kind, Map<String, String> given) {
        return new Starter(definitions, given).text(kind.word());
    }

    /** A text as YAML, in quotes where it would be taken for something else. */
    public static String quoted(String text) {
        return Written.value(text);
    }

    /**
     * An example of a key, as an author writes it; null if there is none.
     *
     * @param block title of the block without its article, for example {@code lens}; a block of another title will do
     */
    public @Nullable String example(String block, String key) {
        String example = null;
        for (Map<String, Object> definition : definitions.values()) {
            Object property = definition.get("properties") instanceof Map<?, ?> properties ? properties.get(key) : null;
            boolean same = Reference.bare(String.valueOf(definition.get("title"))).equals(block);
            if (property != null && (example == null || same)) {
                example = Written.first(members(property));
            }
        }
        return example;
    }

    List<String> words(String definition) {
        return List.copyOf(members(definition(definition).get("x-words")).keySet());
    }

    List<String> units(String definition) {
        return Keywords.names(Objects.requireNonNull(definition(definition).get("x-units")));
    }

    private Map<String, Object> definition(String name) {
        return Objects.requireNonNull(definitions.get(name), name);
    }

    @SuppressWarnings("unchecked")
    static Map<String, Object> members(@Nullable Object tree) {
        return (Map<String, Object>) Objects.requireNonNull(tree);
    }
}
