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

    /** A day a row, a picture a column; without lines if no other day has other starts. */
    static TableView of(List<OrderView.Other> all, List<OrderView.Start> planned, Sentences sentences) {
        List<OrderView.Other> others = all.stream().filter(other -> !other.order().equals(planned)).toList();
        List<Column<OrderView.Other>> columns = new ArrayList<>();
        columns.add(Column.text("If the day is", Measure.WORD, (other, wording) -> other.day()));
        Stream.concat(planned.stream(), others.stream().flatMap(other -> other.order().stream())).map(OrderView.Start::number).distinct()
                .forEach(number -> columns.add(Column.<OrderView.Other>text(String.valueOf(number), Measure.WORD,
                                (other, wording) -> at(other.order(), number))
                        .strongIf(other -> !at(other.order(), number).equals(at(planned, number)))));
        return new Table<>(columns, others).view(CAPTION, sentences);
    }

    /** On a phone the half of the day stands below its time. */
    private static String at(List<OrderView.Start> order, int number) {
        return order.stream().filter(start -> start.number() == number).map(OrderView.Start::at).findFirst().orElse(Words.NONE).replace('\u00a0', ' ');
    }
}
