package understorey.season.model;

/**
 * Probability of each day of a season to be the peak: shares of whole days, half a year to either side of the anchor, with
 * the sum 1. The probability outside that range is scaled into it.
 */
public final class PeakChances {

    public static final int HALF_YEAR = 182;
    private static final int DAYS = 2 * HALF_YEAR + 1;
    private static final double UNLIKE_SHARE = 0.02;
    private static final double UNLIKE_D = 30;

    private final double[] share;
    /** Chance that the peak comes before each day. */
    private final double[] before;

    private PeakChances(double[] share) {
        double sum = 0;
        for (double one : share) {
            sum += one;
        }
        this.share = share;
        this.before = new double[share.length + 1];
        for (int i = 0; i < share.length; i++) {
            share[i] /= sum;
            before[i + 1] = before[i] + share[i];
        }
    }

    public static PeakChances of(Prediction peak) {
        double[] ends = new double[DAYS + 1];
        for (int i = 0; i <= DAYS; i++) {
            ends[i] = i - HALF_YEAR - 0.5;
        }
        double[] by = peak.chancesBefore(ends);
        double[] share = new double[DAYS];
        for (int i = 0; i < DAYS; i++) {
            share[i] = by[i + 1] - by[i];
        }
        return new PeakChances(share);
    }

    /** These chances before sightings count: one year in 50 is unlike all on record (an assumption). */
    public PeakChances doubted() {
        double[] mixed = of(Prediction.assumed(quantile(0.5), UNLIKE_D)).share;
        for (int i = 0; i < DAYS; i++) {
            mixed[i] = UNLIKE_SHARE * mixed[i] + (1 - UNLIKE_SHARE) * share[i];
        }
        return new PeakChances(mixed);
    }

    /** These chances after a sighting of a stage on a day: Bayes' rule, day by day. */
    public PeakChances seen(Course course, understorey.plan.Season.Stage stage, int day) {
        double[] updated = new double[DAYS];
        for (int i = 0; i < DAYS; i++) {
            updated[i] = share[i] * course.likelihood(stage, day - (i - HALF_YEAR));
        }
        return new PeakChances(updated);
    }

    /** Chance that the peak comes before a point of time, days; within a day the chance is even. */
    double before(double day) {
        double at = Math.max(0, Math.min(DAYS, day + 0.5 + HALF_YEAR));
        int whole = (int) at;
        return whole == DAYS ? before[DAYS] : before[whole] + share[whole] * (at - whole);
    }

    /** Chance that the peak lies between two points of time, 0 to 1. */
    public double between(double from, double to) {
        return Math.max(0, Math.min(1, before(to) - before(from)));
    }

    /** The point of time before which the peak comes with a chance of p. */
    public double quantile(double p) {
        double sum = 0;
        for (int i = 0; i < DAYS; i++) {
            if (sum + share[i] >= p) {
                return i - HALF_YEAR - 0.5 + (share[i] == 0 ? 0.5 : (p - sum) / share[i]);
            }
            sum += share[i];
        }
        return HALF_YEAR;
    }
}
