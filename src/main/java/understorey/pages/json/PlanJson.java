package understorey.pages.json;

import static understorey.pages.tables.Column.data;
import static understorey.pages.words.Words.ifKnown;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.YearMonth;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.Measure;
import understorey.brief.Brief;
import understorey.pages.tables.Column;
import understorey.pages.tables.Facts;
import understorey.pages.tables.LightColumns;
import understorey.pages.tables.SeasonColumns;
import understorey.pages.tables.Table;
import understorey.plan.Companion;
import understorey.season.DayRanking;
import understorey.season.Flowering;
import understorey.season.FloweringWindow;
import understorey.season.RankedDay;
import understorey.visit.Place;
import understorey.weather.Drops;

/**
 * {@code plan.json}: every computed figure of a trip, for other programs. The unit is in the key, tables are columns, and what does not
 * happen or is not known is {@code null}.
 */
public final class PlanJson {

    private static final List<Column<Brief>> TRIP = List.of(
            data("title", brief -> brief.trip().title()),
            data("slug", brief -> brief.trip().slug()),
            data("site", brief -> brief.trip().site().name()),
            data("date", brief -> brief.trip().hidesTheDay() ? YearMonth.from(brief.date()) : brief.date()),
            data("time_zone", brief -> brief.trip().site().zone().getId()),
            data("audience", brief -> brief.trip().audience()),
            data("position", brief -> brief.trip().precision()),
            data("series", brief -> brief.trip().series()),
            data("gear", brief -> brief.trip().gear().name()),
            data("companions", brief -> brief.trip().companions().stream().map(Companion::name).toList()),
            data("sky", brief -> brief.trip().forecast().isEmpty() ? brief.trip().sky() : "forecast"),
            data("arrive", brief -> brief.order().arrive()),
            data("leave", brief -> brief.order().leave()),
            data("leave_last_spot_by", brief -> brief.order().leaveLastSpotBy()),
            data("assumed", brief -> new TreeSet<>(brief.assumed())));

    private static final List<Column<Drops>> DROPS = List.of(
            data("dry_by", Drops::dryBy),
            data("reasons", Drops::reasons));

    private static final List<Column<Flowering>> MONTHS = List.of(
            data("first_month", Measure.COUNT, flowering -> flowering.first().getValue()),
            data("last_month", Measure.COUNT, flowering -> flowering.last().getValue()),
            data("in_season", Flowering::inSeason),
            data("months_shifted", Flowering::shifted));

    private static final List<Column<Advice>> FINDING = List.of(
            data("level", Advice::severity),
            data("text", finding -> finding));

    private static final List<Column<Brief>> PLAN = List.of(
            data("$schema", brief -> "../plan.schema.json"),
            data("format", brief -> "understorey-plan/2"),
            data("trip", brief -> new Facts<>(TRIP, brief)),
            data("sun", brief -> new Facts<>(LightColumns.SUN, brief.day().sun())),
            data("moon", brief -> new Facts<>(LightColumns.MOON, brief.day().moon())),
            data("light", brief -> new Table<>(LightColumns.day("skyline"), brief.day().light())),
            data("shots", brief -> Facts.each(ShotJson.columns(brief), brief.timed())),
            data("running_order", brief -> VisitJson.order(brief)),
            data("story", brief -> VisitJson.story(brief)),
            data("kit", brief -> VisitJson.kit(brief)),
            data("season", brief -> season(brief)),
            data("cautions", brief -> Stream.concat(brief.cautions().stream(), brief.trip().site().cautions().stream()).toList()),
            data("findings", brief -> Facts.each(FINDING, brief.findings())),
            data("places", brief -> new Table<>(places(brief), brief.day().places())),
            data("weather", brief -> new Table<>(LightColumns.FORECAST, brief.weather())),
            data("drops", brief -> new Facts<>(DROPS, brief.day().drops())),
            data("lamp", brief -> new Facts<>(VisitJson.HEAD_TORCH, brief.day().headTorch())),
            data("order_basis", brief -> OrderBasisJson.of(brief)),
            data("alternatives", brief -> VisitJson.alternatives(brief)),
            data("safety", brief -> VisitJson.safety(brief)),
            data("windows", brief -> Facts.each(SeasonColumns.windows(brief.date()), brief.season().windows())),
            data("days", brief -> new Table<>(SeasonColumns.DAYS, days(brief.season().ranking()))));

    /** What {@code days} finds, as in {@code plan.json}. */
    private record Days(DayRanking ranking, List<RankedDay> ordered, List<String> keep) {
    }

    private static final List<Column<Days>> DAYS = List.of(
            data("format", days -> "understorey-days/2"),
            data("best", days -> days.ranking.best()),
            data("windows", days -> Facts.each(SeasonColumns.windows(days.ranking.best()), days.ranking.windows())),
            data("days", days -> new Table<>(SeasonColumns.DAYS, days.ordered)),
            data("records_to_add", Days::keep));

    private PlanJson() {
    }

    /** The whole document; {@code sentences} words the reasons. */
    public static String of(Brief brief, Function<Advice, String> sentences) {
        return Json.document(new Facts<>(PLAN, brief), sentences);
    }

    /** The JSON Schema of such documents. */
    public static String schema() {
        try (InputStream in = Objects.requireNonNull(PlanJson.class.getResourceAsStream("plan.schema.json"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** A document of the days alone; chances are those of the best day. */
    public static String days(DayRanking ranking, List<RankedDay> ordered, List<String> keep, Function<Advice, String> sentences) {
        return Json.document(new Facts<>(DAYS, new Days(ranking, ordered, keep)), sentences);
    }

    private static List<RankedDay> days(@Nullable DayRanking ranking) {
        return ranking == null ? List.of() : ranking.days();
    }

    /** The window of the first picture's subject; without one, its name and its months. */
    private static Facts<Brief> season(Brief brief) {
        FloweringWindow first = brief.season().window();
        return new Facts<>(Column.all(
                List.of(data("subject", of -> first == null ? ifKnown(of.flowering(), months -> months.subject().name()) : first.subject().name())),
                Column.part(SeasonColumns.window(brief.date()), of -> first),
                Column.part(MONTHS, Brief::flowering)), brief);
    }

    /** Where pictures are taken; the light of each in the order of the times of {@code light}, null where it is the site's own. */
    private static List<Column<Place>> places(Brief brief) {
        return Column.all(List.of(
                data("spots", Place::spots),
                data("tree_top_deg", Measure.DEGREES, place -> place.stand().canopy().treeTopDeg()),
                data("plant_area_index", Measure.RATIO, place -> place.stand().canopy().plantAreaIndex()),
                data("sunlit", Place::sunlit),
                data("over_trees", place -> place.overTrees() == null ? List.of() : place.overTrees()),
                data("mist", place -> place.mist().likelihood()),
                data("mist_stands", place -> place.mist().when()),
                data("mist_reasons", place -> place.mist().reasons())),
                Column.each("light", LightColumns.FLOOR, place -> place.light() == brief.day().light() ? null : place.light()));
    }
}
