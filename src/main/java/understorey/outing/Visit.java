package understorey.outing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What may be taken in one visit, in plain numbers. Minutes count from the start of the local day.
 *
 * @param from       on the base, ready to walk
 * @param to         back on the base
 * @param base       index of the place where the walk begins and ends
 * @param lensChange minutes from one lens to another
 * @param stints     in the author's order: none waits for a later one
 */
record Visit(int from, int to, int base, Ways ways, int lensChange, List<Stint> stints) {

    /** When the second picture can start at the earliest, when the first ends then. */
    int ready(int first, int second, int end) {
        Stint next = stints.get(second);
        return ways.arrive(stints.get(first).spot(), next.spot(), end) + next.setUp()
                + (stints.get(first).lens() == next.lens() ? 0 : lensChange);
    }

    /** When a picture can start that is the first of all. */
    int readyFirst(int stint) {
        return ways.arrive(base, stints.get(stint).spot(), from) + stints.get(stint).setUp();
    }

    /** When one is back from a picture that starts then. */
    int back(int stint, int start) {
        return ways.arrive(stints.get(stint).spot(), base, start + stints.get(stint).minutes());
    }

    Visit between(int earlier, int later) {
        return new Visit(earlier, later, base, ways, lensChange, stints);
    }

    Visit with(List<Stint> others) {
        return new Visit(from, to, base, ways, lensChange, others);
    }

    /** The same visit for some of its pictures, in that order. */
    Visit only(List<Integer> some) {
        List<Stint> chosen = new ArrayList<>();
        for (int stint : some) {
            Set<Integer> after = new HashSet<>();
            for (int other : stints.get(stint).after()) {
                if (some.contains(other)) {
                    after.add(some.indexOf(other));
                }
            }
            chosen.add(stints.get(stint).after(after));
        }
        return with(List.copyOf(chosen));
    }
}
