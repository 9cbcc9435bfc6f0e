package understorey.exposure;

import understorey.kit.LensFit;
import understorey.plan.Body;

/**
 * What moves while the shutter is open, and how long it may be open for it. Positive infinity where nothing moves
 * or nobody knows.
 *
 * @param handS  longest time that the hands, or a monopod in them, hold
 * @param stemsS longest time for stems at the worst moment of a gust
 * @param lulls  the wind drops often enough to wait for it
 */
record Motion(double handS, double stemsS, boolean lulls) {

    /** A mean wind at flower height in which lulls come, m/s: common practice, no source. */
    private static final double LULLS_BELOW_MS = 0.5;
    /** In a lull stems stand for four stops longer: common practice, no source. */
    private static final double LULL_TIMES = 16;
    /** A slow one of the measured herb stems (1 to 5 Hz, from memory). */
    private static final double STEM_HZ = 2;
    /** What a monopod is worth: common practice, no source. */
    private static final double MONOPOD_STOPS = 2;

    static Motion of(LensFit fit, Conditions conditions) {
        Double usual = conditions.usualWindMs();
        return new Motion(handS(fit), stemsS(fit, conditions.worstWindMs()), usual != null && usual <= LULLS_BELOW_MS);
    }

    private static double handS(LensFit fit) {
        if (fit.steady()) {
            return Double.POSITIVE_INFINITY;
        }
        Body body = fit.camera().body();
        double stops = Math.max(body.stabilisedStops(), fit.camera().lens().stabilisedStops())
                + (fit.support() == null ? 0 : MONOPOD_STOPS);
        return HandHeld.longestS(fit.focalMm(), fit.camera().sensor().crop() * fit.cropTimes(), stops);
    }

    private static double stemsS(LensFit fit, Double windMs) {
        return windMs == null ? Double.POSITIVE_INFINITY
                : StemSway.longestS(fit.circleOfConfusionMm(), STEM_HZ, StemSway.amplitudeMm(windMs),
                        fit.magnification());
    }

    /** Blur of stems on the sensor in a gust, mm; 0 when nobody knows the wind. */
    static double blurMm(LensFit fit, Conditions conditions, double seconds) {
        Double windMs = conditions.worstWindMs();
        return windMs == null ? 0
                : StemSway.blurMm(seconds, STEM_HZ, StemSway.amplitudeMm(windMs), fit.magnification());
    }

    /** Longest time for stems that may be waited for. */
    double patientS() {
        return lulls ? stemsS * LULL_TIMES : stemsS;
    }

    double longestS() {
        return Math.min(handS, patientS());
    }

    /** True when the stems set the limit, not the hands. */
    boolean byWind() {
        return patientS() < handS;
    }
}
