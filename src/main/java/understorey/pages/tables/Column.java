package understorey.pages.tables;

import static understorey.pages.words.Words.ifKnown;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import understorey.advice.Measure;
import understorey.pages.words.Sentences;
import understorey.pages.words.Words;

/**
 * One quantity of a row: a column of a table, or one of a list of facts.
 *
 * @param key     for programs, its unit at the end; parts of an object are joined by dots; null where programs have no use for it
 * @param group   head over the heads of neighbouring columns; null for none
 * @param head    for readers; null where pages do not show it
 * @param measure of the value, or of each value of a list
 * @param value   of a row; null where it has none
 * @param text    for readers where it is more than the value; null where the value says it all
 * @param strong  which rows stand out
 */
public record Column<R>(@Nullable String key, @Nullable String group, @Nullable String head, Measure measure,
                        Function<R, @Nullable Object> value, @Nullable BiFunction<R, Sentences, String> text, Predicate<R> strong) {

    /** A quantity for readers and programs. */
    public static <R> Column<R> of(String key, String head, Measure measure, Function<R, @Nullable Object> value) {
        return new Column<>(key, null, head, measure, value, null, row -> false);
    }

    /** The same, with words for readers that say more than the value. */
    public static <R> Column<R> of(String key, String head, Measure measure, Function<R, @Nullable Object> value,
                                   BiFunction<R, Sentences, String> text) {
        return new Column<>(key, null, head, measure, value, text, row -> false);
    }

    /** A quantity for programs alone. */
    public static <R> Column<R> data(String key, Measure measure, Function<R, @Nullable Object> value) {
        return new Column<>(key, null, null, measure, value, null, row -> false);
    }

    /** Words, times and parts for programs alone. */
    public static <R> Column<R> data(String key, Function<R, @Nullable Object> value) {
        return data(key, Measure.WORD, value);
    }

    /** Text for readers alone. */
    public static <R> Column<R> text(String head, Measure measure, BiFunction<R, Sentences, String> text) {
        return new Column<>(null, null, head, measure, row -> null, text, row -> false);
    }

    /** This column, with the rows that stand out. */
    public Column<R> strongIf(Predicate<R> row) {
        return new Column<>(key, group, head, measure, value, text, row);
    }

    /** Columns with a head over their heads. */
    public static <R> List<Column<R>> under(String group, List<Column<R>> columns) {
        return columns.stream()
                .map(column -> new Column<>(column.key, group, column.head, column.measure, column.value, column.text, column.strong)).toList();
    }

    /** The head of a column that pages show. */
    String name() {
        return Objects.requireNonNull(head, "pages do not show this column");
    }

    /** The words of a row; empty where there is nothing to say. */
    String shown(R row, Sentences wording) {
        return text == null ? wording.of(value.apply(row), measure) : text.apply(row, wording);
    }

    /** Columns of a part of each row; a row without that part has no value. */
    public static <R, P> List<Column<R>> part(List<Column<P>> columns, Function<R, @Nullable P> part) {
        return columns.stream().map(column -> new Column<R>(column.key, column.group, column.head, column.measure,
                row -> ifKnown(part.apply(row), column.value), column.text == null ? null
                        : (row, wording) -> Words.orDash(part.apply(row), of -> column.shown(of, wording)), row -> false)).toList();
    }

    /** For programs, columns of lists: each value of a row is the list of the values of its parts. */
    public static <R, P> List<Column<R>> each(String key, List<Column<P>> columns, Function<R, @Nullable List<P>> parts) {
        return columns.stream().filter(column -> column.key != null).map(column -> Column.<R>data(key + "." + column.key, column.measure,
                row -> ifKnown(parts.apply(row), all -> all.stream().map(column.value).toList()))).toList();
    }

    /** One list after another. */
    @SafeVarargs
    public static <R> List<Column<R>> all(List<Column<R>>... lists) {
        List<Column<R>> all = new ArrayList<>();
        for (List<Column<R>> list : lists) {
            all.addAll(list);
        }
        return List.copyOf(all);
    }
}
