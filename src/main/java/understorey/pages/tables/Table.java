package understorey.pages.tables;

import java.util.List;
import understorey.pages.words.Sentences;

/** Rows of results in columns. */
public record Table<R>(List<Column<R>> columns, List<R> rows) {

    /** For readers, without columns that have no words in any row. */
    public TableView view(String caption, Sentences wording) {
        List<Column<R>> shown = columns.stream().filter(column -> column.head() != null
                && rows.stream().anyMatch(row -> !column.shown(row, wording).isEmpty())).toList();
        return TableView.of(caption, List.copyOf(shown), rows.stream().map(row -> new TableView.Line(shown.stream()
                .map(column -> new TableView.Cell(column.shown(row, wording), column.measure().isFigure(), column.strong().test(row)))
                .toList())).toList());
    }
}
