package understorey.pages.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import understorey.pages.words.Words;

/**
 * When each picture starts if the day differs.
 *
 * @param days overcast, wet, windy or clear, each of the cells of a row in this order
 */
public record SheetDays(List<String> days, List<Line> rows) {

    /** One picture; a dash for a day without it. */
    public record Line(int number, List<Cell> starts) {
    }

    /** A start; {@code differs} if the plan has another, or none. */
    public record Cell(String at, boolean differs) {
    }

    /** Null if no other day has other starts. */
    static @Nullable SheetDays of(List<OrderView.Other> all, List<OrderView.Start> planned) {
        List<OrderView.Other> others = all.stream().filter(other -> !other.order().equals(planned)).toList();
        if (others.isEmpty()) {
            return null;
        }
        List<Line> rows = new ArrayList<>();
        List<Integer> numbers = Stream.concat(planned.stream(), others.stream().flatMap(other -> other.order().stream()))
                .map(OrderView.Start::number).distinct().toList();
        for (int number : numbers) {
            String plan = at(planned, number);
            rows.add(new Line(number, others.stream().map(other -> at(other.order(), number))
                    .map(at -> new Cell(at, !Objects.equals(at, plan))).toList()));
        }
        return new SheetDays(others.stream().map(OrderView.Other::day).map(Words::capital).toList(), rows);
    }

    private static String at(List<OrderView.Start> order, int number) {
        return order.stream().filter(start -> start.number() == number).map(OrderView.Start::at).findFirst().orElse(Words.NONE);
    }
}
