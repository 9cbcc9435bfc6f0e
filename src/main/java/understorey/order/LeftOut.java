package understorey.order;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.LeftOutAdvice;
import understorey.visit.Hours;

/** Reasons for pictures that are left out, and for those that were to follow them. */
final class LeftOut {

    /** Most minutes to arrive earlier or leave later for a picture: common practice, no source. */
    static final int MOST_CHANGE = 180;

    private final Hours hours;
    private final Visit visit;
    private final List<Candidate> candidates;

    private LeftOut(Hours hours, Visit visit, List<Candidate> candidates) {
        this.hours = hours;
        this.visit = visit;
        this.candidates = candidates;
    }

    /** The reasons in the author's order, and last the changes that would let every must be taken. */
    static List<Advice> of(Hours hours, Visit visit, Schedule schedule, List<Candidate> candidates) {
        LeftOut left = new LeftOut(hours, visit, candidates);
        List<Advice> reasons = new ArrayList<>();
        List<Integer> musts = new ArrayList<>();
        boolean missing = false;
        for (int i = 0; i < candidates.size(); i++) {
            if (visit.tasks().get(i).must()) {
                musts.add(i);
            }
            if (!schedule.takes(i)) {
                missing |= visit.tasks().get(i).must();
                reasons.add(left.why(i, schedule));
                continue;
            }
            String after = left.after(i, schedule);
            if (after != null && !visit.tasks().get(i).pinned()) {
                reasons.add(new LeftOutAdvice.FollowsNothing(left.name(i), after));
            }
        }
        if (missing) {
            reasons.addAll(RoomForMusts.of(hours, visit, musts, candidates));
        }
        return List.copyOf(reasons);
    }

    /** The picture that it was to follow, if that is left out; else null. */
    private @Nullable String after(int task, Schedule schedule) {
        String after = candidates.get(task).shot().after();
        for (int i = 0; i < candidates.size() && after != null; i++) {
            if (name(i).equals(after)) {
                return schedule.takes(i) ? null : after;
            }
        }
        return null;
    }

    private Advice why(int task, Schedule schedule) {
        Task picture = visit.tasks().get(task);
        String name = name(task);
        int ready = visit.readyFirst(task);
        if (picture.pinned() && picture.pin() < ready) {
            return new LeftOutAdvice.PinMissed(name, hours.at(picture.pin()), hours.at(ready));
        }
        if (picture.pinned() && !Fitting.allFit(visit.only(List.of(task)))) {
            return new LeftOutAdvice.PinTooLate(name, hours.at(picture.pin()), hours.at(visit.to()));
        }
        if (!picture.pinned() && !Fitting.allFit(visit.only(List.of(task)))) {
            return notEvenAlone(task);
        }
        int other = clashing(task, schedule);
        if (other != Transitions.NONE) {
            return clash(task, other);
        }
        if (!picture.must() && fitsBeside(task, schedule)) {
            return new LeftOutAdvice.LeftForLight(name);
        }
        return picture.must() ? new LeftOutAdvice.NoTimeForMust(name, hours.at(visit.to()))
                : new LeftOutAdvice.NoTimeLeft(name, hours.at(visit.to()));
    }

    /** Because no setting succeeds, for want of light where it would fit in the dark, else for want of time. */
    private Advice notEvenAlone(int task) {
        Task picture = visit.only(List.of(task)).tasks().get(0);
        if (Fitting.allFit(visit.with(List.of(picture.inAnyLight())))) {
            return picture.noSetting(visit.from(), visit.to()) ? new LeftOutAdvice.NoSettingSucceeds(name(task))
                    : new LeftOutAdvice.VisitTooDark(name(task));
        }
        return new LeftOutAdvice.LongerThanVisit(name(task), picture.minutes(), hours.at(visit.to()));
    }

    /**
     * The pinned picture that leaves no time for another, a must before all others; one without a pin may come at another
     * time, unless one of the two waits for the other.
     */
    private int clashing(int task, Schedule schedule) {
        Task picture = visit.tasks().get(task);
        int clashing = Transitions.NONE;
        for (Schedule.Take take : schedule.takes()) {
            Task other = visit.tasks().get(take.task());
            boolean bound = picture.pinned() || picture.after().contains(take.task()) || other.after().contains(task);
            if (other.pinned() && bound && (clashing == Transitions.NONE || other.must())
                    && !Fitting.allFit(visit.only(List.of(task, take.task())))) {
                clashing = take.task();
                if (other.must()) {
                    return clashing;
                }
            }
        }
        return clashing;
    }

    private Advice clash(int task, int other) {
        Task picture = visit.tasks().get(task);
        Task pinned = visit.tasks().get(other);
        if (pinned.after().contains(task)) {
            return new LeftOutAdvice.PinBeforeIt(name(other), hours.at(pinned.pin()), name(task));
        }
        if (!picture.pinned()) {
            return new LeftOutAdvice.PinLeavesTooLittle(name(task), name(other), hours.at(pinned.pin()), hours.at(visit.to()));
        }
        return new LeftOutAdvice.PinsClash(name(task), hours.at(picture.pin()), name(other));
    }

    /** True if it is not left out for lack of time; unknown, so false, for more pictures than can be ordered exactly. */
    private boolean fitsBeside(int task, Schedule schedule) {
        if (schedule.takes().size() >= BranchAndBound.MOST) {
            return false;
        }
        List<Integer> together = new ArrayList<>();
        for (int i = 0; i < candidates.size(); i++) {
            if (i == task || schedule.takes(i)) {
                together.add(i);
            }
        }
        return Fitting.allFit(visit.only(together));
    }

    private String name(int task) {
        return candidates.get(task).name();
    }
}
