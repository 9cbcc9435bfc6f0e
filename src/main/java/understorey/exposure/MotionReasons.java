package understorey.exposure;

import java.util.Objects;
import understorey.advice.Advice;
import understorey.advice.MotionAdvice;
import understorey.kit.LensFit;

/** Why an ISO is what it is, and what hands and wind have to do with the time. */
final class MotionReasons {

    private final LensFit fit;
    private final Conditions conditions;
    private final Motion motion;

    MotionReasons(LensFit fit, Conditions conditions, Motion motion) {
        this.fit = fit;
        this.conditions = conditions;
        this.motion = motion;
    }

    /** The lowest does. */
    Advice base(int iso) {
        if (fit.steady()) {
            return new MotionAdvice.IsoBaseSteady(iso, support());
        }
        return byHand() ? new MotionAdvice.IsoBaseHandHeld(iso, fit.equivalentMm(), handS())
                : new MotionAdvice.IsoBaseMonopod(iso, support(), fit.equivalentMm(), handS());
    }

    /**
     * Raised for a time that somebody can wait for, or that the camera counts.
     *
     * @param lowestS that the lowest would take
     */
    Advice dark(int iso, double lowestS) {
        return fit.steady() && !fit.released() ? new MotionAdvice.IsoWithoutRelease(iso, lowestS, Reminders.LONGEST_MARKED_S)
                : new MotionAdvice.IsoForDark(iso, lowestS);
    }

    Advice hand(int iso, boolean tooSlow) {
        if (byHand()) {
            return tooSlow ? new MotionAdvice.HandTooSlow(iso, handS(), fit.equivalentMm())
                    : new MotionAdvice.IsoForHand(iso, handS(), fit.equivalentMm());
        }
        String monopod = support();
        return tooSlow ? new MotionAdvice.MonopodTooSlow(iso, handS(), monopod, fit.equivalentMm())
                : new MotionAdvice.IsoForMonopod(iso, monopod, handS(), fit.equivalentMm());
    }

    Advice wind(int iso, double seconds, boolean tooSlow) {
        double longestS = StopScale.nextShutterDownS(motion.patientS());
        if (tooSlow) {
            return new MotionAdvice.WindTooStrong(conditions.givenWindMs(), longestS, iso, nearestM(), motion.sway().times(seconds));
        }
        return motion.lulls() ? new MotionAdvice.IsoForLull(iso, conditions.givenWindMs(), longestS, nearestM())
                : new MotionAdvice.IsoForWind(iso, conditions.givenWindMs(), longestS, nearestM());
    }

    Advice still() {
        return new MotionAdvice.StemsStill(conditions.givenWindMs(), nearestM());
    }

    /**
     * A lull to wait for, and what to begin with for those who will not.
     *
     * @param seconds of that
     * @param smears  even so
     */
    Advice lull(double fNumber, int iso, double seconds, boolean smears) {
        double longestS = StopScale.nextShutterDownS(motion.stemsS());
        double markedS = StopScale.snapShutterS(seconds);
        return smears
                ? new MotionAdvice.WaitOrSmear(conditions.givenWindMs(), longestS, nearestM(), fNumber, iso, markedS,
                        motion.sway().times(seconds))
                : new MotionAdvice.WaitForLull(conditions.givenWindMs(), longestS, nearestM(), fNumber, iso, markedS);
    }

    private double nearestM() {
        return motion.sway().nearestM();
    }

    private double handS() {
        return StopScale.nextShutterDownS(motion.handS());
    }

    private String support() {
        return Objects.requireNonNull(fit.support(), "by hand").name();
    }

    private boolean byHand() {
        return fit.support() == null;
    }
}
