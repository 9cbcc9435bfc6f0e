package understorey.order;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The best sum by start of the last picture: of a plan whose last picture starts then or earlier, so the sums never fall. A sum
 * is the worth of the pictures and what their busy minutes would cost if idle; the whole time is charged once, at the end
 * ({@link #ended}). Kept from the first possible start to the last that adds something.
 */
final class BestByStart {

    /** No plan ends there. */
    static final long NEVER = -1;

    private final int first;
    private final long[] best;

    private BestByStart(int first, long[] best) {
        this.first = first;
        this.best = best;
    }

    /** Keeps sums that do not fall; null if there are none. */
    static @Nullable BestByStart of(long[] sums) {
        int first = 0;
        int last = sums.length - 1;
        while (first <= last && sums[first] == NEVER) {
            first++;
        }
        while (last > first && sums[last] == sums[last - 1]) {
            last--;
        }
        return first > last ? null : new BestByStart(first, Arrays.copyOfRange(sums, first, last + 1));
    }

    /** Number of sums kept. */
    int size() {
        return best.length;
    }

    long at(int start) {
        return start < first ? NEVER : best[Math.min(start - first, best.length - 1)];
    }

    /** First start with the same sum as a start. */
    int reached(int by) {
        int s = Math.min(by, first + best.length - 1);
        while (s > first && at(s - 1) == at(s)) {
            s--;
        }
        return s;
    }

    /**
     * Raises the sums of the next picture to the best that follow this one.
     *
     * @param joining for each start of the next picture, the last start of this one that leaves time
     * @param busy    of the minutes between the two
     */
    void raise(long[] sums, int[] joining, long busy) {
        for (int s = sums.length - 1; s >= 0 && joining[s] >= first; s--) {
            sums[s] = Math.max(sums[s], best[Math.min(joining[s] - first, best.length - 1)] + busy);
        }
    }

    /**
     * The last start of the best plan that ends with this picture, the earliest of equals; −1 for none.
     *
     * @param last latest start that leaves time to walk back
     */
    int ended(Transitions transitions, int picture, int last) {
        int ended = Transitions.NONE;
        for (int s = first; s <= Math.min(last, first + best.length - 1); s++) {
            if (ended < 0 || at(s) - transitions.price(picture, s) > at(ended) - transitions.price(picture, ended)) {
                ended = s;
            }
        }
        return ended;
    }

    /** Adds the worth of a picture to sums, and makes them rise: a sum at a start also holds at each later one. */
    static @Nullable BestByStart rising(long[] sums, long[] worth) {
        long most = NEVER;
        for (int s = 0; s < sums.length; s++) {
            most = sums[s] == NEVER ? most : Math.max(most, sums[s] + worth[s]);
            sums[s] = most;
        }
        return of(sums);
    }
}
