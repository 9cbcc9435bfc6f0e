package understorey.exposure;

import static understorey.reason.Figure.Measure.F_NUMBER;
import static understorey.reason.Figure.Measure.METRES_PER_SECOND;
import static understorey.reason.Figure.Measure.MILLIMETRES;
import static understorey.reason.Figure.Measure.SHUTTER_SECONDS;
import static understorey.reason.Figure.Measure.STOPS;

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
 * that follows; then what hand and wind forbid, made good by ISO up to the author's limit.
 */
public final class Exposure {

    /** The longest time on a camera's own scale, s. */
    private static final double LONGEST_MARKED_S = 30;
    /** Past a quarter of an hour a frame the light has changed before it ends: common practice, no source. */
    private static final double LONGEST_SENSIBLE_S = 900;
    /** A wind at flower height in which lulls come, m/s: common practice, no source. */
    private static final double LULLS_BELOW_MS = 0.5;
    /** A slow one of the measured herb stems (1 to 5 Hz, from memory). */
    private static final double STEM_HZ = 2;
    /** What a monopod is worth: common practice, no source. */
    private static final double MONOPOD_STOPS = 2;
    /** What one RAW frame holds between a fleck of sun and the shade: common practice, no source. */
    private static final double ONE_FRAME_STOPS = 4;
    /** Four stops beyond what the hand holds nothing is sharp: common practice, no source. */
    private static final double HOPELESS_TIMES = 16;
    /** A third of a stop in time is within what the markings round. */
    private static final double TOLERANCE = Math.pow(2, 1 / 3.0);

    private final LensFit fit;
    private final Body body;
    private final double ev100;
    private final double lossStops;
    private final List<Reason> reasons = new ArrayList<>();
    private Verdict verdict = Verdict.FITS;

    private Exposure(LensFit fit, double ev100) {
        this.fit = fit;
        this.body = fit.camera().body();
        this.ev100 = ev100;
        this.lossStops = fit.lossStops() + fit.closenessStops();
    }

    /**
     * The settings for a light.
     *
     * @param ev100         of the light that the picture is metered for
     * @param contrastStops between a fleck of sun and the shade; 0 when no sun reaches the floor
     * @param flowerWindMs  mean wind at flower height; null when nobody knows it
     */
    public static Settings of(LensFit fit, double ev100, double contrastStops, Double flowerWindMs) {
        return new Exposure(fit, ev100).settings(contrastStops, flowerWindMs);
    }

    private Settings settings(double contrastStops, Double flowerWindMs) {
        double fNumber = aperture();
        int iso = fit.steady() ? steadyIso(fNumber, flowerWindMs) : handHeldIso(fNumber, flowerWindMs);
        double seconds = StopScale.snapShutterS(secondsAt(fNumber, iso));
        if (seconds > LONGEST_SENSIBLE_S) {
            verdict = Verdict.CANNOT;
            reasons.add(Reason.of(ExposureReason.TOO_DARK).with("time", seconds, SHUTTER_SECONDS));
        }
        time(seconds);
        DepthOfField depth = DepthOfField.of(fit.actingFocalMm(), fNumber / fit.closeUpTimes(),
                fit.circleOfConfusionMm(), fit.focusM() * 1000);
        return new Settings(ev100, fNumber, seconds, iso, lossStops, bracket(contrastStops),
                depth.hyperfocalMm() / 1000, depth.nearMm() / 1000, depth.farMm() / 1000, verdict,
                List.copyOf(reasons));
    }

    private double aperture() {
        if (fit.camera().lens().builtIn()) {
            return because(ExposureReason.APERTURE_FIXED, fit.fNumberWidest());
        }
        double open = StopScale.nextFNumberUp(fit.fNumberWidest());
        double limit = Math.max(StopScale.snapFNumber(fit.fNumberUseful()), open);
        if (!fit.holdsDepth()) {
            return because(ExposureReason.APERTURE_AT_LIMIT, limit);
        }
        if (fit.fNumberNeeded() <= fit.fNumberWidest()) {
            return because(ExposureReason.APERTURE_WIDE_OPEN, open);
        }
        return because(ExposureReason.APERTURE_FOR_DEPTH,
                Math.min(StopScale.nextFNumberUp(fit.fNumberNeeded()), limit));
    }

    private double because(ExposureReason kind, double fNumber) {
        reasons.add(Reason.of(kind).with("aperture", fNumber, F_NUMBER));
        return fNumber;
    }

    private int steadyIso(double fNumber, Double flowerWindMs) {
        double swayS = swayLimitS(flowerWindMs);
        if (secondsAt(fNumber, body.baseIso()) <= swayS) {
            steadyAtBase();
            if (flowerWindMs != null) {
                reasons.add(Reason.of(ExposureReason.STEMS_STILL).with("wind", flowerWindMs, METRES_PER_SECOND));
            }
            return body.baseIso();
        }
        if (flowerWindMs <= LULLS_BELOW_MS) {
            steadyAtBase();
            if (secondsAt(fNumber, body.baseIso()) > swayS * HOPELESS_TIMES) {
                verdict = Verdict.COMPROMISE;
            }
            int fast = raise(fNumber, swayS);
            reasons.add(sway(ExposureReason.WAIT_FOR_LULL, swayS, flowerWindMs).with("iso", iso(fast))
                    .with("time", StopScale.snapShutterS(secondsAt(fNumber, fast)), SHUTTER_SECONDS));
            return body.baseIso();
        }
        int raised = raise(fNumber, swayS);
        ExposureReason kind = ExposureReason.ISO_FOR_WIND;
        if (secondsAt(fNumber, raised) > swayS * TOLERANCE) {
            verdict = Verdict.COMPROMISE;
            kind = ExposureReason.WIND_TOO_STRONG;
        }
        reasons.add(sway(kind, swayS, flowerWindMs).with("iso", iso(raised)));
        return raised;
    }

    private void steadyAtBase() {
        reasons.add(Reason.of(ExposureReason.ISO_BASE_STEADY).with("iso", iso(body.baseIso()))
                .with("support", fit.support().name()));
    }

    private Reason sway(ExposureReason kind, double swayS, double flowerWindMs) {
        return Reason.of(kind).with("wind", flowerWindMs, METRES_PER_SECOND)
                .with("longest", StopScale.nextShutterDownS(swayS), SHUTTER_SECONDS);
    }

    private double swayLimitS(Double flowerWindMs) {
        return flowerWindMs == null ? Double.POSITIVE_INFINITY
                : StemSway.longestS(fit.circleOfConfusionMm(), STEM_HZ, StemSway.amplitudeMm(flowerWindMs),
                        fit.magnification());
    }

    private int handHeldIso(double fNumber, Double flowerWindMs) {
        double stops = Math.max(body.stabilisedStops(), fit.camera().lens().stabilisedStops())
                + (fit.support() == null ? 0 : MONOPOD_STOPS);
        double handS = HandHeld.longestS(fit.focalMm(), fit.camera().sensor().crop() * fit.cropTimes(), stops);
        double limitS = Math.min(handS, swayLimitS(flowerWindMs));
        ExposureReason kind = ExposureReason.ISO_BASE_HAND_HELD;
        int iso = body.baseIso();
        if (secondsAt(fNumber, iso) > limitS) {
            iso = raise(fNumber, limitS);
            kind = ExposureReason.ISO_FOR_HAND;
            if (secondsAt(fNumber, iso) > limitS * TOLERANCE) {
                kind = limitS < handS ? ExposureReason.WIND_TOO_STRONG : ExposureReason.HAND_TOO_SLOW;
                verdict = secondsAt(fNumber, iso) > handS * HOPELESS_TIMES ? Verdict.CANNOT : Verdict.COMPROMISE;
            } else if (limitS < handS) {
                kind = ExposureReason.ISO_FOR_WIND;
            }
        }
        Reason reason = limitS < handS && kind != ExposureReason.ISO_BASE_HAND_HELD
                ? sway(kind, limitS, flowerWindMs)
                : Reason.of(kind).with("longest", StopScale.nextShutterDownS(handS), SHUTTER_SECONDS);
        reasons.add(reason.with("iso", iso(iso)).with("focal", fit.equivalentMm(), MILLIMETRES));
        return iso;
    }

    private double secondsAt(double fNumber, int iso) {
        return Shutter.seconds(fNumber, ev100, iso, lossStops);
    }

    private int raise(double fNumber, double limitS) {
        int needed = StopScale.nextIsoUp(Shutter.iso(fNumber, ev100, limitS, lossStops));
        return Math.min(body.topIso(), Math.max(body.baseIso(), needed));
    }

    private void time(double seconds) {
        if (fit.lossStops() > 0) {
            reasons.add(Reason.of(ExposureReason.FILTER_TAKES).with("stops", fit.lossStops(), STOPS));
        }
        double closeness = fit.closenessStops();
        if (closeness >= 1 / 6.0) {
            reasons.add(Reason.of(ExposureReason.CLOSENESS_TAKES).with("stops", closeness, STOPS));
        }
        if (fit.steady() && seconds > LONGEST_MARKED_S && seconds <= LONGEST_SENSIBLE_S) {
            reasons.add(Reason.of(ExposureReason.BULB).with("time", seconds, SHUTTER_SECONDS));
        }
        if (fit.steady()) {
            reasons.add(Reason.of(fit.released() ? ExposureReason.LET_GO_BY_REMOTE : ExposureReason.LET_GO_BY_TIMER));
        }
    }

    private List<Integer> bracket(double contrastStops) {
        if (contrastStops <= ONE_FRAME_STOPS) {
            return List.of(0);
        }
        reasons.add(Reason.of(ExposureReason.BRACKET).with("contrast", contrastStops, STOPS));
        return List.of(-4, -2, 0);
    }

    private static Figure iso(int iso) {
        return Figure.of(iso, Figure.Measure.ISO);
    }
}
