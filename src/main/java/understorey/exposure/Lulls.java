package understorey.exposure;

/** How often the wind drops. */
final class Lulls {

    /** Of the mean wind, what is left in a lull worth waiting for: common practice, no source. */
    static final double LEFT = 0.25;
    /**
     * Turbulence intensity, standard deviation over mean, in the trunk space of a wood (Lee and Black 1993, old Douglas fir).
     * Open ground has about half of that, and lulls there are rarer.
     */
    static final double IN_A_WOOD = 0.86;

    private static final double STEP = 1e-3;

    private Lulls() {
    }

    /**
     * Share of the time in which the wind is below r times its mean: log-normal wind speed, Φ((ln r + σ²/2) / σ) with
     * σ² = ln(1 + I²). A Weibull wind of the same intensity has up to 0.12 more.
     *
     * @param left      r, above 0
     * @param intensity I, above 0
     */
    static double share(double left, double intensity) {
        double variance = Math.log(1 + intensity * intensity);
        return normal((Math.log(left) + variance / 2) / Math.sqrt(variance));
    }

    /** Φ by Simpson's rule from the middle; within 1e-9 for |x| below 6. */
    private static double normal(double x) {
        int steps = 2 * (int) Math.ceil(Math.abs(x) / STEP / 2);
        double step = steps == 0 ? 0 : x / steps;
        double sum = 0;
        for (int i = 0; i <= steps; i++) {
            double at = i * step;
            sum += (i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2) * Math.exp(-at * at / 2);
        }
        return 0.5 + sum * step / 3 / Math.sqrt(2 * Math.PI);
    }
}
