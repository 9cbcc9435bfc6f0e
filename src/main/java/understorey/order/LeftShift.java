package understorey.order;

import java.util.ArrayList;
import java.util.List;

/**
 * Removes waits that do not pay from the best plan. The search charges only the sum of idle minutes, so it may place a wait before
 * a picture that hardly gains by it. A picture that is taken cannot be lost to a cloud or a shower, so it comes before the wait.
 *
 * <p>First a later picture moves into an earlier wait if it fits there and the plan loses no gain that shows
 * ({@link Task#LEAST_GAIN}). Then each picture in turn starts as early as is {@linkplain Task#goodEnough good enough}.
 */
final class LeftShift {

    private final Transitions transitions;
    private final Visit visit;
    /** The best starts of the order so far, and the same order without waits that do not pay. */
    private Schedule best;
    private Schedule shifted;

    private LeftShift(Transitions transitions, Schedule best) {
        this.transitions = transitions;
        this.visit = transitions.visit;
        this.best = best;
        this.shifted = startingEarly(visit, best);
    }

    static Schedule of(Transitions transitions, Schedule best) {
        LeftShift shift = new LeftShift(transitions, best);
        for (int place = 0; place < best.takes().size(); place++) {
            shift.fillWaitBefore(place);
        }
        return shift.shifted;
    }

    private void fillWaitBefore(int place) {
        for (int later = place + 1; later < best.takes().size(); later++) {
            Schedule.Take waitedFor = shifted.takes().get(place);
            Schedule moved = moved(later, place);
            Schedule early = startingEarly(visit, moved);
            Task task = visit.tasks().get(best.takes().get(later).task());
            boolean fits = early.takes().size() == best.takes().size() && early.back() <= shifted.back()
                    && early.takes().get(place).start() + task.minutes() <= waitedFor.start();
            if (fits && best.worth() - moved.worth() <= task.leastGain()) {
                best = moved;
                shifted = early;
                return;
            }
        }
    }

    /** The best starts with one picture moved to an earlier place; without it where another picture must come before. */
    private Schedule moved(int later, int place) {
        List<Integer> sequence = new ArrayList<>(best.takes().stream().map(Schedule.Take::task).toList());
        int task = sequence.remove(later);
        boolean waits = sequence.subList(place, later).stream().anyMatch(other -> transitions.waitsFor(task, other));
        if (!waits) {
            sequence.add(place, task);
        }
        return LocalSearch.inOrder(transitions, sequence);
    }

    /** The same pictures in the same order, each as early as is good enough. */
    static Schedule startingEarly(Visit visit, Schedule planned) {
        List<Schedule.Take> early = new ArrayList<>();
        long worth = planned.worth();
        int home = planned.back();
        for (Schedule.Take take : planned.takes()) {
            Schedule.Take last = early.isEmpty() ? null : early.get(early.size() - 1);
            int ready = last == null ? visit.readyFirst(take.task())
                    : visit.ready(last.task(), take.task(), last.start() + visit.tasks().get(last.task()).minutes());
            Task task = visit.tasks().get(take.task());
            int start = task.goodEnough(ready, take.start(), last == null ? Task.AN_IDLE_MINUTE : Task.A_WAITING_MINUTE);
            early.add(new Schedule.Take(take.task(), start));
            worth += task.worth(start) - task.worth(take.start());
            home = visit.back(take.task(), start);
        }
        long saved = (long) (Task.steps(planned.back()) - Task.steps(home)) * Task.STEP;
        return new Schedule(List.copyOf(early), worth + saved * Task.AN_IDLE_MINUTE, home);
    }
}
