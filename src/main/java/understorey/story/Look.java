package understorey.story;

import understorey.kit.Intent;
import understorey.kit.LensFit;
import understorey.plan.Frame;
import understorey.plan.Orientation;
import understorey.plan.Viewpoint;

/**
 * What makes one picture look unlike another: from how far and how high it is taken, how much the lens takes in, which way
 * it faces and which way up it is. The limits between the words are common practice, no source.
 *
 * @param distance null if unknown
 * @param view     null if unknown
 */
record Look(Distance distance, Height height, View view, Orientation orientation, Double facingDeg) {

    /** From the lens to what is framed: up to 1 m, up to 4 m, beyond. */
    enum Distance { CLOSE_UP, FROM_NEARBY, FROM_AFAR }

    /** Of the lens axis: up to 0.4 m, up to 1.1 m, above. */
    enum Height { FROM_THE_GROUND, FROM_KNEE_HEIGHT, FROM_EYE_LEVEL }

    /** Full-frame equivalent: up to 35 mm, up to 70 mm, above. */
    enum View { WIDE, NORMAL, LONG }

    private static final double CLOSE_M = 1;
    private static final double NEARBY_M = 4;
    private static final double GROUND_M = 0.4;
    private static final double KNEE_M = 1.1;
    private static final double WIDE_MM = 35;
    private static final double NORMAL_MM = 70;
    /** Facings nearer to each other than this look one way. */
    static final double ONE_WAY_DEG = 45;

    /** As the lens found would take it; as the author means it when there is none. */
    static Look of(Intent intent, LensFit fit) {
        Frame frame = intent.frame();
        Double distanceM = fit != null ? Double.valueOf(fit.distanceM()) : frame == null ? null : frame.distanceM();
        Double equivalentMm = fit != null ? Double.valueOf(fit.equivalentMm()) : intent.focalEquivalentMm();
        return new Look(distanceM == null ? null : distance(distanceM), fit != null ? height(fit.heightM()) : height(intent.viewpoint()),
                equivalentMm == null ? null : view(equivalentMm), intent.orientation(), intent.shot().facingDeg());
    }

    private static Distance distance(double metres) {
        return metres <= CLOSE_M ? Distance.CLOSE_UP : metres <= NEARBY_M ? Distance.FROM_NEARBY : Distance.FROM_AFAR;
    }

    private static Height height(double metres) {
        return metres <= GROUND_M ? Height.FROM_THE_GROUND : metres <= KNEE_M ? Height.FROM_KNEE_HEIGHT : Height.FROM_EYE_LEVEL;
    }

    private static Height height(Viewpoint viewpoint) {
        if (viewpoint instanceof Viewpoint.Height above) {
            return height(above.heightM());
        }
        return switch ((Viewpoint.Stance) viewpoint) {
            case STANDING -> Height.FROM_EYE_LEVEL;
            case KNEELING -> Height.FROM_KNEE_HEIGHT;
            case GROUND -> Height.FROM_THE_GROUND;
        };
    }

    private static View view(double equivalentMm) {
        return equivalentMm <= WIDE_MM ? View.WIDE : equivalentMm <= NORMAL_MM ? View.NORMAL : View.LONG;
    }

    /** In how many of the five ways they differ. */
    int unlike(Look other) {
        return (distance != other.distance ? 1 : 0) + (height != other.height ? 1 : 0) + (view != other.view ? 1 : 0)
                + (orientation != other.orientation ? 1 : 0) + (facesAsWell(other) ? 0 : 1);
    }

    private boolean facesAsWell(Look other) {
        if (facingDeg == null || other.facingDeg == null) {
            return facingDeg == null && other.facingDeg == null;
        }
        return Math.abs(Math.IEEEremainder(facingDeg - other.facingDeg, 360)) < ONE_WAY_DEG;
    }
}
