package understorey.optics;

/**
 * A camera above ground that rises or falls evenly along the view, and which rows of its frame show that ground.
 *
 * <p>A row is given by its height in the frame: the tangent of its angle above the lens axis, so that equal steps
 * are equal heights in the picture. Ground that leans sideways is not covered. A camera tilted past the upright
 * on a steep bank is taken as its mirror image, which shows as much.
 *
 * @param heightM  of the lens above the ground below it, plumb, above 0
 * @param tiltDeg  of the lens axis below the horizontal, −90 to 90; negative looks up
 * @param slopeDeg of the ground along the view, −90 to 90; positive rises away from the camera
 * @param angle    of view, each way above 0 and below 180
 * @param closestM least depth along the lens axis that the lens focuses on, 0 or more
 */
public record GroundView(double heightM, double tiltDeg, double slopeDeg, AngleOfView angle, double closestM) {

    public GroundView {
        if (!(heightM > 0) || !(Math.abs(tiltDeg) <= 90) || !(Math.abs(slopeDeg) <= 90) || !(closestM >= 0)) {
            throw new IllegalArgumentException("no such view: " + heightM + " m, tilt " + tiltDeg + "°, slope "
                    + slopeDeg + "°, from " + closestM + " m");
        }
    }

    /**
     * Another lens from the same height, aimed so that level ground would vanish at the same height in the frame (of
     * the frame's height): tan τ′ = tan τ · tan(v′/2) / tan(v/2), τ to the ground. Where the camera is tilted little,
     * the nearest flowers, on the bottom edge, then fill the frame as before: a longer lens is further back in
     * proportion, and looks flatter. A wide one that would have to come nearer than its own feet looks down steeply
     * instead.
     */
    public GroundView through(AngleOfView other, double otherClosestM) {
        double times = Math.tan(Math.toRadians(other.verticalDeg() / 2)) / topEdge();
        double alikeDeg = Math.toDegrees(Math.atan(times * vanishingRow()));
        double pastDeg = tiltDeg + slopeDeg;
        double axisDeg = pastDeg > 90 ? 180 - alikeDeg : pastDeg < -90 ? -180 - alikeDeg : alikeDeg;
        return new GroundView(heightM, Math.max(-90, Math.min(90, axisDeg - slopeDeg)), slopeDeg, other, otherClosestM);
    }

    /** This camera at another height, its axis along the ground. */
    public GroundView along(double otherHeightM) {
        return new GroundView(otherHeightM, -slopeDeg, slopeDeg, angle, closestM);
    }

    /** True where some row of the frame shows ground that the lens focuses on, within a distance along the ground. */
    public boolean showsGround(double farM) {
        return lowestRow() < highestRow(farM);
    }

    /** Depth along the lens axis of the nearest ground in the frame, metres; positive infinity where there is none. */
    public double nearestDepthM() {
        return nearestM() / Math.hypot(1, lowestRow());
    }

    /** Distance from the lens to the nearest ground in the middle of the frame, metres; positive infinity where there is none. */
    public double nearestM() {
        double row = lowestRow();
        return row < Math.min(topEdge(), vanishingRow()) ? distanceM(row) : Double.POSITIVE_INFINITY;
    }

    /** Distance from the lens to the ground in the middle of the frame at a depth along the lens axis, metres; not straight down. */
    public double distanceAtDepthM(double depthM) {
        double axis = Math.toRadians(axisDeg());
        return depthM * Math.hypot(1, (Math.sin(axis) - aboveM() / depthM) / Math.cos(axis));
    }

    /** Distance from the lens to the ground at a right angle, metres. */
    public double aboveM() {
        return heightM * cosSlope();
    }

    double cosSlope() {
        return Math.cos(Math.toRadians(slopeDeg));
    }

    /** Angle at which the lens axis runs into the ground, degrees, −90 to 90; negative leads away from it. */
    public double axisDeg() {
        double axisDeg = tiltDeg + slopeDeg;
        return axisDeg > 90 ? 180 - axisDeg : axisDeg < -90 ? -180 - axisDeg : axisDeg;
    }

    /** The row of the frame's top edge; that of the bottom edge is its negative. */
    double topEdge() {
        return Math.tan(Math.toRadians(angle.verticalDeg() / 2));
    }

    /** Tangent of the angle from the axis to the right edge. */
    double sideEdge() {
        return Math.tan(Math.toRadians(angle.horizontalDeg() / 2));
    }

    /** The row in which endless ground would vanish, up to infinity. */
    double vanishingRow() {
        double axisDeg = axisDeg();
        return Math.abs(axisDeg) == 90 ? axisDeg * Double.POSITIVE_INFINITY : Math.tan(Math.toRadians(axisDeg));
    }

    /** The lowest row in the frame whose ground the lens focuses on; above the frame where there is none. */
    double lowestRow() {
        double axis = Math.toRadians(axisDeg());
        return Math.max(-topEdge(), (Math.sin(axis) - aboveM() / closestM) / Math.cos(axis));
    }

    /** The highest row in the frame whose ground lies within a distance along the ground; below the frame for none. */
    double highestRow(double farM) {
        double farDeg = axisDeg() - Math.toDegrees(Math.atan2(aboveM(), farM));
        return farDeg <= -90 ? Double.NEGATIVE_INFINITY : Math.min(topEdge(), Math.tan(Math.toRadians(farDeg)));
    }

    /** Grazing angle to the ground in the middle of a row, degrees; above 90 behind the foot of the upright. */
    double grazingDeg(double row) {
        return axisDeg() - Math.toDegrees(Math.atan(row));
    }

    /** Distance from the lens to the ground in the middle of a row that meets it, metres. */
    double distanceM(double row) {
        return aboveM() / Math.sin(Math.toRadians(grazingDeg(row)));
    }
}
