package understorey.pages.html;

import static understorey.pages.words.Words.ifKnown;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import understorey.advice.TripAdvice;
import understorey.brief.Brief;
import understorey.brief.SeasonBrief;
import understorey.light.Outlook;
import understorey.pages.tables.Row;
import understorey.pages.tables.SeasonColumns;
import understorey.pages.tables.TableView;
import understorey.pages.words.Dates;
import understorey.pages.words.Sentences;
import understorey.pages.words.Words;
import understorey.season.DayRanking;
import understorey.season.FloweringWindow;
import understorey.season.RankedDay;

/**
 * When to go, in words.
 *
 * @param windows of the subjects with a known season
 * @param calendar of the days compared; without lines where the author chose the day
 * @param best    the most promising of them, the best first
 * @param monthAlone the day is kept back
 * @param reports where to ask for the state of the flowers, and when; null without an address
 */
public record SeasonView(List<Window> windows, TableView calendar, List<Day> best, boolean monthAlone, @Nullable String reports) {

    private static final String CALENDAR = "Chance of full flower by day, with the best three; days you do not want are in brackets";
    private static final int MOST_DAYS = 5;
    /** An estimate less sure than this is asked about earlier. */
    private static final double UNSURE_D = 7;

    /** One subject's window. */
    public record Window(String subject, List<Row> rows, List<String> reasons, Drawn chart) {
    }

    /** One of the most promising days. */
    public record Day(String date, List<String> reasons, List<String> shots) {
    }

    public static SeasonView of(Brief brief, Sentences sentences) {
        SeasonBrief season = brief.season();
        List<Window> windows = new ArrayList<>();
        for (int i = 0; i < season.windows().size(); i++) {
            FloweringWindow window = season.windows().get(i);
            windows.add(new Window(window.subject().name(), rows(window, brief), sentences.of(window.reasons()),
                    Drawn.of(season.charts().get(i), "season" + (i + 1), sentences)));
        }
        List<RankedDay> days = season.ranking() == null ? List.of() : season.ranking().days();
        return new SeasonView(windows, SeasonColumns.calendar(days).view(CALENDAR, sentences), best(days, brief.assumed().contains("sky"), sentences),
                brief.trip().hidesTheDay(), reports(brief));
    }

    private static List<Row> rows(FloweringWindow window, Brief brief) {
        return List.of(new Row("First flowers", expected(window.first())),
                new Row("In full flower", Dates.dates(window.fullFrom(), window.fullTo())
                        + "; highest chance on " + Dates.dayMonth(window.best())),
                new Row("Peak", expected(window.peak())),
                new Row("Over", expected(window.over())),
                new Row(brief.trip().hidesTheDay() ? "In mid " + Words.name(brief.date().getMonth()) : "On " + Dates.dayMonth(brief.date()),
                        Words.percent(window.chanceOn(brief.date())) + " chance of full flower"));
    }

    private static String expected(FloweringWindow.Expected expected) {
        return Dates.dayMonth(expected.day()) + ", likely between " + Dates.dayMonth(expected.from()) + " and "
                + Dates.dayMonth(expected.to());
    }

    private static List<Day> best(List<RankedDay> days, boolean anySky, Sentences sentences) {
        List<Day> best = new ArrayList<>();
        for (int rank = 1; rank <= Math.min(MOST_DAYS, days.size()); rank++) {
            for (RankedDay day : days) {
                if (day.rank() == rank && (rank == 1 || !day.hopeless())) {
                    best.add(day(day, anySky, sentences));
                }
            }
        }
        return best;
    }

    private static Day day(RankedDay day, boolean anySky, Sentences sentences) {
        List<String> shots = new ArrayList<>();
        for (RankedDay.Promise promise : day.shots()) {
            String light = promise.shot().light().isEmpty() ? "" : ", light " + Words.word(promise.grade())
                    + (promise.at() == null || promise.grade() == Outlook.Grade.POOR ? ""
                    : (anySky ? " if the sky suits" : "") + ", best around " + sentences.clock().of(promise.at()));
            shots.add(promise.shot().name() + light);
        }
        return new Day(Dates.day(day.date()), sentences.of(day.reasons()), shots);
    }

    /** Where to ask, and how long before: a week and the evening before, two weeks where the estimate is unsure. */
    private static @Nullable String reports(Brief brief) {
        String reports = brief.trip().site().reports();
        if (reports == null) {
            return null;
        }
        FloweringWindow window = brief.season().window();
        boolean unsure = window == null || window.errorD() > UNSURE_D;
        return "Ask " + reports + " how the flowers are on " + Dates.dayMonth(brief.date().minusDays(unsure ? 14 : 7))
                + (unsure ? ", two weeks before" : ", a week before") + ", and again the evening before you go.";
    }

    /**
     * Why this day.
     *
     * @param chance of full flower; null where no flowering dates are known
     */
    public record Why(@Nullable String chance, String text) {
    }

    static Why why(Brief brief, Sentences sentences) {
        FloweringWindow window = brief.season().window();
        DayRanking ranking = brief.season().ranking();
        RankedDay day = ifKnown(ranking, of -> of.day(brief.date()));
        String best = ranking == null || day == null ? "" : "The best of " + ranking.possible() + " possible days. ";
        if (window == null) {
            return new Why(null, best + (day == null ? "Your date; no flowering dates known." : sentences.of(day.reasons().get(0))));
        }
        String text = "chance of full flower for " + window.subject().name() + ", expected " + Dates.dates(window.fullFrom(), window.fullTo())
                + ", ±" + Words.number(window.errorD(), 0) + " days. " + best + better(brief, window);
        return new Why(Words.percent(window.chanceOn(brief.date())), text.strip());
    }

    /** Other days that are clearly better for the first subject; empty if there are none. */
    private static String better(Brief brief, FloweringWindow window) {
        return brief.findings().stream().flatMap(finding -> finding instanceof TripAdvice.BetterDays better
                && better.subject().equals(window.subject().name()) ? Stream.of(better) : Stream.empty()).findFirst()
                .map(better -> "Better from " + Dates.dayMonth(better.from()) + " to " + Dates.dayMonth(better.to()) + ", with up to "
                        + Words.percent(better.most()) + ".").orElse("");
    }
}
