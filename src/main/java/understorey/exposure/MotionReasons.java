package understorey.exposure;

import static understorey.reason.Figure.Measure.F_NUMBER;
import static understorey.reason.Figure.Measure.METRES;
import static understorey.reason.Figure.Measure.METRES_PER_SECOND;
import static understorey.reason.Figure.Measure.MILLIMETRES;
import static understorey.reason.Figure.Measure.SHUTTER_SECONDS;
import static understorey.reason.Figure.Measure.TIMES;

import understorey.kit.LensFit;
import understorey.reason.Figure;
import understorey.reason.Reason;

/** Why an ISO is what it is, and what hands and wind have to do with the time. */
final class MotionReasons {

    private final LensFit fit;
    private final Double windMs;
    private final Motion motion;

    MotionReasons(LensFit fit, Conditions conditions, Motion motion) {
        this.fit = fit;
        this.windMs = conditions.worstWindMs();
        this.motion = motion;
    }

    /** The lowest does. */
    Reason base(int iso) {
        return fit.steady()
                ? Reason.of(ExposureReason.ISO_BASE_STEADY).with("iso", iso(iso)).with("support", fit.support().name())
                : byHand(ExposureReason.ISO_BASE_HAND_HELD, ExposureReason.ISO_BASE_MONOPOD, iso);
    }

    /**
     * Raised for a time that somebody can wait for, or that the camera counts.
     *
     * @param lowestS that the lowest would take
     */
    Reason dark(int iso, double lowestS) {
        return Reason.of(fit.steady() && !fit.released() ? ExposureReason.ISO_WITHOUT_RELEASE : ExposureReason.ISO_FOR_DARK)
                .with("iso", iso(iso)).with("time", lowestS, SHUTTER_SECONDS)
                .with("longest", Reminders.LONGEST_MARKED_S, SHUTTER_SECONDS);
    }

    Reason hand(int iso, boolean tooSlow) {
        return tooSlow ? byHand(ExposureReason.HAND_TOO_SLOW, ExposureReason.MONOPOD_TOO_SLOW, iso)
                : byHand(ExposureReason.ISO_FOR_HAND, ExposureReason.ISO_FOR_MONOPOD, iso);
    }

    Reason wind(int iso, double seconds, boolean tooSlow) {
        return stems(tooSlow ? ExposureReason.WIND_TOO_STRONG
                : motion.lulls() ? ExposureReason.ISO_FOR_LULL : ExposureReason.ISO_FOR_WIND, motion.patientS())
                .with("times", motion.sway().times(seconds), TIMES).with("iso", iso(iso));
    }

    Reason still() {
        return Reason.of(ExposureReason.STEMS_STILL).with("wind", windMs, METRES_PER_SECOND)
                .with("nearest", motion.sway().nearestM(), METRES);
    }

    /**
     * A lull to wait for, and what to begin with for those who will not.
     *
     * @param seconds of that
     * @param smears  even so
     */
    Reason lull(double fNumber, int iso, double seconds, boolean smears) {
        return stems(smears ? ExposureReason.WAIT_OR_SMEAR : ExposureReason.WAIT_FOR_LULL, motion.stemsS())
                .with("times", motion.sway().times(seconds), TIMES).with("aperture", fNumber, F_NUMBER)
                .with("iso", iso(iso)).with("time", StopScale.snapShutterS(seconds), SHUTTER_SECONDS);
    }

    private Reason stems(ExposureReason kind, double longestS) {
        return Reason.of(kind).with("wind", windMs, METRES_PER_SECOND)
                .with("nearest", motion.sway().nearestM(), METRES)
                .with("longest", StopScale.nextShutterDownS(longestS), SHUTTER_SECONDS);
    }

    private Reason byHand(ExposureReason hands, ExposureReason monopod, int iso) {
        Reason told = Reason.of(fit.support() == null ? hands : monopod)
                .with("longest", StopScale.nextShutterDownS(motion.handS()), SHUTTER_SECONDS)
                .with("iso", iso(iso)).with("focal", fit.equivalentMm(), MILLIMETRES);
        return fit.support() == null ? told : told.with("support", fit.support().name());
    }

    private static Figure iso(int iso) {
        return Figure.of(iso, Figure.Measure.ISO);
    }
}
