package understorey.order;

import java.util.Arrays;
import java.util.Set;
import understorey.light.Outlook.Grade;

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
 * @param value    of a start, 0 to 1, see {@link #value(double, double)}: for a start at each step of the grid over the day,
 *                 {@link #TOO_DARK} or {@link #NO_SETTING} where it is not to start; for a pin the one at the pin
 */
record Task(int spot, int minutes, int priority, int pin, Set<Integer> after, int setUp, int lens, double[] value) {

    /** Step of the grid of starts, minutes. */
    static final int STEP = 5;
    static final int ANY = -1;
    static final double TOO_DARK = -1;
    static final double NO_SETTING = -2;
    static final int MUST = 3;

    /** One must outweighs all light, and light outweighs the number of pictures. */
    static final long A_MUST = 1L << 44;
    static final long A_THOUSANDTH = 1L << 20;
    private static final long A_PICTURE = 1L << 10;

    /**
     * Price of a minute that is spent neither setting up nor photographing, in worth: 0.001. A grade more of a nice picture
     * pays for some four hours, of a must for twelve; a gain within one grade for about an hour (common practice, no source).
     */
    static final double IDLE_PRICE = 0.001;
    static final long AN_IDLE_MINUTE = Math.round(1000 * IDLE_PRICE) * A_THOUSANDTH;

    /**
     * Price of an hour of waiting between two pictures, in worth: 0.15. {@link LeftShift} asks it once the order is known:
     * an hour at a tripod is too long for a gain that hardly shows, or for one sky of three. Before the first picture a wait costs
     * no more than any idle minute, because it is a later arrival (common practice, no source).
     */
    static final double WAIT_PRICE = 0.15;
    /** Minutes from which a wait is a break away from the tripod, which costs no more. */
    static final int A_BREAK = 90;
    static final long A_WAITING_MINUTE = Math.round(1000 * WAIT_PRICE) * A_THOUSANDTH / 60;

    /**
     * Price of going to another spot for the next picture, in worth: 0.02, over the minutes of the walk. Packing up, walking and
     * finding the stand again must gain what can be seen (common practice, no source).
     */
    static final double MOVE_PRICE = 0.02;
    static final long A_MOVE = Math.round(1000 * MOVE_PRICE) * A_THOUSANDTH;

    /** A picture of priority 1 that gains no more looks the same: common practice, no source. */
    static final double LEAST_GAIN = 0.02;

    /** Quality of a time without the light that a picture wishes for: by day, and at dusk without a head torch. */
    static final double SUN_IS_UP = 0.02;
    static final double DUSK = 0.01;

    /** Worth of a picture of priority 1 in the dark, and where each grade begins (common practice, no source). */
    private static final double DARK = 0.2;
    private static final double POOR = 0.4;
    private static final double FAIR = 0.7;
    private static final double GOOD = 0.95;
    private static final double WITHIN_POOR = 0.05;
    private static final double WITHIN_FAIR = 0.05;
    private static final double WITHIN_GOOD = 0.125;

    /** Share of its worth that a picture keeps at the bottom of each grade of feasibility, and what it gains within one. */
    private static final double BLURRED = 0.4;
    private static final double WITHIN_BLURRED = 0.25;
    private static final double COMPROMISED = 0.75;
    private static final double WITHIN = 0.05;
    /** Among good settings too, the brighter and calmer hour counts more. */
    private static final double WITHIN_GOOD_HANDLING = 0.12;

    /** Minutes as steps of the grid, rounded up. */
    static int steps(int minute) {
        return Math.floorDiv(minute + STEP - 1, STEP);
    }

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
        int[] starts = new int[value.length];
        int count = 0;
        for (int step = (Math.max(0, from) + STEP - 1) / STEP; step < value.length && step * STEP + minutes <= to; step++) {
            if (value[step] >= 0) {
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
        for (int step = Math.floorDiv(ready + STEP - 1, STEP); step < value.length; step++) {
            if (value[step] >= 0) {
                return step * STEP;
            }
        }
        return ANY;
    }

    /**
     * The earliest start from a minute on that does not lose more worth than the price of waiting for the planned one. The first
     * possible start may lose what cannot be seen: a wait is only for a gain that shows.
     *
     * @param aMinute price of a minute of this wait
     */
    int goodEnough(int ready, int planned, long aMinute) {
        int first = pinned() ? planned : firstStart(ready);
        int start = first;
        while (worth(planned) - worth(start) > Math.max(start == first ? leastGain() : 0, Math.min(planned - start, A_BREAK) * aMinute)) {
            start = firstStart(start + 1);
        }
        return start;
    }

    /** Worth below which a gain of this picture does not show. */
    long leastGain() {
        return Math.round(1000 * LEAST_GAIN * priority) * A_THOUSANDTH;
    }

    /**
     * Worth of a start. A sum of worths compares plans: first the number of musts, then the sum of priority
     * × value, then the number of pictures, then the sum of priorities.
     */
    long worth(int start) {
        return (must() ? A_MUST : 0) + Math.round(1000 * gradedWorth(start)) * A_THOUSANDTH + A_PICTURE + priority;
    }

    /** Priority × value, to a thousandth of the value. */
    double gradedWorth(int start) {
        return priority * Math.round(1000 * value[pinned() ? 0 : start / STEP]) / 1000.0;
    }

    /** Value of a picture in light of a quality, and with a feasibility, both 0 to 1. */
    static double value(double quality, double feasibility) {
        return graded(quality) * handled(feasibility);
    }

    /**
     * Worth of a quality, 0.2 in the dark to 1, never falling. The step to the next grade counts most, so that a wait pays where
     * it raises the grade; any picture is worth more than none.
     */
    static double graded(double quality) {
        return switch (Grade.of(quality)) {
            case POOR -> DARK + (POOR - DARK) * Math.min(1, quality / SUN_IS_UP) + WITHIN_POOR * quality;
            case FAIR -> FAIR + WITHIN_FAIR * (quality - Grade.FAIR.least());
            case GOOD -> GOOD + WITHIN_GOOD * (quality - Grade.GOOD.least());
        };
    }

    /**
     * Share of its worth that a picture keeps if it can be taken so well, 0.4 to 1, never falling. Here too the step to the next
     * grade counts most (common practice, no source).
     */
    private static double handled(double feasibility) {
        return switch (Grade.of(feasibility)) {
            case POOR -> BLURRED + WITHIN_BLURRED * (feasibility / Grade.FAIR.least());
            case FAIR -> COMPROMISED + WITHIN * (feasibility - Grade.FAIR.least()) / (Grade.GOOD.least() - Grade.FAIR.least());
            case GOOD -> 1 - WITHIN_GOOD_HANDLING * (1 - feasibility) / (1 - Grade.GOOD.least());
        };
    }

    Task shorterBy(int less) {
        return new Task(spot, minutes - less, priority, pin, after, setUp, lens, value);
    }

    /** True if there is light enough within the visit, and no setting that succeeds in it. */
    boolean noSetting(int from, int to) {
        return Arrays.stream(value, steps(from), Math.min(value.length, steps(to))).anyMatch(worth -> worth == NO_SETTING);
    }

    /** This picture without regard to light: it can also be taken in the dark. */
    Task inAnyLight() {
        return new Task(spot, minutes, priority, pin, after, setUp, lens, new double[value.length]);
    }

    Task after(Set<Integer> others) {
        return new Task(spot, minutes, priority, pin, others, setUp, lens, value);
    }
}
