package understorey.season.model;

import org.jspecify.annotations.Nullable;

/**
 * Model of an event that comes when the sum of warmth since a fixed day is large enough.
 *
 * @param n        years
 * @param required the mean over years of the sum reached on the day of the event, °C·d
 * @param rmseD    root mean square error of the years it was fitted to, days
 * @param leftOutD of each year by the mean sum of the others, days
 */
public record ThermalTime(DegreeDays degreeDays, int n, double required, double rmseD, double leftOutD) {

    /**
     * The model fitted to past years; null if one of them lacks days that it needs, or never reaches the sum.
     *
     * @param means the temperatures of each year, on the scale of its event
     * @param days  of the event; the sum is read on the nearest whole day, half rounded up
     */
    static @Nullable ThermalTime of(DegreeDays degreeDays, DailyMeans[] means, double[] days) {
        int n = days.length;
        double[] sums = new double[n];
        for (int i = 0; i < n; i++) {
            sums[i] = degreeDays.sumTo(wholeDay(days[i]), means[i]);
        }
        double required = PlainMean.mean(sums);
        if (n < 2 || !(required > 0)) {
            return null;
        }
        double[] errors = new double[n];
        double[] leftOut = new double[n];
        for (int i = 0; i < n; i++) {
            Integer day = degreeDays.dayReaching(required, means[i]);
            Integer without = degreeDays.dayReaching((required * n - sums[i]) / (n - 1), means[i]);
            if (day == null || without == null) {
                return null;
            }
            errors[i] = days[i] - day;
            leftOut[i] = days[i] - without;
        }
        return new ThermalTime(degreeDays, n, required, PlainMean.rootMeanSquare(errors), PlainMean.rootMeanSquare(leftOut));
    }

    /** The nearest whole day, half rounded up. */
    static int wholeDay(double day) {
        return (int) Math.floor(day + 0.5);
    }

    /**
     * Prediction for a new year with known or expected temperatures: the first day that reaches the sum; null if no day
     * does. The error is that of the years left out, √(Σe²/(n − 1)), with n − 1 degrees of freedom: an assumption, because
     * the model has no closed form.
     */
    @Nullable Prediction next(DailyMeans means) {
        Integer day = degreeDays.dayReaching(required, means);
        return day == null ? null
                : new Prediction(day, leftOutD * Math.sqrt(n / (n - 1.0)), n - 1);
    }
}
