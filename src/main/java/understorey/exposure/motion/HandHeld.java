package understorey.exposure.motion;

/** How long hands hold a camera still. */
public final class HandHeld {

    /** A stabiliser corrects no slow drift and no step aside, whatever it is sold for: common practice, no source. */
    private static final double MOST_STOPS = 4;
    private static final double LONGEST_S = 1 / 4.0;
    /** Distance from the lens to the hands, about which the camera turns and moves aside: common practice, no source. */
    private static final double HANDS_TO_LENS_MM = 100;

    private HandHeld() {
    }

    /**
     * Longest hand-held exposure, seconds, at most a quarter of a second: t = c / (ω·(f·(1 + m) / 2^s + m·r)). The image moves by
     * image distance × turn, and by magnification × step aside, of which a stabiliser (pitch and yaw only, ISO 20954-1)
     * takes the first. Within a factor of two, as the postures are.
     *
     * @param circleMm        blur that still passes for sharp, c
     * @param focalMm         f
     * @param magnification   m; 0 for a far view
     * @param posture         with its rate, ω
     * @param stabilisedStops of body and lens together, s; beyond 4 it counts as 4
     */
    public static double longestS(double circleMm, double focalMm, double magnification, Posture posture, double stabilisedStops) {
        double turned = focalMm * (1 + magnification) / Math.pow(2, Math.min(MOST_STOPS, stabilisedStops));
        double moved = magnification * HANDS_TO_LENS_MM;
        return Math.min(LONGEST_S, circleMm / (Math.toRadians(posture.degPerS()) * (turned + moved)));
    }
}
