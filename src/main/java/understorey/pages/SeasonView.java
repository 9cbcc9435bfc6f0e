package understorey.pages;

import freemarker.core.TemplateHTMLOutputModel;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import understorey.advice.Advice;
import understorey.advice.SeasonAdvice;
import understorey.advice.TripAdvice;
import understorey.brief.Brief;
import understorey.brief.SeasonBrief;
import understorey.light.Outlook;
import understorey.season.FloweringWindow;
import understorey.season.RankedDay;

/**
 * When to go, in words.
 *
 * @param windows of the subjects whose season is known
 * @param weeks   of the days compared; empty where the author chose the day
 * @param best    the most promising of them, the best first
 * @param monthAlone the day is not told
 * @param reports where to ask for the state of the flowers, and when; null without an address
 */
public record SeasonView(List<Window> windows, List<Week> weeks, List<Day> best, boolean monthAlone, String reports) {

    private static final int MOST_DAYS = 5;
    /** An estimate less sure than this is asked about earlier. */
    private static final double UNSURE_D = 7;

    /** One subject's window. */
    public record Window(String subject, List<Row> rows, List<String> reasons, TemplateHTMLOutputModel chart,
                         String chartSays) {
    }

    /** A week of the calendar, Monday to Sunday. */
    public record Week(List<Cell> days) {
    }

    /**
     * A day of the calendar.
     *
     * @param day    of the month, with the month's name where it begins, in brackets where the author does not want it; empty
     *               for a day that was not compared
     * @param chance of full flower; null if unknown
     * @param note   its place among the first three; null for others
     */
    public record Cell(String day, String chance, String note, boolean best, boolean unwanted) {
    }

    /** One of the most promising days. */
    public record Day(String date, String promise, List<String> reasons, List<String> shots) {
    }

    static SeasonView of(Brief brief, Sentences sentences) {
        SeasonBrief season = brief.season();
        List<Window> windows = new ArrayList<>();
        for (int i = 0; i < season.windows().size(); i++) {
            FloweringWindow window = season.windows().get(i);
            windows.add(new Window(window.subject().name(), rows(window, brief),
                    sentences.of(window.reasons()),
                    Templates.html(Svg.of(season.charts().get(i), "season" + (i + 1))), season.charts().get(i).says()));
        }
        List<RankedDay> days = season.ranking() == null ? List.of() : season.ranking().days();
        return new SeasonView(windows, SeasonCalendar.weeks(days), best(days, brief.assumed().contains("sky"), sentences),
                brief.trip().hidesTheDay(), reports(brief));
    }

    private static List<Row> rows(FloweringWindow window, Brief brief) {
        return List.of(new Row("First flowers", expected(window.first())),
                new Row("In full flower", Words.dates(window.fullFrom(), window.fullTo())
                        + ", most likely on " + Words.dayMonth(window.best()) + "; its peak "
                        + expected(window.peak())),
                new Row("Over", expected(window.over())),
                new Row(brief.trip().hidesTheDay() ? "In mid " + Words.name(brief.date().getMonth()) : "On " + Words.dayMonth(brief.date()),
                        Words.percent(window.chanceOn(brief.date())) + " chance of full flower"));
    }

    private static String expected(FloweringWindow.Expected expected) {
        return Words.dayMonth(expected.day()) + ", likely between " + Words.dayMonth(expected.from()) + " and "
                + Words.dayMonth(expected.to());
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
                    : (anySky ? " if the sky suits" : "") + ", best around " + Words.clock(promise.at()));
            shots.add(promise.shot().name() + light);
        }
        return new Day(Words.day(day.date()), day.flower() == null ? "" : Words.percent(day.flower()),
                sentences.of(day.reasons()), shots);
    }

    /** Where to ask, and how long before: a week and the evening before, two weeks where the estimate is unsure. */
    private static String reports(Brief brief) {
        String reports = brief.trip().site().reports();
        if (reports == null) {
            return null;
        }
        FloweringWindow window = brief.season().window();
        boolean unsure = window == null || window.errorD() > UNSURE_D;
        return "Ask " + reports + " how the flowers are on " + Words.dayMonth(brief.date().minusDays(unsure ? 14 : 7))
                + (unsure ? ", two weeks before" : ", a week before") + ", and again the evening before you go.";
    }

    /** Why this day, in a few sentences. */
    static String why(Brief brief, Sentences sentences) {
        FloweringWindow window = brief.season().window();
        List<String> why = new ArrayList<>();
        if (brief.season().ranking() != null) {
            RankedDay day = brief.season().ranking().day(brief.date());
            why.add("The best of " + brief.season().ranking().days().size() + " days. " + sentences.of(day.reasons().get(0)));
        }
        if (window == null) {
            why.add(why.isEmpty() ? "Your date; no flowering dates known." : "");
        } else {
            String dates = Words.dates(window.fullFrom(), window.fullTo());
            String chance = Words.percent(window.chanceOn(brief.date()));
            why.add(why.isEmpty() ? first(window.subject().name()) + ": " + chance + " chance of full flower (expected " + dates + ")."
                    : "Full flower is expected " + dates + ".");
            Advice method = method(window);
            why.add(method == null ? "" : sentences.of(method));
            why.add(better(brief, window));
        }
        why.add(brief.trip().site().reports() == null ? "" : "Ask " + brief.trip().site().reports() + " before you go.");
        why.removeIf(String::isEmpty);
        return String.join(" ", why);
    }

    /** Other days that are clearly better for the first subject; empty if there are none. */
    private static String better(Brief brief, FloweringWindow window) {
        return brief.findings().stream().flatMap(finding -> finding instanceof TripAdvice.BetterDays better
                && better.subject().equals(window.subject().name()) ? Stream.of(better) : Stream.empty()).findFirst()
                .map(better -> "Better from " + Words.dayMonth(better.from()) + " to " + Words.dayMonth(better.to()) + ", with up to "
                        + Words.percent(better.most()) + ".").orElse("");
    }

    private static String first(String name) {
        return Character.toUpperCase(name.charAt(0)) + name.substring(1);
    }

    private static Advice method(FloweringWindow window) {
        for (Advice reason : window.reasons()) {
            if (reason instanceof SeasonAdvice.Method) {
                return reason;
            }
        }
        return null;
    }
}
