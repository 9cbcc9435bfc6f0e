package understorey.exposure;

import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.DepthAdvice;
import understorey.advice.HelpAdvice;
import understorey.kit.LensFit;
import understorey.optics.Sharpness;
import understorey.plan.Sharp;

/**
 * The depth of a flower against what one frame holds of it, in a close-up whose author asks for no depth of field. A flower is
 * taken to be half as deep as it is wide: common practice, no source.
 *
 * @param fit     of the close-up
 * @param fNumber as marked
 * @param flowerM depth of the flower, or of the part of it that the frame shows
 * @param heldM   depth of field of one frame
 */
record FlowerDepth(LensFit fit, double fNumber, double flowerM, double heldM) {

    /** Magnification from which one speaks of a close-up: common practice, no source. */
    private static final double CLOSE_UP = 0.1;
    private static final double DEPTH_OF_WIDTH = 0.5;
    /** With less of its depth only a slice of the flower is sharp: common practice, no source. */
    private static final double SLICE = 1 / 8.0;
    /** A frame that is less than a twentieth wider looks the same: common practice, no source. */
    private static final double WORTH_WIDENING = 1.05;

    /** Null for a view, for a depth that the author asks for, for an unknown flower, and where one frame holds it all. */
    static @Nullable FlowerDepth of(LensFit fit, double fNumber) {
        Double widthMm = fit.flowerWidthMm();
        if (widthMm == null || !fit.depthIsProposed() || !(fit.intent().sharp() instanceof Sharp.Depth)
                || fit.magnification() * fit.cropTimes() * fit.camera().sensor().crop() < CLOSE_UP) {
            return null;
        }
        double shownMm = Math.min(widthMm, 1000 * Math.min(fit.frameWidthM(), fit.frameHeightM()));
        double heldM = fit.depthOfField(fNumber, fit.focusM() * 1000).depthMm() / 1000;
        double flowerM = DEPTH_OF_WIDTH * shownMm / 1000;
        return heldM >= flowerM ? null : new FlowerDepth(fit, fNumber, flowerM, heldM);
    }

    /** True where a frame that is visibly wider would hold more of the flower than a slice. */
    boolean slice() {
        return wideEnoughM() > WORTH_WIDENING * fit.frameWidthM();
    }

    /** Adds how the depth compares, and what would hold more; true where the picture is a compromise. */
    boolean add(List<Advice> reasons, List<Advice> helps, Conditions conditions) {
        Stack stack = stack();
        if (stack != null && fit.steady() && Stack.still(fit, conditions)) {
            reasons.add(new DepthAdvice.FlowerByStack(heldM, flowerM, stack.frames(), Aperture.ofStack(fit).first()));
            return false;
        }
        reasons.add(slice() ? new DepthAdvice.FlowerSliced(heldM, flowerM) : new DepthAdvice.FlowerDeeper(heldM, flowerM));
        if (slice()) {
            helps.add(new HelpAdvice.HelpFrameWider(wideEnoughM()));
            if (stack != null) {
                helps.add(new HelpAdvice.HelpStack(stack.frames()));
            }
        }
        return slice();
    }

    /** The focus stack that holds the flower; null for a lens of one aperture, whose focus is not set by hand. */
    private @Nullable Stack stack() {
        Stack stack = fit.camera().lens().oneAperture() ? null
                : Stack.ofCloseUp(fit, flowerM * 1000, Aperture.ofStack(fit).first());
        return stack == null || stack.tooMany() ? null : stack;
    }

    /** Width of the frame whose depth of field at this aperture is no slice. */
    private double wideEnoughM() {
        double magnification = Sharpness.magnificationForDepth(SLICE * flowerM * 1000, fNumber / fit.closeUpTimes(),
                fit.circleOfConfusionMm());
        return fit.usedWidthMm() / magnification / 1000;
    }
}
