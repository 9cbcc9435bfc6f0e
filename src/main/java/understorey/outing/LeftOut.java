package understorey.outing;

import static understorey.reason.Figure.Measure.CLOCK;
import static understorey.reason.Figure.Measure.MINUTES;

import java.util.ArrayList;
import java.util.List;
import understorey.kit.Intent;
import understorey.reason.Figure;
import understorey.reason.Reason;

/** Why pictures are left out, and what would make room for those that must be taken. */
final class LeftOut {

    /** Nobody arrives earlier or leaves later by more than that for one picture: common practice, no source. */
    static final int MOST_CHANGE = 180;
    /** A picture takes at least that long: common practice, no source. */
    private static final int SHORTEST = 5;

    private final VisitHours hours;
    private final Visit visit;
    private final List<Intent> intents;

    private LeftOut(VisitHours hours, Visit visit, List<Intent> intents) {
        this.hours = hours;
        this.visit = visit;
        this.intents = intents;
    }

    /** In the author's order, and last what would let every must be taken. */
    static List<Reason> of(VisitHours hours, Visit visit, Schedule schedule, List<Intent> intents) {
        LeftOut left = new LeftOut(hours, visit, intents);
        List<Reason> reasons = new ArrayList<>();
        List<Integer> musts = new ArrayList<>();
        boolean missing = false;
        for (int i = 0; i < intents.size(); i++) {
            if (visit.stints().get(i).must()) {
                musts.add(i);
            }
            if (!schedule.takes(i)) {
                missing |= visit.stints().get(i).must();
                reasons.add(left.why(i, schedule));
            }
        }
        if (missing) {
            reasons.addAll(left.room(musts));
        }
        return List.copyOf(reasons);
    }

    private Reason why(int stint, Schedule schedule) {
        Stint picture = visit.stints().get(stint);
        String name = name(stint);
        int ready = visit.readyFirst(stint);
        if (picture.pinned() && picture.pin() < ready) {
            return Reason.of(OutingReason.PIN_MISSED).with("shot", name).with("pin", clock(picture.pin())).with("ready", clock(ready));
        }
        if (picture.pinned() && !Fitting.allFit(visit.only(List.of(stint)))) {
            return Reason.of(OutingReason.PIN_TOO_LATE).with("shot", name).with("pin", clock(picture.pin())).with("leave", clock(visit.to()));
        }
        String other = picture.pinned() ? clashing(stint, schedule) : null;
        if (other != null) {
            return Reason.of(OutingReason.PINS_CLASH).with("shot", name).with("pin", clock(picture.pin())).with("other", other);
        }
        boolean timeEnough = ready + picture.minutes() <= visit.to();
        if (timeEnough && !picture.pinned() && picture.starts(ready, visit.to()).length == 0) {
            return Reason.of(OutingReason.VISIT_TOO_DARK).with("shot", name);
        }
        return Reason.of(picture.must() ? OutingReason.NO_TIME_FOR_MUST : OutingReason.NO_TIME_LEFT).with("shot", name).with("leave", clock(visit.to()));
    }

    /** The pinned picture that leaves no time for another, a must before all others; null where none alone does. */
    private String clashing(int stint, Schedule schedule) {
        String clashing = null;
        for (Schedule.Take take : schedule.takes()) {
            Stint other = visit.stints().get(take.stint());
            if (other.pinned() && (clashing == null || other.must()) && !Fitting.allFit(visit.only(List.of(stint, take.stint())))) {
                clashing = name(take.stint());
                if (other.must()) {
                    return clashing;
                }
            }
        }
        return clashing;
    }

    /** Nothing is offered for more musts than can be ordered exactly. */
    private List<Reason> room(List<Integer> musts) {
        if (musts.size() > BestOrder.MOST) {
            return List.of();
        }
        int earliest = Math.max(hours.opens(), Math.max(0, visit.from() - MOST_CHANGE));
        int latest = Math.min(hours.closes(), visit.to() + MOST_CHANGE);
        Fitting.Room room = Fitting.room(visit.only(musts), earliest, latest, SHORTEST);
        List<Reason> reasons = new ArrayList<>();
        if (room.earlier() != null) {
            reasons.add(Reason.of(OutingReason.ROOM_BY_ARRIVING).with("minutes", room.earlier(), MINUTES)
                    .with("arrive", clock(visit.from() - room.earlier())));
        }
        if (room.later() != null) {
            reasons.add(Reason.of(OutingReason.ROOM_BY_LEAVING).with("minutes", room.later(), MINUTES)
                    .with("leave", clock(visit.to() + room.later())));
        }
        if (room.shorter() != null) {
            reasons.add(Reason.of(OutingReason.ROOM_BY_SHORTENING).with("minutes", room.shorter(), MINUTES)
                    .with("shot", name(musts.get(room.stint()))));
        }
        return reasons.isEmpty() ? List.of(Reason.of(OutingReason.NO_ROOM)) : reasons;
    }

    private String name(int stint) {
        return intents.get(stint).shot().name();
    }

    private Figure clock(int minute) {
        return new Figure(hours.at(minute), CLOCK);
    }
}
