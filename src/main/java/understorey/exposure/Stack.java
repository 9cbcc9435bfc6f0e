package understorey.exposure;

import org.jspecify.annotations.Nullable;
import understorey.exposure.motion.StemSway;
import understorey.kit.LensFit;
import understorey.optics.DepthOfField;
import understorey.optics.FocusStack;
import understorey.optics.ThinLens;
import understorey.plan.Sharp;

/**
 * Frames that hold together what none of them holds alone, the nearest first. Distances are metres from the lens, of
 * a rail from its place for a single frame.
 *
 * @param frames     2 or more
 * @param byRail     the camera moves on, its focus stays; else the focus moves
 * @param stepM      between the focus of one frame and of the next; null for a view, whose steps grow with distance
 * @param firstM     focus of the first frame, the nearest
 * @param lastM      focus of the last frame, the farthest
 * @param sharpFromM nearest sharp point of the first frame
 * @param sharpToM   farthest sharp point of the last frame; positive infinity for the horizon
 */
public record Stack(int frames, boolean byRail, @Nullable Double stepM, double firstM, double lastM, double sharpFromM,
                   double sharpToM) {

    /** Common practice, no source. */
    private static final double OVERLAP = 0.2;
    private static final double ROUNDING = 1e-6;
    /** Frames line up while the swing in a gust shifts the flower by so many circles of confusion: common practice, no source. */
    private static final double STILL_CIRCLES = 3;
    /** More than that nobody stacks in a wood, where light and air change meanwhile: common practice, no source. */
    private static final int MOST_FRAMES = 100;

    /** True when a lens whose focus can be set falls short of a depth that somebody asked for. */
    static boolean wanted(LensFit fit) {
        return !fit.depthIsProposed() && !fit.holdsDepth() && !fit.camera().lens().oneAperture();
    }

    boolean tooMany() {
        return frames > MOST_FRAMES;
    }

    /** True when no gust shifts the frames against each other. */
    static boolean still(LensFit fit, Conditions conditions) {
        double nearestMm = fit.intent().sharp() instanceof Sharp.Range range ? range.nearM() * 1000 : fit.distanceM() * 1000;
        double magnification = ThinLens.magnification(fit.actingFocalMm(), Math.max(nearestMm, 2 * fit.actingFocalMm()));
        return 2 * StemSway.amplitudeMm(conditions.gustMs()) * magnification < STILL_CIRCLES * fit.circleOfConfusionMm();
    }

    /**
     * The frames at an f-number as marked; null for a view that begins nearer than the lens focuses, and for a close-up
     * that one frame holds as far as the horizon.
     */
    static @Nullable Stack of(LensFit fit, double fNumber) {
        return fit.intent().sharp() instanceof Sharp.Range range ? ofView(fit, range, fNumber)
                : ofCloseUp(fit, ((Sharp.Depth) fit.intent().sharp()).depthM() * 1000, fNumber);
    }

    /**
     * Even steps in millimetres about the plane of focus. A rail under the camera makes them where the focus ring does
     * not go so near, or so far.
     */
    static @Nullable Stack ofCloseUp(LensFit fit, double depthMm, double fNumber) {
        double middleMm = fit.focusM() * 1000;
        double oneMm = fit.depthOfField(fNumber, middleMm).depthMm();
        if (Double.isInfinite(oneMm)) {
            return null;
        }
        int frames = FocusStack.frames(depthMm, oneMm, OVERLAP);
        double stepMm = FocusStack.step(oneMm, OVERLAP);
        double firstMm = middleMm - depthMm / 2 + oneMm / 2;
        double lastMm = Math.min(firstMm + (frames - 1) * stepMm, middleMm + depthMm / 2 - oneMm / 2);
        boolean byRail = firstMm < fit.nearestFocusM() * 1000 * (1 - ROUNDING)
                || lastMm > fit.farthestFocusM() * 1000 * (1 + ROUNDING);
        return new Stack(frames, byRail, stepMm / 1000, Math.max(0, firstMm) / 1000, lastMm / 1000,
                Math.max(0, firstMm - oneMm / 2) / 1000, (lastMm + oneMm / 2) / 1000);
    }

    /** Even steps in 1/distance. */
    private static @Nullable Stack ofView(LensFit fit, Sharp.Range range, double fNumber) {
        double nearMm = range.nearM() * 1000;
        double focalMm = fit.actingFocalMm();
        if (nearMm <= focalMm) {
            return null;
        }
        double one = fit.depthOfField(fNumber, nearMm).depthPerMm();
        double farthest = 1 / (range.farM() * 1000);
        int frames = FocusStack.frames(1 / nearMm - farthest, one, OVERLAP);
        double first = 1 / nearMm - one / 2;
        double last = Math.max(first - (frames - 1) * FocusStack.step(one, OVERLAP), farthest + one / 2);
        if (1 / first < fit.nearestFocusM() * 1000 * (1 - ROUNDING)) {
            return null;
        }
        DepthOfField nearest = fit.depthOfField(fNumber, 1 / first);
        DepthOfField furthest = fit.depthOfField(fNumber, 1 / last);
        return new Stack(frames, false, null, 1 / first / 1000, 1 / last / 1000, nearest.nearMm() / 1000,
                furthest.farMm() / 1000);
    }
}
