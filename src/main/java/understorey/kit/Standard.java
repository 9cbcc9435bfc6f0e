package understorey.kit;

import org.jspecify.annotations.Nullable;
import understorey.plan.Support;

/**
 * What a smaller bag has to match for a picture to be kept: the best that the whole bag does for it.
 *
 * <p>A picture is kept when the best lens in the smaller bag has no worse a verdict, and, where that is a compromise,
 * falls no more than half a stop further short; when the polariser asked for is on wherever the whole bag puts it on; and
 * when the camera is held as steadily and as high. Where the lens alone decides, legs would always stay at home.
 */
record Standard(LensFit whole) {

    /** A compromise may give way by so much more for a lighter bag, stops: common practice, no source. */
    private static final double GIVES_WAY = 0.5;
    /** Nobody sees from the picture that the camera stood a hand's breadth higher or lower: common practice, no source. */
    private static final double SAME_HEIGHT_M = 0.1;

    boolean metBy(Way way) {
        return way.verdict().compareTo(whole.verdict()) <= 0
                && (way.verdict() == Verdict.FITS || way.penalty() <= whole.penalty() + GIVES_WAY)
                && (way.polarised() || whole.filters().isEmpty());
    }

    /** Whether a support, or null for the hands, holds the camera as well. */
    boolean heldBy(@Nullable Support support, double heightM) {
        return Holding.steadiness(support) >= Holding.steadiness(whole.support())
                && Math.abs(heightM - whole.heightM()) <= SAME_HEIGHT_M;
    }

    /** Whether the hands do as well as what the whole bag has. */
    boolean handsWillDo() {
        return whole.support() == null;
    }
}
