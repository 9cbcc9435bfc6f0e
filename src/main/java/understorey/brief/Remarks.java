package understorey.brief;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.zone.ZoneOffsetTransition;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import understorey.advice.Advice;
import understorey.advice.TripAdvice;
import understorey.kit.LensFit;
import understorey.kit.Verdict;
import understorey.order.RunningOrder;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.Spot;
import understorey.plan.Subject;
import understorey.plan.Trip;
import understorey.plan.When;
import understorey.season.Flowering;
import understorey.season.FloweringWindow;
import understorey.sky.Interval;
import understorey.sky.SunDay;
import understorey.story.Story;
import understorey.visit.Day;
import understorey.visit.Safety;

/** Collects what an author should know of a plan before going, in the order in which the day is planned. */
final class Remarks {

    /** Below this the flowers are past, or not there yet. */
    private static final double HARDLY = 0.1;

    private final Day day;
    private final Trip trip;
    private final Site site;
    private final LocalDate date;
    private final List<Advice> findings = new ArrayList<>();

    Remarks(Day day) {
        this.day = day;
        this.trip = day.trip();
        this.site = trip.site();
        this.date = day.date();
    }

    List<Advice> all() {
        return List.copyOf(findings);
    }

    /** On the day chosen, and on each subject's months. */
    void season(SeasonBrief season) {
        if (!(trip.when() instanceof When.On)) {
            List<LocalDate> days = trip.when().days();
            findings.add(new TripAdvice.BestDayPlanned(wanted(days), days.get(0), days.get(days.size() - 1), date));
        }
        findings.addAll(season.findings());
        Set<String> seen = new LinkedHashSet<>();
        for (Shot shot : trip.shots()) {
            if (seen.add(shot.subject().key())) {
                inFlower(shot.subject(), season.window(shot.subject()));
            }
        }
    }

    private int wanted(List<LocalDate> days) {
        return (int) days.stream().filter(day -> trip.wishes().wants(day.getDayOfWeek()) && !trip.wishes().avoids(day)).count();
    }

    private void inFlower(Subject subject, FloweringWindow window) {
        Flowering flowering = Flowering.of(subject, site.position().latitude(), date);
        if (window != null && window.method() != FloweringWindow.Method.CATALOGUE) {
            double chance = window.chanceOn(date);
            if (chance < HARDLY) {
                findings.add(new TripAdvice.HardlyInFlower(window.subject().name(), chance, window.best()));
            }
        } else if (flowering == null) {
            findings.add(new TripAdvice.MonthsUnknown(subject.name()));
        } else if (!flowering.inSeason()) {
            findings.add(new TripAdvice.OutOfSeason(flowering.subject().name(), flowering.first(), flowering.last()));
        }
    }

    void sun() {
        SunDay sun = day.sun();
        if (sun.downAllDay()) {
            findings.add(new TripAdvice.SunDoesNotRise());
        }
        if (sun.upAllDay()) {
            findings.add(new TripAdvice.SunDoesNotSet());
        }
    }

    void sky(List<TimedShot> shots) {
        if (day.sky().unknown()) {
            findings.add(trip.hidesTheDay() ? new TripAdvice.ForecastWithheld() : new TripAdvice.SkyUnknown());
            return;
        }
        for (TimedShot shot : shots) {
            if (shot.time() != null && shot.weather().okta() == null) {
                findings.add(new TripAdvice.ForecastSilent(shot.intent().shot().name()));
            }
        }
    }

    /** On trees that are not described. */
    void canopy() {
        if (site.canopy() == null) {
            findings.add(new TripAdvice.CanopyUnknown());
        }
        for (Spot spot : site.spots()) {
            if (spot.clearingRadiusM() != null && !site.canopyAt(spot).isNone() && site.canopyAt(spot).heightM() == null) {
                findings.add(new TripAdvice.ClearingWithoutHeight(spot.name()));
            }
        }
    }

    /** Whether the clocks change on the day. */
    void clocks() {
        ZoneOffsetTransition change = site.zone().getRules()
                .nextTransition(date.atStartOfDay(site.zone()).toInstant().minusSeconds(1));
        if (change != null && change.getDateTimeBefore().toLocalDate().equals(date)) {
            LocalTime from = change.getDateTimeBefore().toLocalTime();
            LocalTime to = change.getDateTimeAfter().toLocalTime();
            findings.add(change.isGap() ? new TripAdvice.ClocksGoForward(from, to) : new TripAdvice.ClocksGoBack(from, to));
        }
    }

    void shot(TimedShot shot) {
        LensFit best = shot.fit().best();
        String name = shot.intent().shot().name();
        if (shot.verdict() == Verdict.CANNOT) {
            findings.add(best != null && best.verdict() != Verdict.CANNOT ? new TripAdvice.ShotCannotInLight(name)
                    : new TripAdvice.ShotCannot(name));
        } else if (best.verdict() == Verdict.COMPROMISE && best.objection() != null) {
            findings.add(new TripAdvice.ShotCompromise(name, best.objection()));
        } else if (shot.verdict() == Verdict.COMPROMISE) {
            findings.add(new TripAdvice.ShotAtItsLimit(name));
        }
    }

    /** On a carpet that the camera looks past. */
    void ground(TimedShot shot) {
        LensFit best = shot.fit().best();
        if (best != null && best.missesTheGround()) {
            findings.add(new TripAdvice.NoGroundInFrame(shot.intent().shot().name()));
        }
    }

    /** On light that is not what a picture hopes for. */
    void light(TimedShot shot) {
        if (!shot.poorLight()) {
            return;
        }
        String name = shot.intent().shot().name();
        Interval best = null;
        for (TimedShot.Wished wished : shot.wished()) {
            for (Interval window : wished.outlook().windows()) {
                best = best == null || away(window, shot.time()).compareTo(away(best, shot.time())) < 0 ? window : best;
            }
        }
        if (best == null) {
            findings.add(new TripAdvice.LightPoorAllDay(name));
        } else {
            findings.add(new TripAdvice.LightPoorNow(name, best.from(), best.to()));
        }
    }

    /** How long one waits from the one to the other, or comes too late. */
    private static Duration away(Interval window, Interval taken) {
        return window.from().isAfter(taken.to()) ? Duration.between(taken.to(), window.from())
                : Duration.between(window.to(), taken.from());
    }

    void order(RunningOrder order, Safety safety, Story story) {
        findings.addAll(order.remarks());
        findings.addAll(safety.remarks());
        findings.addAll(story.gaps());
    }
}
