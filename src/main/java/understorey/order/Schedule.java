package understorey.order;

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
        return best(new Transitions(visit));
    }

    static Schedule best(Transitions transitions) {
        return transitions.size <= BranchAndBound.MOST ? BranchAndBound.of(transitions) : BranchAndBound.of(transitions, LocalSearch.of(transitions));
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
