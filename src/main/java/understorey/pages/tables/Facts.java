package understorey.pages.tables;

import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.pages.words.Sentences;

/** Named facts about one thing, or figures about it for programs: a table of one row, read from top to bottom. */
public record Facts<R>(List<Column<R>> columns, R of) {

    /** The facts of a thing; none of a thing that is not there. */
    public static <R> @Nullable Facts<R> of(List<Column<R>> columns, @Nullable R thing) {
        return thing == null ? null : new Facts<>(columns, thing);
    }

    /** The facts of one thing after another. */
    public static <R> List<Facts<R>> each(List<Column<R>> columns, List<R> things) {
        return things.stream().map(thing -> new Facts<>(columns, thing)).toList();
    }

    /** For readers, without facts that have no words. */
    public List<Row> rows(Sentences wording) {
        return columns.stream().filter(column -> column.head() != null)
                .map(column -> new Row(column.name(), column.shown(of, wording))).filter(row -> !row.text().isEmpty()).toList();
    }
}
