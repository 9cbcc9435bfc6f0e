package understorey.kit;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.FitAdvice;
import understorey.kit.camera.Camera;
import understorey.kit.camera.Reach;
import understorey.kit.camera.Shortfall;
import understorey.kit.camera.Things;
import understorey.optics.AngleOfView;
import understorey.optics.BackgroundBlur;
import understorey.optics.Bellows;
import understorey.optics.CircleOfConfusion;
import understorey.optics.DepthOfField;
import understorey.optics.Diffraction;
import understorey.optics.FlowerLayer;
import understorey.optics.GroundView;
import understorey.optics.Sharpness;
import understorey.optics.ThinLens;
import understorey.plan.Bag;
import understorey.plan.ChosenCamera;
import understorey.plan.Filter;
import understorey.plan.Sharp;
import understorey.plan.Support;

/**
 * One camera on one picture: how it is set up, and how well it serves.
 *
 * @param focalMm       as set on the lens
 * @param cropTimes     linear; 1 for the whole frame
 * @param distanceM     from the lens to what is framed
 * @param focusM        from the lens to the plane of focus
 * @param magnification at the distance framed
 * @param fNumberNeeded that holds the sharpness asked, as set on the lens, not snapped to a marking
 * @param fNumberWidest smallest f-number of the lens here
 * @param fNumberUseful largest f-number that diffraction and the lens leave of use
 * @param support       null for the hands
 * @param heightM       of the lens axis above the ground
 * @param tiltDeg       of the lens axis below the horizontal; negative looks up
 * @param filters       to put on, nearest the lens first
 * @param lossStops     light that the filters take
 * @param verdict       for a single frame
 * @param stacked       verdict for a focus stack, which holds any depth of field
 * @param penalty       in stops of shortfall; ranks lenses of one verdict
 * @param weakness      what costs the most of those stops
 * @param shortfalls    what helps are sought for, in the order of the reasons
 */
public record LensFit(Intent intent, Camera camera, double focalMm, double cropTimes, double distanceM,
                      double focusM, double magnification, double fNumberNeeded, double fNumberWidest,
                      double fNumberUseful, @Nullable Support support, double heightM, double tiltDeg,
                      List<Filter> filters, double lossStops, boolean released, Verdict verdict, Verdict stacked,
                      double penalty, Advice weakness, List<Advice> reasons, List<Shortfall> shortfalls) {

    /** Cameras within this much shortfall serve a picture equally well, stops: common practice, no source. */
    static final double EQUAL_STOPS = 0.5;
    /** Order of cameras on a picture: what the author decided on first, then the better ones. */
    static final Comparator<LensFit> BEST_FIRST = Comparator.comparing((LensFit fit) -> !fit.chosen())
            .thenComparing((one, other) -> compare(one.verdict, one.penalty, other.verdict, other.penalty));

    /** Order of cameras by verdict, then by penalty to a hundredth of a stop. */
    static int compare(Verdict one, double penalty, Verdict other, double otherPenalty) {
        int verdicts = one.compareTo(other);
        return verdicts != 0 ? verdicts : Long.compare(Math.round(penalty * 100), Math.round(otherPenalty * 100));
    }

    /** What of a bag could hold the camera, the first choice first. */
    List<Holding> holdings(Bag bag) {
        return Holding.all(bag, camera, tilt());
    }

    /** Height that the picture asks for through this lens, metres, which is where the hands hold it. */
    double wantedHeightM() {
        return tilt().heightM();
    }

    private Tilt tilt() {
        return Tilt.of(intent, camera, magnification, cropTimes, distanceM);
    }

    /** True for a camera that the author decided on. */
    public boolean chosen() {
        ChosenCamera chosen = intent.shot().chosen();
        return !chosen.equals(ChosenCamera.NONE) && chosen.is(camera.body(), camera.lens());
    }

    /** True for a camera that serves the picture better than another one, as well or nearly. */
    boolean matches(Verdict other, double otherPenalty) {
        int verdicts = verdict.compareTo(other);
        return verdicts < 0 || verdicts == 0 && penalty <= otherPenalty + EQUAL_STOPS;
    }

    /** This camera as the author's choice, with what the bag has that serves better, and why. */
    LensFit judged(List<LensFit> all) {
        LensFit better = all.stream().filter(fit -> !fit.chosen()).min(BEST_FIRST).orElse(this);
        Advice objection = objection();
        Advice judgement = matches(better.verdict, better.penalty) ? new FitAdvice.ChosenCamera()
                : new FitAdvice.BetterCamera(better.camera.name(), objection == null ? weakness : objection);
        return because(Stream.concat(Stream.of(judgement), reasons.stream()).toList());
    }

    /** This camera, left at home for one that serves better, is as good or is the author's choice. */
    LensFit leftAtHome(Object thing, LensFit best) {
        Advice why = best.chosen() ? new FitAdvice.LensNotChosen(Things.name(thing))
                : matches(best.verdict, best.penalty) ? new FitAdvice.LensAtHome(Things.name(thing))
                : new FitAdvice.LensOutclassed(Things.name(thing), best.camera.name());
        return because(Stream.concat(reasons.stream(), Stream.of(why)).toList());
    }

    private LensFit because(List<Advice> why) {
        return new LensFit(intent, camera, focalMm, cropTimes, distanceM, focusM, magnification, fNumberNeeded,
                fNumberWidest, fNumberUseful, support, heightM, tiltDeg, filters, lossStops, released, verdict, stacked, penalty,
                weakness, why, shortfalls);
    }

    /** Everything that has to be carried for it. */
    public List<Object> things() {
        List<Object> things = camera.parts();
        things.addAll(filters);
        if (support != null) {
            things.add(support);
        }
        return things;
    }

    /** First objection to the camera; null if there is none. */
    public @Nullable Advice objection() {
        return reasons.stream().filter(reason -> reason.severity() == Advice.Severity.OBJECTION).findFirst().orElse(null);
    }

    /** True if the author did not say what must be sharp. */
    public boolean depthIsProposed() {
        return intent.assumed().contains("sharp");
    }

    /** True for a view that no single frame comes near to holding. */
    public boolean hopelesslyDeep() {
        return intent.sharp() instanceof Sharp.Range
                && 2 * Framing.log2(fNumberNeeded / fNumberUseful) > LensTrial.HOPELESS_STOPS;
    }

    /** Full-frame equivalent of the picture as cropped, mm. */
    public double equivalentMm() {
        return focalMm * camera.sensor().crop() * cropTimes;
    }

    /** Width of the part of the sensor that is used, mm. */
    public double usedWidthMm() {
        return camera.sensor().acrossMm(intent.orientation()) / cropTimes;
    }

    /** Height of the part of the sensor that is used, mm. */
    public double usedHeightMm() {
        return camera.sensor().upMm(intent.orientation()) / cropTimes;
    }

    /** Angle of view, focused where the picture is framed: close up less than at infinity. */
    public AngleOfView view() {
        return AngleOfView.of(actingFocalMm(), usedWidthMm(), usedHeightMm(), magnification);
    }

    /**
     * Focal length of the thin lens that magnifies so much from that distance, mm: {@code focalMm}, but for a
     * lens that shrinks it to focus close, or one with a close-up lens on.
     */
    public double actingFocalMm() {
        return ThinLens.focalMmFor(magnification, distanceM * 1000);
    }

    /** True for a view of a carpet whose frame shows none of the ground that it grows on. */
    public boolean missesTheGround() {
        return intent.sharp() instanceof Sharp.Range && intent.shot().subject().flowerAreaIndex() != null
                && !ground(nearestFocusM()).showsGround(FlowerLayer.FAR_M);
    }

    /** True for a camera tilted more than 45° to the ground, which alone is in the frame. */
    public boolean looksDown() {
        return tiltDeg + intent.riseDeg() > Math.max(Tilt.STEEPEST_DEG, view().verticalDeg() / 2);
    }

    /** The ground in the frame, from a distance on that is in focus, metres. */
    public GroundView ground(double closestM) {
        return new GroundView(heightM, Math.max(-90, Math.min(90, tiltDeg)), intent.riseDeg(), view(), closestM);
    }

    /** How many times a close-up lens shortens the focal length, and with it the f-number; 1 without one. */
    public double closeUpTimes() {
        return camera.closeUpTimes(focalMm);
    }

    /**
     * The plane of focus as a lens marks it, from the sensor, metres: the thin lens's subject and image distance
     * together.
     */
    public double focusFromSensorM() {
        return fromSensorM(focusM);
    }

    /** Distance from the sensor of a plane that is given by its distance from the lens, metres. */
    public double fromSensorM(double subjectM) {
        double subjectMm = subjectM * 1000;
        return (subjectMm + 1 / (1 / actingFocalMm() - 1 / subjectMm)) / 1000;
    }

    /** Minimum focus distance from the lens at this focal length, with any attachment, metres. */
    public double nearestFocusM() {
        return Reach.of(camera, focalMm).nearestMm() / 1000;
    }

    /** Maximum focus distance from the lens, metres; positive infinity without an attachment. */
    public double farthestFocusM() {
        return Reach.of(camera, focalMm).farthestMm() / 1000;
    }

    /** Magnification by extension of the lens, without what a close-up lens adds. */
    private double bellowsMagnification() {
        return (1 + magnification) / closeUpTimes() - 1;
    }

    /** Light that the extension of the lens costs, stops; a close-up lens costs none. */
    public double closenessStops() {
        return Bellows.stops(bellowsMagnification());
    }

    /** Effective f-number in light and diffraction of an f-number set on the lens: N·(1 + m). */
    public double workingFNumber(double fNumber) {
        return fNumber * (1 + bellowsMagnification());
    }

    /** The f-number, as set on the lens, that makes both ends of the sharpness asked as sharp as they get. */
    public double fNumberBalanced() {
        return Sharpness.balancedFNumber(fNumberNeeded, circleOfConfusionMm(), bellowsMagnification());
    }

    /** The largest f-number at which the plane of focus itself stays sharp; no more than {@link #fNumberUseful}. */
    public double fNumberUnsoftened() {
        return Math.max(fNumberWidest, Math.min(fNumberUseful,
                Diffraction.largestUsefulFNumber(circleOfConfusionMm(), bellowsMagnification())));
    }

    /** Depth of field at an f-number set on the lens and focused at a distance, mm from the lens. */
    public DepthOfField depthOfField(double fNumber, double focusMm) {
        return DepthOfField.of(actingFocalMm(), fNumber / closeUpTimes(), circleOfConfusionMm(), focusMm);
    }

    /** Blur disc on the sensor of a point at a distance from the lens, mm, at an f-number set on the lens. */
    public double blurDiscMm(double fNumber, double pointMm) {
        return BackgroundBlur.discMm(actingFocalMm(), fNumber / closeUpTimes(), focusM * 1000, pointMm);
    }

    /** Width of the picture at the distance framed, metres. */
    public double frameWidthM() {
        return usedWidthMm() / magnification / 1000;
    }

    /** True for a frame of plants in their place, not of one. */
    public boolean isScene() {
        return frameWidthM() > ProposedSharp.SCENE_M;
    }

    /** Height of the picture at the distance framed, metres. */
    public double frameHeightM() {
        return usedHeightMm() / magnification / 1000;
    }

    /** Width of the flower head, mm, or of one of its flowers where the head does not fit into the frame; null if unknown. */
    public @Nullable Double flowerWidthMm() {
        return intent.shot().subject().widthInFrameMm(1000 * frameWidthM(), 1000 * frameHeightM());
    }

    /** Circle of confusion on the part of the sensor that is used, mm. */
    public double circleOfConfusionMm() {
        return circleOfConfusionMm(intent, camera, cropTimes);
    }

    static double circleOfConfusionMm(Intent intent, Camera camera, double cropTimes) {
        double widthMm = camera.sensor().acrossMm(intent.orientation()) / cropTimes;
        double heightMm = camera.sensor().upMm(intent.orientation()) / cropTimes;
        Double printM = intent.shot().printWidthM();
        return printM == null ? CircleOfConfusion.mm(widthMm, heightMm)
                : CircleOfConfusion.mm(widthMm, heightMm, printM * 1000);
    }

    /** True when a useful aperture holds the sharpness asked, to a third of a stop. */
    public boolean holdsDepth() {
        return fNumberNeeded <= fNumberUseful * LensTrial.THIRD_STOP;
    }

    /** True when something keeps the camera still for seconds; a monopod does not. */
    public boolean steady() {
        return Holding.steady(support);
    }
}
