package understorey.order;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import understorey.visit.TravelTimes;

/**
 * A visit for the search of the best order, in plain numbers. Minutes count from the start of the local day.
 *
 * @param from       minute at the base, ready to walk
 * @param to         minute back at the base
 * @param base       index of the place where the walk begins and ends
 * @param lensChange minutes from one lens to another
 * @param tasks      in the author's order: none waits for a later one
 */
record Visit(int from, int to, int base, TravelTimes times, int lensChange, List<Task> tasks) {

    /** Earliest start of the second picture after the end of the first. */
    int ready(int first, int second, int end) {
        Task next = tasks.get(second);
        return times.arrive(tasks.get(first).spot(), next.spot(), end) + next.setUp()
                + (tasks.get(first).lens() == next.lens() ? 0 : lensChange);
    }

    /** Earliest start of a picture that is the first of the visit. */
    int readyFirst(int task) {
        return times.arrive(base, tasks.get(task).spot(), from) + tasks.get(task).setUp();
    }

    /** Minute back at the base after a picture with that start. */
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
