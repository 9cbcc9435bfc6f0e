package understorey.exposure;

import java.util.Objects;
import understorey.advice.Advice;
import understorey.advice.MotionAdvice;
import understorey.exposure.motion.Lull;
import understorey.exposure.motion.Lulls;
import understorey.exposure.motion.Posture;
import understorey.exposure.scale.StopScale;
import understorey.kit.LensFit;

/** Why an ISO is what it is, and what hands and wind have to do with the shutter speed. */
final class MotionReasons {

    private final LensFit fit;
    private final Conditions conditions;
    private final Motion motion;
    private final Choice choice;
    private final int iso;

    MotionReasons(LensFit fit, Conditions conditions, Motion motion, Choice choice) {
        this.fit = fit;
        this.conditions = conditions;
        this.motion = motion;
        this.choice = choice;
        this.iso = choice.iso();
    }

    /** The lowest does. */
    Advice base() {
        if (fit.steady()) {
            return choice.markedS() <= Motion.handS(fit, Posture.of(fit)) ? new MotionAdvice.IsoBase(iso)
                    : new MotionAdvice.IsoBaseSteady(iso, support());
        }
        return byHand() ? new MotionAdvice.IsoBaseHandHeld(iso, posture(), fit.equivalentMm(), handS())
                : new MotionAdvice.IsoBaseMonopod(iso, support(), fit.equivalentMm(), handS());
    }

    /** Raised for a frame that somebody can wait for, or that the camera times. */
    Advice dark() {
        return fit.steady() && !fit.released()
                ? new MotionAdvice.IsoWithoutRelease(iso, choice.lowestIsoS(), Reminders.LONGEST_MARKED_S)
                : new MotionAdvice.IsoForDark(iso, choice.lowestIsoS());
    }

    /** Raised for frames that are sharp more often. */
    Advice eased() {
        double neededS = StopScale.snapShutterS(choice.neededS());
        return fit.steady() ? new MotionAdvice.IsoForStillness(iso, neededS) : new MotionAdvice.IsoForSlowHands(iso, neededS);
    }

    Advice hand(boolean tooSlow) {
        if (byHand()) {
            return tooSlow ? new MotionAdvice.HandTooSlow(iso, posture(), handS(), fit.equivalentMm())
                    : new MotionAdvice.IsoForHand(iso, posture(), handS(), fit.equivalentMm());
        }
        String monopod = support();
        return tooSlow ? new MotionAdvice.MonopodTooSlow(iso, handS(), monopod, fit.equivalentMm())
                : new MotionAdvice.IsoForMonopod(iso, monopod, handS(), fit.equivalentMm());
    }

    Advice wind(boolean tooSlow) {
        double longestS = choice.about(motion.stemsS());
        if (!tooSlow && motion.limitedByGusts()) {
            return new MotionAdvice.IsoForGusts(iso, conditions.gustMs());
        }
        return tooSlow ? new MotionAdvice.WindTooStrong(conditions.windMs(), longestS, iso, nearestM(), motion.sway().times(choice.seconds()))
                : new MotionAdvice.IsoForWind(iso, conditions.windMs(), longestS, nearestM());
    }

    Advice still() {
        return new MotionAdvice.StemsStill(conditions.gustMs(), nearestM());
    }

    Advice lull(Lull lull) {
        return new MotionAdvice.InLull(lull.fNumber(), lull.shutterS(), lull.iso(), Lulls.LEFT, lull.share());
    }

    Advice gusts() {
        return new MotionAdvice.GustsBlur(conditions.gustMs(), StopScale.snapShutterS(motion.gustS()), Lulls.share(
                motion.sway().calmMs(choice.seconds()) / conditions.windMs(), Lulls.IN_A_WOOD));
    }

    private double nearestM() {
        return motion.sway().nearestM();
    }

    private double handS() {
        return choice.about(motion.handS());
    }

    private Posture posture() {
        return Objects.requireNonNull(motion.posture(), "steady");
    }

    private String support() {
        return Objects.requireNonNull(fit.support(), "by hand").name();
    }

    private boolean byHand() {
        return fit.support() == null;
    }
}
