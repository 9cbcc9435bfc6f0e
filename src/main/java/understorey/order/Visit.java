package understorey.order;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import understorey.visit.TravelTimes;

/**
 * What may be taken in one visit, in plain numbers. Minutes count from the start of the local day.
 *
 * @param from       on the base, ready to walk
 * @param to         back on the base
 * @param base       index of the place where the walk begins and ends
 * @param lensChange minutes from one lens to another
 * @param tasks     in the author's order: none waits for a later one
 */
record Visit(int from, int to, int base, TravelTimes times, int lensChange, List<Task> tasks) {

    /** When the second picture can start at the earliest, when the first ends then. */
    int ready(int first, int second, int end) {
        Task next = tasks.get(second);
        return times.arrive(tasks.get(first).spot(), next.spot(), end) + next.setUp()
                + (tasks.get(first).lens() == next.lens() ? 0 : lensChange);
    }

    /** When a picture can start that is the first of all. */
    int readyFirst(int task) {
        return times.arrive(base, tasks.get(task).spot(), from) + tasks.get(task).setUp();
    }

    /** When one is back from a picture that starts then. */
    int back(int task, int start) {
        return times.arrive(tasks.get(task).spot(), base, start + tasks.get(task).minutes());
    }

    Visit between(int earlier, int later) {
        return new Visit(earlier, later, base, times, lensChange, tasks);
    }

    Visit with(List<Task> others) {
        return new Visit(from, to, base, times, lensChange, others);
    }

    /** The same visit for some of its pictures, in that order. */
    Visit only(List<Integer> some) {
        List<Task> chosen = new ArrayList<>();
        for (int task : some) {
            Set<Integer> after = new HashSet<>();
            for (int other : tasks.get(task).after()) {
                if (some.contains(other)) {
                    after.add(some.indexOf(other));
                }
            }
            chosen.add(tasks.get(task).after(after));
        }
        return with(List.copyOf(chosen));
    }
}
