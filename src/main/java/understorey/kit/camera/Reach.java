package understorey.kit.camera;

import understorey.optics.ThinLens;
import understorey.plan.Lens;

/**
 * From where to where a camera focuses at one focal length. Distances are mm from the front principal plane.
 *
 * <p>A lens keeps its marked focal length f. Where its breathing b is given, it has f·(1 − b·m/M) at a magnification m,
 * M being its greatest. Where it is not given, and no thin lens of length f joins M to the closest distance, the focal
 * length g that joins them is reached at M: the lens has f up to a tenth of life size or half of M, whichever is less,
 * and from there, at m₀, f − (f − g)·((m − m₀) / (M − m₀))². Both are assumptions, no source. A tube adds its length
 * over the focal length; a close-up lens of power D makes (1 + m)(1 + fD) − 1 of m (thin lenses in contact).
 *
 * @param focalMm      as set on the lens
 * @param alone        greatest magnification of the lens without attachment
 * @param closeFocalMm focal length there
 * @param breathes     true where the author gave the breathing
 * @param closeUpTimes 1 + fD of a close-up lens; 1 for none
 * @param extension    a tube's length over the focal length; 0 for none
 */
public record Reach(double focalMm, double alone, double closeFocalMm, boolean breathes, double closeUpTimes,
             double extension) {

    /** Halvings that find a magnification to the last bit that a double holds. */
    private static final int HALVINGS = 60;
    /** Magnification from which one speaks of a close-up: common practice, no source. */
    public static final double CLOSE_UP = 0.1;

    public static Reach of(Camera camera, double focalMm) {
        Lens lens = camera.lens();
        boolean breathes = lens.breathing() != null;
        double leftMm = lens.breathing() == null ? focalMm : focalMm * (1 - lens.breathing());
        double alone = alone(lens, leftMm, leftMm / focalMm * lens.longestMm());
        double joinedMm = ThinLens.focalMmAtSensorDistance(alone, lens.closestM() * 1000);
        return new Reach(focalMm, alone, breathes ? leftMm : Math.min(focalMm, joinedMm), breathes,
                camera.closeUpTimes(focalMm), camera.tubeMm() / focalMm);
    }

    /**
     * Greatest magnification of the lens alone, from the focal length that it has left at its closest focus. The
     * maker's figure holds at the long end; at shorter ones it is the limit of what the thin lens gives from the
     * closest distance. Where it is above the thin lens's at the long end, shorter ones gain as much. Where no figure is
     * given, a lens that comes nearer than four focal lengths is taken to reach f/(D − f).
     */
    private static double alone(Lens lens, double leftMm, double longestLeftMm) {
        double closestMm = lens.closestM() * 1000;
        if (lens.magnification() == null) {
            return closestMm >= 4 * leftMm || closestMm <= leftMm ? thin(closestMm, leftMm)
                    : Math.min(1, leftMm / (closestMm - leftMm));
        }
        double gain = Math.max(1, lens.magnification() / thin(closestMm, longestLeftMm));
        return Math.min(lens.magnification(), thin(closestMm, leftMm) * gain);
    }

    /** Magnification of a thin lens; life size, its limit, from nearer than it forms an image. */
    private static double thin(double closestMm, double focalMm) {
        return closestMm >= 4 * focalMm ? ThinLens.magnificationAtSensorDistance(focalMm, closestMm) : 1;
    }

    public double greatest() {
        return (1 + alone) * closeUpTimes - 1 + extension;
    }

    /** With an attachment a lens no longer sees the distance: the least it then magnifies. */
    public double least() {
        return closeUpTimes - 1 + extension;
    }

    public double nearestMm() {
        return distanceMm(greatest());
    }

    /** Positive infinity without an attachment. */
    public double farthestMm() {
        return distanceMm(least());
    }

    /** Focal length that lens and close-up lens together come to at a magnification. */
    public double actingFocalMm(double magnification) {
        double own = (1 + magnification - extension) / closeUpTimes - 1;
        double bareMm = focalMm + lostShare(own) * (closeFocalMm - focalMm);
        return bareMm / (1 + bareMm * (closeUpTimes - 1) / focalMm);
    }

    /** Share, 0 to 1, of all the focal length that the lens loses. */
    private double lostShare(double own) {
        double from = breathes ? 0 : Math.min(CLOSE_UP, alone / 2);
        double share = Math.max(0, Math.min(1, (own - from) / (alone - from)));
        return breathes ? share : share * share;
    }

    /** Where a subject lies that is magnified so much. */
    public double distanceMm(double magnification) {
        return ThinLens.subjectMm(actingFocalMm(magnification), magnification);
    }

    /** Magnification of a subject at a distance; of the nearest or farthest that comes into focus beyond those. */
    public double magnificationAt(double distanceMm) {
        double low = least();
        double high = greatest();
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (distanceMm(middle) > distanceMm) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }
}
