package understorey.optics;

/** A plane of sloping ground: how steep it is, 0 to 90°, and the bearing that it faces, downhill. All angles are degrees. */
public final class Incline {

    private Incline() {
    }

    /**
     * Rise of the plane along a bearing, −90 to 90, positive uphill: tan = −tan(angle) · cos(bearing − faces). It is as
     * steep as the slope uphill, level across it, and negative downhill. Apparent dip, a textbook identity of geology.
     */
    public static double riseDeg(double angleDeg, double facesDeg, double bearingDeg) {
        return Math.toDegrees(Math.atan(-Math.tan(Math.toRadians(angleDeg)) * Math.cos(Math.toRadians(bearingDeg - facesDeg))));
    }

    /**
     * Cosine of the angle between rays from the sun and the normal of the plane; 0 for a sun behind the plane. Spherical
     * cosine rule, as in Reda and Andreas, NREL/TP-560-34302, eq. 47.
     *
     * @param azimuthDeg  bearing of the sun
     * @param altitudeDeg at which the sun is seen
     */
    public static double incidence(double angleDeg, double facesDeg, double azimuthDeg, double altitudeDeg) {
        double h = Math.toRadians(altitudeDeg);
        double s = Math.toRadians(angleDeg);
        return Math.max(0, Math.sin(h) * Math.cos(s)
                + Math.cos(h) * Math.sin(s) * Math.cos(Math.toRadians(azimuthDeg - facesDeg)));
    }

    /** Share of an evenly bright sky that the plane faces, ½ to 1: (1 + cos angle) / 2. Liu and Jordan 1963, from memory. */
    public static double skyShare(double angleDeg) {
        return (1 + Math.cos(Math.toRadians(angleDeg))) / 2;
    }
}
