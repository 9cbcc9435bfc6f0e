package understorey.exposure;

import static understorey.reason.Figure.Measure.COUNT;
import static understorey.reason.Figure.Measure.STOPS;

import java.util.List;
import understorey.kit.LensFit;
import understorey.plan.Body;
import understorey.reason.Reason;

/** Which tones of the scene a frame holds: the bracket, and the histogram to aim for. */
final class Tones {

    private static final double LEAST_STOPS = 1 / 6.0;

    private Tones() {
    }

    /** The frames of the bracket; adds why, and where the petals belong. */
    static List<Integer> bracket(List<Reason> reasons, LensFit fit, Conditions conditions) {
        boolean raw = keepsRaw(fit);
        double above = conditions.aboveStops();
        if (conditions.sunStops() != null) {
            above = Math.max(above, conditions.sunStops());
            reasons.add(Reason.of(ExposureReason.FRAME_HOLDS_SUN).with("stops", conditions.sunStops(), STOPS));
        }
        List<Integer> stops = Bracket.stops(above, conditions.belowStops(), raw);
        if (stops.size() > 1) {
            double contrast = above + conditions.belowStops();
            reasons.add(stops.get(0) == 0
                    ? Reason.of(ExposureReason.BRACKET_UP).with("contrast", contrast, STOPS).with("frames", stops.size(), COUNT)
                    : Reason.of(ExposureReason.BRACKET).with("contrast", contrast, STOPS)
                            .with("frames", stops.size(), COUNT).with("darkest", -stops.get(0), STOPS));
        } else if (conditions.shadeStops() != null && Bracket.lessStops(above) >= LEAST_STOPS) {
            reasons.add(Reason.of(ExposureReason.EXPOSE_FOR_FLECKS)
                    .with("contrast", above + conditions.belowStops(), STOPS)
                    .with("less", Bracket.lessStops(above), STOPS));
        }
        Reason aim = Petals.aim(fit.intent().shot().subject());
        if (aim != null) {
            reasons.add(aim);
        }
        if (!raw) {
            reasons.add(Reason.of(ExposureReason.NO_RAW));
        }
        return stops;
    }

    /** A body that takes other lenses keeps RAW, told or not; a phone only where the bag gives its size. */
    private static boolean keepsRaw(LensFit fit) {
        Body body = fit.camera().body();
        return body.rawSizeMb() != null || !fit.camera().lens().builtIn();
    }
}
