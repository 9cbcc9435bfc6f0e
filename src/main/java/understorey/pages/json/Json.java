package understorey.pages.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import understorey.advice.Advice;
import understorey.pages.words.Figures;
import understorey.pages.words.Words;
import understorey.sky.Interval;

/** One JSON document: members of objects, one a call; whatever is null is written as {@code null}. Two spaces, line feeds. */
public final class Json {

    private static final DateTimeFormatter INSTANT =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ssxxx", Locale.ROOT);

    private final JsonGenerator generator;
    private final StringWriter text = new StringWriter();

    private Json() throws IOException {
        generator = new JsonFactory().createGenerator(text);
        generator.setPrettyPrinter(printer());
        generator.enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN.mappedFeature());
    }

    /** A document that is one object; {@link #document()} ends it. */
    static Json begin() throws IOException {
        return new Json().item();
    }

    /** A document that is one list; {@link #document()} ends it. */
    public static Json beginList() throws IOException {
        Json json = new Json();
        json.generator.writeStartArray();
        return json;
    }

    /** The text of the whole document, with a line feed at its end. */
    public String document() throws IOException {
        generator.close();
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

    public Json text(String key, String value) throws IOException {
        generator.writeStringField(key, value);
        return this;
    }

    /** An enum constant as the plan's format words it. */
    public Json word(String key, Enum<?> value) throws IOException {
        return text(key, value == null ? null : Words.word(value));
    }

    Json number(String key, BigDecimal value) throws IOException {
        generator.writeNumberField(key, value);
        return this;
    }

    public Json count(String key, Integer value) throws IOException {
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
        return value == null ? absent(key) : object(key).ends(value).end();
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

    Json spans(String key, List<Interval> values) throws IOException {
        list(key);
        for (Interval value : values) {
            item().ends(value).end();
        }
        return endList();
    }

    /** Reasons as sentences. */
    Json told(String key, List<Advice> reasons, Function<Advice, String> sentences) throws IOException {
        generator.writeArrayFieldStart(key);
        for (Advice reason : reasons) {
            generator.writeString(sentences.apply(reason));
        }
        generator.writeEndArray();
        return this;
    }

    /** Begins a member that is an object itself; what follows are its members, until {@link #end}. */
    Json object(String key) throws IOException {
        generator.writeObjectFieldStart(key);
        return this;
    }

    /** Begins a member that is a list of objects, until {@link #endList}. */
    Json list(String key) throws IOException {
        generator.writeArrayFieldStart(key);
        return this;
    }

    /** Begins an object of the list, until {@link #end}. */
    public Json item() throws IOException {
        generator.writeStartObject();
        return this;
    }

    /** Ends the innermost object. */
    public Json end() throws IOException {
        generator.writeEndObject();
        return this;
    }

    Json endList() throws IOException {
        generator.writeEndArray();
        return this;
    }
}
