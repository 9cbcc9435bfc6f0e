package understorey.pages.json;

import java.math.BigDecimal;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.Measure;
import understorey.pages.tables.Column;
import understorey.pages.tables.Facts;
import understorey.pages.tables.Table;
import understorey.pages.words.Figures;
import understorey.pages.words.Words;
import understorey.sky.Interval;

/**
 * Values as a JSON document. {@link Facts} are an object, a {@link Table} is an object of columns. Instants are ISO 8601 with their
 * offset, to the second; spans are objects with {@code from} and {@code to}; constants are words and advice is a sentence.
 */
public final class Json {

    private static final DateTimeFormatter INSTANT = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ssxxx", Locale.ROOT);

    private final Function<Advice, String> sentences;

    private Json(Function<Advice, String> sentences) {
        this.sentences = sentences;
    }

    /** The text of a document, with a line feed at its end; {@code sentences} words the advice. */
    static String document(Object value, Function<Advice, String> sentences) {
        return JsonText.of(new Json(sentences).tree(value, Measure.WORD));
    }

    /** The text of a document without advice. */
    public static String document(Object value) {
        return document(value, String::valueOf);
    }

    /** Maps, lists, numbers, truths and texts; figures are rounded by their measure. */
    private @Nullable Object tree(@Nullable Object value, Measure measure) {
        if (value instanceof Facts<?> facts) {
            return facts(facts);
        }
        if (value instanceof Table<?> table) {
            return columns(table);
        }
        if (value instanceof Collection<?> list) {
            return list.stream().map(item -> tree(item, measure)).toList();
        }
        if (value instanceof Map<?, ?> map) {
            Map<String, @Nullable Object> members = new LinkedHashMap<>();
            map.forEach((key, member) -> members.put(key instanceof Enum<?> word ? Words.word(word) : String.valueOf(key), tree(member, measure)));
            return members;
        }
        if (value instanceof Interval span) {
            Map<String, @Nullable Object> ends = new LinkedHashMap<>();
            ends.put("from", INSTANT.format(Figures.second(span.from())));
            ends.put("to", INSTANT.format(Figures.second(span.to())));
            return ends;
        }
        return scalar(value, measure);
    }

    private @Nullable Object scalar(@Nullable Object value, Measure measure) {
        if (value == null || value instanceof Boolean || value instanceof BigDecimal) {
            return value;
        }
        if (value instanceof Double figure) {
            return Figures.of(figure, measure);
        }
        if (value instanceof Number whole) {
            return BigDecimal.valueOf(whole.longValue());
        }
        if (value instanceof ZonedDateTime time) {
            return INSTANT.format(Figures.second(time));
        }
        if (value instanceof Enum<?> constant) {
            return Words.word(constant);
        }
        return value instanceof Advice advice ? sentences.apply(advice) : value.toString();
    }

    private <R> Map<String, @Nullable Object> facts(Facts<R> facts) {
        return members(facts.columns(), column -> tree(column.value().apply(facts.of()), column.measure()));
    }

    private <R> Map<String, @Nullable Object> columns(Table<R> table) {
        return members(table.columns(), column -> table.rows().stream().map(row -> tree(column.value().apply(row), column.measure())).toList());
    }

    private <R> Map<String, @Nullable Object> members(List<Column<R>> columns, Function<Column<R>, @Nullable Object> value) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        for (Column<R> column : columns) {
            if (column.key() != null) {
                put(members, column.key(), value.apply(column));
            }
        }
        return members;
    }

    @SuppressWarnings("unchecked")
    private static void put(Map<String, @Nullable Object> members, String path, @Nullable Object value) {
        int dot = path.indexOf('.');
        if (dot < 0) {
            members.put(path, value);
        } else {
            put((Map<String, @Nullable Object>) members.computeIfAbsent(path.substring(0, dot), part -> new LinkedHashMap<String, @Nullable Object>()),
                    path.substring(dot + 1), value);
        }
    }
}
