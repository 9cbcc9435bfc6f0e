package understorey.exposure;

import java.util.List;
import java.util.Objects;
import understorey.advice.Advice;
import understorey.advice.SetAdvice;
import understorey.exposure.scale.StopScale;
import understorey.kit.LensFit;
import understorey.kit.Verdict;
import understorey.plan.Body;
import understorey.plan.CameraSettings;
import understorey.plan.Lens;

/** Judges what the author sets on the camera: kept, and named where it costs something. */
final class SetReasons {

    /** A RAW frame gives back one stop of highlights and three of shadows, no more: common practice, no source. */
    private static final double HIGHLIGHTS_STOPS = 1;
    private static final double SHADOWS_STOPS = 3;
    /** A set f-number that is a marking of the lens may differ from it by its rounding. */
    private static final double MARKING = 1.03;

    private final List<Advice> reasons;
    private final LensFit fit;
    private final CameraSettings set;
    private final Choice choice;
    private Verdict verdict = Verdict.FITS;

    private SetReasons(List<Advice> reasons, LensFit fit, Choice choice) {
        this.reasons = reasons;
        this.fit = fit;
        this.set = fit.intent().shot().set();
        this.choice = choice;
    }

    /** Adds which of ISO and shutter speed are the author's, and which follows from them. */
    static void add(List<Advice> reasons, CameraSettings set, Choice choice) {
        if (set.shutterS() != null) {
            reasons.add(new SetAdvice.ShutterSet(set.shutterS()));
        }
        reasons.add(set.iso() != null ? new SetAdvice.IsoSet(set.iso())
                : new SetAdvice.IsoForShutterSet(choice.iso(), Objects.requireNonNull(set.shutterS())));
    }

    /** Adds what speaks against them; how much it costs the picture. */
    static Verdict judge(List<Advice> reasons, LensFit fit, Choice choice, double depthStops, Motion motion, Conditions conditions) {
        SetReasons judged = new SetReasons(reasons, fit, choice);
        judged.aperture(depthStops);
        judged.iso();
        judged.exposure();
        judged.motion(motion, conditions);
        return judged.verdict;
    }

    private void object(SetAdvice.Objection objection) {
        reasons.add(objection);
        verdict = verdict.and(Verdict.COMPROMISE);
    }

    private void aperture(double depthStops) {
        if (set.fNumber() == null) {
            return;
        }
        double fNumber = set.fNumber();
        Lens lens = fit.camera().lens();
        Double smallest = lens.oneAperture() ? Double.valueOf(fit.fNumberWidest()) : lens.smallestStop();
        if (fNumber * MARKING < fit.fNumberWidest()) {
            object(new SetAdvice.ApertureNotOnLens(fNumber, fit.fNumberWidest()));
        } else if (smallest != null && fNumber > smallest * MARKING) {
            object(new SetAdvice.ApertureNotOnLens(fNumber, smallest));
        } else if (fNumber > StopScale.nextFNumberUp(fit.fNumberUseful())) {
            object(new SetAdvice.ApertureSetSoft(fNumber, fit.fNumberUseful()));
        }
        if (depthStops > 0 && !fit.depthIsProposed()) {
            object(new SetAdvice.ApertureSetShallow(fNumber, fit.fNumberNeeded(), depthStops));
        }
    }

    private void iso() {
        Body body = fit.camera().body();
        if (set.iso() != null && set.iso() < body.baseIso()) {
            object(new SetAdvice.IsoNotOnBody(set.iso(), body.baseIso()));
        } else if (set.iso() != null && set.iso() > body.topIso()) {
            reasons.add(new SetAdvice.IsoSetHigh(set.iso(), body.topIso()));
        }
    }

    /** With the shutter speed left to the plan the exposure is right; {@code Dimming} says where the light is too bright for a lens. */
    private void exposure() {
        double over = choice.overStops();
        if (set.shutterS() == null || over == 0 || over > 0 && !fit.camera().lens().builtIn()) {
            return;
        }
        object(over > 0 ? new SetAdvice.Overexposed(over) : new SetAdvice.Underexposed(-over));
        if (over > HIGHLIGHTS_STOPS || over < -SHADOWS_STOPS) {
            verdict = Verdict.CANNOT;
        }
    }

    /** Where the plan is free to raise ISO, {@code MotionReasons} says that its highest is not enough. */
    private void motion(Motion motion, Conditions conditions) {
        if (!choice.tooSlow() || set.iso() == null && set.shutterS() == null) {
            return;
        }
        double longestS = choice.about(motion.longestS());
        double seconds = choice.markedS();
        if (motion.byWind() && set.shutterS() != null) {
            reasons.add(new SetAdvice.BlurAsSet(seconds, conditions.windMs(), motion.sway().times(seconds)));
        } else if (motion.byWind()) {
            object(new SetAdvice.SetBlursFlowers(seconds, longestS, conditions.windMs(), motion.sway().times(seconds)));
        } else {
            object(new SetAdvice.SetBlursByHand(seconds, longestS, Objects.requireNonNull(motion.posture(), "steady")));
        }
    }
}
