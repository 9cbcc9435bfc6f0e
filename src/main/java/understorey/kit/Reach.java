package understorey.kit;

import understorey.optics.ThinLens;
import understorey.plan.Lens;

/**
 * From where to where a camera focuses at one focal length. Distances are mm from the front principal plane.
 *
 * <p>Where a maker states a closest distance that no thin lens of that focal length reaches with that
 * magnification, the lens has shrunk its focal length while focusing; it is taken to shrink evenly with
 * magnification (an assumption, no source). A tube adds its length over the focal length; a close-up lens of
 * power D makes (1 + m)(1 + fD) − 1 of m (thin lenses in contact).
 *
 * @param focalMm      as set on the lens
 * @param alone        greatest magnification of the lens without attachment
 * @param closeFocalMm that it has shrunk to there; the same as {@code focalMm} for a lens that moves as a whole
 * @param closeUpTimes 1 + fD of a close-up lens; 1 for none
 * @param extension    a tube's length over the focal length; 0 for none
 */
record Reach(double focalMm, double alone, double closeFocalMm, double closeUpTimes, double extension) {

    /** Halvings that find a magnification to the last bit that a double holds. */
    private static final int HALVINGS = 60;

    static Reach of(Camera camera, double focalMm) {
        Lens lens = camera.lens();
        double closestMm = lens.closestM() * 1000;
        double alone = alone(lens, focalMm);
        return new Reach(focalMm, alone, Math.min(focalMm, ThinLens.focalMmAtSensorDistance(alone, closestMm)),
                camera.closeUpTimes(focalMm), camera.tubeMm() / focalMm);
    }

    /**
     * Greatest magnification of the lens alone: the maker's figure at the long end, and no more than its share at
     * shorter ones (m in proportion to the focal length from one distance). Where none is given, the thin lens's from
     * the closest distance; a lens that comes nearer than four focal lengths shrinks while focusing, and f/(D − f)
     * is assumed.
     */
    private static double alone(Lens lens, double focalMm) {
        double closestMm = lens.closestM() * 1000;
        double thin = closestMm >= 4 * focalMm ? ThinLens.magnificationAtSensorDistance(focalMm, closestMm)
                : Math.min(1, focalMm / (closestMm - focalMm));
        if (lens.magnification() == null) {
            return closestMm > focalMm ? thin : 1;
        }
        double share = lens.magnification() * focalMm / lens.longestMm();
        return focalMm == lens.longestMm() || closestMm <= focalMm ? share : Math.min(share, thin);
    }

    double greatest() {
        return (1 + alone) * closeUpTimes - 1 + extension;
    }

    /** With an attachment a lens no longer sees the distance: the least it then magnifies. */
    double least() {
        return closeUpTimes - 1 + extension;
    }

    double nearestMm() {
        return distanceMm(greatest());
    }

    /** Positive infinity without an attachment. */
    double farthestMm() {
        return distanceMm(least());
    }

    /** Focal length that lens and close-up lens together come to at a magnification. */
    double actingFocalMm(double magnification) {
        double own = (1 + magnification - extension) / closeUpTimes - 1;
        double share = Math.max(0, Math.min(1, own / alone));
        double bareMm = focalMm + share * (closeFocalMm - focalMm);
        return bareMm / (1 + bareMm * (closeUpTimes - 1) / focalMm);
    }

    /** Where a subject lies that is magnified so much. */
    double distanceMm(double magnification) {
        return ThinLens.subjectMm(actingFocalMm(magnification), magnification);
    }

    /** Magnification of a subject at a distance; of the nearest or farthest that comes into focus beyond those. */
    double magnificationAt(double distanceMm) {
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
