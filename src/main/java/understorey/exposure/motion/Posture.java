package understorey.exposure.motion;

import understorey.kit.LensFit;
import understorey.plan.Support;

/**
 * How a camera is held that nothing keeps still, with the rate at which it turns meanwhile, °/s. Rates are common practice, no
 * source: no measurement by posture was found, and people differ by a factor of two either way.
 */
public enum Posture {
    /** On a monopod. */
    BRACED(0.6),
    /** On one knee, an elbow on the other. */
    KNEELING(1.0),
    STANDING(1.7),
    /** Overhead, held out near the ground, or before the face as a phone is. */
    ARMS_OUT(3.0);

    /** Heights of the lens between which an eye at the viewfinder sees through it, m: common practice, no source. */
    private static final double ABOVE_THE_EYE_M = 1.75;
    private static final double KNEELING_BELOW_M = 1.2;
    private static final double HELD_OUT_BELOW_M = 0.5;

    private final double degPerS;

    Posture(double degPerS) {
        this.degPerS = degPerS;
    }

    /** The posture of a picture without legs under the camera. */
    public static Posture of(LensFit fit) {
        if (fit.support() != null && fit.support().kind() == Support.Kind.MONOPOD) {
            return BRACED;
        }
        if (fit.camera().lens().builtIn() || fit.heightM() > ABOVE_THE_EYE_M || fit.heightM() < HELD_OUT_BELOW_M) {
            return ARMS_OUT;
        }
        return fit.heightM() < KNEELING_BELOW_M ? KNEELING : STANDING;
    }

    double degPerS() {
        return degPerS;
    }
}
