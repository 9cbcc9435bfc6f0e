package understorey.kit;

import static understorey.reason.Figure.Measure.DIOPTRES;
import static understorey.reason.Figure.Measure.METRES;
import static understorey.reason.Figure.Measure.MILLIMETRES;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import understorey.plan.Bag;
import understorey.reason.Reason;

/**
 * Every lens of a bag tried on one picture, the best first.
 *
 * @param tried best first; empty when the bag holds no body with a lens
 * @param helps what would make good what the best lens falls short of, and a support where nothing in the bag
 *              holds the camera; empty when neither is wanting
 */
public record ShotFit(Intent intent, List<LensFit> tried, List<Reason> helps) {

    private static final Comparator<LensFit> BEST_FIRST = Comparator.comparing(LensFit::verdict)
            .thenComparingDouble(fit -> Math.round(fit.penalty() * 100));

    public static ShotFit of(Intent intent, Bag bag) {
        List<LensFit> tried = new ArrayList<>();
        for (Camera camera : Camera.of(bag)) {
            tried.add(LensTrial.of(bag, camera, intent));
        }
        tried.sort(BEST_FIRST);
        return new ShotFit(intent, List.copyOf(tried), helps(tried));
    }

    /** The lens to use; null when there is none. */
    public LensFit best() {
        return tried.isEmpty() ? null : tried.get(0);
    }

    private static List<Reason> helps(List<LensFit> tried) {
        if (tried.isEmpty()) {
            return List.of(Reason.of(FitReason.NO_CAMERA));
        }
        LensFit best = tried.get(0);
        List<Reason> helps = new ArrayList<>();
        for (Reason reason : best.reasons()) {
            switch ((FitReason) reason.kind()) {
                case FOCAL_SHORT -> lens(best, Reason.of(FitReason.HELP_LONGER)
                        .with("focal", best.equivalentMm(), MILLIMETRES), helps);
                case FOCAL_LONG -> lens(best, Reason.of(FitReason.HELP_WIDER)
                        .with("focal", reason.figures().get("asked")), helps);
                case MAGNIFICATION_SHORT -> closer(best, helps);
                case HELP_STEP_UP_RING -> helps.add(reason);
                case POLARISER_MISSING -> helps.add(Reason.of(FitReason.HELP_POLARISER)
                        .with("thread", best.camera().lens().threadMm(), MILLIMETRES));
                case NO_SUPPORT, SUPPORT_TOO_TALL, SUPPORT_TOO_SHORT, SUPPORT_OVERLOADED -> {
                    if (best.support() == null) {
                        helps.add(Reason.of(FitReason.HELP_SUPPORT)
                                .with("height", best.heightM(), METRES));
                    }
                }
                default -> { }
            }
        }
        return helps.stream().distinct().toList();
    }

    /** A lens that serves as it is needs no other, though its focal length be a little off. */
    private static void lens(LensFit best, Reason help, List<Reason> helps) {
        if (best.verdict() != Verdict.FITS) {
            helps.add(help);
        }
    }

    /** A tube of f·(m − m₀), or a close-up lens of power (m − m₀)/((1 + m₀)·f), makes up what is missing. */
    private static void closer(LensFit best, List<Reason> helps) {
        if (!best.camera().lens().builtIn()) {
            lens(best, Reason.of(FitReason.HELP_TUBE)
                    .with("length", best.focalMm() * missing(best), MILLIMETRES), helps);
        }
        lens(best, Reason.of(FitReason.HELP_CLOSE_UP_LENS).with("power", power(best), DIOPTRES), helps);
    }

    private static double power(LensFit best) {
        return missing(best) / ((1 + best.magnification()) * best.focalMm() / 1000);
    }

    private static double missing(LensFit best) {
        return best.magnification() * (best.cropTimes() - 1);
    }
}
