package understorey.brief;

import static understorey.reason.Figure.Measure.CLOCK;
import static understorey.reason.Figure.Measure.COUNT;
import static understorey.reason.Figure.Measure.DATE;
import static understorey.reason.Figure.Measure.DAY_OF_YEAR;
import static understorey.reason.Figure.Measure.SHARE;

import java.time.Duration;
import java.time.LocalDate;
import java.time.zone.ZoneOffsetTransition;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import understorey.kit.LensFit;
import understorey.kit.Verdict;
import understorey.order.RunningOrder;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.Spot;
import understorey.plan.Subject;
import understorey.plan.Trip;
import understorey.plan.When;
import understorey.reason.Figure;
import understorey.reason.Reason;
import understorey.season.Flowering;
import understorey.season.FloweringWindow;
import understorey.sky.Interval;
import understorey.sky.SunDay;
import understorey.story.Story;
import understorey.visit.Day;
import understorey.visit.OutingReason;
import understorey.visit.Safety;

/** Collects what an author should know of a plan before going, in the order in which the day is planned. */
final class Remarks {

    /** Below this the flowers are past, or not there yet. */
    private static final double HARDLY = 0.1;

    private final Day day;
    private final Trip trip;
    private final Site site;
    private final LocalDate date;
    private final List<Finding> findings = new ArrayList<>();

    Remarks(Day day) {
        this.day = day;
        this.trip = day.trip();
        this.site = trip.site();
        this.date = day.date();
    }

    List<Finding> all() {
        return List.copyOf(findings);
    }

    /** On the day chosen, and on each subject's months. */
    void season(SeasonBrief season) {
        if (!(trip.when() instanceof When.On)) {
            List<LocalDate> days = trip.when().days();
            note(Reason.of(BriefReason.BEST_DAY_PLANNED).with("days", days.size(), COUNT)
                    .with("date", new Figure(date, DATE)).with("from", new Figure(days.get(0), DATE))
                    .with("to", new Figure(days.get(days.size() - 1), DATE)));
        }
        for (Reason finding : season.findings()) {
            warn(finding);
        }
        Set<String> seen = new LinkedHashSet<>();
        for (Shot shot : trip.shots()) {
            if (seen.add(shot.subject().key())) {
                inFlower(shot.subject(), season.window(shot.subject()));
            }
        }
    }

    private void inFlower(Subject subject, FloweringWindow window) {
        Flowering flowering = Flowering.of(subject, site.position().latitude(), date);
        if (window != null && window.method() != FloweringWindow.Method.CATALOGUE) {
            double chance = window.chanceOn(date);
            if (chance < HARDLY) {
                warn(Reason.of(BriefReason.HARDLY_IN_FLOWER).with("subject", window.subject().name())
                        .with("chance", chance, SHARE).with("best", new Figure(window.best(), DAY_OF_YEAR)));
            }
        } else if (flowering == null) {
            note(Reason.of(BriefReason.MONTHS_UNKNOWN).with("subject", subject.name()));
        } else if (!flowering.inSeason()) {
            warn(Reason.of(BriefReason.OUT_OF_SEASON)
                    .with("subject", flowering.subject().name()).with("first", month(flowering.first().name()))
                    .with("last", month(flowering.last().name())));
        }
    }

    private static String month(String name) {
        return name.charAt(0) + name.substring(1).toLowerCase(Locale.ROOT);
    }

    void sun() {
        SunDay sun = day.sun();
        if (sun.downAllDay()) {
            note(Reason.of(BriefReason.SUN_DOES_NOT_RISE));
        }
        if (sun.upAllDay()) {
            note(Reason.of(BriefReason.SUN_DOES_NOT_SET));
        }
    }

    void sky(List<TimedShot> shots) {
        if (day.sky().unknown()) {
            note(Reason.of(BriefReason.SKY_UNKNOWN));
            return;
        }
        for (TimedShot shot : shots) {
            if (shot.time() != null && shot.weather().okta() == null) {
                note(Reason.of(BriefReason.FORECAST_SILENT).with("shot", shot.intent().shot().name()));
            }
        }
    }

    /** On trees that nobody described. */
    void canopy() {
        if (site.canopy() == null) {
            note(Reason.of(BriefReason.CANOPY_UNKNOWN));
        }
        for (Spot spot : site.spots()) {
            if (spot.clearingRadiusM() != null && !site.canopyAt(spot).isNone() && site.canopyAt(spot).heightM() == null) {
                note(Reason.of(BriefReason.CLEARING_WITHOUT_HEIGHT).with("spot", spot.name()));
            }
        }
    }

    /** Whether the clocks change on the day. */
    void clocks() {
        ZoneOffsetTransition change = site.zone().getRules()
                .nextTransition(date.atStartOfDay(site.zone()).toInstant().minusSeconds(1));
        if (change != null && change.getDateTimeBefore().toLocalDate().equals(date)) {
            note(Reason.of(change.isGap() ? BriefReason.CLOCKS_GO_FORWARD : BriefReason.CLOCKS_GO_BACK)
                    .with("from", new Figure(change.getDateTimeBefore().toLocalTime(), CLOCK))
                    .with("to", new Figure(change.getDateTimeAfter().toLocalTime(), CLOCK)));
        }
    }

    void shot(TimedShot shot) {
        LensFit best = shot.fit().best();
        String name = shot.intent().shot().name();
        if (shot.verdict() == Verdict.CANNOT) {
            warn(Reason.of(BriefReason.SHOT_CANNOT).with("shot", name));
        } else if (best.verdict() == Verdict.COMPROMISE && best.objection() != null) {
            note(Reason.of(BriefReason.SHOT_COMPROMISE).with("shot", name)
                    .with("why", new Figure(best.objection(), Figure.Measure.REASON)));
        } else if (shot.verdict() == Verdict.COMPROMISE) {
            note(Reason.of(BriefReason.SHOT_AT_ITS_LIMIT).with("shot", name));
        }
    }

    /** On a carpet that the camera looks past. */
    void ground(TimedShot shot) {
        LensFit best = shot.fit().best();
        if (best != null && best.missesTheGround()) {
            warn(Reason.of(BriefReason.NO_GROUND_IN_FRAME).with("shot", shot.intent().shot().name()));
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
            note(Reason.of(BriefReason.LIGHT_POOR_ALL_DAY).with("shot", name));
        } else {
            note(Reason.of(BriefReason.LIGHT_POOR_NOW).with("shot", name).with("from", new Figure(best.from(), CLOCK))
                    .with("to", new Figure(best.to(), CLOCK)));
        }
    }

    /** How long one waits from the one to the other, or comes too late. */
    private static Duration away(Interval window, Interval taken) {
        return window.from().isAfter(taken.to()) ? Duration.between(taken.to(), window.from())
                : Duration.between(window.to(), taken.from());
    }

    void order(RunningOrder order, Safety safety, Story story) {
        for (Reason remark : order.remarks()) {
            if (remark.kind() == OutingReason.WALK_ASSUMED || remark.kind() == OutingReason.WALKS_WITHHELD
                    || remark.kind() == OutingReason.NO_PARKING || remark.kind() == OutingReason.COULD_ARRIVE_LATER
                    || remark.kind() == OutingReason.FOLLOWS_NOTHING) {
                note(remark);
            } else {
                warn(remark);
            }
        }
        for (Reason remark : safety.remarks()) {
            if (remark.kind() == OutingReason.BACK_IN_THE_DARK) {
                note(remark);
            } else {
                warn(remark);
            }
        }
        for (Reason gap : story.gaps()) {
            note(gap);
        }
    }

    private void note(Reason reason) {
        findings.add(new Finding(Finding.Level.NOTE, reason));
    }

    private void warn(Reason reason) {
        findings.add(new Finding(Finding.Level.WARNING, reason));
    }
}
