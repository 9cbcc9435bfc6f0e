package understorey.pages;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Function;
import understorey.advice.Advice;
import understorey.brief.Brief;
import understorey.brief.TimedShot;
import understorey.light.LightAt;
import understorey.order.RunningOrder;
import understorey.packing.CompanionBag;
import understorey.packing.Packing;
import understorey.plan.Companion;
import understorey.plan.Trip;
import understorey.sky.MoonDay;
import understorey.sky.SunDay;
import understorey.visit.Place;
import understorey.visit.WeatherHour;
import understorey.weather.Mist;

/**
 * {@code plan.json}: every computed figure of a trip, for other programs. The unit stands in the key, instants are
 * ISO 8601 with offset, and what does not happen or is not known is {@code null}. {@link Figures} rounds.
 */
final class PlanJson {

    private static final String FORMAT = "understorey-plan/1";

    private final Brief brief;
    private final Function<Advice, String> sentences;

    private PlanJson(Brief brief, Function<Advice, String> sentences) {
        this.brief = brief;
        this.sentences = sentences;
    }

    /** The whole document; {@code sentences} words the reasons. */
    static String of(Brief brief, Function<Advice, String> sentences) {
        try {
            Json json = Json.begin();
            new PlanJson(brief, sentences).plan(json);
            return json.document();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private void plan(Json json) throws IOException {
        SeasonJson season = new SeasonJson(brief, sentences);
        OrderJson order = new OrderJson(brief, sentences);
        json.text("format", FORMAT);
        trip(json.object("trip"));
        sun(json.end().object("sun"));
        moon(json.end().object("moon"));
        json.end().list("light");
        for (LightAt light : brief.day().light()) {
            LightJson.write(json.item(), light);
            json.end();
        }
        json.endList();
        shots(json);
        order.legs(json, brief.order().legs());
        order.story(json);
        kit(json.object("kit"));
        season.write(json.end().object("season"));
        json.end();
        remarks(json);
        places(json);
        drops(json.object("drops"));
        order.lamp(json.end().object("lamp"));
        json.end();
        order.alternatives(json);
        order.safety(json.object("safety"));
        json.end();
        season.windows(json, brief.season().windows());
        season.days(json, brief.season().ranking() == null ? List.of() : brief.season().ranking().days());
    }

    private void shots(Json json) throws IOException {
        ShotJson shots = new ShotJson(brief, sentences);
        json.list("shots");
        for (TimedShot shot : brief.timed()) {
            shots.write(json.item(), shot);
            json.end();
        }
        json.endList();
    }

    private void remarks(Json json) throws IOException {
        List<String> cautions = new ArrayList<>();
        for (Advice caution : brief.cautions()) {
            cautions.add(sentences.apply(caution));
        }
        cautions.addAll(brief.trip().site().cautions());
        json.texts("cautions", cautions).list("findings");
        for (Advice finding : brief.findings()) {
            json.item().word("level", finding.severity()).text("text", sentences.apply(finding)).end();
        }
        json.endList();
    }

    private void places(Json json) throws IOException {
        json.list("places");
        for (Place place : brief.day().places()) {
            place(json.item(), place);
            json.end();
        }
        json.endList().list("weather");
        for (WeatherHour hour : brief.weather()) {
            ShotLightJson.weather(json.item().time("time", hour.time()), hour.weather());
            json.end();
        }
        json.endList();
    }

    private void trip(Json json) throws IOException {
        Trip trip = brief.trip();
        RunningOrder order = brief.order();
        List<String> companions = new ArrayList<>();
        for (Companion companion : trip.companions()) {
            companions.add(companion.name());
        }
        json.text("title", trip.title())
                .text("slug", trip.slug())
                .text("site", trip.site().name())
                .text("date", trip.hidesTheDay() ? YearMonth.from(brief.date()).toString() : brief.date().toString())
                .text("time_zone", trip.site().zone().getId())
                .word("audience", trip.audience())
                .word("position", trip.precision())
                .text("series", trip.series())
                .text("gear", trip.gear().name())
                .texts("companions", companions)
                .text("sky", trip.forecast().isEmpty() ? trip.sky() == null ? null : Words.word(trip.sky()) : "forecast")
                .time("arrive", order.arrive())
                .time("leave", order.leave())
                .time("leave_last_spot_by", order.leaveLastSpotBy())
                .texts("assumed", new TreeSet<>(brief.assumed()));
    }

    private void sun(Json json) throws IOException {
        SunDay sun = brief.day().sun();
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
        MoonDay moon = brief.day().moon();
        json.time("rise", moon.rise()).time("set", moon.set())
                .number("illuminated_fraction", Figures.share(moon.illuminatedFraction()))
                .number("phase_deg", Figures.phaseDeg(moon.phaseDeg()))
                .truth("up_all_day", moon.upAllDay()).truth("down_all_day", moon.downAllDay());
    }

    /** Light there; its rows are null where it is the site's own. */
    private void place(Json json, Place place) throws IOException {
        Mist mist = place.mist();
        json.texts("spots", place.spots())
                .number("tree_top_deg", Figures.lensDeg(place.stand().canopy().treeTopDeg()))
                .spans("sunlit", place.sunlit())
                .spans("over_trees", place.overTrees() == null ? List.of() : place.overTrees())
                .word("mist", mist.likelihood()).span("mist_stands", mist.stands())
                .told("mist_reasons", mist.reasons(), sentences);
        if (place.light() == brief.day().light()) {
            json.absent("light");
        } else {
            json.list("light");
            for (LightAt light : place.light()) {
                LightJson.onFloor(json.item(), light);
                json.end();
            }
            json.endList();
        }
    }

    private void drops(Json json) throws IOException {
        json.time("dry_by", brief.day().drops().dryBy())
                .told("reasons", brief.day().drops().reasons(), sentences);
    }

    private static void companion(Json json, CompanionBag bag) throws IOException {
        items(json.text("name", bag.name()), bag.take());
        json.number("weight_g", Figures.grams(bag.weightG())).count("unweighed", bag.unweighed());
    }

    private void kit(Json json) throws IOException {
        Packing packing = brief.packing();
        items(json, packing.take());
        json.list("leave");
        for (Packing.Item left : packing.leave()) {
            item(json.item(), left);
            json.text("why", sentences.apply(left.why())).end();
        }
        json.endList().told("missing", packing.missing(), sentences)
                .number("weight_g", Figures.grams(packing.weightG()))
                .number("card_gb", Figures.gigabytes(packing.cardGb()))
                .count("batteries", packing.batteries())
                .count("unweighed", packing.unweighed())
                .count("frames", packing.frames())
                .list("companions");
        for (CompanionBag bag : brief.companionBags()) {
            companion(json.item(), bag);
            json.end();
        }
        json.endList();
    }

    private static void items(Json json, List<Packing.Item> items) throws IOException {
        json.list("take");
        for (Packing.Item item : items) {
            item(json.item(), item);
            json.end();
        }
        json.endList();
    }

    private static void item(Json json, Packing.Item item) throws IOException {
        json.text("item", item.name()).texts("for", item.shots()).number("weight_g", Figures.grams(item.weightG()));
    }
}
