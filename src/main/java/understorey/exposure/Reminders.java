package understorey.exposure;

import static understorey.reason.Figure.Measure.F_NUMBER;
import static understorey.reason.Figure.Measure.SHUTTER_SECONDS;
import static understorey.reason.Figure.Measure.STOPS;

import java.util.List;
import understorey.kit.LensFit;
import understorey.reason.Reason;

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

    private Reminders() {
    }

    /** Adds what there is to say of a time at an f-number, both as marked. */
    static void add(List<Reason> reasons, LensFit fit, double fNumber, double seconds) {
        losses(reasons, fit, fNumber);
        if (seconds > LONGEST_SENSIBLE_S) {
            reasons.add(Reason.of(ExposureReason.TOO_DARK).with("time", seconds, SHUTTER_SECONDS));
        } else if (fit.steady() && seconds > LONGEST_MARKED_S) {
            reasons.add(Reason.of(fit.released() ? ExposureReason.BULB : ExposureReason.BULB_WITHOUT_RELEASE)
                    .with("time", seconds, SHUTTER_SECONDS));
        }
        if (fit.steady() && (fit.released() || seconds <= LONGEST_MARKED_S)) {
            reasons.add(Reason.of(fit.released() ? ExposureReason.LET_GO_BY_REMOTE : ExposureReason.LET_GO_BY_TIMER));
        }
        if (fit.steady() && fit.released() && seconds >= SHAKE_FROM_S && seconds <= SHAKE_TO_S) {
            reasons.add(Reason.of(ExposureReason.SETTLE_FIRST));
        }
    }

    private static void losses(List<Reason> reasons, LensFit fit, double fNumber) {
        if (fit.lossStops() > 0) {
            reasons.add(Reason.of(ExposureReason.FILTER_TAKES).with("stops", fit.lossStops(), STOPS));
        }
        if (fit.closenessStops() >= LEAST_STOPS) {
            reasons.add(Reason.of(ExposureReason.CLOSENESS_TAKES).with("stops", fit.closenessStops(), STOPS)
                    .with("aperture", fNumber, F_NUMBER).with("working", fit.workingFNumber(fNumber), F_NUMBER));
        }
    }
}
