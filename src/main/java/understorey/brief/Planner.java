package understorey.brief;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.exposure.Settings;
import understorey.kit.Intent;
import understorey.kit.LensFit;
import understorey.kit.ShotFit;
import understorey.kit.SmallestBag;
import understorey.kit.Verdict;
import understorey.order.Alternative;
import understorey.order.Leg;
import understorey.order.RunningOrder;
import understorey.packing.Cautions;
import understorey.packing.CompanionBag;
import understorey.packing.Outdoors;
import understorey.packing.Packing;
import understorey.plan.Companion;
import understorey.plan.Site;
import understorey.plan.Trip;
import understorey.plan.When;
import understorey.scene.chart.VisitFigure;
import understorey.season.AssumedWood;
import understorey.season.DayRanking;
import understorey.season.Flowering;
import understorey.story.Story;
import understorey.visit.Day;
import understorey.visit.Safety;
import understorey.visit.SkyDays;
import understorey.visit.WeatherHour;

/** Plans a trip that is ready for its audience, stage by stage. */
public final class Planner {

    private Planner() {
    }

    /** The brief of a trip. */
    public static Brief brief(Trip written) {
        AssumedWood wood = AssumedWood.of(written);
        Trip trip = wood == null ? written : wood.trip();
        ClockGrid clock = ClockGrid.of(trip);
        SeasonBrief season = clock.round(SeasonBrief.of(trip));
        Day day = clock.round(Day.of(trip, season.date()));
        SkyDays skies = new SkyDays(day.sky(), day.drops());

        List<Intent> intents = Intent.of(trip.shots(), trip.site());
        SmallestBag bag = SmallestBag.of(trip.gear(), trip.companions(), intents);
        List<SmallestBag> companionBags = trip.companions().stream()
                .map(companion -> SmallestBag.of(companion.gear(), List.of(), intents)).toList();
        List<FittedShot> fitted = fitted(day, bag, companionBags);

        OrderPlanner orders = new OrderPlanner(day, fitted, skies);
        RunningOrder toTheMinute = orders.planned();
        RunningOrder order = clock.round(toTheMinute);
        List<Alternative> alternatives = clock.round(orders.alternatives(toTheMinute));
        List<TimedShot> timed = clock.round(ShotPlanner.timed(day, fitted, order, skies));

        Safety safety = clock.round(Safety.of(day, order.back(), order.leaveLastSpotBy(),
                order.shooting().stream().map(Leg::spot).toList()));
        Story story = Story.of(bag.fits());
        Packing packing = Packing.of(bag, uses(timed), timed.stream().flatMap(shot -> shot.helps().stream()).toList(),
                Outdoors.of(day));
        List<Advice> findings = clock.round(findings(day, wood, season, timed, order, safety, story));

        Drawings drawings = new Drawings(day, season, order, timed);
        List<WeatherHour> weather = day.sky().hours(day.hours().arrive(), day.hours().leave());
        List<VisitFigure.Event> events = VisitEvents.of(day, order, weather);
        return new Brief(day, season, drawings.shots(), order, alternatives, safety, story, packing,
                carried(trip.companions(), companionBags), flowering(day), weather, drawings.places(), events, drawings.visit(events),
                drawings.spots(), clock.round(Cautions.of(day)), findings, assumed(day, wood));
    }

    /** The date that the {@link #brief} of a trip plans. */
    public static LocalDate date(Trip written) {
        if (written.when() instanceof When.On on) {
            return on.date();
        }
        AssumedWood wood = AssumedWood.of(written);
        Trip trip = wood == null ? written : wood.trip();
        return DayRanking.of(trip, trip.when().days()).best();
    }

    private static List<FittedShot> fitted(Day day, SmallestBag bag, List<SmallestBag> companionBags) {
        List<FittedShot> shots = new ArrayList<>();
        for (ShotFit fit : bag.fits()) {
            int index = shots.size();
            List<FittedShot.ForCompanion> companions = new ArrayList<>();
            for (SmallestBag other : companionBags) {
                companions.add(new FittedShot.ForCompanion(day.trip().companions().get(companions.size()).name(),
                        other.fits().get(index).best()));
            }
            shots.add(new FittedShot(index + 1, day.place(fit.intent().shot()), fit, List.copyOf(companions)));
        }
        return List.copyOf(shots);
    }

    private static List<CompanionBag> carried(List<Companion> companions, List<SmallestBag> bags) {
        return IntStream.range(0, bags.size()).mapToObj(i -> CompanionBag.of(companions.get(i).name(), bags.get(i))).toList();
    }

    private static List<Packing.Use> uses(List<TimedShot> shots) {
        List<Packing.Use> uses = new ArrayList<>();
        for (TimedShot shot : shots) {
            LensFit fit = shot.fit().best();
            Settings settings = shot.settings();
            if (fit != null && settings != null && shot.verdict() != Verdict.CANNOT) {
                uses.add(new Packing.Use(fit, settings, shot.dimming()));
            }
        }
        return uses;
    }

    private static List<Advice> findings(Day day, @Nullable AssumedWood wood, SeasonBrief season, List<TimedShot> shots,
                                          RunningOrder order, Safety safety, Story story) {
        Remarks remarks = new Remarks(day);
        remarks.season(season);
        remarks.sun();
        remarks.sky(shots);
        remarks.wind();
        remarks.canopy(wood);
        remarks.clocks();
        for (TimedShot shot : shots) {
            remarks.shot(shot);
            remarks.ground(shot);
        }
        shots.forEach(remarks::light);
        remarks.order(order, safety, story);
        return remarks.all();
    }

    /** Of the first picture whose subject's months are known; null when none is. */
    private static @Nullable Flowering flowering(Day day) {
        return day.trip().shots().stream()
                .map(shot -> Flowering.of(shot.subject(), day.trip().site().position().latitude(), day.date()))
                .filter(Objects::nonNull).findFirst().orElse(null);
    }

    private static Set<String> assumed(Day day, @Nullable AssumedWood wood) {
        Trip trip = day.trip();
        Site site = trip.site();
        Set<String> assumed = new LinkedHashSet<>(day.hours().assumed());
        if (day.sky().unknown()) {
            assumed.add("sky");
        }
        if (site.canopy() == null || wood != null) {
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
