package understorey.exposure;

import org.jspecify.annotations.Nullable;
import understorey.kit.LensFit;
import understorey.optics.ThinLens;
import understorey.plan.Body;
import understorey.plan.Sharp;

/**
 * What moves while the shutter is open, and how long it may be open for it. Positive infinity where nothing moves
 * or nobody knows.
 *
 * @param handS  longest time that the hands, or a monopod in them, hold
 * @param stemsS longest time for stems at the worst moment of a gust
 * @param lulls  the wind drops often enough to wait for it
 * @param sway   of the stems
 */
record Motion(double handS, double stemsS, boolean lulls, Sway sway) {

    /**
     * How the stems smear at the nearest flowers that the picture shows sharp, which are the largest of them.
     *
     * @param nearestM      of those from the lens
     * @param magnification there
     * @param amplitudeMm   in a gust; 0 when nobody knows the wind
     * @param circleMm      the blur that still passes for sharp
     */
    record Sway(double nearestM, double magnification, double amplitudeMm, double circleMm) {

        double blurMm(double seconds) {
            return StemSway.blurMm(seconds, STEM_HZ, amplitudeMm, magnification);
        }

        /** Blur in times what passes for sharp. */
        double times(double seconds) {
            return blurMm(seconds) / circleMm;
        }
    }

    /** A mean wind at flower height in which lulls come, m/s: common practice, no source. */
    private static final double LULLS_BELOW_MS = 0.5;
    /** In a lull stems stand for four stops longer: common practice, no source. */
    private static final double LULL_TIMES = 16;
    /** A slow one of the measured herb stems (1 to 5 Hz, from memory). */
    private static final double STEM_HZ = 2;
    /** What a monopod is worth: common practice, no source. */
    private static final double MONOPOD_STOPS = 2;

    /**
     * The motion of a picture.
     *
     * @param stack null if one frame is taken
     */
    static Motion of(LensFit fit, Conditions conditions, @Nullable Stack stack) {
        Double usual = conditions.usualWindMs();
        Sway sway = sway(fit, conditions.worstWindMs(), stack);
        double stemsS = StemSway.longestS(sway.circleMm(), STEM_HZ, sway.amplitudeMm(), sway.magnification());
        return new Motion(handS(fit), stemsS, usual != null && usual <= LULLS_BELOW_MS, sway);
    }

    /** At the nearest that is asked sharp, or at the nearest that lens and frames hold where they hold less. */
    private static Sway sway(LensFit fit, @Nullable Double windMs, @Nullable Stack stack) {
        double askedM = fit.intent().sharp() instanceof Sharp.Range range ? range.nearM()
                : fit.focusM() - ((Sharp.Depth) fit.intent().sharp()).depthM() / 2;
        double heldM = stack == null ? fit.depthOfField(fit.fNumberUseful(), fit.focusM() * 1000).nearMm() / 1000
                : stack.byRail() ? fit.focusM() : stack.firstM();
        // A thin lens forms no image of what is nearer than its focal length.
        double imagedM = Math.min(fit.focusM(), 2 * fit.actingFocalMm() / 1000);
        double nearestM = Math.max(imagedM, Math.max(askedM, heldM));
        return new Sway(nearestM, ThinLens.magnification(fit.actingFocalMm(), nearestM * 1000),
                windMs == null ? 0 : StemSway.amplitudeMm(windMs), fit.circleOfConfusionMm());
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
