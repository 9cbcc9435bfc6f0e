package understorey.exposure;

import static understorey.Samples.LEGS;
import static understorey.Samples.MACRO;
import static understorey.Samples.bag;
import static understorey.Samples.fullFrame;
import static understorey.Samples.picture;
import static understorey.Samples.prime;
import static understorey.Samples.with;

import java.util.List;
import understorey.Samples;
import understorey.kit.Intent;
import understorey.kit.LensFit;
import understorey.kit.WholeBag;
import understorey.plan.Bag;
import understorey.plan.CameraSettings;
import understorey.plan.Sharp;
import understorey.plan.Viewpoint;

/** Lenses on pictures, to find settings for. */
public final class Fits {

    public static final double CIRCLE_MM = Math.hypot(36, 24) / 1500;
    public static final Bag PRIME = bag(fullFrame(24), prime(50));

    private Fits() {
    }

    public static LensFit fit(Samples.Picture picture, Bag bag) {
        return WholeBag.fit(picture.intent(), bag).best();
    }

    /** With what the author sets on the camera. */
    public static LensFit fit(Samples.Picture picture, CameraSettings set, Bag bag) {
        return WholeBag.fit(Intent.of(List.of(picture.shot().with(set)), null).get(0), bag).best();
    }

    /** A 50 mm view that is sharp to infinity at just under an f-number: N = f² / (c·(2·near − f)). */
    public static Samples.Picture viewAt(double fNumber) {
        double nearM = (50 + 2500 / (CIRCLE_MM * fNumber * 0.99)) / 2000;
        return picture("View").equivalent(50).sharp(nearM, Double.POSITIVE_INFINITY);
    }

    public static LensFit starOnLegs() {
        return fit(picture("One star").wide(0.036).deep(0.001).from(Viewpoint.Stance.GROUND),
                with(bag(fullFrame(24), MACRO), LEGS));
    }

    /** The same star, deeper than any one frame holds. */
    public static LensFit deepStarOnLegs() {
        return fit(picture("Deep star").wide(0.036).deep(0.02), with(bag(fullFrame(24), MACRO), LEGS));
    }

    /** Half a plant high, 50 mm from two metres: its depth needs just under f/8. */
    public static LensFit plantOnLegs() {
        return fit(picture("Plant").wide(0.72).deep(0.19), with(PRIME, LEGS));
    }

    /** Of the nearest flowers asked sharp, m = f/(s − f) by the thin lens. */
    public static double nearMagnification(LensFit fit) {
        double nearM = fit.intent().sharp() instanceof Sharp.Range range ? range.nearM()
                : fit.focusM() - ((Sharp.Depth) fit.intent().sharp()).depthM() / 2;
        return fit.actingFocalMm() / (nearM * 1000 - fit.actingFocalMm());
    }

    public static Conditions wind(double ev100, double windMs, Double gustMs) {
        return new Conditions(ev100, 0, null, windMs, gustMs == null ? windMs : gustMs, null, Metering.GROUND, 2);
    }

    /** Settings where no sun gets into the frame, and no gust comes; in still air where no wind is given. */
    public static Settings settings(LensFit fit, double ev100, double contrastStops, Double flowerWindMs) {
        double windMs = flowerWindMs == null ? 0 : flowerWindMs;
        return Exposure.of(fit, List.of(), new Conditions(ev100, contrastStops, null, windMs, windMs, null, Metering.GROUND, 2));
    }
}
