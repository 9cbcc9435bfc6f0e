package understorey.pages.json;

import static understorey.pages.words.Words.ifKnown;

import java.time.LocalDate;
import java.util.List;
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

    private final LocalDate date;
    private final Function<Advice, String> sentences;

    /** A document of the days alone; chances are those of the best day. */
    public static String days(DayRanking ranking, List<RankedDay> ordered, List<String> keep,
                       Function<Advice, String> sentences) {
        SeasonJson season = new SeasonJson(ranking.best(), sentences);
        Json json = Json.begin().text("format", "understorey-days/1").date("best", ranking.best());
        season.windows(json, ranking.windows());
        season.days(json, ordered);
        return json.texts("records_to_add", keep).document();
    }

    /** Chances are those of that date. */
    SeasonJson(LocalDate date, Function<Advice, String> sentences) {
        this.date = date;
        this.sentences = sentences;
    }

    void write(Json json, Brief brief) {
        FloweringWindow window = brief.season().window();
        Flowering flowering = brief.flowering();
        if (window == null) {
            json.text("subject", ifKnown(flowering, of -> of.subject().name()));
            for (String key : List.of("full_from", "full_to", "best", "method", "chance_on_day")) {
                json.absent(key);
            }
        } else {
            window(json, window);
        }
        json.count("first_month", ifKnown(flowering, of -> of.first().getValue()))
                .count("last_month", ifKnown(flowering, of -> of.last().getValue()))
                .truth("in_season", ifKnown(flowering, Flowering::inSeason))
                .truth("months_shifted", ifKnown(flowering, Flowering::shifted));
    }

    void windows(Json json, List<FloweringWindow> windows) {
        json.objects("windows", windows, this::window);
    }

    private void window(Json json, FloweringWindow window) {
        json.text("subject", window.subject().name())
                .date("full_from", window.fullFrom())
                .date("full_to", window.fullTo())
                .date("best", window.best())
                .word("method", window.method())
                .number("chance_on_day", Figures.share(window.chanceOn(date)))
                .number("error_days", Figures.days(window.errorD()))
                .count("years", window.past().size())
                .count("sightings", window.seen().size())
                .object("first", window.first(), SeasonJson::expected)
                .object("peak", window.peak(), SeasonJson::expected)
                .object("over", window.over(), SeasonJson::expected)
                .sentences("reasons", window.reasons(), sentences);
    }

    private static void expected(Json json, FloweringWindow.Expected expected) {
        json.date("day", expected.day()).date("likely_from", expected.from()).date("likely_to", expected.to());
    }

    void days(Json json, List<RankedDay> days) {
        json.objects("days", days, this::day);
    }

    private void day(Json json, RankedDay day) {
        json.date("date", day.date())
                .count("rank", day.rank())
                .number("score", Figures.share(day.score()))
                .truth("wanted", day.wanted())
                .number("flower_chance", Figures.share(day.flower()))
                .number("light_quality", Figures.share(day.light()))
                .span("hours", day.hours())
                .objects("shots", day.shots(), this::promise)
                .sentences("reasons", day.reasons(), sentences);
    }

    private void promise(Json json, RankedDay.Promise promise) {
        json.text("shot", promise.shot().name())
                .number("flower_chance", Figures.share(promise.flower()))
                .number("light_quality", Figures.share(promise.light()))
                .word("light", promise.grade())
                .time("at", promise.at())
                .sentences("reasons", promise.because(), sentences);
    }
}
