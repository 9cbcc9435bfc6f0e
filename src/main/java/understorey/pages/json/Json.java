package understorey.pages.json;

import static understorey.pages.words.Words.ifKnown;

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
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.function.BiConsumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
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

    /** A call of the library, which says that it may fail; writing to memory does not. */
    private interface Call {
        void write(JsonGenerator generator) throws IOException;
    }

    private Json() {
        try {
            generator = new JsonFactory().createGenerator(text);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        generator.setPrettyPrinter(printer());
        generator.enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN.mappedFeature());
    }

    /** A document that is one object; {@link #document()} ends it. */
    static Json begin() {
        return new Json().item();
    }

    /** A document that is one list; {@link #document()} ends it. */
    public static Json beginList() {
        return new Json().write(JsonGenerator::writeStartArray);
    }

    /** The text of the whole document, with a line feed at its end. */
    public String document() {
        write(JsonGenerator::close);
        return text.append('\n').toString();
    }

    private Json write(Call call) {
        try {
            call.write(generator);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return this;
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

    public Json text(String key, @Nullable String value) {
        return write(to -> to.writeStringField(key, value));
    }

    /** An enum constant as the plan's format words it. */
    public Json word(String key, @Nullable Enum<?> value) {
        return text(key, ifKnown(value, Words::word));
    }

    Json number(String key, @Nullable BigDecimal value) {
        return write(to -> to.writeNumberField(key, value));
    }

    public Json count(String key, @Nullable Integer value) {
        return number(key, ifKnown(value, BigDecimal::valueOf));
    }

    Json truth(String key, @Nullable Boolean value) {
        return value == null ? absent(key) : write(to -> to.writeBooleanField(key, value));
    }

    Json absent(String key) {
        return write(to -> to.writeNullField(key));
    }

    Json date(String key, LocalDate value) {
        return text(key, value.toString());
    }

    /** ISO 8601 to the second, with the offset that holds then. */
    Json time(String key, @Nullable ZonedDateTime value) {
        return text(key, ifKnown(value, time -> INSTANT.format(Figures.second(time))));
    }

    Json span(String key, @Nullable Interval value) {
        return object(key, value, Json::ends);
    }

    /** Members {@code from} and {@code to}; both null for no stretch. */
    Json ends(@Nullable Interval value) {
        return time("from", ifKnown(value, Interval::from)).time("to", ifKnown(value, Interval::to));
    }

    Json texts(String key, Collection<String> values) {
        list(key);
        values.forEach(value -> write(to -> to.writeString(value)));
        return endList();
    }

    Json counts(String key, List<Integer> values) {
        list(key);
        values.forEach(value -> write(to -> to.writeNumber(value)));
        return endList();
    }

    /** Numbers in order; null for those that are absent. */
    Json numbers(String key, List<@Nullable BigDecimal> values) {
        list(key);
        values.forEach(value -> write(to -> to.writeNumber(value)));
        return endList();
    }

    Json spans(String key, List<Interval> values) {
        return objects(key, values, Json::ends);
    }

    /** Reasons as sentences. */
    Json sentences(String key, List<Advice> reasons, Function<Advice, String> sentences) {
        return texts(key, reasons.stream().map(sentences).toList());
    }

    /** A member that is an object itself, with the members that {@code members} writes; null for no value. */
    <T> Json object(String key, @Nullable T value, BiConsumer<Json, T> members) {
        if (value == null) {
            return absent(key);
        }
        members.accept(write(to -> to.writeObjectFieldStart(key)), value);
        return end();
    }

    /** A member that is a list of objects, each with the members that {@code members} writes. */
    <T> Json objects(String key, Collection<T> values, BiConsumer<Json, T> members) {
        list(key);
        values.forEach(value -> {
            members.accept(item(), value);
            end();
        });
        return endList();
    }

    private Json list(String key) {
        return write(to -> to.writeArrayFieldStart(key));
    }

    private Json endList() {
        return write(JsonGenerator::writeEndArray);
    }

    /** Begins an object of the list, until {@link #end}. */
    public Json item() {
        return write(JsonGenerator::writeStartObject);
    }

    /** Ends the innermost object. */
    public Json end() {
        return write(JsonGenerator::writeEndObject);
    }
}
