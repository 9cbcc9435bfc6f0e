package understorey.optics;

/**
 * A way to look, or the way to something far off.
 *
 * @param bearingDeg  from true north, clockwise; any turn
 * @param altitudeDeg above the level horizon, −90 to 90
 */
public record Direction(double bearingDeg, double altitudeDeg) {

    /** Parts of a unit vector, seen by a level camera that looks this way. */
    record Seen(double right, double up, double forward) {
    }

    /**
     * Angle in space to another direction, 0 to 180°: the great circle between them. Written with the arc tangent,
     * it keeps its precision near 0° and 180°.
     */
    public double angleDeg(Direction other) {
        Seen seen = seen(other);
        return Math.toDegrees(Math.atan2(Math.hypot(seen.right, seen.up), seen.forward));
    }

    /** Another direction by its parts to the right of this one, above it, and along it. */
    Seen seen(Direction other) {
        double turn = Math.toRadians(other.bearingDeg - bearingDeg);
        double level = Math.cos(Math.toRadians(other.altitudeDeg));
        double rise = Math.sin(Math.toRadians(other.altitudeDeg));
        double along = level * Math.cos(turn);
        double cosine = Math.cos(Math.toRadians(altitudeDeg));
        double sine = Math.sin(Math.toRadians(altitudeDeg));
        return new Seen(level * Math.sin(turn), rise * cosine - along * sine, along * cosine + rise * sine);
    }
}
