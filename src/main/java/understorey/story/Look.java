package understorey.story;

import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import understorey.kit.Intent;
import understorey.kit.LensFit;
import understorey.plan.Frame;
import understorey.plan.Orientation;
import understorey.plan.Viewpoint;

/**
 * The look of a picture, to compare it with others: distance, height and angle of view, orientation and facing, and the
 * width of the frame, metres. The limits between the words are common practice, no source. A component is null if it is unknown.
 */
record Look(@Nullable Distance distance, Height height, @Nullable View view, Orientation orientation, @Nullable Double facingDeg,
            @Nullable Double frameWidthM) {

    /** Distance from the lens to the subject: up to 1 m, up to 4 m, beyond. */
    enum Distance { CLOSE_UP, FROM_NEARBY, FROM_AFAR }

    /** Height of the lens axis: up to 0.4 m, up to 1.1 m, above. */
    enum Height { FROM_THE_GROUND, FROM_KNEE_HEIGHT, FROM_EYE_LEVEL }

    /** Angle of view by full-frame equivalent: up to 35 mm, up to 70 mm, above. */
    enum View { WIDE, NORMAL, LONG }

    private static final double CLOSE_M = 1;
    private static final double NEARBY_M = 4;
    private static final double GROUND_M = 0.4;
    private static final double KNEE_M = 1.1;
    private static final double WIDE_MM = 35;
    private static final double NORMAL_MM = 70;
    private static final double ANOTHER_SCALE = 1.5;
    /** Facings nearer to each other than this count as one direction. */
    static final double ONE_WAY_DEG = 45;

    /** The look of a picture with its lens; without a lens, from what the author wrote. */
    static Look of(Intent intent, @Nullable LensFit fit) {
        Frame frame = intent.frame();
        Double distanceM = fit != null ? Double.valueOf(fit.distanceM()) : frame == null ? null : frame.distanceM();
        Double equivalentMm = fit != null ? Double.valueOf(fit.equivalentMm()) : intent.focalEquivalentMm();
        return new Look(distanceM == null ? null : distance(distanceM), fit != null ? height(fit.heightM()) : height(intent.viewpoint()),
                equivalentMm == null ? null : view(equivalentMm), intent.orientation(), intent.shot().facingDeg(),
                fit != null ? Double.valueOf(fit.frameWidthM()) : frame == null ? null : frame.widthM());
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

    /** The views that a lens has between its ends. */
    static Stream<View> views(LensFit fit) {
        double crop = fit.camera().sensor().crop();
        return Stream.of(view(fit.camera().lens().shortestMm() * crop), view(fit.camera().lens().longestMm() * crop));
    }

    private static View view(double equivalentMm) {
        return equivalentMm <= WIDE_MM ? View.WIDE : equivalentMm <= NORMAL_MM ? View.NORMAL : View.LONG;
    }

    /** True where both show their subject at about one scale: a picture half as wide again looks different. */
    boolean scaledAs(Look other) {
        return frameWidthM == null || other.frameWidthM == null
                || Math.max(frameWidthM, other.frameWidthM) < ANOTHER_SCALE * Math.min(frameWidthM, other.frameWidthM);
    }

    /** Number of words in which two looks differ, 0 to 5. */
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
