package understorey.season.model;

/**
 * Predicted day of an event in a new year: Student's t around a middle.
 *
 * @param day     the middle, on the scale of days of the model
 * @param errorD  standard error of a new year, days
 * @param freedom degrees of freedom; infinite if the error is assumed and not estimated
 */
public record Prediction(double day, double errorD, double freedom) {

    /** Two ends, days. */
    public record Range(double low, double high) {
    }

    /** A prediction with an assumed error: the normal distribution. */
    public static Prediction assumed(double day, double errorD) {
        return new Prediction(day, errorD, Double.POSITIVE_INFINITY);
    }

    /** The two-sided interval that holds a share {@code level} of new years: day ± t·error. */
    public Range range(double level) {
        double half = StudentT.of(freedom).twoSided(level) * errorD;
        return new Range(day - half, day + half);
    }

    /** Chance that it comes before each of some days, 0 to 1. */
    double[] chancesBefore(double[] days) {
        StudentT law = StudentT.of(freedom);
        double[] chances = new double[days.length];
        for (int i = 0; i < days.length; i++) {
            chances[i] = errorD == 0 ? days[i] > day ? 1 : 0 : law.below((days[i] - day) / errorD);
        }
        return chances;
    }

    /** This prediction some days later; earlier if {@code days} is below 0. */
    Prediction later(double days) {
        return new Prediction(day + days, errorD, freedom);
    }

    /** This prediction with at least that error, days. */
    public Prediction noSurerThan(double leastErrorD) {
        return new Prediction(day, Math.max(errorD, leastErrorD), freedom);
    }

    /** This prediction with one more, independent error, days. */
    public Prediction with(double moreErrorD) {
        return new Prediction(day, Math.hypot(errorD, moreErrorD), freedom);
    }
}
