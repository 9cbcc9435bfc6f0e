package understorey.pages.json;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import understorey.advice.Advice;
import understorey.brief.Brief;
import understorey.pages.words.Figures;
import understorey.season.DayRanking;
import understorey.season.Flowering;
import understorey.season.FloweringWindow;
import understorey.season.RankedDay;

/** The season in {@code plan.json}: the window of the first picture's subject, those of all, and the days compared. */
public final class SeasonJson {

    private final Brief brief;
    private final LocalDate date;
    private final Function<Advice, String> sentences;

    SeasonJson(Brief brief, Function<Advice, String> sentences) {
        this(brief, brief.date(), sentences);
    }

    /** A document of the days alone; chances are those of the best day. */
    public static String days(DayRanking ranking, List<RankedDay> ordered, List<String> keep,
                       Function<Advice, String> sentences) {
        SeasonJson season = new SeasonJson(null, ranking.best(), sentences);
        try {
            Json json = Json.begin().text("format", "understorey-days/1").text("best", ranking.best().toString());
            season.windows(json, ranking.windows());
            season.days(json, ordered);
            return json.texts("records_to_add", keep).document();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private SeasonJson(Brief brief, LocalDate date, Function<Advice, String> sentences) {
        this.brief = brief;
        this.date = date;
        this.sentences = sentences;
    }

    void write(Json json) throws IOException {
        FloweringWindow window = brief.season().window();
        Flowering flowering = brief.flowering();
        boolean known = flowering != null;
        if (window == null) {
            json.text("subject", known ? flowering.subject().name() : null);
            for (String key : List.of("full_from", "full_to", "best", "method", "chance_on_day")) {
                json.absent(key);
            }
        } else {
            window(json, window);
        }
        json.count("first_month", known ? flowering.first().getValue() : null)
                .count("last_month", known ? flowering.last().getValue() : null)
                .truth("in_season", known ? flowering.inSeason() : null)
                .truth("months_shifted", known ? flowering.shifted() : null);
    }

    void windows(Json json, List<FloweringWindow> windows) throws IOException {
        json.list("windows");
        for (FloweringWindow window : windows) {
            window(json.item(), window);
            json.end();
        }
        json.endList();
    }

    private void window(Json json, FloweringWindow window) throws IOException {
        json.text("subject", window.subject().name())
                .text("full_from", window.fullFrom().toString())
                .text("full_to", window.fullTo().toString())
                .text("best", window.best().toString())
                .text("method", method(window))
                .number("chance_on_day", Figures.share(window.chanceOn(date)))
                .number("error_days", Figures.days(window.errorD()))
                .count("years", window.past().size())
                .count("sightings", window.seen().size());
        expected(json, "first", window.first());
        expected(json, "peak", window.peak());
        expected(json, "over", window.over());
        json.told("reasons", window.reasons(), sentences);
    }

    /** The method's own word; what was seen this year goes with any of them. */
    private static String method(FloweringWindow window) {
        return window.method().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static void expected(Json json, String key, FloweringWindow.Expected expected) throws IOException {
        json.object(key).text("day", expected.day().toString())
                .text("likely_from", expected.from().toString()).text("likely_to", expected.to().toString()).end();
    }

    void days(Json json, List<RankedDay> days) throws IOException {
        json.list("days");
        for (RankedDay day : days) {
            day(json.item(), day);
            json.end();
        }
        json.endList();
    }

    private void day(Json json, RankedDay day) throws IOException {
        json.text("date", day.date().toString())
                .count("rank", day.rank())
                .number("score", Figures.share(day.score()))
                .truth("wanted", day.wanted())
                .number("flower_chance", day.flower() == null ? null : Figures.share(day.flower()))
                .number("light_quality", Figures.share(day.light()))
                .span("hours", day.hours())
                .list("shots");
        for (RankedDay.Promise promise : day.shots()) {
            promise(json.item(), promise);
            json.end();
        }
        json.endList().told("reasons", day.reasons(), sentences);
    }

    private void promise(Json json, RankedDay.Promise promise) throws IOException {
        json.text("shot", promise.shot().name())
                .number("flower_chance", promise.flower() == null ? null : Figures.share(promise.flower()))
                .number("light_quality", Figures.share(promise.light()))
                .word("light", promise.grade())
                .time("at", promise.at())
                .told("reasons", promise.because(), sentences);
    }
}
