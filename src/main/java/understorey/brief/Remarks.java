package understorey.brief;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.zone.ZoneOffsetTransition;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.TripAdvice;
import understorey.exposure.Conditions;
import understorey.kit.LensFit;
import understorey.kit.Verdict;
import understorey.light.Outlook;
import understorey.order.RunningOrder;
import understorey.plan.FieldGuide;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.Spot;
import understorey.plan.Subject;
import understorey.plan.Trip;
import understorey.season.AssumedWood;
import understorey.season.FloweringWindow;
import understorey.sky.Interval;
import understorey.sky.SunDay;
import understorey.story.Story;
import understorey.visit.Day;
import understorey.visit.Safety;

/** Collects what an author should know of a plan before going, in the order in which the day is planned. */
final class Remarks {

    /** Another day is clearly better below this share of its chance: common practice, no source. */
    private static final double CLEARLY_LESS = 0.75;

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
        if (season.ranking() != null) {
            List<LocalDate> days = trip.when().days();
            findings.add(new TripAdvice.BestDayPlanned(season.ranking().possible(), days.get(0), days.get(days.size() - 1), date));
        }
        findings.addAll(season.findings());
        Set<String> seen = new LinkedHashSet<>();
        for (Shot shot : trip.shots()) {
            if (seen.add(shot.subject().key())) {
                inFlower(shot.subject(), season.window(shot.subject()));
            }
        }
    }

    private void inFlower(Subject subject, @Nullable FloweringWindow window) {
        if (window == null) {
            findings.add(new TripAdvice.MonthsUnknown(subject.name()));
            return;
        }
        double chance = window.chanceOn(date);
        double most = window.chanceOn(window.best());
        if (chance < CLEARLY_LESS * most) {
            FloweringWindow.Span better = window.likeliest();
            findings.add(new TripAdvice.BetterDays(subject.name(), chance, better.from(), better.to(), most));
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

    void wind() {
        if (!day.sky().hasWind()) {
            findings.add(new TripAdvice.WindAssumed(Conditions.ASSUMED_WIND_MS));
        }
    }

    void sky(List<TimedShot> shots) {
        ZonedDateTime arrive = day.hours().arrive();
        ZonedDateTime leave = day.hours().leave();
        List<ZonedDateTime> hours = forecast();
        if (!hours.isEmpty() && hours.stream().noneMatch(hour -> hour.isBefore(leave) && hour.plusHours(1).isAfter(arrive))) {
            findings.add(new TripAdvice.ForecastOfOtherHours(arrive, leave));
            return;
        }
        if (day.sky().unknown()) {
            findings.add(trip.hidesTheDay() ? new TripAdvice.ForecastWithheld() : new TripAdvice.SkyUnknown());
            return;
        }
        List<TimedShot> silent = shots.stream().filter(shot -> shot.time() != null && shot.weather().okta() == null).toList();
        silent.forEach(shot -> findings.add(new TripAdvice.ForecastSilent(shot.intent().shot().name())));
        ZonedDateTime end = hours.stream().max(Comparator.naturalOrder()).map(hour -> hour.plusHours(1)).orElse(leave);
        if (silent.isEmpty() && end.isBefore(leave)) {
            findings.add(new TripAdvice.ForecastEndsEarly(end, leave));
        }
    }

    /** Times at which the hours of the forecast begin. */
    private List<ZonedDateTime> forecast() {
        return trip.forecast().stream().map(hour -> (hour.date() == null ? date : hour.date()).atTime(hour.time()).atZone(site.zone())).toList();
    }

    /** On trees that are not described. */
    void canopy(@Nullable AssumedWood wood) {
        if (wood != null) {
            FieldGuide.Setting setting = wood.setting();
            findings.add(setting.leavesFrom() == null || setting.leavesTo() == null || setting.trees() == null
                    ? new TripAdvice.EvergreensAssumed(wood.subject().name())
                    : new TripAdvice.WoodAssumed(wood.subject().name(), setting.trees(), setting.leavesFrom(), setting.leavesTo()));
        }
        if (site.canopy() == null) {
            findings.add(new TripAdvice.CanopyUnknown());
        }
        for (Spot spot : site.spots()) {
            if (spot.clearingRadiusM() != null && !site.canopyAt(spot).isNone() && site.canopyAt(spot).heightM() == null) {
                findings.add(new TripAdvice.ClearingWithoutHeight(spot.name()));
            }
        }
    }

    /** Whether the clocks change on the day, or in the night of a visit past midnight. */
    void clocks() {
        ZoneOffsetTransition change = site.zone().getRules()
                .nextTransition(day.hours().start().toInstant().minusSeconds(1));
        if (change != null && change.getInstant().isBefore(day.hours().day().to().toInstant())) {
            LocalTime from = change.getDateTimeBefore().toLocalTime();
            LocalTime to = change.getDateTimeAfter().toLocalTime();
            findings.add(change.isGap() ? new TripAdvice.ClocksGoForward(from, to) : new TripAdvice.ClocksGoBack(from, to));
        }
    }

    void shot(TimedShot shot) {
        LensFit best = shot.fit().best();
        String name = shot.intent().shot().name();
        if (best == null || !shot.fit().possible()) {
            findings.add(new TripAdvice.ShotCannot(name));
        } else if (shot.verdict() == Verdict.CANNOT && shot.time() != null) {
            findings.add(new TripAdvice.ShotCannotInLight(name));
        } else if (shot.verdict() == Verdict.COMPROMISE && best.verdict() == Verdict.COMPROMISE && best.objection() != null) {
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

    /** On light that is not what a picture hopes for, or that the visit misses. */
    void light(TimedShot shot) {
        Interval time = shot.time();
        if (time == null || shot.wished().isEmpty()) {
            return;
        }
        String name = shot.intent().shot().name();
        Interval best = null;
        Outlook.Grade grade = Outlook.Grade.POOR;
        for (TimedShot.Wished wished : shot.wished()) {
            for (Interval window : wished.outlook().windows()) {
                if (best == null || away(window, time).compareTo(away(best, time)) < 0) {
                    best = window;
                    grade = wished.outlook().best();
                }
            }
        }
        Outlook known = shot.outlook();
        boolean better = shot.poorLight() || known != null && known.best().compareTo(known.grade()) < 0;
        if (best != null && better && best.from().isAfter(day.hours().leave().minus(shot.intent().duration()))) {
            findings.add(new TripAdvice.LightAfterTheVisit(name, grade, best.from(), best.to(), leaving(shot, best)));
        } else if (best != null && better && best.to().isBefore(day.hours().arrive().plus(shot.intent().duration()))) {
            findings.add(new TripAdvice.LightBeforeTheVisit(name, grade, best.from(), best.to(), arriving(shot, best)));
        } else if (shot.poorLight()) {
            findings.add(best == null ? new TripAdvice.LightPoorAllDay(name, against(shot.wished().get(0).outlook()))
                    : new TripAdvice.LightPoorNow(name, best.from(), best.to()));
        }
    }

    /** What speaks against a light for most of the day. */
    private static Advice against(Outlook outlook) {
        return outlook.spoils().stream().max(Comparator.comparing(spoil -> Duration.between(spoil.when().from(), spoil.when().to())))
                .map(Outlook.Spoil::why).orElse(outlook.because().get(0));
    }

    /** Time of leaving that lets a picture be taken at the beginning of a window. */
    private ZonedDateTime leaving(TimedShot shot, Interval window) {
        int end = day.hours().minute(window.from().plus(shot.intent().duration()));
        return day.hours().at(day.walks().times().arrive(day.walks().index(shot.intent().shot().spot()), 0, end));
    }

    /** Time of arriving that lets a picture be taken by the end of a window. */
    private ZonedDateTime arriving(TimedShot shot, Interval window) {
        int start = day.hours().minute(window.to().minus(shot.intent().duration())) - RunningOrder.SET_UP_MIN;
        return day.hours().at(day.walks().times().leaveBy(0, day.walks().index(shot.intent().shot().spot()), start));
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
