package understorey.season;

/**
 * How likely each day of a season is the peak: shares of whole days, half a year to either side of the anchor, which
 * sum to 1. What a model lays outside is folded into the days within.
 */
final class PeakChances {

    static final int HALF_YEAR = 182;
    private static final int DAYS = 2 * HALF_YEAR + 1;

    private final double[] share;

    private PeakChances(double[] share) {
        double sum = 0;
        for (double one : share) {
            sum += one;
        }
        for (int i = 0; i < share.length; i++) {
            share[i] /= sum;
        }
        this.share = share;
    }

    static PeakChances of(Prediction peak) {
        double[] share = new double[DAYS];
        double before = peak.chanceBefore(-HALF_YEAR - 0.5);
        for (int i = 0; i < DAYS; i++) {
            double by = peak.chanceBefore(i - HALF_YEAR + 0.5);
            share[i] = by - before;
            before = by;
        }
        return new PeakChances(share);
    }

    /** What they become once a stage was seen on a day: Bayes' rule, day by day. */
    PeakChances seen(Course course, understorey.plan.Season.Stage stage, int day) {
        double[] updated = new double[DAYS];
        for (int i = 0; i < DAYS; i++) {
            updated[i] = share[i] * course.likelihood(stage, day - (i - HALF_YEAR));
        }
        return new PeakChances(updated);
    }

    /** Chance that the peak comes before a point of time, days; within a day the chance is even. */
    double before(double day) {
        double at = day + 0.5 + HALF_YEAR;
        double sum = 0;
        for (int i = 0; i < DAYS && i < at; i++) {
            sum += share[i] * Math.min(1, at - i);
        }
        return sum;
    }

    /** Chance that the peak lies between two points of time, 0 to 1. */
    double between(double from, double to) {
        return Math.max(0, Math.min(1, before(to) - before(from)));
    }

    /** The point of time before which the peak comes with a chance of p. */
    double quantile(double p) {
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
