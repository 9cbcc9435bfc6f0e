package understorey.pages;

import java.io.IOException;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import understorey.brief.Brief;
import understorey.brief.SpotLight;
import understorey.brief.WeatherHour;
import understorey.light.Mist;
import understorey.outing.Outing;
import understorey.packing.CompanionBag;
import understorey.packing.Packing;
import understorey.plan.Companion;
import understorey.plan.Trip;
import understorey.reason.Reason;
import understorey.sky.Interval;
import understorey.sky.MoonDay;
import understorey.sky.SunDay;

/**
 * {@code plan.json}: every computed figure of a trip, for other programs. The unit stands in the key, instants are
 * ISO 8601 with offset, and what does not happen or is not known is {@code null}. {@link Figures} rounds.
 */
final class PlanJson {

    private static final String FORMAT = "understorey-plan/1";

    private final Brief brief;
    private final Function<Reason, String> sentences;

    private PlanJson(Brief brief, Function<Reason, String> sentences) {
        this.brief = brief;
        this.sentences = sentences;
    }

    /** The whole document; {@code sentences} words the reasons. */
    static String of(Brief brief, Function<Reason, String> sentences) {
        return Json.document(new PlanJson(brief, sentences)::plan);
    }

    private void plan(Json json) throws IOException {
        SeasonJson season = new SeasonJson(brief, sentences);
        OrderJson order = new OrderJson(brief, sentences);
        ShotJson shots = new ShotJson(brief.trip().site(), brief.outing(), sentences);
        json.text("format", FORMAT)
                .object("trip", this::trip)
                .object("sun", this::sun)
                .object("moon", this::moon)
                .objects("light", brief.light(), LightJson::write)
                .objects("shots", brief.shots(), shots::write)
                .objects("running_order", brief.outing().legs(), order::leg)
                .objects("story", brief.story().sequence(), order::told)
                .object("kit", this::kit)
                .object("season", season::write)
                .texts("cautions", Stream.concat(brief.cautions().stream().map(sentences),
                        brief.trip().site().cautions().stream()).toList())
                .objects("findings", brief.findings(), (found, finding) -> found
                        .word("level", finding.level()).text("text", sentences.apply(finding.reason())))
                .objects("places", brief.places(), this::place)
                .objects("weather", brief.weather(), PlanJson::weather)
                .object("drops", this::drops)
                .object("lamp", order::lamp)
                .objects("alternatives", brief.alternatives(), order::alternative)
                .object("safety", order::safety)
                .objects("windows", brief.season().windows(), season::window)
                .objects("days", brief.season().ranking() == null ? List.of() : brief.season().ranking().days(),
                        season::day);
    }

    private void trip(Json json) throws IOException {
        Trip trip = brief.trip();
        Outing outing = brief.outing();
        json.text("title", trip.title())
                .text("slug", trip.slug())
                .text("site", trip.site().name())
                .text("date", brief.date().toString())
                .text("time_zone", trip.site().zone().getId())
                .word("audience", trip.audience())
                .word("position", trip.precision())
                .text("series", trip.series())
                .text("gear", trip.gear().name())
                .texts("companions", trip.companions().stream().map(Companion::name).toList())
                .text("sky", trip.forecast().isEmpty() ? trip.sky() == null ? null : Words.word(trip.sky()) : "forecast")
                .time("arrive", outing.arrive())
                .time("leave", outing.leave())
                .time("leave_last_spot_by", outing.leaveLastSpotBy())
                .texts("assumed", new TreeSet<>(brief.assumed()));
    }

    private void sun(Json json) throws IOException {
        SunDay sun = brief.sun();
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

    private void moon(Json json) throws IOException {
        MoonDay moon = brief.moon();
        json.time("rise", moon.rise()).time("set", moon.set())
                .number("illuminated_fraction", Figures.share(moon.illuminatedFraction()))
                .number("phase_deg", Figures.phaseDeg(moon.phaseDeg()))
                .truth("up_all_day", moon.upAllDay()).truth("down_all_day", moon.downAllDay());
    }

    /** Light there; its rows are null where it is the site's own. */
    private void place(Json json, SpotLight place) throws IOException {
        Mist mist = place.mist();
        json.texts("spots", place.spots())
                .number("tree_top_deg", Figures.lensDeg(place.place().canopy().treeTopDeg()))
                .objects("sunlit", place.sunlit(), Json::ends)
                .objects("over_trees", place.overTrees() == null ? List.<Interval>of() : place.overTrees(), Json::ends)
                .word("mist", mist.likelihood()).span("mist_stands", mist.stands())
                .texts("mist_reasons", mist.reasons().stream().map(sentences).toList());
        if (place.light() == brief.light()) {
            json.absent("light");
        } else {
            json.objects("light", place.light(), LightJson::onFloor);
        }
    }

    private static void weather(Json json, WeatherHour hour) throws IOException {
        json.time("time", hour.time());
        ShotLightJson.weather(json, hour.weather());
    }

    private void drops(Json json) throws IOException {
        json.time("dry_by", brief.drops().dryBy())
                .texts("reasons", brief.drops().reasons().stream().map(sentences).toList());
    }

    private static void companion(Json json, CompanionBag bag) throws IOException {
        json.text("name", bag.name()).objects("take", bag.take(), PlanJson::item)
                .number("weight_g", Figures.grams(bag.weightG())).count("unweighed", bag.unweighed());
    }

    private void kit(Json json) throws IOException {
        Packing packing = brief.packing();
        json.objects("take", packing.take(), PlanJson::item)
                .objects("leave", packing.leave(), this::left)
                .texts("missing", packing.missing().stream().map(sentences).toList())
                .number("weight_g", Figures.grams(packing.weightG()))
                .number("card_gb", Figures.gigabytes(packing.cardGb()))
                .count("batteries", packing.batteries())
                .count("unweighed", packing.unweighed())
                .count("frames", packing.frames())
                .objects("companions", brief.companionBags(), PlanJson::companion);
    }

    private static void item(Json json, Packing.Item item) throws IOException {
        json.text("item", item.name()).texts("for", item.shots()).number("weight_g", Figures.grams(item.weightG()));
    }

    private void left(Json json, Packing.Item item) throws IOException {
        item(json, item);
        json.text("why", sentences.apply(item.why()));
    }
}
