package understorey.brief;

import static understorey.reason.Figure.Measure.DATE;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.time.zone.ZoneOffsetTransition;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import understorey.exposure.Exposure;
import understorey.exposure.Settings;
import understorey.exposure.StemSway;
import understorey.kit.Intent;
import understorey.kit.LensFit;
import understorey.kit.ShotFit;
import understorey.kit.SmallestBag;
import understorey.kit.Verdict;
import understorey.light.LightAt;
import understorey.light.LightTable;
import understorey.light.PlantArea;
import understorey.light.Standpoint;
import understorey.light.Weather;
import understorey.outing.Outing;
import understorey.outing.OutingReason;
import understorey.outing.RunningOrder;
import understorey.outing.Story;
import understorey.packing.Cautions;
import understorey.packing.Cold;
import understorey.packing.Packing;
import understorey.plan.Canopy;
import understorey.plan.Position;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.SkyWord;
import understorey.plan.Spot;
import understorey.plan.Trip;
import understorey.plan.When;
import understorey.reason.Figure;
import understorey.reason.Reason;
import understorey.scene.DayLightChart;
import understorey.scene.SkylineChart;
import understorey.season.Flowering;
import understorey.sky.Interval;
import understorey.sky.MoonAt;
import understorey.sky.MoonDay;
import understorey.sky.Skyline;
import understorey.sky.SunAt;
import understorey.sky.SunDay;

/** Assembles the brief of a trip that is ready for its audience. */
public final class Planner {

    private final Trip trip;
    private final Site site;
    private final LocalDate date;
    private final SunDay sun;
    private final List<LightAt> light;
    private final List<Intent> intents;
    private final SmallestBag bag;
    private final Outing outing;
    private final List<Finding> findings = new ArrayList<>();

    private Planner(Trip trip) {
        this.trip = trip;
        this.site = trip.site();
        this.date = day(trip.when());
        this.sun = SunDay.of(site.position(), date, site.zone());
        this.intents = Intent.of(trip.shots());
        this.bag = SmallestBag.of(trip.gear(), trip.companions(), intents);
        this.light = LightTable.of(site, null, date);
        this.outing = RunningOrder.of(trip, date, sun, light, intents);
    }

    public static Brief brief(Trip trip) {
        return new Planner(trip).brief();
    }

    private Brief brief() {
        Skyline skyline = Skyline.of(site.skyline());
        List<Interval> sunlit = skyline.sunlit(site.position(), date, site.zone());
        Flowering flowering = season();
        List<ShotBrief> shots = shots();
        Story story = Story.of(intents);
        remark(story, shots);
        return new Brief(trip, date, sun, MoonDay.of(site.position(), date, site.zone()), light, sunlit,
                sky(), shots, outing, story, packing(shots), flowering,
                Cautions.of(trip, outing, intents), List.copyOf(findings), assumed(),
                DayLightChart.of(light, sun, sunlit, row -> row.floorEv(okta(weather(row.sun().time()))), outing,
                        order()),
                SkylineChart.of(light, skyline, site, trip.shots(), fields(shots)));
    }

    private List<String> order() {
        List<String> order = new ArrayList<>();
        for (Shot shot : trip.shots()) {
            order.add(shot.name());
        }
        return order;
    }

    private static List<SkylineChart.Field> fields(List<ShotBrief> shots) {
        List<SkylineChart.Field> fields = new ArrayList<>();
        for (ShotBrief shot : shots) {
            if (shot.fit().best() != null) {
                fields.add(new SkylineChart.Field(shot.number(), shot.intent().shot().facingDeg(),
                        shot.fit().best().view().horizontalDeg()));
            }
        }
        return fields;
    }

    /** The middle of several days, until more is known of them. */
    private static LocalDate day(When when) {
        if (when instanceof When.On on) {
            return on.date();
        }
        When.Between between = (When.Between) when;
        return between.from().plusDays(ChronoUnit.DAYS.between(between.from(), between.to()) / 2);
    }

    private Flowering season() {
        if (trip.when() instanceof When.Between between) {
            find(Finding.Level.NOTE, Reason.of(BriefReason.MIDDLE_DAY_PLANNED)
                    .with("date", new Figure(date, DATE)).with("from", new Figure(between.from(), DATE))
                    .with("to", new Figure(between.to(), DATE)));
        }
        Flowering first = null;
        Set<String> seen = new LinkedHashSet<>();
        for (Intent intent : intents) {
            if (!seen.add(intent.shot().subject().key())) {
                continue;
            }
            Flowering flowering = Flowering.of(intent.shot().subject(), site.position().latitude(), date);
            first = first == null ? flowering : first;
            if (flowering == null) {
                find(Finding.Level.NOTE, Reason.of(BriefReason.MONTHS_UNKNOWN)
                        .with("subject", intent.shot().subject().name()));
            } else if (!flowering.inSeason()) {
                find(Finding.Level.WARNING, Reason.of(BriefReason.OUT_OF_SEASON)
                        .with("subject", flowering.subject().name()).with("first", month(flowering.first().name()))
                        .with("last", month(flowering.last().name())));
            }
        }
        return first;
    }

    private static String month(String name) {
        return name.charAt(0) + name.substring(1).toLowerCase(Locale.ROOT);
    }

    private List<ShotBrief> shots() {
        List<ShotBrief> shots = new ArrayList<>();
        for (Intent intent : intents) {
            shots.add(shot(shots.size() + 1, intent));
        }
        return List.copyOf(shots);
    }

    private ShotBrief shot(int number, Intent intent) {
        Interval time = outing.timeOf(intent.shot().name());
        ZonedDateTime middle = time == null
                ? outing.arrive().plus(Duration.between(outing.arrive(), outing.leave()).dividedBy(2))
                : time.from().plus(time.length().dividedBy(2));
        Spot spot = site.spot(intent.shot().spot());
        Canopy canopy = site.canopyAt(spot);
        Position place = site.positionOf(spot);
        LightAt light = LightAt.of(SunAt.of(place, middle), Standpoint.of(site, spot, date), MoonAt.of(place, middle));
        ShotFit fit = bag.fits().get(number - 1);
        List<ShotBrief.InSky> skies = new ArrayList<>();
        Settings settings = null;
        if (fit.best() != null) {
            Weather weather = weather(middle);
            double plantArea = PlantArea.effectiveIndex(canopy, date);
            Double wind = weather.windMs() == null ? null : StemSway.windAtFlowersMs(weather.windMs(), plantArea);
            settings = settings(fit.best(), light, okta(weather), wind);
            for (SkyWord sky : List.of(SkyWord.CLEAR, SkyWord.BROKEN, SkyWord.OVERCAST)) {
                skies.add(new ShotBrief.InSky(sky, settings(fit.best(), light, sky.okta(), wind)));
            }
        }
        List<ShotBrief.ForCompanion> companions = trip.companions().stream()
                .map(companion -> new ShotBrief.ForCompanion(companion.name(),
                        ShotFit.of(intent, companion.gear()).best())).toList();
        return new ShotBrief(number, intent, fit, time, light, angle(intent, light), settings, List.copyOf(skies),
                companions);
    }

    private static Settings settings(LensFit fit, LightAt light, double okta, Double wind) {
        return Exposure.of(fit, light.floorEv(okta), light.contrastStops(okta), wind);
    }

    private static Double angle(Intent intent, LightAt light) {
        Double facing = intent.shot().facingDeg();
        if (facing == null || light.sun().altitudeDeg() < 0) {
            return null;
        }
        double apart = Math.abs(facing - light.sun().azimuthDeg()) % 360;
        return Math.min(apart, 360 - apart);
    }

    private Weather weather(ZonedDateTime time) {
        return Weather.at(time, trip.forecast(), trip.sky());
    }

    /** As forecast; else as the author's word has it; else broken, the middle of all skies. */
    private double okta(Weather weather) {
        return weather.okta() == null ? sky().okta() : weather.okta();
    }

    private SkyWord sky() {
        return trip.sky() == null ? SkyWord.BROKEN : trip.sky();
    }

    private Packing packing(List<ShotBrief> shots) {
        List<Packing.Use> uses = new ArrayList<>();
        for (ShotBrief shot : shots) {
            uses.add(new Packing.Use(shot.fit().best(), shot.settings(), shot.verdict(), shot.helps()));
        }
        return Packing.of(bag, uses, Cold.coldestC(trip.forecast(), outing), outing.lamp());
    }

    private void remark(Story story, List<ShotBrief> shots) {
        if (sun.downAllDay()) {
            find(Finding.Level.NOTE, Reason.of(BriefReason.SUN_DOES_NOT_RISE));
        }
        if (sun.upAllDay()) {
            find(Finding.Level.NOTE, Reason.of(BriefReason.SUN_DOES_NOT_SET));
        }
        if (skyUnknown()) {
            find(Finding.Level.NOTE, Reason.of(BriefReason.SKY_UNKNOWN));
        }
        if (site.canopy() == null) {
            find(Finding.Level.NOTE, Reason.of(BriefReason.CANOPY_UNKNOWN));
        }
        clocks();
        for (ShotBrief shot : shots) {
            objection(shot);
        }
        outing.remarks().forEach(remark -> find(remark.kind() == OutingReason.WALK_ASSUMED
                ? Finding.Level.NOTE : Finding.Level.WARNING, remark));
        story.gaps().forEach(gap -> find(Finding.Level.NOTE, gap));
    }

    /** Whether the clocks change on the day. */
    private void clocks() {
        ZoneOffsetTransition change = site.zone().getRules()
                .nextTransition(date.atStartOfDay(site.zone()).toInstant().minusSeconds(1));
        if (change != null && change.getDateTimeBefore().toLocalDate().equals(date)) {
            find(Finding.Level.NOTE, Reason.of(change.isGap()
                    ? BriefReason.CLOCKS_GO_FORWARD : BriefReason.CLOCKS_GO_BACK)
                    .with("from", new Figure(change.getDateTimeBefore().toLocalTime(), Figure.Measure.CLOCK))
                    .with("to", new Figure(change.getDateTimeAfter().toLocalTime(), Figure.Measure.CLOCK)));
        }
    }

    private void objection(ShotBrief shot) {
        LensFit best = shot.fit().best();
        String name = shot.intent().shot().name();
        if (shot.verdict() == Verdict.CANNOT) {
            find(Finding.Level.WARNING, Reason.of(BriefReason.SHOT_CANNOT).with("shot", name));
        } else if (best.verdict() == Verdict.COMPROMISE && best.objection() != null) {
            find(Finding.Level.NOTE, Reason.of(BriefReason.SHOT_COMPROMISE).with("shot", name)
                    .with("why", new Figure(best.objection(), Figure.Measure.REASON)));
        } else if (shot.verdict() == Verdict.COMPROMISE) {
            find(Finding.Level.NOTE, Reason.of(BriefReason.SHOT_AT_ITS_LIMIT).with("shot", name));
        }
    }

    private void find(Finding.Level level, Reason reason) {
        findings.add(new Finding(level, reason));
    }

    private boolean skyUnknown() {
        return trip.sky() == null && trip.forecast().stream().allMatch(hour -> hour.okta() == null);
    }

    private Set<String> assumed() {
        Set<String> assumed = new LinkedHashSet<>(outing.assumed());
        if (skyUnknown()) {
            assumed.add("sky");
        }
        if (site.canopy() == null) {
            assumed.add("canopy");
        }
        if (trip.share() == null || trip.share().audience() == null) {
            assumed.add("audience");
        }
        if (trip.share() == null || trip.share().position() == null) {
            assumed.add("position");
        }
        return Collections.unmodifiableSet(assumed);
    }
}
