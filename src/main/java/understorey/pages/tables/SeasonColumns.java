package understorey.pages.tables;

import static understorey.pages.tables.Column.data;

import java.time.LocalDate;
import java.util.List;
import understorey.advice.Measure;
import understorey.season.FloweringWindow;
import understorey.season.RankedDay;

/** Flowering windows, and the days of a trip. */
public final class SeasonColumns {

    private static final List<Column<FloweringWindow.Expected>> EXPECTED = List.of(
            data("day", FloweringWindow.Expected::day),
            data("likely_from", FloweringWindow.Expected::from),
            data("likely_to", FloweringWindow.Expected::to));

    private static final List<Column<RankedDay.Promise>> PROMISE = List.of(
            data("shot", promise -> promise.shot().name()),
            data("flower_chance", Measure.SHARE, RankedDay.Promise::flower),
            data("light_quality", Measure.SHARE, RankedDay.Promise::light),
            data("light", RankedDay.Promise::grade),
            data("at", RankedDay.Promise::at),
            data("reasons", RankedDay.Promise::because));

    /** The days compared. */
    public static final List<Column<RankedDay>> DAYS = Column.all(List.of(
            data("date", RankedDay::date),
            data("rank", Measure.COUNT, RankedDay::rank),
            data("score", Measure.SHARE, RankedDay::score),
            data("wanted", RankedDay::wanted),
            data("flower_chance", Measure.SHARE, RankedDay::flower),
            data("light_quality", Measure.SHARE, RankedDay::light),
            data("hours", RankedDay::hours),
            data("reasons", RankedDay::reasons)),
            Column.each("shots", PROMISE, RankedDay::shots));

    private SeasonColumns() {
    }

    /** Windows of several subjects. */
    public static List<Column<FloweringWindow>> windows(LocalDate date) {
        return Column.all(List.of(data("subject", window -> window.subject().name())), window(date));
    }

    /** When a subject flowers, with its chance on a date. */
    public static List<Column<FloweringWindow>> window(LocalDate date) {
        return List.of(
                data("full_from", FloweringWindow::fullFrom),
                data("full_to", FloweringWindow::fullTo),
                data("best", FloweringWindow::best),
                data("method", FloweringWindow::method),
                data("chance_on_day", Measure.SHARE, window -> window.chanceOn(date)),
                data("error_days", Measure.DAYS_TO_TENTH, FloweringWindow::errorD),
                data("years", Measure.COUNT, window -> window.past().size()),
                data("sightings", Measure.COUNT, window -> window.seen().size()),
                data("first", window -> Facts.of(EXPECTED, window.first())),
                data("peak", window -> Facts.of(EXPECTED, window.peak())),
                data("over", window -> Facts.of(EXPECTED, window.over())),
                data("reasons", FloweringWindow::reasons));
    }
}
