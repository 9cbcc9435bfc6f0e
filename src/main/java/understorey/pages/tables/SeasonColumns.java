package understorey.pages.tables;

import static understorey.pages.tables.Column.data;
import static understorey.pages.words.Words.ifKnown;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import understorey.advice.Measure;
import understorey.pages.words.Dates;
import understorey.pages.words.Words;
import understorey.plan.Season;
import understorey.plan.Site;
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

    /** Past flowering, a year a row. */
    public static final List<Column<Year>> RECORDS = List.of(
            Column.text("Subject", Measure.WORD, (year, wording) -> year.subject().replace('-', ' ')),
            Column.text("First", Measure.WORD, (year, wording) -> Dates.dayAndYear(year.dates().first())),
            Column.text("Full", Measure.WORD, (year, wording) -> Dates.dayAndYear(year.dates().full())),
            Column.text("Over", Measure.WORD, (year, wording) -> Dates.dayAndYear(year.dates().over())));

    private static final List<String> PLACES = List.of("best", "2nd", "3rd");

    /** A year on record. */
    public record Year(String subject, Season.Flowering dates) {

        /** Of all subjects of a site. */
        public static List<Year> of(Site site) {
            return site.seasons().stream().flatMap(season -> season.records().stream().map(dates -> new Year(season.subject(), dates))).toList();
        }
    }

    private SeasonColumns() {
    }

    /** Days compared as a sheet of weeks, Monday to Sunday; without rows for none. */
    public static Table<LocalDate> calendar(List<RankedDay> days) {
        Map<LocalDate, RankedDay> byDate = days.stream().collect(Collectors.toMap(RankedDay::date, day -> day));
        List<Column<LocalDate>> columns = new ArrayList<>();
        columns.add(Column.text("Week", Measure.WORD,
                (monday, wording) -> monday.getDayOfMonth() + " " + Words.name(monday.getMonth()).substring(0, 3)));
        for (DayOfWeek day : DayOfWeek.values()) {
            columns.add(Column.<LocalDate>text(Words.name(day).substring(0, 3), Measure.WORD, (monday, wording) ->
                            Objects.requireNonNullElse(ifKnown(byDate.get(monday.with(day)), SeasonColumns::cell), ""))
                    .strongIf(monday -> days.stream().anyMatch(one -> one.rank() == 1 && one.date().equals(monday.with(day)))));
        }
        return new Table<>(columns, days.stream().map(day -> day.date().with(DayOfWeek.MONDAY)).distinct().sorted().toList());
    }

    private static String cell(RankedDay day) {
        String number = String.valueOf(day.date().getDayOfMonth());
        boolean none = !day.wanted() || day.hopeless();
        String note = none && day.rank() > 1 ? null : day.hours() == null ? "closed" : day.rank() <= PLACES.size()
                ? PLACES.get(day.rank() - 1) : null;
        return Stream.of(day.wanted() ? number : "(" + number + ")", ifKnown(day.flower(), Words::percentInCell), note)
                .filter(Objects::nonNull).collect(Collectors.joining("\n"));
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
