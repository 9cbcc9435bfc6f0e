package understorey.order;

import java.util.ArrayList;
import java.util.List;

/**
 * The pictures of a plan with their starts.
 *
 * @param takes in order of time
 * @param worth the sum of {@link Task#worth}
 * @param back  minute at which the walk is back at the base
 */
record Schedule(List<Take> takes, long worth, int back) {

    /** One picture, by its index, and the minute at which it starts. */
    record Take(int task, int start) {
    }

    /** The best schedule of a visit: see {@link BranchAndBound}. */
    static Schedule best(Visit visit) {
        Transitions transitions = new Transitions(visit);
        return visit.tasks().size() <= BranchAndBound.MOST ? BranchAndBound.of(transitions) : BranchAndBound.of(transitions, LocalSearch.of(transitions));
    }

    /**
     * The same pictures in the same order without waits that do not pay. The search charges only the sum of idle minutes, so it
     * may place them before a picture that hardly gains by them. Here each picture in turn starts as early as is
     * {@linkplain Task#goodEnough good enough}; the rest of its wait moves to a later picture, or to the end.
     */
    Schedule leftShifted(Visit visit) {
        List<Take> shifted = new ArrayList<>();
        long changed = worth;
        int home = back;
        for (Take take : takes) {
            Take last = shifted.isEmpty() ? null : shifted.get(shifted.size() - 1);
            int ready = last == null ? visit.readyFirst(take.task())
                    : visit.ready(last.task(), take.task(), last.start() + visit.tasks().get(last.task()).minutes());
            Task task = visit.tasks().get(take.task());
            int start = task.goodEnough(ready, take.start());
            shifted.add(new Take(take.task(), start));
            changed += task.worth(start) - task.worth(take.start());
            home = visit.back(take.task(), start);
        }
        long saved = (long) (Task.steps(back) - Task.steps(home)) * Task.STEP;
        return new Schedule(List.copyOf(shifted), changed + saved * Task.AN_IDLE_MINUTE, home);
    }

    boolean takes(int task) {
        for (Take take : takes) {
            if (take.task() == task) {
                return true;
            }
        }
        return false;
    }
}
