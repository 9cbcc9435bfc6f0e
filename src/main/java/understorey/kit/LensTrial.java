package understorey.kit;

import java.util.ArrayList;
import java.util.List;
import understorey.advice.Advice;
import understorey.advice.FitAdvice;
import understorey.kit.camera.Camera;
import understorey.kit.camera.Polarising;
import understorey.kit.camera.Reach;
import understorey.kit.camera.Shortfall;
import understorey.optics.BackgroundBlur;
import understorey.optics.Diffraction;
import understorey.optics.Sharpness;
import understorey.optics.ThinLens;
import understorey.plan.Bag;
import understorey.plan.Sharp;

/** Tries one camera on one picture. */
final class LensTrial {

    /** Where the bag does not say how far a lens stops down: common practice, no source. */
    private static final double SMALLEST_STOP = 16;
    /** Beyond three stops the foreground or the background is lost: common practice, no source. */
    static final double HOPELESS_STOPS = 3;
    /** Dots an inch of a print that is looked at from arm's length: common practice, no source. */
    private static final double PRINT_DPI = 150;
    /** Close up, more depth is worth a little diffraction: common practice, no source. */
    private static final double CLOSE_UP_GRACE = 1.5;
    /** A third of a stop in f-number; smaller differences do not show. */
    static final double THIRD_STOP = Math.pow(2, 1 / 6.0);

    /** Shortfall of a picture without the polariser that it asks for, stops: common practice, no source. */
    static final double WITHOUT_POLARISER = 0.5;

    private final Bag bag;
    private final Bag carried;
    private final Camera camera;
    private final Intent intent;
    private final Framing framing;
    private final List<Advice> reasons = new ArrayList<>();
    private final List<Shortfall> shortfalls = new ArrayList<>();
    private Verdict verdict;
    private Verdict stacked;
    private double penalty;
    private Craft.Point weakest;

    private LensTrial(Bag bag, Bag carried, Camera camera, Intent intent) {
        this.bag = bag;
        this.carried = carried;
        this.camera = camera;
        this.intent = intent;
        this.framing = Framing.of(camera, intent);
        this.verdict = framing.verdict();
        this.stacked = verdict;
        this.penalty = framing.penalty();
        this.weakest = framing.weakest();
        reasons.addAll(framing.reasons());
        shortfalls.addAll(framing.shortfalls());
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
        shortfalls.addAll(polarising.shortfalls());
        if (polarising.missing()) {
            count(WITHOUT_POLARISER, Verdict.COMPROMISE, polarising.reasons().get(0));
        }
        Tilt tilt = Tilt.of(intent, camera, framing.magnification(), framing.cropTimes(), framing.distanceM());
        Holding holding = Holding.of(bag, carried, camera, tilt);
        reasons.addAll(holding.reasons());
        shortfalls.addAll(holding.shortfalls());
        return new LensFit(intent, camera, framing.reach().focalMm(), framing.cropTimes(),
                framing.distanceM(), focusMm / 1000, framing.magnification(), needed, widest, useful,
                holding.support(), holding.heightM(), tilt.deg(holding.heightM()),
                polarising.filters(), polarising.lossStops(), bag.remoteRelease(), verdict, stacked, penalty, weakest.reason(),
                List.copyOf(reasons), List.copyOf(shortfalls));
    }

    /**
     * Distance of the plane of focus from the lens, mm. What must be sharp may be nearer than the frame that is asked. Focus
     * then stays so far that a lens set for that frame magnifies at most life size.
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
        Advice reason = proposed ? new FitAdvice.DepthProposedShort(needed, useful)
                : stackable ? new FitAdvice.DepthShort(needed, useful) : new FitAdvice.DepthFixed(useful, needed);
        Verdict otherwise = stacked;
        count(stops / 2, proposed ? Verdict.FITS
                : range && stops > HOPELESS_STOPS && !stackable ? Verdict.CANNOT : Verdict.COMPROMISE, reason);
        stacked = stackable ? otherwise : stacked;
        reasons.add(reason);
        if (!proposed) {
            shortfalls.add(new Shortfall.TooDeep());
        }
    }

    private void count(double stops, Verdict what, Advice reason) {
        verdict = verdict.and(what);
        stacked = stacked.and(what);
        penalty += stops;
        weakest = stops > weakest.stops() ? new Craft.Point(stops, what, reason) : weakest;
    }

    private void print() {
        Double widthM = intent.shot().printWidthM();
        if (widthM == null) {
            return;
        }
        double aspect = camera.sensor().acrossMm(intent.orientation()) / camera.sensor().upMm(intent.orientation());
        double neededAcross = widthM / 0.0254 * PRINT_DPI;
        double neededMpx = neededAcross * neededAcross / aspect / 1e6;
        double leftMpx = camera.body().pixelsMpx() / (framing.cropTimes() * framing.cropTimes());
        if (leftMpx < neededMpx) {
            Advice reason = new FitAdvice.PrintSoft(leftMpx, neededMpx, widthM);
            count(Framing.log2(neededMpx / leftMpx) / 2, Verdict.COMPROMISE, reason);
            shortfalls.add(new Shortfall.TooFewPixels(leftMpx, neededMpx));
            reasons.add(reason);
        }
    }
}
