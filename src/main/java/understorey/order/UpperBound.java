package understorey.order;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The most that a plan can still gain after one picture: a Lagrangian relaxation. Pictures may be repeated here, which makes it
 * quick to work out. Each time costs the picture's price, and each picture not yet taken gives its price back, so the bound holds
 * whatever the prices. Subgradient steps adjust them until few pictures are repeated (Held, Wolfe and Crowder 1974, from memory).
 */
final class UpperBound {

    private static final int NEVER = Integer.MAX_VALUE;
    /** Smaller than any sum of worths; adding one does not overflow. */
    private static final long NOTHING = Long.MIN_VALUE / 4;
    /** More steps hardly lower the bound. */
    private static final int STEPS = 60;
    /** Steps without gain after which the next ones are shorter. */
    private static final int PATIENCE = 5;
    private static final double SHORTER = 0.6;

    private final Transitions transitions;
    /** By picture, the next one and the start of the former: the first start of the next that leaves time; NEVER for none. */
    private final int[][][] next;
    /** By picture and the one before, at whatever distance: the last start of the latter from which the former can be reached. */
    private final int[][] lastTo;
    /** All pictures and starts, the latest first. */
    private final List<Moment> moments = new ArrayList<>();
    /** By picture and start: the most gained after it, home again; the most gained by starting it then or later. */
    private final long[][] after;
    private final long[][] from;
    private long[] price;

    private record Moment(int picture, int start, int minute) {
    }

    private UpperBound(Transitions transitions) {
        this.transitions = transitions;
        this.next = new int[transitions.size][transitions.size][];
        this.lastTo = new int[transitions.size][transitions.size];
        this.after = new long[transitions.size][];
        this.from = new long[transitions.size][];
        this.price = new long[transitions.size];
        for (int i = 0; i < transitions.size; i++) {
            after[i] = new long[transitions.starts[i].length];
            from[i] = new long[transitions.starts[i].length + 1];
            for (int s = 0; s < transitions.starts[i].length; s++) {
                moments.add(new Moment(i, s, transitions.starts[i][s]));
            }
            for (int j = 0; j < transitions.size; j++) {
                next[i][j] = i == j || transitions.waitsFor(i, j) ? null : next(i, j);
            }
        }
        moments.sort((one, other) -> other.minute() - one.minute());
        for (int i = 0; i < transitions.size; i++) {
            Arrays.fill(lastTo[i], Transitions.NONE);
            reach(i);
        }
    }

    /** The tightest bound found for a visit whose best worth is at least the given one. */
    static UpperBound of(Transitions transitions, long worth) {
        UpperBound bound = new UpperBound(transitions);
        bound.lower(worth);
        return bound;
    }

    private int[] next(int one, int other) {
        int[] before = transitions.joining(one, other);
        int[] first = new int[transitions.starts[one].length];
        int at = 0;
        for (int s = 0; s < first.length; s++) {
            while (at < before.length && before[at] < s) {
                at++;
            }
            first[s] = at < before.length ? at : NEVER;
        }
        return first;
    }

    private void reach(int picture) {
        boolean again = true;
        while (again) {
            again = false;
            for (int one = 0; one < transitions.size; one++) {
                for (int way = 0; way < transitions.size && one != picture; way++) {
                    int by = way == picture ? transitions.starts[picture].length - 1 : lastTo[picture][way];
                    int start = next[one][way] == null ? NEVER : lastTo[picture][one] + 1;
                    while (start < transitions.starts[one].length && next[one][way][start] <= by) {
                        lastTo[picture][one] = start++;
                        again = true;
                    }
                }
            }
        }
    }

    private void lower(long worth) {
        for (int i = 0; i < transitions.size; i++) {
            price[i] = transitions.visit.tasks().get(i).must() ? Task.A_MUST : 0;
        }
        long least = total();
        long[] best = price;
        double length = 1;
        int waited = 0;
        for (int step = 0; step < STEPS && least > worth; step++) {
            price = moved(length * (total() - worth));
            long bound = total();
            waited = bound < least ? 0 : waited + 1;
            best = bound < least ? price : best;
            least = Math.min(least, bound);
            if (waited == PATIENCE) {
                waited = 0;
                length *= SHORTER;
                price = best;
            }
        }
        price = best;
        total();
    }

    /** The bound of the whole visit; fills the tables. */
    private long total() {
        for (long[] some : from) {
            Arrays.fill(some, NOTHING);
        }
        for (Moment moment : moments) {
            int i = moment.picture();
            int s = moment.start();
            long most = s <= transitions.last[i] ? -transitions.price(i, s) : NOTHING;
            for (int j = 0; j < transitions.size; j++) {
                most = Math.max(most, by(i, s, j));
            }
            after[i][s] = most;
            from[i][s] = Math.max(from[i][s + 1], most == NOTHING ? NOTHING : most + transitions.worth[i][s] - price[i]);
        }
        long most = 0;
        for (int i = 0; i < transitions.size; i++) {
            most = Math.max(most, first(i));
        }
        return most + prices(0);
    }

    /** The most gained if that picture comes next. */
    private long by(int picture, int start, int other) {
        int first = next[picture][other] == null ? NEVER : next[picture][other][start];
        return first == NEVER || from[other][first] == NOTHING ? NOTHING : from[other][first] + transitions.busy[picture][other];
    }

    /** The most gained if that picture is the first. */
    private long first(int picture) {
        return from[picture][Math.min(transitions.first[picture], transitions.starts[picture].length)] + transitions.setUp[picture];
    }

    /** Prices after a step of that length: higher for pictures that repeat in the best path, lower for those missing. */
    private long[] moved(double by) {
        int[] count = count();
        int squares = 0;
        for (int i = 0; i < count.length; i++) {
            squares += count[i] > 1 || price[i] > 0 ? (count[i] - 1) * (count[i] - 1) : 0;
        }
        long[] moved = price.clone();
        for (int i = 0; i < count.length && squares > 0; i++) {
            moved[i] = Math.max(0, price[i] + Math.round(by / squares * (count[i] - 1)));
        }
        return moved;
    }

    /** Number of times that each picture is in the best path. */
    private int[] count() {
        int[] count = new int[transitions.size];
        int picture = Transitions.NONE;
        long most = 0;
        for (int i = 0; i < transitions.size; i++) {
            long gain = first(i);
            picture = gain > most ? i : picture;
            most = Math.max(most, gain);
        }
        int start = picture < 0 ? 0 : transitions.first[picture];
        while (picture >= 0) {
            count[picture]++;
            while (from[picture][start] == from[picture][start + 1]) {
                start++;
            }
            boolean home = after[picture][start] == -transitions.price(picture, start) && start <= transitions.last[picture];
            int other = home ? Transitions.NONE : transitions.size - 1;
            while (other >= 0 && by(picture, start, other) != after[picture][start]) {
                other--;
            }
            start = other < 0 ? 0 : next[picture][other][start];
            picture = other;
        }
        return count;
    }

    /** The most gained after a picture that starts then, before {@link #prices} are given back; far below 0 where there is no way home in time. */
    long after(int picture, int start) {
        return after[picture][start];
    }

    /** Prices that the pictures not taken give back. */
    long prices(long taken) {
        long prices = 0;
        for (int i = 0; i < price.length; i++) {
            prices += (taken >> i & 1) == 0 ? price[i] : 0;
        }
        return prices;
    }

    /** The part of it that comes only from pictures that can no longer be taken. */
    long lost(long taken, int picture, int start) {
        long lost = 0;
        for (int i = 0; i < price.length; i++) {
            lost += (taken >> i & 1) == 0 && start > lastTo[i][picture] ? price[i] : 0;
        }
        return lost;
    }
}
