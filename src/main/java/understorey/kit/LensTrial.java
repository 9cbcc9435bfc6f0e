package understorey.kit;

import static understorey.reason.Figure.Measure.F_NUMBER;
import static understorey.reason.Figure.Measure.MEGAPIXELS;
import static understorey.reason.Figure.Measure.METRES;

import java.util.ArrayList;
import java.util.List;
import understorey.optics.AngleOfView;
import understorey.optics.BackgroundBlur;
import understorey.optics.Diffraction;
import understorey.optics.Sharpness;
import understorey.optics.ThinLens;
import understorey.plan.Bag;
import understorey.plan.Orientation;
import understorey.plan.Sharp;
import understorey.reason.Reason;

/** Tries one camera on one picture. */
final class LensTrial {

    /** Where the bag does not say how far a lens stops down: common practice, no source. */
    private static final double SMALLEST_STOP = 16;
    /** Beyond three stops the foreground or the distance is plainly lost: common practice, no source. */
    static final double HOPELESS_STOPS = 3;
    /** Dots an inch of a print that is looked at from arm's length: common practice, no source. */
    private static final double PRINT_DPI = 150;
    /** Close up, depth is worth a little softness all over: common practice, no source. */
    private static final double CLOSE_UP_GRACE = 1.5;
    /** A frame lower than that share of the plant is for its flowers alone: common practice, no source. */
    private static final double CLOSE_UP_SHARE = 0.5;
    /** Sine of 45°. */
    private static final double STEEP = Math.sqrt(0.5);
    /** A third of a stop in f-number: nearer than that nobody sees the difference. */
    static final double THIRD_STOP = Math.pow(2, 1 / 6.0);

    /** What a picture loses that goes without the polariser it asks for, stops: common practice, no source. */
    static final double WITHOUT_POLARISER = 0.5;

    private final Bag bag;
    private final Bag carried;
    private final Camera camera;
    private final Intent intent;
    private final Framing framing;
    private final List<Reason> reasons = new ArrayList<>();
    private Verdict verdict;
    private double penalty;

    private LensTrial(Bag bag, Bag carried, Camera camera, Intent intent) {
        this.bag = bag;
        this.carried = carried;
        this.camera = camera;
        this.intent = intent;
        this.framing = Framing.of(camera, intent);
        this.verdict = framing.verdict();
        this.penalty = framing.penalty();
        reasons.addAll(framing.reasons());
    }

    static LensFit of(Bag bag, Camera camera, Intent intent) {
        return of(bag, bag, camera, intent);
    }

    /**
     * The camera with the supports and filters that are carried.
     *
     * @param bag     of which {@code carried} is a part
     */
    static LensFit of(Bag bag, Bag carried, Camera camera, Intent intent) {
        return new LensTrial(bag, carried, camera, intent).fit();
    }

    private LensFit fit() {
        double cocMm = LensFit.circleOfConfusionMm(intent, camera, framing.cropTimes());
        double focusMm = focusMm();
        double needed = neededFNumber(cocMm, focusMm);
        double widest = camera.lens().widestAt(framing.reach().focalMm());
        double useful = usefulFNumber(cocMm, widest);
        depth(needed, useful);
        print();
        Polarising polarising = Polarising.of(carried, camera.lens(), intent.polariser());
        reasons.addAll(polarising.reasons());
        if (polarising.missing()) {
            verdict = verdict.and(Verdict.COMPROMISE);
            penalty += WITHOUT_POLARISER;
        }
        Holding holding = Holding.of(bag, carried, camera, intent);
        reasons.addAll(holding.reasons());
        return new LensFit(intent, camera, framing.reach().focalMm(), framing.cropTimes(),
                framing.distanceM(), focusMm / 1000, framing.magnification(), needed, widest, useful,
                holding.support(), holding.heightM(), tiltDeg(holding.heightM()), polarising.filters(),
                polarising.lossStops(), bag.remoteRelease(), verdict, penalty, List.copyOf(reasons));
    }

    /**
     * The plane of focus, from the lens. A frame may be asked farther off than what is to be sharp: focus never comes so
     * near that a lens set for that frame would magnify beyond life size, where it soon forms no image at all.
     */
    private double focusMm() {
        if (!(intent.sharp() instanceof Sharp.Range range)) {
            return framing.distanceM() * 1000;
        }
        double framedMm = framing.distanceM() * 1000;
        double lifeSizeMm = 2 * ThinLens.focalMmFor(framing.magnification(), framedMm);
        double nearestMm = Math.max(framing.reach().nearestMm(), Math.min(lifeSizeMm, framedMm));
        return Math.max(nearestMm, Math.min(askedFocusMm(range), framing.reach().farthestMm()));
    }

    private static double askedFocusMm(Sharp.Range range) {
        return Sharpness.focusMm(range.nearM() * 1000, range.farM() * 1000);
    }

    /** As marked on the lens; a close-up lens leaves its opening as it is and shortens the focal length. */
    private double neededFNumber(double cocMm, double focusMm) {
        Reach reach = framing.reach();
        if (intent.sharp() instanceof Sharp.Depth depth) {
            return Sharpness.fNumberForDepth(depth.depthM() * 1000, cocMm, framing.magnification())
                    * reach.closeUpTimes();
        }
        Sharp.Range range = (Sharp.Range) intent.sharp();
        double focalMm = reach.actingFocalMm(reach.magnificationAt(focusMm));
        if (focusMm == askedFocusMm(range)) {
            return Sharpness.fNumberForRange(focalMm, cocMm, range.nearM() * 1000, range.farM() * 1000)
                    * reach.closeUpTimes();
        }
        double wideOpenMm = Math.max(BackgroundBlur.discMm(focalMm, 1, focusMm, range.nearM() * 1000),
                BackgroundBlur.discMm(focalMm, 1, focusMm, range.farM() * 1000));
        return wideOpenMm / cocMm * reach.closeUpTimes();
    }

    private double usefulFNumber(double cocMm, double widest) {
        if (camera.lens().oneAperture()) {
            return widest;
        }
        double stop = camera.lens().smallestStop() == null ? SMALLEST_STOP : camera.lens().smallestStop();
        double own = (1 + framing.magnification()) / framing.reach().closeUpTimes() - 1;
        double limit = Diffraction.largestUsefulFNumber(cocMm, own);
        boolean closeUp = intent.sharp() instanceof Sharp.Depth;
        return Math.max(widest, Math.min(stop, closeUp ? limit * CLOSE_UP_GRACE : limit));
    }

    private void depth(double needed, double useful) {
        if (needed <= useful * THIRD_STOP) {
            return;
        }
        double stops = 2 * Framing.log2(needed / useful);
        boolean range = intent.sharp() instanceof Sharp.Range;
        boolean stackable = !camera.lens().oneAperture();
        boolean proposed = intent.assumed().contains("sharp");
        verdict = verdict.and(proposed ? Verdict.FITS
                : range && stops > HOPELESS_STOPS && !stackable ? Verdict.CANNOT : Verdict.COMPROMISE);
        penalty += stops / 2;
        if (proposed) {
            reasons.add(Reason.of(FitReason.DEPTH_PROPOSED_SHORT).with("needed", needed, F_NUMBER)
                    .with("useful", useful, F_NUMBER));
            return;
        }
        reasons.add(Reason.of(camera.lens().oneAperture() ? FitReason.DEPTH_FIXED : FitReason.DEPTH_SHORT)
                .with("needed", needed, F_NUMBER).with("useful", useful, F_NUMBER));
    }

    private void print() {
        Double widthM = intent.shot().printWidthM();
        if (widthM == null) {
            return;
        }
        boolean landscape = intent.orientation() == Orientation.LANDSCAPE;
        double aspect = landscape
                ? camera.sensor().widthMm() / camera.sensor().heightMm()
                : camera.sensor().heightMm() / camera.sensor().widthMm();
        double neededAcross = widthM / 0.0254 * PRINT_DPI;
        double neededMpx = neededAcross * neededAcross / aspect / 1e6;
        double leftMpx = camera.body().pixelsMpx() / (framing.cropTimes() * framing.cropTimes());
        if (leftMpx < neededMpx) {
            verdict = verdict.and(Verdict.COMPROMISE);
            penalty += Framing.log2(neededMpx / leftMpx) / 2;
            reasons.add(Reason.of(FitReason.PRINT_SOFT).with("left", leftMpx, MEGAPIXELS)
                    .with("needed", neededMpx, MEGAPIXELS).with("print", widthM, METRES));
        }
    }

    /**
     * As written; a framed picture is aimed at its plant; a view such that the nearest sharp ground, that far from the
     * lens, lies on the bottom edge: the look that falls by δ meets ground h below that rises by α at
     * h·cos α / sin(δ + α). Where that would look down more steeply than 45° to the ground, the nearest to be sharp are
     * the flower heads. No less ground than a third of the frame is taken in.
     */
    private double tiltDeg(double heightM) {
        if (intent.shot().tiltDeg() != null) {
            return intent.shot().tiltDeg();
        }
        if (!(intent.sharp() instanceof Sharp.Range range)) {
            return Math.toDegrees(Math.asin(clamp((heightM - aimM()) / framing.distanceM())));
        }
        double half = AngleOfView.of(ThinLens.focalMmFor(framing.magnification(), framing.distanceM() * 1000),
                upMm(), upMm(), framing.magnification()).verticalDeg() / 2;
        double cosine = Math.cos(Math.toRadians(intent.riseDeg()));
        double above = heightM * cosine / range.nearM();
        double bottomDeg = Math.toDegrees(Math.asin(above <= STEEP ? above
                : clamp((heightM - plantM()) * cosine / range.nearM())));
        double lowestThirdDeg = Math.toDegrees(Math.atan(Math.tan(Math.toRadians(half)) / 3));
        return clampDeg(Math.max(bottomDeg - half, -lowestThirdDeg) - intent.riseDeg());
    }

    private double plantM() {
        Double plantM = intent.shot().subject().heightM();
        return plantM == null ? Intent.UNKNOWN_PLANT_M : plantM;
    }

    /**
     * Height of what is in the middle of a framed picture: of the flowers, close up; with more of the plant in the frame
     * the flowers come to lie on the upper third (common practice, no source), and with room to spare the middle of
     * the plant in the middle.
     */
    private double aimM() {
        Double plantM = intent.shot().subject().heightM();
        if (plantM == null) {
            return Intent.nominalHeightM(intent.viewpoint());
        }
        double frameM = upMm() / framing.magnification() / 1000;
        return frameM < plantM * CLOSE_UP_SHARE ? plantM : Math.max(plantM / 2, plantM - frameM / 6);
    }

    /** Height of the picture on the part of the sensor that is used, mm. */
    private double upMm() {
        boolean landscape = intent.orientation() == Orientation.LANDSCAPE;
        return (landscape ? camera.sensor().heightMm() : camera.sensor().widthMm()) / framing.cropTimes();
    }

    private static double clampDeg(double tiltDeg) {
        return Math.max(-90, Math.min(90, tiltDeg));
    }

    private static double clamp(double sine) {
        return Math.max(-1, Math.min(1, sine));
    }
}
