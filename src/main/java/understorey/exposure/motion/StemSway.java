package understorey.exposure.motion;

import understorey.light.illuminance.CanopyLight;

/**
 * Flowers in the wind: how much of it reaches them, how far it bends them, how that smears on the sensor.
 *
 * <p>The stem is a sine of one frequency and amplitude, seen from the side and at the worst moment, in the
 * middle of its swing. At the ends of the swing it stands still, so waiting for a lull does better.
 */
public final class StemSway {

    /** Roughness length of a forest floor, m, and the height from which wind falls off by it (Lee and Black 1993). */
    private static final double ROUGHNESS_M = 0.012;
    private static final double TRUNK_SPACE_M = 2;
    private static final double LOWEST_M = 0.1;
    private static final double LIGHT_AIR_MS = 0.3;
    private static final double SWAY_IN_LIGHT_AIR_MM = 2;
    /** From 2 mm where light air begins to 20 mm where light breeze ends. */
    private static final double SWAY_PER_MS_MM = (20 - SWAY_IN_LIGHT_AIR_MM) / (3.3 - LIGHT_AIR_MS);

    private StemSway() {
    }

    /**
     * Wind at the height of the flowers, m/s, from the wind at 10 m in the open (a gust for a gust). At 2 m it is
     * that of {@link WindUnderTrees}. From there down it is the logarithmic profile of a forest floor, u(z) ∝ ln(z / 12 mm), valid
     * from 0.1 m to 2 m (Lee and Black 1993).
     *
     * @param canopy  trees at the place
     * @param heightM of the flowers above the ground
     */
    public static double windAtFlowersMs(double wind10Ms, CanopyLight canopy, double heightM) {
        double z = Math.max(LOWEST_M, Math.min(TRUNK_SPACE_M, heightM));
        double profile = Math.log(z / ROUGHNESS_M) / Math.log(TRUNK_SPACE_M / ROUGHNESS_M);
        return wind10Ms * WindUnderTrees.shareAt2M(canopy) * profile;
    }

    /**
     * Half the width of a stem's swing, mm, in a wind at its own height, m/s: 2 mm where light air begins (Beaufort 1, 0.3 m/s),
     * 20 mm where light breeze ends (Beaufort 2, 3.3 m/s), a straight line between and beyond. Below it goes with the square of
     * the wind, as drag does: in a calm (Beaufort 0) leaves do not move. Common practice, no source; a stiff short stem does less,
     * a long one with a heavy head more, by a factor of two or three. A cantilever like a bluebell's stem (25 cm, 4 mm, stiffness
     * from memory) that sways by 2·I of its lean agrees to a factor of two from 1 m/s to 2 m/s. Below it sways much less, because
     * its resonance is left out.
     */
    public static double amplitudeMm(double windAtFlowersMs) {
        return windAtFlowersMs < LIGHT_AIR_MS ? SWAY_IN_LIGHT_AIR_MM * Math.pow(windAtFlowersMs / LIGHT_AIR_MS, 2)
                : SWAY_IN_LIGHT_AIR_MM + SWAY_PER_MS_MM * (windAtFlowersMs - LIGHT_AIR_MS);
    }

    /** Wind at flower height, m/s, that sways a stem by half a swing, mm: the inverse of {@link #amplitudeMm}. */
    public static double windMs(double amplitudeMm) {
        return amplitudeMm < SWAY_IN_LIGHT_AIR_MM ? LIGHT_AIR_MS * Math.sqrt(amplitudeMm / SWAY_IN_LIGHT_AIR_MM)
                : LIGHT_AIR_MS + (amplitudeMm - SWAY_IN_LIGHT_AIR_MM) / SWAY_PER_MS_MM;
    }

    /**
     * Blur on the sensor, mm, of an exposure centred on the middle of the swing: 2·A·m·sin(π·f·t) up to half a
     * period, the whole swing 2·A·m beyond. Follows from the sine A·sin(2π·f·t); for short times 2π·f·A·m·t,
     * peak speed × time.
     */
    public static double blurMm(double exposureS, double frequencyHz, double amplitudeMm, double magnification) {
        double swingMm = 2 * amplitudeMm * magnification;
        double halfPeriods = 2 * frequencyHz * exposureS;
        return halfPeriods >= 1 ? swingMm : swingMm * Math.sin(Math.PI / 2 * halfPeriods);
    }

    /**
     * Longest exposure, seconds, whose {@link #blurMm} is no more than this: asin(c / (2·A·m)) / (π·f).
     * Positive infinity when the whole swing stays within the blur.
     */
    public static double longestS(double blurMm, double frequencyHz, double amplitudeMm, double magnification) {
        double swingMm = 2 * amplitudeMm * magnification;
        return swingMm <= blurMm ? Double.POSITIVE_INFINITY
                : Math.asin(blurMm / swingMm) / (Math.PI * frequencyHz);
    }
}
