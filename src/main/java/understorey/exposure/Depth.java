package understorey.exposure;

import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.DepthAdvice;
import understorey.advice.SetAdvice;
import understorey.exposure.scale.StopScale;
import understorey.kit.LensFit;

/** How the depth asked is held: in one frame or in several, and what the background does meanwhile. */
final class Depth {

    private Depth() {
    }

    /** The stack that would hold what one frame cannot; null if one frame is taken. */
    static @Nullable Stack stack(LensFit fit, Conditions conditions) {
        boolean allowed = !Boolean.FALSE.equals(fit.intent().shot().set().stacked());
        Double fNumber = fit.intent().shot().set().fNumber();
        return allowed && Stack.wanted(fit) && fit.steady() && Stack.still(fit, conditions)
                ? Stack.of(fit, fNumber == null ? Aperture.ofStack(fit).first() : fNumber) : null;
    }

    /** Adds that one frame is taken, since the stack would be of so many that nobody takes them. */
    static void addTooMany(List<Advice> reasons, Stack stack) {
        reasons.add(new DepthAdvice.OneFrameTooMany(stack.frames()));
    }

    /** Adds why frames are stacked, or are not though the depth asks for it. */
    static void add(List<Advice> reasons, LensFit fit, Conditions conditions, @Nullable Stack stack) {
        if (stack == null && Stack.wanted(fit)) {
            if (Boolean.FALSE.equals(fit.intent().shot().set().stacked())) {
                reasons.add(new SetAdvice.OneFrameSet());
            } else if (!fit.steady()) {
                reasons.add(new DepthAdvice.OneFrameByHand());
            } else if (!Stack.still(fit, conditions)) {
                reasons.add(new DepthAdvice.OneFrameInWind(conditions.gustMs()));
            }
        } else if (stack != null && stack.stepM() != null) {
            reasons.add(stack.byRail() ? new DepthAdvice.StackByRail(stack.frames(), stack.stepM())
                    : new DepthAdvice.Stack(stack.frames(), stack.stepM()));
        } else if (stack != null) {
            reasons.add(new DepthAdvice.StackView(stack.frames(), fit.fromSensorM(stack.firstM()), fit.fromSensorM(stack.lastM())));
        }
    }

    /** Adds how far the background melts, and how it would melt more. */
    static void add(List<Advice> reasons, LensFit fit, double fNumber, @Nullable Background background) {
        if (background == null) {
            return;
        }
        double open = fit.fNumberWidest();
        Background wideOpen = Background.of(fit, open);
        if (background.melts()) {
            reasons.add(new DepthAdvice.BackgroundMelts(Background.BEHIND_M, background.near()));
        } else if (fNumber > StopScale.nextFNumberUp(open) && wideOpen != null && wideOpen.differsFrom(background)) {
            reasons.add(new DepthAdvice.BackgroundShows(Background.BEHIND_M, background.near(), open, wideOpen.near()));
        } else {
            reasons.add(new DepthAdvice.BackgroundShowsWideOpen(Background.BEHIND_M, background.near()));
        }
    }
}
