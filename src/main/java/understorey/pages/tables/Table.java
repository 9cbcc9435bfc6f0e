package understorey.pages.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Rows of results in columns.
 *
 * @param stands rows that a page makes stand out
 */
public record Table<R>(List<Column<R>> columns, List<R> rows, Predicate<R> stands) {

    /** A table in which no row stands out. */
    public Table(List<Column<R>> columns, List<R> rows) {
        this(columns, rows, row -> false);
    }

    /** For readers, without columns that have no words in any row. */
    public TableView view(String caption, Wording wording) {
        List<Column<R>> shown = columns.stream().filter(column -> column.head() != null).toList();
        List<List<String>> texts = rows.stream().map(row -> shown.stream().map(column -> column.shown(row, wording)).toList()).toList();
        List<Integer> kept = IntStream.range(0, shown.size()).filter(i -> texts.stream().anyMatch(row -> !row.get(i).isEmpty())).boxed().toList();
        List<TableView.Line> lines = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            List<String> row = texts.get(i);
            lines.add(new TableView.Line(stands.test(rows.get(i)), kept.stream()
                    .map(cell -> new TableView.Cell(row.get(cell), shown.get(cell).measure().isFigure())).toList()));
        }
        return TableView.of(caption, kept.stream().<Column<?>>map(shown::get).toList(), lines);
    }
}
