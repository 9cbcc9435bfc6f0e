package understorey.outing;

import java.util.ArrayList;
import java.util.List;
import understorey.advice.Advice;
import understorey.advice.LeftOutAdvice;
import understorey.kit.Intent;

/** Why pictures are left out, and which ones miss them. */
final class LeftOut {

    /** Nobody arrives earlier or leaves later by more than that for one picture: common practice, no source. */
    static final int MOST_CHANGE = 180;

    private final VisitHours hours;
    private final Visit visit;
    private final List<Intent> intents;

    private LeftOut(VisitHours hours, Visit visit, List<Intent> intents) {
        this.hours = hours;
        this.visit = visit;
        this.intents = intents;
    }

    /** In the author's order, and last what would let every must be taken. */
    static List<Advice> of(VisitHours hours, Visit visit, Schedule schedule, List<Intent> intents) {
        LeftOut left = new LeftOut(hours, visit, intents);
        List<Advice> reasons = new ArrayList<>();
        List<Integer> musts = new ArrayList<>();
        boolean missing = false;
        for (int i = 0; i < intents.size(); i++) {
            if (visit.stints().get(i).must()) {
                musts.add(i);
            }
            if (!schedule.takes(i)) {
                missing |= visit.stints().get(i).must();
                reasons.add(left.why(i, schedule));
            } else if (!visit.stints().get(i).pinned() && left.after(i, schedule) != null) {
                reasons.add(new LeftOutAdvice.FollowsNothing(left.name(i), left.after(i, schedule)));
            }
        }
        if (missing) {
            reasons.addAll(RoomForMusts.of(hours, visit, musts, intents));
        }
        return List.copyOf(reasons);
    }

    /** What it was to come after, where that is left out; else null. */
    private String after(int stint, Schedule schedule) {
        String after = intents.get(stint).shot().after();
        for (int i = 0; i < intents.size() && after != null; i++) {
            if (name(i).equals(after)) {
                return schedule.takes(i) ? null : after;
            }
        }
        return null;
    }

    private Advice why(int stint, Schedule schedule) {
        Stint picture = visit.stints().get(stint);
        String name = name(stint);
        int ready = visit.readyFirst(stint);
        if (picture.pinned() && picture.pin() < ready) {
            return new LeftOutAdvice.PinMissed(name, hours.at(picture.pin()), hours.at(ready));
        }
        if (picture.pinned() && !Fitting.allFit(visit.only(List.of(stint)))) {
            return new LeftOutAdvice.PinTooLate(name, hours.at(picture.pin()), hours.at(visit.to()));
        }
        if (!picture.pinned() && !Fitting.allFit(visit.only(List.of(stint)))) {
            return notEvenAlone(stint);
        }
        int other = clashing(stint, schedule);
        if (other != Joins.NONE) {
            return clash(stint, other);
        }
        if (!picture.must() && fitsBeside(stint, schedule)) {
            return new LeftOutAdvice.LeftForLight(name);
        }
        return picture.must() ? new LeftOutAdvice.NoTimeForMust(name, hours.at(visit.to()))
                : new LeftOutAdvice.NoTimeLeft(name, hours.at(visit.to()));
    }

    /** For want of light where it would fit in the dark, else for want of time. */
    private Advice notEvenAlone(int stint) {
        Stint picture = visit.only(List.of(stint)).stints().get(0);
        if (Fitting.allFit(visit.with(List.of(picture.inAnyLight())))) {
            return new LeftOutAdvice.VisitTooDark(name(stint));
        }
        return new LeftOutAdvice.LongerThanVisit(name(stint), picture.minutes(), hours.at(visit.to()));
    }

    /**
     * The pinned picture that leaves no time for another, a must before all others; one without a pin may come at another
     * time, unless one of the two waits for the other.
     */
    private int clashing(int stint, Schedule schedule) {
        Stint picture = visit.stints().get(stint);
        int clashing = Joins.NONE;
        for (Schedule.Take take : schedule.takes()) {
            Stint other = visit.stints().get(take.stint());
            boolean bound = picture.pinned() || picture.after().contains(take.stint()) || other.after().contains(stint);
            if (other.pinned() && bound && (clashing == Joins.NONE || other.must()) && !Fitting.allFit(visit.only(List.of(stint, take.stint())))) {
                clashing = take.stint();
                if (other.must()) {
                    return clashing;
                }
            }
        }
        return clashing;
    }

    private Advice clash(int stint, int other) {
        Stint picture = visit.stints().get(stint);
        Stint pinned = visit.stints().get(other);
        if (pinned.after().contains(stint)) {
            return new LeftOutAdvice.PinBeforeIt(name(other), hours.at(pinned.pin()), name(stint));
        }
        if (!picture.pinned()) {
            return new LeftOutAdvice.PinLeavesTooLittle(name(stint), name(other), hours.at(pinned.pin()), hours.at(visit.to()));
        }
        return new LeftOutAdvice.PinsClash(name(stint), hours.at(picture.pin()), name(other));
    }

    /** True when time is not what it wants for; of more pictures than can be ordered exactly nobody knows. */
    private boolean fitsBeside(int stint, Schedule schedule) {
        if (schedule.takes().size() >= BestOrder.MOST) {
            return false;
        }
        List<Integer> together = new ArrayList<>();
        for (int i = 0; i < intents.size(); i++) {
            if (i == stint || schedule.takes(i)) {
                together.add(i);
            }
        }
        return Fitting.allFit(visit.only(together));
    }

    private String name(int stint) {
        return intents.get(stint).shot().name();
    }
}
