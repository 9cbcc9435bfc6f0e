package understorey.kit;

import org.jspecify.annotations.Nullable;
import understorey.plan.Support;

/**
 * Standard that a smaller bag has to match to keep a picture: the best that the whole bag does for it. Craft comes before
 * weight, so only cameras that an expert calls equal may replace each other.
 *
 * <p>A picture is kept when the best camera in the smaller bag has no worse a verdict and falls at most half a stop further
 * short; when it has the polariser wherever the whole bag has it; and when it is held as steadily and as high.
 */
record Standard(LensFit whole) {

    /** Heights within a hand's breadth give the same picture: common practice, no source. */
    private static final double SAME_HEIGHT_M = 0.1;

    boolean metBy(Way way) {
        return way.verdict().compareTo(whole.verdict()) <= 0
                && way.penalty() <= whole.penalty() + LensFit.EQUAL_STOPS
                && (way.polarised() || whole.filters().isEmpty());
    }

    /** Whether a support, or null for the hands, holds the camera as well. */
    boolean heldBy(@Nullable Support support, double heightM) {
        return Holding.steadiness(support) >= Holding.steadiness(whole.support())
                && Math.abs(heightM - whole.heightM()) <= SAME_HEIGHT_M;
    }
}
