package understorey.exposure;

import static understorey.reason.Figure.Measure.COUNT;
import static understorey.reason.Figure.Measure.F_NUMBER;
import static understorey.reason.Figure.Measure.METRES;
import static understorey.reason.Figure.Measure.METRES_PER_SECOND;
import static understorey.reason.Figure.Measure.SHARE;

import java.util.List;
import understorey.kit.LensFit;
import understorey.reason.Reason;

/** How the depth asked is held: in one frame or in several, and what the background does meanwhile. */
final class Depth {

    private Depth() {
    }

    /** The stack that would hold what one frame cannot; null where one frame is taken. */
    static Stack stack(LensFit fit, Conditions conditions) {
        return Stack.wanted(fit) && fit.steady() && Stack.still(conditions)
                ? Stack.of(fit, Aperture.ofStack(fit).first()) : null;
    }

    /** Adds that one frame is taken, since the stack would be of so many that nobody takes them. */
    static void addTooMany(List<Reason> reasons, Stack stack) {
        reasons.add(Reason.of(ExposureReason.ONE_FRAME_TOO_MANY).with("frames", stack.frames(), COUNT));
    }

    /** Adds why frames are stacked, or are not though the depth asks for it. */
    static void add(List<Reason> reasons, LensFit fit, Conditions conditions, Stack stack) {
        if (stack == null && Stack.wanted(fit)) {
            if (!fit.steady()) {
                reasons.add(Reason.of(ExposureReason.ONE_FRAME_BY_HAND));
            } else if (!Stack.still(conditions)) {
                reasons.add(Reason.of(ExposureReason.ONE_FRAME_IN_WIND)
                        .with("wind", conditions.worstWindMs(), METRES_PER_SECOND));
            }
        } else if (stack != null && stack.stepM() != null) {
            reasons.add(Reason.of(stack.byRail() ? ExposureReason.STACK_BY_RAIL : ExposureReason.STACK).with("frames", stack.frames(), COUNT)
                    .with("step", stack.stepM(), METRES));
        } else if (stack != null) {
            reasons.add(Reason.of(ExposureReason.STACK_VIEW).with("frames", stack.frames(), COUNT)
                    .with("first", fit.fromSensorM(stack.firstM()), METRES)
                    .with("last", fit.fromSensorM(stack.lastM()), METRES));
        }
    }

    /** Adds how far the background melts, and how it would melt more. */
    static void add(List<Reason> reasons, LensFit fit, double fNumber, Background background) {
        if (background == null) {
            return;
        }
        double open = fit.fNumberWidest();
        if (background.melts()) {
            reasons.add(Reason.of(ExposureReason.BACKGROUND_MELTS).with("near", background.near(), SHARE));
        } else if (fNumber > StopScale.nextFNumberUp(open)) {
            reasons.add(Reason.of(ExposureReason.BACKGROUND_SHOWS).with("near", background.near(), SHARE)
                    .with("widest", open, F_NUMBER).with("open", Background.of(fit, open).near(), SHARE));
        } else {
            reasons.add(Reason.of(ExposureReason.BACKGROUND_SHOWS_WIDE_OPEN)
                    .with("near", background.near(), SHARE));
        }
    }
}
