package understorey.season.model;

import org.jspecify.annotations.Nullable;

/**
 * A straight line from the mean temperature of a fixed window of the year to the day of an event: y = a + b·x.
 * Least squares; standard theory (Draper and Smith, <em>Applied Regression Analysis</em>, from memory). Good within
 * the temperatures it was fitted to, and for the place they were measured at.
 *
 * @param n          years, at least 3
 * @param slope      b = Sxy/Sxx, days per °C; negative where warmth brings it forward
 * @param intercept  a = ȳ − b·x̄, days
 * @param deviation  s = √(Σ(y − a − b·x)² / (n − 2)), days
 * @param leftOutD   root mean square error, days, of each year against a line through the others: e/(1 − h),
 *                   h = 1/n + (x − x̄)²/Sxx
 * @param meanX      x̄, °C
 * @param sxx        Σ(x − x̄)², °C²
 * @param lowX       coldest window, °C
 * @param highX      warmest window, °C
 */
public record WindowModel(int n, double slope, double intercept, double deviation, double leftOutD, double meanX, double sxx, double lowX,
        double highX) {

    /**
     * The line through at least three years that differ in temperature; null if they do not.
     *
     * @param temperatures x, °C
     * @param days         y
     */
    static @Nullable WindowModel of(double[] temperatures, double[] days) {
        int n = days.length;
        double meanX = PlainMean.mean(temperatures);
        double meanY = PlainMean.mean(days);
        double sxx = 0;
        double sxy = 0;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < n; i++) {
            double x = temperatures[i] - meanX;
            sxx += x * x;
            sxy += x * (days[i] - meanY);
            low = Math.min(low, temperatures[i]);
            high = Math.max(high, temperatures[i]);
        }
        if (n < 3 || sxx < 1e-9) {
            return null;
        }
        double slope = sxy / sxx;
        double intercept = meanY - slope * meanX;
        double squares = 0;
        double[] errors = new double[n];
        for (int i = 0; i < n; i++) {
            double e = days[i] - intercept - slope * temperatures[i];
            squares += e * e;
            double h = 1.0 / n + (temperatures[i] - meanX) * (temperatures[i] - meanX) / sxx;
            errors[i] = h < 1 - 1e-12 ? e / (1 - h) : Double.POSITIVE_INFINITY;
        }
        double deviation = Math.sqrt(squares / (n - 2));
        return new WindowModel(n, slope, intercept, deviation, PlainMean.rootMeanSquare(errors), meanX, sxx, low, high);
    }

    /** Prediction for a new year with a window of x °C: s·√(1 + 1/n + (x − x̄)²/Sxx), n − 2 degrees of freedom. */
    Prediction at(double x) {
        double off = x - meanX;
        return new Prediction(intercept + slope * x, deviation * Math.sqrt(1 + 1.0 / n + off * off / sxx), n - 2);
    }

    /** Whether a temperature is within the range of the fit. */
    public boolean covers(double x) {
        return x >= lowX && x <= highX;
    }
}
