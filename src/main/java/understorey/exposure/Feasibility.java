package understorey.exposure;

import understorey.exposure.motion.MotionBlur;
import understorey.exposure.scale.StopScale;
import understorey.kit.Verdict;

/**
 * How well a picture can be taken with its settings: 1 without a compromise, and each stop of one costs a factor. Monotone in
 * every fact of {@link Settings} that it reads; the factors are common practice, no source.
 */
public final class Feasibility {

    /** Noise begins to show beyond this. */
    private static final double CLEAN_ISO = 400;
    private static final double PER_ISO_STOP = 0.85;
    /** A blurred flower is lost sooner than a noisy one. */
    private static final double PER_MOTION_STOP = 0.5;
    private static final double PER_DEPTH_STOP = 0.8;
    /** Frames between the gusts are sharp, but fewer of them. */
    private static final double PER_GUST_STOP = 0.9;
    /** Several frames must be lined up later, and nothing may move between them. */
    private static final double BRACKETED = 0.95;
    /** A stack that takes longer finds less still air; each doubling costs that much. */
    private static final double SHORT_STACK_S = 4;
    private static final double PER_STACK_DOUBLING = 0.9;
    /** Clipped highlights cannot be recovered. */
    private static final double TOO_BRIGHT = 0.5;

    private Feasibility() {
    }

    /** Feasibility of settings, 0 to 1: 0 if no frame can succeed. */
    public static double of(Settings settings) {
        if (settings.tooDark() || settings.verdict() == Verdict.CANNOT) {
            return 0;
        }
        return Math.pow(PER_ISO_STOP, Math.max(0, StopScale.log2(settings.iso() / CLEAN_ISO)))
                * Math.pow(PER_MOTION_STOP, settings.motionStops())
                * Math.pow(PER_GUST_STOP, gustStops(settings))
                * Math.pow(PER_DEPTH_STOP, settings.depthStops())
                * Math.pow(PER_STACK_DOUBLING, stackDoublings(settings))
                * (settings.bracketStops().size() > 1 ? BRACKETED : 1)
                * (settings.limits().contains(Settings.Limit.BRIGHT) ? TOO_BRIGHT : 1);
    }

    private static double stackDoublings(Settings settings) {
        double totalS = settings.stackFrames() * settings.shutterS();
        return settings.stack() == null ? 0 : Math.max(0, StopScale.log2(totalS / SHORT_STACK_S));
    }

    /** Stops by which the shutter speed misses what a gust allows. */
    private static double gustStops(Settings settings) {
        MotionBlur blur = settings.motionBlur();
        return blur == null || blur.degree() != MotionBlur.Degree.IN_GUSTS ? 0
                : Math.max(0, StopScale.log2(settings.shutterS() / blur.longestS()));
    }
}
