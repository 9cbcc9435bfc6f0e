package understorey.season.model;

/**
 * The mean of past years, as the prediction of the next.
 *
 * @param n         years, at least 2
 * @param mean      ȳ, days
 * @param deviation s = √(Σ(y − ȳ)² / (n − 1)), days
 * @param leftOutD  root mean square error, days, of each year against the mean of the others: (y − ȳ)·n/(n − 1)
 */
public record PlainMean(int n, double mean, double deviation, double leftOutD) {

    /**
     * The mean of at least two years; standard theory (Draper and Smith, <em>Applied Regression Analysis</em>, from
     * memory).
     */
    public static PlainMean of(double[] days) {
        int n = days.length;
        double mean = mean(days);
        double squares = 0;
        double[] errors = new double[n];
        for (int i = 0; i < n; i++) {
            squares += (days[i] - mean) * (days[i] - mean);
            errors[i] = (days[i] - mean) * n / (n - 1);
        }
        return new PlainMean(n, mean, Math.sqrt(squares / (n - 1)), rootMeanSquare(errors));
    }

    /** A new year: ȳ with the standard error s·√(1 + 1/n), n − 1 degrees of freedom. */
    public Prediction next() {
        return new Prediction(mean, deviation * Math.sqrt(1 + 1.0 / n), n - 1);
    }

    static double rootMeanSquare(double[] errors) {
        double squares = 0;
        for (double error : errors) {
            squares += error * error;
        }
        return Math.sqrt(squares / errors.length);
    }

    public static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }
}
