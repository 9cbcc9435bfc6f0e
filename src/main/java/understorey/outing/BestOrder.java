package understorey.outing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * The best order of up to twelve pictures, exactly: dynamic programming over the set already taken, the last picture and
 * its start. Setting out later never brings one there earlier, so of all ways to have taken a set by some start only the
 * best counts.
 *
 * <p>Of equal worth the plan counts that is back earlier, to a step of the grid; then the set that holds the earlier picture
 * of the author's order, and the sequence whose last picture stands later in it; then earlier starts.
 */
final class BestOrder {

    static final int MOST = 12;
    /** No plan ends so. */
    private static final long NEVER = -1;

    private final Joins joins;
    /** By set and last picture: the best sum of worths with the last one started by then; null when it cannot be. */
    private final long[][] best;
    /** By picture: those that may not come before it is taken or left out. */
    private final int[] followers;

    private BestOrder(Joins joins) {
        this.joins = joins;
        this.best = new long[joins.size << joins.size][];
        this.followers = new int[joins.size];
        for (int i = 0; i < joins.size; i++) {
            for (int j = 0; j < joins.size; j++) {
                followers[i] |= joins.waitsFor(j, i) ? 1 << j : 0;
            }
        }
    }

    static Schedule of(Joins joins) {
        BestOrder order = new BestOrder(joins);
        for (int taken = 0; taken < 1 << joins.size; taken++) {
            for (int next = 0; next < joins.size; next++) {
                if ((taken >> next & 1) == 0 && (taken & order.followers[next]) == 0) {
                    order.best[order.at(taken | 1 << next, next)] = order.add(taken, next);
                }
            }
        }
        return order.schedule();
    }

    private int at(int taken, int last) {
        return taken * joins.size + last;
    }

    /** The best sums after the next picture, by its start; null when no start can be reached. */
    private long[] add(int taken, int next) {
        long[] sums = new long[joins.starts[next].length];
        if (taken == 0) {
            for (int s = 0; s < sums.length; s++) {
                sums[s] = s < joins.first[next] ? NEVER : 0;
            }
        } else {
            Arrays.fill(sums, NEVER);
            for (int rest = taken; rest != 0; rest &= rest - 1) {
                int one = Integer.numberOfTrailingZeros(rest);
                long[] before = best[at(taken, one)];
                if (before != null) {
                    raise(sums, before, joins.joining(one, next));
                }
            }
        }
        return rising(sums, joins.worth[next]) ? sums : null;
    }

    static void raise(long[] sums, long[] before, int[] joining) {
        for (int s = sums.length - 1; s >= 0 && joining[s] >= 0; s--) {
            sums[s] = Math.max(sums[s], before[joining[s]]);
        }
    }

    /** Adds the worth of the picture, and lets what is there by some start be there by each later one. */
    static boolean rising(long[] sums, long[] worth) {
        long most = NEVER;
        for (int s = 0; s < sums.length; s++) {
            most = sums[s] == NEVER ? most : Math.max(most, sums[s] + worth[s]);
            sums[s] = most;
        }
        return most != NEVER;
    }

    /** The first start by which a sum is reached. */
    static int reached(long[] sums, int by) {
        int s = by;
        while (s > 0 && sums[s - 1] == sums[by]) {
            s--;
        }
        return s;
    }

    private Schedule schedule() {
        long worth = 0;
        int back = joins.visit.from();
        int set = 0;
        int last = Joins.NONE;
        for (int taken = 1; taken < 1 << joins.size; taken++) {
            for (int i = 0; i < joins.size; i++) {
                long[] sums = (taken >> i & 1) == 0 || joins.last[i] < 0 ? null : best[at(taken, i)];
                long sum = sums == null ? NEVER : sums[joins.last[i]];
                if (sum < worth || sum == NEVER) {
                    continue;
                }
                int home = joins.visit.back(i, joins.starts[i][reached(sums, joins.last[i])]);
                int sooner = steps(home) - steps(back);
                if (sum > worth || sooner < 0 || sooner == 0 && (taken == set || comesFirst(taken, set))) {
                    worth = sum;
                    back = home;
                    set = taken;
                    last = i;
                }
            }
        }
        return new Schedule(traced(set, last), worth, back);
    }

    /** Minutes as steps of the grid: to be back a minute sooner is no reason to change the author's order. */
    static int steps(int minute) {
        return Math.floorDiv(minute + Stint.STEP - 1, Stint.STEP);
    }

    private static boolean comesFirst(int one, int other) {
        return (one & Integer.lowestOneBit(one ^ other)) != 0;
    }

    /** The pictures of the best plan, found backwards. */
    private List<Schedule.Take> traced(int set, int last) {
        List<Schedule.Take> takes = new ArrayList<>();
        int taken = set;
        int picture = last;
        int by = last < 0 ? 0 : joins.last[last];
        while (taken != 0) {
            long[] sums = best[at(taken, picture)];
            int start = reached(sums, by);
            takes.add(new Schedule.Take(picture, joins.starts[picture][start]));
            long rest = sums[start] - joins.worth[picture][start];
            taken &= ~(1 << picture);
            int one = joins.size - 1;
            while (taken != 0 && !reaches(taken, one, picture, start, rest)) {
                one--;
            }
            by = taken == 0 ? 0 : joins.joining(one, picture)[start];
            picture = one;
        }
        Collections.reverse(takes);
        return List.copyOf(takes);
    }

    private boolean reaches(int taken, int one, int next, int start, long rest) {
        long[] sums = (taken >> one & 1) == 0 ? null : best[at(taken, one)];
        int by = sums == null ? Joins.NONE : joins.joining(one, next)[start];
        return by >= 0 && sums[by] == rest;
    }
}
