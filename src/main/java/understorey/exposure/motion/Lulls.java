package understorey.exposure.motion;

import org.apache.commons.statistics.distribution.LogNormalDistribution;

/** How often the wind drops. */
public final class Lulls {

    /** Of the mean wind, what is left in a lull worth waiting for: common practice, no source. */
    public static final double LEFT = 0.25;
    /**
     * Turbulence intensity, standard deviation over mean, in the trunk space of a wood (Lee and Black 1993, old Douglas fir).
     * Open ground has about half of that, and lulls there are rarer.
     */
    public static final double IN_A_WOOD = 0.86;

    private Lulls() {
    }

    /**
     * Share of the time in which the wind is below r times its mean: log-normal wind speed, Φ((ln r + σ²/2) / σ) with
     * σ² = ln(1 + I²). A Weibull wind of the same intensity has up to 0.12 more.
     *
     * @param left      r, above 0
     * @param intensity I, above 0
     */
    public static double share(double left, double intensity) {
        double variance = Math.log(1 + intensity * intensity);
        return LogNormalDistribution.of(-variance / 2, Math.sqrt(variance)).cumulativeProbability(left);
    }
}
