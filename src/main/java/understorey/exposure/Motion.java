package understorey.exposure;

import org.jspecify.annotations.Nullable;
import understorey.exposure.motion.HandHeld;
import understorey.exposure.motion.Posture;
import understorey.exposure.motion.StemSway;
import understorey.kit.LensFit;
import understorey.optics.ThinLens;
import understorey.plan.Sharp;

/**
 * What moves while the shutter is open, and how long it may be open for it. Positive infinity where nothing moves.
 *
 * @param posture of the hands; null where something keeps the camera still
 * @param handS   longest time that the hands, or a monopod in them, hold
 * @param stemsS  longest time for stems at the worst moment of their swing in the mean wind; past what fits between gusts,
 *                in a gust
 * @param gustS   the same in a gust
 * @param calmS   longest time between gusts, as far as ISO may be raised freely for it
 * @param sway    of the stems in the mean wind
 */
record Motion(@Nullable Posture posture, double handS, double stemsS, double gustS, double calmS, Sway sway) {

    /**
     * How the stems smear at the nearest flowers that the picture shows sharp, which are the largest of them.
     *
     * @param nearestM      of those from the lens
     * @param magnification there
     * @param amplitudeMm   half the width of their swing
     * @param circleMm      the blur that still passes for sharp
     */
    record Sway(double nearestM, double magnification, double amplitudeMm, double circleMm) {

        double blurMm(double seconds) {
            return StemSway.blurMm(seconds, STEM_HZ, amplitudeMm, magnification);
        }

        /** Width of the swing of the stems, mm. */
        double swingMm() {
            return 2 * amplitudeMm;
        }

        /** Blur in times what passes for sharp. */
        double times(double seconds) {
            return blurMm(seconds) / circleMm;
        }

        /** Wind at flower height, m/s, in which the flowers stay sharp for a time. */
        double calmMs(double seconds) {
            double whole = StemSway.blurMm(seconds, STEM_HZ, 1, magnification);
            return StemSway.windMs(circleMm / whole);
        }

        private double longestS(double amplitudeMm) {
            return StemSway.longestS(circleMm, STEM_HZ, amplitudeMm, magnification);
        }
    }

    /**
     * Flowers in the field move at less than that for 94 % of their motion (hawkmoth flowers, J. Exp. Biol. 221, jeb193672);
     * cereals sway at 1.4 Hz in the mean (Plant Methods 2019, doi 10.1186/s13007-019-0437-5).
     */
    static final double STEM_HZ = 1.7;
    /** A longer frame cannot be kept clear of gusts: common practice, no source. */
    private static final double BETWEEN_GUSTS_S = 1;

    /**
     * The motion of a picture.
     *
     * @param stack null if one frame is taken
     */
    static Motion of(LensFit fit, Conditions conditions, @Nullable Stack stack) {
        Sway sway = sway(fit, StemSway.amplitudeMm(conditions.windMs()), stack);
        double gustS = sway.longestS(StemSway.amplitudeMm(conditions.gustMs()));
        double stemsS = Math.min(sway.longestS(sway.amplitudeMm()), Math.max(BETWEEN_GUSTS_S, gustS));
        Posture posture = fit.steady() ? null : Posture.of(fit);
        return new Motion(posture, posture == null ? Double.POSITIVE_INFINITY : handS(fit, posture), stemsS, gustS,
                gustS * Math.pow(2, conditions.pastGustStops()), sway);
    }

    /** At the nearest that is asked sharp, or at the nearest that lens and frames hold where they hold less. */
    private static Sway sway(LensFit fit, double amplitudeMm, @Nullable Stack stack) {
        double askedM = fit.intent().sharp() instanceof Sharp.Range range ? range.nearM()
                : fit.focusM() - ((Sharp.Depth) fit.intent().sharp()).depthM() / 2;
        double heldM = stack == null ? fit.depthOfField(fit.fNumberUseful(), fit.focusM() * 1000).nearMm() / 1000
                : stack.byRail() ? fit.focusM() : stack.firstM();
        // A thin lens forms no image of what is nearer than its focal length.
        double imagedM = Math.min(fit.focusM(), 2 * fit.actingFocalMm() / 1000);
        double nearestM = Math.max(imagedM, Math.max(askedM, heldM));
        return new Sway(nearestM, ThinLens.magnification(fit.actingFocalMm(), nearestM * 1000), amplitudeMm, fit.circleOfConfusionMm());
    }

    /** Longest shutter speed by hand, s, whatever holds the camera. */
    static double handS(LensFit fit, Posture posture) {
        return handS(fit, posture, Math.max(fit.camera().body().stabilisedStops(), fit.camera().lens().stabilisedStops()));
    }

    static double handS(LensFit fit, Posture posture, double stops) {
        return HandHeld.longestS(fit.circleOfConfusionMm(), fit.actingFocalMm(), fit.magnification(), posture, stops);
    }

    double longestS() {
        return Math.min(handS, stemsS);
    }

    /** True when the mean wind would allow a slower frame, which gusts do not. */
    boolean limitedByGusts() {
        return Math.min(stemsS, calmS) * Choice.TOLERANCE < sway.longestS(sway.amplitudeMm());
    }

    /** True when the stems set the limit, not the hands. */
    boolean byWind() {
        return stemsS < handS;
    }
}
