package understorey.exposure;

import static understorey.reason.Figure.Measure.F_NUMBER;
import static understorey.reason.Figure.Measure.METRES_PER_SECOND;
import static understorey.reason.Figure.Measure.MILLIMETRES;
import static understorey.reason.Figure.Measure.SHUTTER_SECONDS;
import static understorey.reason.Figure.Measure.TIMES;

import java.util.ArrayList;
import java.util.List;
import understorey.kit.LensFit;
import understorey.kit.Verdict;
import understorey.optics.DepthOfField;
import understorey.plan.Body;
import understorey.reason.Figure;
import understorey.reason.Reason;

/**
 * Finds the settings of one picture: the aperture that the sharpness asks for, ISO at its base, the time
 * that follows. Where hand, wind or darkness forbid that time, these yield in turn: the wait, until a lull; the
 * aperture, as far as the depth asked allows; ISO, up to the author's limit, on legs too; at last the picture itself.
 */
public final class Exposure {

    /** Four stops beyond what the hand holds nothing is sharp: common practice, no source. */
    private static final double HOPELESS_TIMES = 16;
    /** Rather than wait longer for one frame people raise ISO: common practice, no source. */
    private static final double LONGEST_WAIT_S = 240;
    /** A third of a stop in time is within what the markings round. */
    private static final double TOLERANCE = Math.pow(2, 1 / 3.0);

    private final LensFit fit;
    private final Body body;
    private final Conditions conditions;
    private final double lossStops;
    private final Motion motion;
    private final List<Reason> reasons = new ArrayList<>();
    private Verdict verdict = Verdict.FITS;

    private Exposure(LensFit fit, Conditions conditions) {
        this.fit = fit;
        this.body = fit.camera().body();
        this.conditions = conditions;
        this.lossStops = fit.lossStops() + fit.closenessStops();
        this.motion = Motion.of(fit, conditions);
    }

    /**
     * The settings where no sun gets into the frame, and of the wind only the mean is known.
     *
     * @param ev100         of the light that the picture is metered for
     * @param contrastStops between a fleck of sun and the shade; 0 when no sun reaches the floor
     * @param flowerWindMs  mean wind at flower height; null when nobody knows it
     */
    public static Settings of(LensFit fit, double ev100, double contrastStops, Double flowerWindMs) {
        return of(fit, new Conditions(ev100, contrastStops, null, flowerWindMs, null, null));
    }

    /** The settings for a light and a wind. */
    public static Settings of(LensFit fit, Conditions conditions) {
        return new Exposure(fit, conditions).settings();
    }

    private Settings settings() {
        Stack stack = Depth.stack(fit, conditions);
        Aperture aperture = stack == null ? Aperture.of(fit) : Aperture.ofStack(fit);
        double fNumber = opened(aperture);
        Background background = Background.of(fit, fNumber);
        Depth.add(reasons, fit, conditions, stack);
        Depth.add(reasons, fit, fNumber, background);
        int iso = iso(fNumber);
        stems(aperture, secondsAt(fNumber, iso));
        double seconds = StopScale.snapShutterS(secondsAt(fNumber, iso));
        if (seconds > Reminders.LONGEST_SENSIBLE_S) {
            verdict = Verdict.CANNOT;
        }
        Reminders.add(reasons, fit, fNumber, seconds);
        List<Integer> bracket = Tones.bracket(reasons, fit, conditions);
        DepthOfField one = fit.depthOfField(fNumber, fit.focusM() * 1000);
        return new Settings(conditions.ev100(), fNumber, seconds, iso, lossStops, bracket, one.hyperfocalMm() / 1000,
                stack == null ? one.nearMm() / 1000 : stack.sharpFromM(),
                stack == null ? one.farMm() / 1000 : stack.sharpToM(), stack, background,
                Motion.blurMm(fit, conditions, seconds), verdict, List.copyOf(reasons));
    }

    /** Opened a third of a stop at a time while the lowest ISO leaves the time too long. */
    private double opened(Aperture aperture) {
        double fNumber = aperture.first();
        while (fNumber > aperture.widest() && secondsAt(fNumber, body.baseIso()) > bearableS()) {
            fNumber = Math.max(aperture.widest(), StopScale.thirdWider(fNumber));
        }
        if (fNumber < aperture.first()) {
            reasons.add(Reason.of(ExposureReason.APERTURE_OPENED).with("aperture", fNumber, F_NUMBER)
                    .with("first", aperture.first(), F_NUMBER));
        } else {
            reasons.add(Reason.of(aperture.why()).with("aperture", fNumber, F_NUMBER)
                    .with("asked", aperture.widest(), F_NUMBER));
        }
        return fNumber;
    }

    private int iso(double fNumber) {
        int iso = raise(fNumber, bearableS());
        double seconds = secondsAt(fNumber, iso);
        boolean tooSlow = seconds > motion.longestS() * TOLERANCE;
        if (tooSlow) {
            verdict = seconds > motion.handS() * HOPELESS_TIMES ? Verdict.CANNOT : Verdict.COMPROMISE;
        }
        if (!tooSlow && iso == body.baseIso()) {
            reasons.add(fit.steady()
                    ? Reason.of(ExposureReason.ISO_BASE_STEADY).with("iso", iso(iso)).with("support", fit.support().name())
                    : byHand(ExposureReason.ISO_BASE_HAND_HELD, iso));
        } else if (!tooSlow && motion.longestS() > LONGEST_WAIT_S) {
            reasons.add(Reason.of(ExposureReason.ISO_FOR_DARK).with("iso", iso(iso))
                    .with("time", secondsAt(fNumber, body.baseIso()), SHUTTER_SECONDS));
        } else if (motion.byWind()) {
            reasons.add(byWind(tooSlow ? ExposureReason.WIND_TOO_STRONG
                    : motion.lulls() ? ExposureReason.ISO_FOR_LULL : ExposureReason.ISO_FOR_WIND, iso, seconds));
        } else {
            reasons.add(byHand(tooSlow ? ExposureReason.HAND_TOO_SLOW : ExposureReason.ISO_FOR_HAND, iso));
        }
        return iso;
    }

    private double bearableS() {
        return Math.min(motion.longestS(), LONGEST_WAIT_S);
    }

    private Reason byHand(ExposureReason kind, int iso) {
        return Reason.of(kind).with("longest", StopScale.nextShutterDownS(motion.handS()), SHUTTER_SECONDS)
                .with("iso", iso(iso)).with("focal", fit.equivalentMm(), MILLIMETRES);
    }

    private Reason byWind(ExposureReason kind, int iso, double seconds) {
        return Reason.of(kind).with("wind", conditions.worstWindMs(), METRES_PER_SECOND)
                .with("longest", StopScale.nextShutterDownS(motion.patientS()), SHUTTER_SECONDS)
                .with("times", Motion.blurMm(fit, conditions, seconds) / fit.circleOfConfusionMm(), TIMES)
                .with("iso", iso(iso));
    }

    /** Whether the stems stand for the time, or only in a lull; what to begin with for those who will not wait. */
    private void stems(Aperture aperture, double seconds) {
        Double windMs = conditions.worstWindMs();
        if (windMs == null) {
            return;
        }
        if (fit.steady() && secondsAt(aperture.first(), body.baseIso()) <= motion.stemsS()) {
            reasons.add(Reason.of(ExposureReason.STEMS_STILL).with("wind", windMs, METRES_PER_SECOND));
        } else if (seconds > motion.stemsS() * TOLERANCE && seconds <= motion.patientS() * TOLERANCE) {
            int fast = raise(aperture.widest(), motion.stemsS());
            reasons.add(Reason.of(ExposureReason.WAIT_FOR_LULL).with("wind", windMs, METRES_PER_SECOND)
                    .with("longest", StopScale.nextShutterDownS(motion.stemsS()), SHUTTER_SECONDS)
                    .with("aperture", aperture.widest(), F_NUMBER).with("iso", iso(fast)).with("time",
                            StopScale.snapShutterS(secondsAt(aperture.widest(), fast)), SHUTTER_SECONDS));
        }
    }

    private double secondsAt(double fNumber, int iso) {
        return Shutter.seconds(fNumber, conditions.ev100(), iso, lossStops);
    }

    private int raise(double fNumber, double limitS) {
        int needed = StopScale.nextIsoUp(Shutter.iso(fNumber, conditions.ev100(), limitS, lossStops));
        return Math.min(body.topIso(), Math.max(body.baseIso(), needed));
    }

    private static Figure iso(int iso) {
        return Figure.of(iso, Figure.Measure.ISO);
    }
}
