package understorey.kit;

import org.jspecify.annotations.Nullable;
import understorey.plan.Shot;
import understorey.plan.Viewpoint;

/**
 * A camera that the author tilts more than 45° to the ground: its axis meets the flower heads, and height and distance
 * decide each other. Metres and degrees.
 *
 * @param grazingDeg of the axis to the ground, above 45
 * @param riseDeg    of the ground along the view
 * @param headsM     height of the flower heads
 */
record Overhead(double grazingDeg, double riseDeg, double headsM) {

    /** Null for a camera that is tilted less or as the picture asks, or that is no higher than the flowers. */
    static @Nullable Overhead of(Shot shot, Viewpoint viewpoint, double riseDeg) {
        double headsM = headsM(shot);
        Double tiltDeg = shot.tiltDeg();
        return tiltDeg != null && isOverhead(shot, riseDeg) && headsM < Intent.nominalHeightM(viewpoint)
                ? new Overhead(tiltDeg + riseDeg, riseDeg, headsM) : null;
    }

    static double headsM(Shot shot) {
        return shot.subject().heightM() == null ? Intent.UNKNOWN_PLANT_M : shot.subject().heightM();
    }

    static @Nullable Overhead of(Intent intent) {
        return of(intent.shot(), intent.viewpoint(), intent.riseDeg());
    }

    /** True where the author tilts the camera that much. */
    static boolean isOverhead(Shot shot, double riseDeg) {
        return shot.tiltDeg() != null && shot.tiltDeg() + riseDeg > Tilt.STEEPEST_DEG;
    }

    /** Distance from a lens at a height to the heads on its axis: (h − heads)·cos α / sin(axis to the ground). */
    double distanceM(double heightM) {
        return (heightM - headsM) * Math.cos(Math.toRadians(riseDeg)) / Math.sin(Math.toRadians(grazingDeg));
    }

    /** Height of a lens so far from the heads on its axis. */
    double heightM(double distanceM) {
        return headsM + distanceM * Math.sin(Math.toRadians(grazingDeg)) / Math.cos(Math.toRadians(riseDeg));
    }

    /** Depth along the axis of what is so high above the ground, on a ray that far above the axis. */
    double depthM(double heightM, double aboveGroundM, double rayDeg) {
        double plumbM = (heightM - aboveGroundM) * Math.cos(Math.toRadians(riseDeg));
        double rayGrazingDeg = grazingDeg - rayDeg;
        return rayGrazingDeg <= 0 || rayGrazingDeg >= 180 ? Double.POSITIVE_INFINITY
                : plumbM * Math.cos(Math.toRadians(rayDeg)) / Math.sin(Math.toRadians(rayGrazingDeg));
    }
}
