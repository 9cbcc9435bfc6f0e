package understorey.order;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The best order of some pictures, exactly: dynamic programming over subsets (Held and Karp 1962, from memory), with the set
 * already taken, the last picture and its start as the state. Leaving later never means arriving earlier, so of all ways to have
 * taken a set by some start only the best counts.
 *
 * <p>Of plans of equal worth the one that is back earlier counts, to a step of the grid; then the set with the earlier picture
 * of the author's order, and the sequence whose last picture is later in it; then earlier starts.
 *
 * <p>Beyond twelve pictures a good plan comes first ({@link LocalSearch}), and states that cannot become better than the best known are
 * dropped ({@link UpperBound}): of equal worth the plan known before counts. That search ended within its limits for all but
 * 2 of 2,400 random visits of 60 to 360 minutes and 12 to 19 pictures; in a visit of twelve hours it handles about 20. Cut short,
 * it gives the best plan found so far, and only then may one more picture lower the sum.
 */
final class BranchAndBound {

    static final int MOST = 12;
    /** A set is the bits of a {@code long}. */
    private static final int MOST_BOUNDED = 62;
    /** States looked at in one search: about a second. */
    private static final long MOST_STEPS = 500_000_000;
    private static final long MOST_BYTES = 120_000_000;
    /** Bytes of a {@link BestByStart} without its sums, and of a set without its references. */
    private static final int SUMS_BYTES = 40;
    private static final int SET_BYTES = 120;
    private static final int REFERENCE_BYTES = 4;

    private final Transitions transitions;
    /** By picture: the pictures that must come after it. */
    private final long[] followers;
    /** By set and last picture: the best sum of worths by its start; null if no plan ends like this. */
    private final Map<Long, @Nullable BestByStart[]> best = new HashMap<>();
    private final @Nullable UpperBound bound;
    /** Best worth of a plan so far. */
    private long known;
    private final Budget work;
    private final Budget memory;

    private BranchAndBound(Transitions transitions, @Nullable UpperBound bound, long known, Budget work, Budget memory) {
        this.work = work;
        this.memory = memory;
        this.transitions = transitions;
        this.bound = bound;
        this.known = known;
        this.followers = new long[transitions.size];
        for (int i = 0; i < transitions.size; i++) {
            for (int j = 0; j < transitions.size; j++) {
                followers[i] |= transitions.waitsFor(j, i) ? 1L << j : 0;
            }
        }
    }

    static Schedule of(Transitions transitions) {
        BranchAndBound order = new BranchAndBound(transitions, null, BestByStart.NEVER, new Budget(Long.MAX_VALUE),
                new Budget(Long.MAX_VALUE));
        order.search();
        return order.schedule();
    }

    /** The best plan if the search ends within its limits; else the best found, at least the known one. */
    static Schedule of(Transitions transitions, Schedule known) {
        return of(transitions, known, MOST_STEPS, MOST_BYTES);
    }

    /** The best plan found within limits of steps and bytes, at least the known one. */
    static Schedule of(Transitions transitions, Schedule known, long steps, long bytes) {
        if (transitions.size > MOST_BOUNDED) {
            return known;
        }
        BranchAndBound order = new BranchAndBound(transitions, UpperBound.of(transitions, known.worth()), known.worth(), new Budget(steps), new Budget(bytes));
        order.search();
        return order.known > known.worth() ? order.schedule() : known;
    }

    /** Searches set by set, smaller sets first. */
    private void search() {
        List<Long> sets = List.of(0L);
        while (!sets.isEmpty()) {
            List<Long> larger = new ArrayList<>();
            for (long taken : sets) {
                for (int next = 0; next < transitions.size && !work.spent() && !memory.spent(); next++) {
                    if ((taken >> next & 1) == 0 && (taken & followers[next]) == 0) {
                        keep(taken | 1L << next, next, add(taken, next), larger);
                    }
                }
            }
            sets = larger;
        }
    }

    private void keep(long taken, int last, @Nullable BestByStart sums, List<Long> sets) {
        if (sums == null) {
            return;
        }
        BestByStart[] byLast = best.get(taken);
        if (byLast == null) {
            byLast = new BestByStart[transitions.size];
            best.put(taken, byLast);
            sets.add(taken);
            memory.spend(SET_BYTES + (long) transitions.size * REFERENCE_BYTES);
        }
        byLast[last] = sums;
        memory.spend(SUMS_BYTES + (long) sums.size() * Long.BYTES);
    }

    /** Best sums after the next picture, by its start; null if no start can be reached, or none is worth keeping. */
    private @Nullable BestByStart add(long taken, int next) {
        long[] sums = new long[transitions.starts[next].length];
        work.spend(sums.length);
        if (taken == 0) {
            for (int s = 0; s < sums.length; s++) {
                sums[s] = s < transitions.first[next] ? BestByStart.NEVER : transitions.setUp[next];
            }
        } else {
            Arrays.fill(sums, BestByStart.NEVER);
            @Nullable BestByStart[] before = best(taken);
            for (int one = 0; one < transitions.size; one++) {
                if (before[one] != null) {
                    work.spend(sums.length);
                    before[one].raise(sums, transitions.joining(one, next), transitions.busy[one][next]);
                }
            }
        }
        return bound == null ? BestByStart.rising(sums, transitions.worth[next]) : promising(bound, sums, taken | 1L << next, next);
    }

    /** As {@link BestByStart#rising}, without sums that cannot become better than the best known. */
    private @Nullable BestByStart promising(UpperBound bound, long[] sums, long taken, int picture) {
        long prices = bound.prices(taken);
        long most = BestByStart.NEVER;
        for (int s = 0; s < sums.length; s++) {
            long sum = sums[s] == BestByStart.NEVER ? BestByStart.NEVER : sums[s] + transitions.worth[picture][s];
            long gain = sum <= most ? 0 : sum + bound.after(picture, s) + prices - known;
            if (gain > 0 && gain > bound.lost(taken, picture, s)) {
                most = sum;
                known = s <= transitions.last[picture] ? Math.max(known, sum - transitions.price(picture, s)) : known;
            }
            sums[s] = most;
        }
        return BestByStart.of(sums);
    }

    private Schedule schedule() {
        long worth = 0;
        int back = transitions.visit.from();
        long set = 0;
        int last = Transitions.NONE;
        int end = Transitions.NONE;
        for (Map.Entry<Long, @Nullable BestByStart[]> entry : best.entrySet()) {
            long taken = entry.getKey();
            for (int i = 0; i < transitions.size; i++) {
                BestByStart sums = entry.getValue()[i];
                int ended = sums == null ? Transitions.NONE : sums.ended(transitions, i, transitions.last[i]);
                if (sums == null || ended < 0 || sums.at(ended) - transitions.price(i, ended) < worth) {
                    continue;
                }
                long sum = sums.at(ended) - transitions.price(i, ended);
                int home = transitions.visit.back(i, transitions.starts[i][ended]);
                int sooner = Task.steps(home) - Task.steps(back);
                if (sum > worth || sooner < 0 || sooner == 0 && (taken == set || comesFirst(taken, set))) {
                    worth = sum;
                    back = home;
                    set = taken;
                    last = i;
                    end = ended;
                }
            }
        }
        return new Schedule(traced(set, last, end), worth, back);
    }

    private static boolean comesFirst(long one, long other) {
        return (one & Long.lowestOneBit(one ^ other)) != 0;
    }

    /** The pictures of the best plan, found backwards. */
    private List<Schedule.Take> traced(long set, int last, int end) {
        List<Schedule.Take> takes = new ArrayList<>();
        long taken = set;
        int picture = last;
        int by = end;
        while (taken != 0) {
            BestByStart sums = best(taken)[picture];
            int start = sums.reached(by);
            takes.add(new Schedule.Take(picture, transitions.starts[picture][start]));
            long rest = sums.at(start) - transitions.worth[picture][start];
            taken &= ~(1L << picture);
            int one = transitions.size - 1;
            while (taken != 0 && !reaches(taken, one, picture, start, rest)) {
                one--;
            }
            by = taken == 0 ? 0 : transitions.joining(one, picture)[start];
            picture = one;
        }
        Collections.reverse(takes);
        return List.copyOf(takes);
    }

    private boolean reaches(long taken, int one, int next, int start, long rest) {
        BestByStart sums = best(taken)[one];
        if (sums == null) {
            return false;
        }
        int by = transitions.joining(one, next)[start];
        return by >= 0 && sums.at(by) + transitions.busy[one][next] == rest;
    }

    /** The sums of a set that the search has reached. */
    private @Nullable BestByStart[] best(long taken) {
        return Objects.requireNonNull(best.get(taken));
    }
}
