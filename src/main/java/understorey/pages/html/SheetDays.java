package understorey.pages.html;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import understorey.advice.Measure;
import understorey.pages.tables.Column;
import understorey.pages.tables.Table;
import understorey.pages.tables.TableView;
import understorey.pages.words.Sentences;
import understorey.pages.words.Words;

/** When each picture starts if the day differs. */
final class SheetDays {

    private static final String CAPTION = "Start of each picture if the day differs; bold: not as planned";

    private SheetDays() {
    }

    /** A picture a row, a day a column; without lines if no other day has other starts. */
    static TableView of(List<OrderView.Other> all, List<OrderView.Start> planned, Sentences sentences) {
        List<OrderView.Other> others = all.stream().filter(other -> !other.order().equals(planned)).toList();
        List<Column<Integer>> columns = new ArrayList<>();
        columns.add(Column.text("Picture", Measure.WORD, (number, wording) -> String.valueOf(number)));
        others.forEach(other -> columns.add(Column.<Integer>text(Words.capital(other.day()), Measure.WORD, (number, wording) -> at(other.order(), number))
                .strongIf(number -> !at(other.order(), number).equals(at(planned, number)))));
        List<Integer> numbers = Stream.concat(planned.stream(), others.stream().flatMap(other -> other.order().stream()))
                .map(OrderView.Start::number).distinct().toList();
        return new Table<>(columns, others.isEmpty() ? List.of() : numbers).view(CAPTION, sentences);
    }

    private static String at(List<OrderView.Start> order, int number) {
        return order.stream().filter(start -> start.number() == number).map(OrderView.Start::at).findFirst().orElse(Words.NONE);
    }
}
