package understorey.cli;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import understorey.advice.Advice;
import understorey.advice.LeftOutAdvice;
import understorey.advice.OfShot;
import understorey.advice.SeasonAdvice;
import understorey.advice.StoryAdvice;
import understorey.advice.TripAdvice;
import understorey.advice.VisitAdvice;
import understorey.pages.TripLine;
import understorey.plan.Shot;
import understorey.plan.Trip;
import understorey.reading.Plans;
import understorey.yaml.finding.Finding;
import understorey.yaml.tree.Locator;

/** What plans say of their trips, as findings at the keys that it is about. */
final class PlanRemarks {

    private PlanRemarks() {
    }

    /** The remarks on trips that were made, those of one trip together. What several trips have from one site is said once. */
    static Collection<Finding> of(Plans plans, Collection<TripLine> lines, Predicate<TripLine.Said> shown) {
        Set<Finding> findings = new LinkedHashSet<>();
        Map<String, Trip> trips = plans.trips().stream().collect(Collectors.toMap(Trip::slug, trip -> trip));
        for (TripLine line : lines) {
            Trip trip = Objects.requireNonNull(trips.get(line.card().slug()));
            Locator places = plans.places().trip(trip.slug());
            line.findings().stream().filter(shown).forEach(said -> findings.add(places.finding(
                    said.warning() ? Finding.Level.WARNING : Finding.Level.NOTE, path(said.advice(), trip), said.text(), null)));
        }
        return findings;
    }

    /** Keys that lead to what advice is about; where the last ones are not written, the place before them counts. */
    private static String path(Advice advice, Trip trip) {
        if (advice instanceof TripAdvice.ForecastOfOtherHours || advice instanceof TripAdvice.ForecastEndsEarly
                || advice instanceof TripAdvice.ForecastSilent || advice instanceof TripAdvice.WindAssumed) {
            return "forecast";
        }
        if (advice instanceof OfShot of) {
            return shot(trip, shot -> shot.name().equals(of.shot())) + key(advice);
        }
        if (advice instanceof TripAdvice.MonthsUnknown unknown) {
            return shot(trip, shot -> shot.subject().name().equals(unknown.subject())) + ".subject";
        }
        if (advice instanceof TripAdvice.ClearingWithoutHeight clearing) {
            return "site.spots[" + index(trip.site().spots(), spot -> spot.name().equals(clearing.spot())) + "].clearing";
        }
        if (isOfTheDay(advice)) {
            return trip.when().days().size() == 1 ? "date" : "dates";
        }
        return advice instanceof SeasonAdvice ? "site.season" : advice instanceof StoryAdvice ? "shots"
                : advice instanceof VisitAdvice visit ? ofVisit(visit) : "";
    }

    private static boolean isOfTheDay(Advice advice) {
        return advice instanceof TripAdvice.BetterDays || advice instanceof TripAdvice.BestDayPlanned
                || advice instanceof TripAdvice.SunDoesNotRise || advice instanceof TripAdvice.SunDoesNotSet
                || advice instanceof TripAdvice.ClocksGoForward || advice instanceof TripAdvice.ClocksGoBack;
    }

    private static String ofVisit(VisitAdvice advice) {
        return advice instanceof VisitAdvice.CouldArriveLater || advice instanceof VisitAdvice.BeforeOpening ? "arrive"
                : advice instanceof VisitAdvice.NoParking ? "site.parking" : advice instanceof VisitAdvice.WalkAssumed ? "site.walks"
                : advice instanceof VisitAdvice.TooLate || advice instanceof VisitAdvice.StayTooLate ? "leave" : "";
    }

    private static String key(Advice advice) {
        return advice instanceof TripAdvice.LightPoorAllDay || advice instanceof TripAdvice.LightPoorNow
                || advice instanceof TripAdvice.LightAfterTheVisit || advice instanceof TripAdvice.LightBeforeTheVisit
                || advice instanceof LeftOutAdvice.LeftForLight ? ".light"
                : advice instanceof LeftOutAdvice.PinMissed || advice instanceof LeftOutAdvice.PinTooLate
                || advice instanceof LeftOutAdvice.PinsClash ? ".start"
                : advice instanceof TripAdvice.NoGroundInFrame ? ".tilt" : ".name";
    }

    private static String shot(Trip trip, Predicate<Shot> which) {
        return "shots[" + index(trip.shots(), which) + "]";
    }

    /** Of the first that fits; beyond the last where a public page calls it by another name. */
    private static <T> int index(List<T> all, Predicate<T> which) {
        return IntStream.range(0, all.size()).filter(i -> which.test(all.get(i))).findFirst().orElse(all.size());
    }
}
