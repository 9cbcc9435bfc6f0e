package understorey.kit;

import static understorey.reason.Figure.Measure.DIOPTRES;
import static understorey.reason.Figure.Measure.KILOGRAMS;
import static understorey.reason.Figure.Measure.METRES;
import static understorey.reason.Figure.Measure.MILLIMETRES;
import static understorey.reason.Figure.Measure.TIMES;

import java.util.ArrayList;
import java.util.List;
import understorey.plan.Bag;
import understorey.plan.Filter;
import understorey.plan.Sharp;
import understorey.reason.Reason;

/** What would make good what a lens falls short of: another thing, another spot, a crop, a smaller print. */
final class Helps {

    /** Longer tubes and stronger lenses are not made, or not worth having: common practice, no source. */
    private static final double LONGEST_TUBE_MM = 100;
    private static final double STRONGEST_DIOPTRES = 20;
    /** By so much less a crop an attachment is worth naming. */
    private static final double WORTH_ATTACHING = 1.1;

    private final LensFit best;
    private final List<LensFit> tried;
    private final Bag bag;
    private final List<Reason> helps = new ArrayList<>();

    private Helps(LensFit best, List<LensFit> tried, Bag bag) {
        this.best = best;
        this.tried = tried;
        this.bag = bag;
    }

    /**
     * Each help once, in the order of what it makes good.
     *
     * @param best  null where there is no camera
     * @param tried every lens, with and without what the bag has to bring it closer
     */
    static List<Reason> of(LensFit best, List<LensFit> tried, Bag bag) {
        if (best == null) {
            return List.of(Reason.of(FitReason.NO_CAMERA));
        }
        Helps helps = new Helps(best, tried, bag);
        for (Reason reason : best.reasons()) {
            helps.against(reason);
        }
        return helps.helps;
    }

    private void against(Reason reason) {
        switch ((FitReason) reason.kind()) {
            case FOCAL_SHORT -> {
                wanting(Reason.of(FitReason.HELP_LONGER).with("focal", best.equivalentMm(), MILLIMETRES));
                wanting(Reason.of(FitReason.HELP_SPOT_NEARER).with("times", reason.figures().get("times")));
            }
            case FOCAL_LONG -> {
                wanting(Reason.of(FitReason.HELP_WIDER).with("focal", reason.figures().get("asked")));
                wanting(Reason.of(FitReason.HELP_SPOT_FARTHER).with("times", reason.figures().get("times")));
            }
            case MAGNIFICATION_SHORT -> closer();
            case TOO_NEAR -> stepBack(reason);
            case DEPTH_SHORT, DEPTH_FIXED -> clear();
            case PRINT_SOFT -> print(reason);
            case HELP_STEP_UP_RING -> add(reason);
            case POLARISER_MISSING -> add(Reason.of(FitReason.HELP_POLARISER)
                    .with("thread", best.camera().lens().threadMm(), MILLIMETRES));
            case NO_SUPPORT, SUPPORT_TOO_TALL, SUPPORT_TOO_SHORT, SUPPORT_AT_HOME -> support(
                    Reason.of(FitReason.HELP_SUPPORT).with("height", best.heightM(), METRES));
            case SUPPORT_OVERLOADED -> support(Reason.of(FitReason.HELP_STRONGER_SUPPORT)
                    .with("load", best.camera().weightG() / 1000, KILOGRAMS).with("height", best.heightM(), METRES));
            default -> { }
        }
    }

    /** A lens that serves as it is needs no other, though its focal length be a little off. */
    private void wanting(Reason help) {
        if (best.verdict() != Verdict.FITS) {
            add(help);
        }
    }

    private void support(Reason help) {
        if (best.support() == null) {
            add(help);
        }
    }

    private void add(Reason help) {
        if (!helps.contains(help)) {
            helps.add(help);
        }
    }

    /** A tube of f·(m − m₀), or a close-up lens of power (m − m₀)/((1 + m₀)·f), makes up what is missing. */
    private void closer() {
        rings();
        LensFit attached = attached();
        if (attached != null) {
            wanting(Reason.of(FitReason.HELP_ATTACH).with("attachment", attached.camera().attachment().name())
                    .with("times", attached.cropTimes(), TIMES));
            return;
        }
        double missing = best.magnification() * (best.cropTimes() - 1);
        double tubeMm = best.focalMm() * missing;
        if (!best.camera().lens().builtIn() && tubeMm <= LONGEST_TUBE_MM) {
            wanting(Reason.of(FitReason.HELP_TUBE).with("length", tubeMm, MILLIMETRES));
        }
        double dioptres = missing / ((1 + best.magnification()) * best.focalMm() / 1000);
        if (dioptres <= STRONGEST_DIOPTRES) {
            wanting(Reason.of(FitReason.HELP_CLOSE_UP_LENS).with("power", dioptres, DIOPTRES));
        }
    }

    /** The same lens with something of the bag that needs less of a crop; null where there is none. */
    private LensFit attached() {
        LensFit least = null;
        for (LensFit fit : tried) {
            boolean closer = fit.camera().lens() == best.camera().lens() && fit.camera().attachment() != null
                    && fit.cropTimes() * WORTH_ATTACHING < best.cropTimes();
            least = closer && (least == null || fit.cropTimes() < least.cropTimes()) ? fit : least;
        }
        return least;
    }

    /** A close-up lens in the bag that only its thread keeps off. */
    private void rings() {
        Double thread = best.camera().lens().threadMm();
        for (Filter filter : bag.filters()) {
            if (filter.kind() == Filter.Kind.CLOSE_UP_LENS && filter.threadMm() != null && thread != null
                    && filter.threadMm() > thread && best.camera().attachment() == null) {
                wanting(Reason.of(FitReason.HELP_STEP_UP_RING).with("filter", filter.name())
                        .with("lens", thread, MILLIMETRES).with("thread", filter.threadMm(), MILLIMETRES));
            }
        }
    }

    /** A frame keeps its size when it is taken from farther off and cropped in proportion. */
    private void stepBack(Reason reason) {
        if (best.intent().frame() != null) {
            double asked = (Double) reason.figures().get("asked").value();
            double closest = (Double) reason.figures().get("closest").value();
            wanting(Reason.of(FitReason.HELP_CROP).with("distance", closest, METRES)
                    .with("times", Math.max(1, closest / asked), TIMES));
        }
    }

    /**
     * From where the sharpness would do: the f-number that a range wants goes with 1/near − 1/far, so that
     * 1/near′ = 1/far + (1/near − 1/far)·useful/needed. Thin lens, for limits well beyond the focal length: 2 % at
     * twenty focal lengths.
     */
    private void clear() {
        if (best.intent().sharp() instanceof Sharp.Range range) {
            double far = 1 / range.farM();
            wanting(Reason.of(FitReason.HELP_SPOT_CLEAR).with("near",
                    1 / (far + (1 / range.nearM() - far) * best.fNumberUseful() / best.fNumberNeeded()), METRES));
        }
    }

    /** Width goes with the root of the pixels. */
    private void print(Reason reason) {
        double left = (Double) reason.figures().get("left").value();
        double needed = (Double) reason.figures().get("needed").value();
        wanting(Reason.of(FitReason.HELP_SMALLER_PRINT)
                .with("print", best.intent().shot().printWidthM() * Math.sqrt(left / needed), METRES));
    }
}
