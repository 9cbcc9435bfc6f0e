package understorey.season;

/**
 * A day expected of a year not yet seen: Student's t round a middle.
 *
 * @param day     the middle, in days of whatever scale the model was given
 * @param errorD  standard error of a new year, days
 * @param freedom degrees of freedom; infinite where the error is assumed and not estimated
 */
public record Prediction(double day, double errorD, double freedom) {

    /** Two ends, days. */
    public record Range(double low, double high) {
    }

    /** An error that nobody measured: the normal law. */
    static Prediction assumed(double day, double errorD) {
        return new Prediction(day, errorD, Double.POSITIVE_INFINITY);
    }

    /** The two-sided interval that holds a share {@code level} of new years: day ± t·error. */
    public Range range(double level) {
        double half = StudentT.twoSided(level, freedom) * errorD;
        return new Range(day - half, day + half);
    }

    /** Chance that it comes before a day, 0 to 1. */
    double chanceBefore(double other) {
        return errorD == 0 ? other > day ? 1 : 0 : StudentT.below((other - day) / errorD, freedom);
    }

    /** The same with one more source of error that does not hang together with the first, days. */
    Prediction with(double moreErrorD) {
        return new Prediction(day, Math.hypot(errorD, moreErrorD), freedom);
    }
}
