package understorey.pages;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import understorey.sky.Interval;

/** Members of a JSON object, one a call; whatever is null is written as {@code null}. Two spaces, line feeds. */
final class Json {

    private static final DateTimeFormatter INSTANT =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ssxxx", Locale.ROOT);

    private final JsonGenerator generator;

    private Json(JsonGenerator generator) {
        this.generator = generator;
    }

    /** Writes the members of one object. */
    interface Members {
        void write(Json json) throws IOException;
    }

    /** Writes the members of the object that stands for an item of a list. */
    interface Item<T> {
        void write(Json json, T item) throws IOException;
    }

    /** The text of a document that is one object, with a line feed at its end. */
    static String document(Members members) {
        StringWriter text = new StringWriter();
        try (JsonGenerator generator = new JsonFactory().createGenerator(text)) {
            generator.setPrettyPrinter(printer());
            generator.enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN.mappedFeature());
            generator.writeStartObject();
            members.write(new Json(generator));
            generator.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.append('\n').toString();
    }

    private static DefaultPrettyPrinter printer() {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter(Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                .withObjectEmptySeparator("").withArrayEmptySeparator(""));
        printer.indentObjectsWith(indenter);
        printer.indentArraysWith(indenter);
        return printer;
    }

    Json text(String key, String value) throws IOException {
        generator.writeStringField(key, value);
        return this;
    }

    /** An enum constant as the plan's format words it. */
    Json word(String key, Enum<?> value) throws IOException {
        return text(key, value == null ? null : Words.word(value));
    }

    Json number(String key, BigDecimal value) throws IOException {
        generator.writeNumberField(key, value);
        return this;
    }

    Json count(String key, Integer value) throws IOException {
        return number(key, value == null ? null : BigDecimal.valueOf(value));
    }

    Json truth(String key, Boolean value) throws IOException {
        if (value == null) {
            return absent(key);
        }
        generator.writeBooleanField(key, value);
        return this;
    }

    Json absent(String key) throws IOException {
        generator.writeNullField(key);
        return this;
    }

    /** ISO 8601 to the second, with the offset that holds then. */
    Json time(String key, ZonedDateTime value) throws IOException {
        return text(key, value == null ? null : INSTANT.format(Figures.second(value)));
    }

    Json span(String key, Interval value) throws IOException {
        return value == null ? absent(key) : object(key, json -> json.ends(value));
    }

    /** Members {@code from} and {@code to}; both null for no stretch. */
    Json ends(Interval value) throws IOException {
        return time("from", value == null ? null : value.from()).time("to", value == null ? null : value.to());
    }

    Json texts(String key, Collection<String> values) throws IOException {
        generator.writeArrayFieldStart(key);
        for (String value : values) {
            generator.writeString(value);
        }
        generator.writeEndArray();
        return this;
    }

    Json counts(String key, List<Integer> values) throws IOException {
        generator.writeArrayFieldStart(key);
        for (int value : values) {
            generator.writeNumber(value);
        }
        generator.writeEndArray();
        return this;
    }

    Json object(String key, Members members) throws IOException {
        generator.writeObjectFieldStart(key);
        members.write(this);
        generator.writeEndObject();
        return this;
    }

    <T> Json objects(String key, List<T> items, Item<T> item) throws IOException {
        generator.writeArrayFieldStart(key);
        for (T each : items) {
            generator.writeStartObject();
            item.write(this, each);
            generator.writeEndObject();
        }
        generator.writeEndArray();
        return this;
    }
}
