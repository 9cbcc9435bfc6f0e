package understorey.exposure;

import java.util.List;
import understorey.advice.Advice;
import understorey.advice.ShutterAdvice;
import understorey.exposure.motion.Posture;
import understorey.kit.LensFit;

/** What takes light on its way, and how to let the shutter go. */
final class Reminders {

    /** Past a quarter of an hour a frame the light has changed before it ends: common practice, no source. */
    static final double LONGEST_SENSIBLE_S = 900;
    /** The longest time on a camera's own scale, s, and what it stands for. */
    static final double LONGEST_MARKED_S = 30;
    static final double LONGEST_COUNTED_S = 32;
    /** The shake of setting up, which a self-timer waits out, spoils times from a sixtieth to two seconds: common practice, no source. */
    private static final double SHAKE_FROM_S = 1 / 60.0;
    private static final double SHAKE_TO_S = 2;
    private static final double LEAST_STOPS = 1 / 6.0;
    /** At a quarter of what hands hold, a touch of the camera does not show: common practice, no source. */
    private static final double UNSHAKEN = 4;

    private Reminders() {
    }

    /**
     * Adds what there is to say of a time at an f-number, both as marked.
     *
     * @param awaitsLull the shutter is fired when the flowers stop, which a self-timer cannot wait for
     */
    static void add(List<Advice> reasons, LensFit fit, double fNumber, double seconds, boolean awaitsLull) {
        losses(reasons, fit, fNumber);
        if (seconds > LONGEST_SENSIBLE_S) {
            reasons.add(new ShutterAdvice.TooDark(seconds));
        } else if (fit.steady() && seconds > LONGEST_MARKED_S) {
            reasons.add(fit.released() ? new ShutterAdvice.Bulb(seconds) : new ShutterAdvice.BulbWithoutRelease(seconds));
        }
        if (Phone.is(fit)) {
            return;
        }
        boolean shakes = fit.steady() && shakes(fit, seconds);
        if (fit.steady() && (shakes || awaitsLull) && (fit.released() || seconds <= LONGEST_MARKED_S)) {
            reasons.add(fit.released() ? new ShutterAdvice.LetGoByRemote()
                    : awaitsLull ? new ShutterAdvice.LetGoByBurst() : new ShutterAdvice.LetGoByTimer());
        }
        if (shakes && fit.released() && seconds >= SHAKE_FROM_S && seconds <= SHAKE_TO_S) {
            reasons.add(new ShutterAdvice.SettleFirst());
        }
    }

    /** True when a press of the button shows: from a quarter on of what hands hold, on legs of what braced hands hold without a stabiliser. */
    static boolean shakes(LensFit fit, double seconds) {
        return seconds * UNSHAKEN >= (fit.steady() ? Motion.handS(fit, Posture.BRACED, 0) : Motion.handS(fit, Posture.of(fit)));
    }

    private static void losses(List<Advice> reasons, LensFit fit, double fNumber) {
        if (fit.lossStops() > 0) {
            reasons.add(new ShutterAdvice.FilterTakes(fit.lossStops()));
        }
        if (fit.closenessStops() >= LEAST_STOPS) {
            reasons.add(new ShutterAdvice.ClosenessTakes(fNumber, fit.workingFNumber(fNumber), fit.closenessStops()));
        }
    }
}
