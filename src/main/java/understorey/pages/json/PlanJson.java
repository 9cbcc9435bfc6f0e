package understorey.pages.json;

import static understorey.pages.words.Words.ifKnown;

import java.time.YearMonth;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import understorey.advice.Advice;
import understorey.brief.Brief;
import understorey.order.RunningOrder;
import understorey.packing.CompanionBag;
import understorey.packing.Packing;
import understorey.pages.words.Figures;
import understorey.pages.words.Words;
import understorey.plan.Companion;
import understorey.plan.Trip;
import understorey.sky.MoonDay;
import understorey.sky.SunDay;
import understorey.visit.Place;
import understorey.weather.Drops;
import understorey.weather.Mist;

/**
 * {@code plan.json}: every computed figure of a trip, for other programs. The unit stands in the key, instants are
 * ISO 8601 with offset, and what does not happen or is not known is {@code null}. {@link Figures} rounds.
 */
public final class PlanJson {

    private static final String FORMAT = "understorey-plan/1";

    private final Brief brief;
    private final Function<Advice, String> sentences;

    private PlanJson(Brief brief, Function<Advice, String> sentences) {
        this.brief = brief;
        this.sentences = sentences;
    }

    /** The whole document; {@code sentences} words the reasons. */
    public static String of(Brief brief, Function<Advice, String> sentences) {
        Json json = Json.begin();
        new PlanJson(brief, sentences).plan(json);
        return json.document();
    }

    private void plan(Json json) {
        SeasonJson season = new SeasonJson(brief.date(), sentences);
        OrderJson order = new OrderJson(brief, sentences);
        ShotJson shots = new ShotJson(brief, sentences);
        json.text("format", FORMAT)
                .object("trip", brief.trip(), this::trip)
                .object("sun", brief.day().sun(), PlanJson::sun)
                .object("moon", brief.day().moon(), PlanJson::moon)
                .objects("light", brief.day().light(), LightJson::write)
                .objects("shots", brief.timed(), shots::write);
        order.legs(json, brief.order().legs());
        order.story(json);
        json.object("kit", brief.packing(), this::kit)
                .object("season", brief, season::write);
        remarks(json);
        places(json);
        json.object("drops", brief.day().drops(), this::drops)
                .object("lamp", brief.day().headTorch(), OrderJson::lamp);
        json.object("order_basis", brief.order().basis(), (object, basis) -> OrderBasisJson.write(object, basis,
                brief.day().headTorch(), sentences));
        order.alternatives(json);
        json.object("safety", brief.safety(), order::safety);
        season.windows(json, brief.season().windows());
        season.days(json, brief.season().ranking() == null ? List.of() : brief.season().ranking().days());
    }

    private void remarks(Json json) {
        json.texts("cautions", Stream.concat(brief.cautions().stream().map(sentences), brief.trip().site().cautions().stream()).toList())
                .objects("findings", brief.findings(), (object, finding) -> object.word("level", finding.severity())
                        .text("text", sentences.apply(finding)));
    }

    private void places(Json json) {
        json.objects("places", brief.day().places(), this::place)
                .objects("weather", brief.weather(), (object, hour) -> ShotLightJson.weather(object.time("time", hour.time()),
                        hour.weather()));
    }

    private void trip(Json json, Trip trip) {
        RunningOrder order = brief.order();
        json.text("title", trip.title())
                .text("slug", trip.slug())
                .text("site", trip.site().name())
                .text("date", trip.hidesTheDay() ? YearMonth.from(brief.date()).toString() : brief.date().toString())
                .text("time_zone", trip.site().zone().getId())
                .word("audience", trip.audience())
                .word("position", trip.precision())
                .text("series", trip.series())
                .text("gear", trip.gear().name())
                .texts("companions", trip.companions().stream().map(Companion::name).toList())
                .text("sky", trip.forecast().isEmpty() ? ifKnown(trip.sky(), Words::word) : "forecast")
                .time("arrive", order.arrive())
                .time("leave", order.leave())
                .time("leave_last_spot_by", order.leaveLastSpotBy())
                .texts("assumed", new TreeSet<>(brief.assumed()));
    }

    private static void sun(Json json, SunDay sun) {
        json.time("sunrise", sun.sunrise()).time("sunset", sun.sunset())
                .time("solar_noon", sun.solarNoon())
                .number("noon_altitude_deg", Figures.altitudeDeg(sun.noonAltitudeDeg()))
                .time("civil_dawn", sun.civilDawn()).time("civil_dusk", sun.civilDusk())
                .time("nautical_dawn", sun.nauticalDawn()).time("nautical_dusk", sun.nauticalDusk())
                .time("astronomical_dawn", sun.astronomicalDawn()).time("astronomical_dusk", sun.astronomicalDusk())
                .span("low_sun_morning", sun.lowSunMorning()).span("low_sun_evening", sun.lowSunEvening())
                .span("deep_twilight_morning", sun.deepTwilightMorning())
                .span("deep_twilight_evening", sun.deepTwilightEvening())
                .truth("up_all_day", sun.upAllDay()).truth("down_all_day", sun.downAllDay());
    }

    private static void moon(Json json, MoonDay moon) {
        json.time("rise", moon.rise()).time("set", moon.set())
                .number("illuminated_fraction", Figures.share(moon.illuminatedFraction()))
                .number("phase_deg", Figures.phaseDeg(moon.phaseDeg()))
                .truth("up_all_day", moon.upAllDay()).truth("down_all_day", moon.downAllDay());
    }

    /** Light there; its rows are null where it is the site's own. */
    private void place(Json json, Place place) {
        Mist mist = place.mist();
        json.texts("spots", place.spots())
                .number("tree_top_deg", Figures.lensDeg(place.stand().canopy().treeTopDeg()))
                .spans("sunlit", place.sunlit())
                .spans("over_trees", place.overTrees() == null ? List.of() : place.overTrees())
                .word("mist", mist.likelihood()).span("mist_stands", mist.when())
                .sentences("mist_reasons", mist.reasons(), sentences);
        if (place.light() == brief.day().light()) {
            json.absent("light");
        } else {
            json.objects("light", place.light(), LightJson::onFloor);
        }
    }

    private void drops(Json json, Drops drops) {
        json.time("dry_by", drops.dryBy()).sentences("reasons", drops.reasons(), sentences);
    }

    private static void companion(Json json, CompanionBag bag) {
        items(json.text("name", bag.name()), bag.take());
        json.number("weight_g", Figures.grams(bag.weightG())).count("unweighed", bag.unweighed());
    }

    private void kit(Json json, Packing packing) {
        items(json, packing.take());
        json.objects("leave", packing.leave(), (object, left) -> item(object, left).text("why", ifKnown(left.why(), sentences)))
                .sentences("missing", packing.missing(), sentences)
                .number("weight_g", Figures.grams(packing.weightG()))
                .number("card_gb", Figures.gigabytes(packing.cardGb()))
                .count("batteries", packing.batteries())
                .count("unweighed", packing.unweighed())
                .count("frames", packing.frames())
                .objects("companions", brief.companionBags(), PlanJson::companion);
    }

    private static void items(Json json, List<Packing.Item> items) {
        json.objects("take", items, PlanJson::item);
    }

    private static Json item(Json json, Packing.Item item) {
        return json.text("item", item.name()).texts("for", item.shots()).number("weight_g", Figures.grams(item.weightG()));
    }
}
