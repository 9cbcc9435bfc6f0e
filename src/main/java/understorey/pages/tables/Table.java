package understorey.pages.tables;

import java.util.List;
import java.util.stream.IntStream;

/** Rows of results in columns. */
public record Table<R>(List<Column<R>> columns, List<R> rows) {

    /** For readers, without columns that have no words in any row. */
    public TableView view(String caption, Wording wording) {
        List<Column<R>> shown = columns.stream().filter(column -> column.head() != null).toList();
        List<List<String>> texts = rows.stream().map(row -> shown.stream().map(column -> column.shown(row, wording)).toList()).toList();
        List<Integer> kept = IntStream.range(0, shown.size()).filter(i -> texts.stream().anyMatch(row -> !row.get(i).isEmpty())).boxed().toList();
        List<TableView.Line> lines = texts.stream().map(row -> new TableView.Line(kept.stream()
                .map(cell -> new TableView.Cell(row.get(cell), shown.get(cell).measure().isFigure())).toList())).toList();
        return TableView.of(caption, kept.stream().<Column<?>>map(shown::get).toList(), lines);
    }
}
