package understorey.order;

import java.util.Arrays;
import java.util.Set;

/**
 * One picture for the search of the best order. Minutes of the clock count from the start of the local day.
 *
 * @param spot     index of the place
 * @param minutes  of the picture, at least 1
 * @param priority 1 nice, 2 wanted, 3 must
 * @param pin      fixed start, minute; −1 for any on the grid
 * @param after    pictures that must not come later, with all that they wait for; no cycle
 * @param setUp    minutes to set up, once at the spot
 * @param lens     two pictures with different numbers have a change of lens between them
 * @param quality  of the light, 0 to 1, the mean over its duration: for a start at each step of the grid over the day,
 *                 {@link #TOO_DARK} where it is not to start; for a pin the one at the pin
 */
record Task(int spot, int minutes, int priority, int pin, Set<Integer> after, int setUp, int lens, double[] quality) {

    /** Step of the grid of starts, minutes. */
    static final int STEP = 5;
    static final int ANY = -1;
    static final double TOO_DARK = -1;
    static final int MUST = 3;

    /** One must outweighs all light, and light outweighs the number of pictures. */
    static final long A_MUST = 1L << 44;
    private static final long A_THOUSANDTH = 1L << 20;
    private static final long A_PICTURE = 1L << 10;

    boolean must() {
        return priority == MUST;
    }

    boolean pinned() {
        return pin != ANY;
    }

    /** Starts with an end within the visit, minutes. */
    int[] starts(int from, int to) {
        if (pinned()) {
            return pin >= from && pin + minutes <= to ? new int[] {pin} : new int[0];
        }
        int[] starts = new int[quality.length];
        int count = 0;
        for (int step = (Math.max(0, from) + STEP - 1) / STEP; step < quality.length && step * STEP + minutes <= to; step++) {
            if (quality[step] != TOO_DARK) {
                starts[count++] = step * STEP;
            }
        }
        return Arrays.copyOf(starts, count);
    }

    /** First start from a minute on; −1 for none. */
    int firstStart(int ready) {
        if (pinned()) {
            return pin >= ready ? pin : ANY;
        }
        for (int step = Math.floorDiv(ready + STEP - 1, STEP); step < quality.length; step++) {
            if (quality[step] != TOO_DARK) {
                return step * STEP;
            }
        }
        return ANY;
    }

    /** Quality of the light over its duration, for a possible start. */
    double qualityAt(int start) {
        return quality[pinned() ? 0 : start / STEP];
    }

    /**
     * Worth of a start. A sum of worths compares plans: first the number of musts, then the sum of priority
     * × quality, the quality to a thousandth, then the number of pictures, then the sum of priorities.
     */
    long worth(int start) {
        return (must() ? A_MUST : 0) + priority * Math.round(1000 * qualityAt(start)) * A_THOUSANDTH + A_PICTURE + priority;
    }

    Task shorterBy(int less) {
        return new Task(spot, minutes - less, priority, pin, after, setUp, lens, quality);
    }

    /** This picture without regard to light: it can also be taken in the dark. */
    Task inAnyLight() {
        return new Task(spot, minutes, priority, pin, after, setUp, lens, new double[quality.length]);
    }

    Task after(Set<Integer> others) {
        return new Task(spot, minutes, priority, pin, others, setUp, lens, quality);
    }
}
