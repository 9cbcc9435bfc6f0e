package understorey.kit;

import understorey.advice.FitAdvice;
import understorey.kit.camera.Camera;
import understorey.kit.camera.Reach;
import understorey.optics.ThinLens;
import understorey.plan.Role;
import understorey.plan.Viewpoint;

/**
 * The focal length at which a lens suits a picture that is framed, and could be from any distance: as given; close up
 * the longest; for a plant 100 mm, and up to 200 mm from within three metres; else as for a view. Full-frame equivalents; common practice, no source.
 *
 * <p>At one frame and one depth of field, what lies far behind a plant blurs in proportion to the focal length.
 *
 * @param magnification that the frame asks for
 */
record SuitedFocal(Camera camera, Intent intent, double magnification) {

    /** From here on a plant stands out from what grows behind it: common practice, no source. */
    private static final double PLANT_EQUIVALENT_MM = 100;
    private static final double LONGEST_PLANT_EQUIVALENT_MM = 200;
    /** From farther away, leaves and stems come between: common practice, no source. */
    private static final double CLEAR_MM = 3000;
    /** Half the focal length proposed for a plant still makes it stand out: common practice, no source. */
    private static final double STANDING_OUT_OCTAVES = 1.1;
    /** Stops per octave off a focal length that the frame does not need: common practice, no source. */
    private static final double SLIGHT = 0.25;

    /** As set on the lens. */
    double focalMm() {
        double longestMm = camera.lens().longestMm();
        double wantedMm = intent.focalEquivalentMm() != null ? intent.focalEquivalentMm() / crop()
                : closeUp() ? longestMm : mostEquivalentMm() / crop();
        return Math.min(longestMm, Math.max(camera.lens().shortestMm(), wantedMm));
    }

    /** What it costs that the lens has no better one. A plant that does not stand out is a compromise. */
    Craft.Point point() {
        double haveMm = focalMm() * crop();
        if (intent.focalEquivalentMm() != null) {
            return new Craft.Point(Math.abs(Framing.log2(haveMm / intent.focalEquivalentMm())), Verdict.FITS,
                    missing(haveMm, intent.focalEquivalentMm()));
        }
        double octavesShort = Framing.log2(leastEquivalentMm() / haveMm);
        if (octavesShort > 0) {
            boolean far = !closeUp() && octavesShort > (plant() ? STANDING_OUT_OCTAVES : Framing.NEAREST_OCTAVES);
            return new Craft.Point((plant() ? Framing.PER_OCTAVE : far ? 1 : SLIGHT) * octavesShort, far ? Verdict.COMPROMISE : Verdict.FITS,
                    plant() && far ? new FitAdvice.BackgroundWide(haveMm, leastEquivalentMm()) : missing(haveMm, leastEquivalentMm()));
        }
        double octavesLong = closeUp() ? 0 : Math.max(0, Framing.log2(haveMm / mostEquivalentMm()));
        return new Craft.Point(SLIGHT * octavesLong, Verdict.FITS, missing(haveMm, mostEquivalentMm()));
    }

    private static FitAdvice missing(double haveMm, double suitsMm) {
        return haveMm < suitsMm ? new FitAdvice.ProposedWider(haveMm, suitsMm) : new FitAdvice.ProposedLonger(haveMm, suitsMm);
    }

    private double crop() {
        return camera.sensor().crop();
    }

    private boolean plant() {
        return intent.role() == Role.DETAIL || intent.role() == Role.CLOSING;
    }

    private boolean closeUp() {
        return magnification * crop() >= Reach.CLOSE_UP || camera.attachment() != null;
    }

    private double mostEquivalentMm() {
        double leastMm = leastEquivalentMm();
        return plant() ? Math.max(leastMm, Math.min(LONGEST_PLANT_EQUIVALENT_MM, ThinLens.focalMmFor(magnification, CLEAR_MM) * crop())) : leastMm;
    }

    /** A plant that is small in its frame is a view of its place. */
    private double leastEquivalentMm() {
        double viewMm = Intent.viewEquivalentMm(intent.role(), intent.role() == Role.APPROACH ? intent.viewpoint() : Viewpoint.Stance.STANDING);
        Double plantM = intent.shot().subject().heightM();
        double frameM = camera.sensor().upMm(intent.orientation()) / magnification / 1000;
        double share = (plantM == null ? Intent.UNKNOWN_PLANT_M : plantM) / frameM;
        return plant() ? viewMm * Math.pow(PLANT_EQUIVALENT_MM / viewMm, Math.min(1, share / Intent.DETAIL_FILLS)) : viewMm;
    }
}
