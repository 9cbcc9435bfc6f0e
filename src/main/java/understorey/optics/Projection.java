package understorey.optics;

import org.jspecify.annotations.Nullable;

/**
 * A pinhole camera held level from side to side: where a direction falls in its frame, and the way back. Straight
 * lines stay straight, as with a rectilinear lens without distortion; the level horizon is a level line.
 *
 * @param axis       of the lens; its bearing points to the top of the frame where it looks straight down
 * @param halfWidth  tangent of half the horizontal angle of view
 * @param halfHeight tangent of half the vertical one
 */
public record Projection(Direction axis, double halfWidth, double halfHeight) {

    /** Cosine of the angle to the axis below which a place would be further out than any drawing. */
    private static final double LEAST_FORWARD = 1e-9;

    /**
     * A place in the plane of the frame; outside it the numbers go on.
     *
     * @param x −1 at the left edge, 1 at the right
     * @param y −1 at the bottom, 1 at the top
     */
    public record Place(double x, double y) {
        public boolean inFrame() {
            return Math.abs(x) <= 1 && Math.abs(y) <= 1;
        }
    }

    public Projection {
        if (!(Math.abs(axis.altitudeDeg()) <= 90) || !(halfWidth > 0) || !(halfHeight > 0)) {
            throw new IllegalArgumentException("no such camera: " + axis + ", " + halfWidth + " by " + halfHeight);
        }
    }

    /** A camera that faces a bearing, its axis tilted below the horizontal by −90 (straight up) to 90 degrees. */
    public static Projection of(double facingDeg, double tiltDeg, AngleOfView view) {
        return new Projection(new Direction(facingDeg, -tiltDeg), Math.tan(Math.toRadians(view.horizontalDeg() / 2)),
                Math.tan(Math.toRadians(view.verticalDeg() / 2)));
    }

    /** Where a direction falls; null when it lies behind the camera or at right angles to the axis. */
    public @Nullable Place place(double bearingDeg, double altitudeDeg) {
        Direction.Seen seen = axis.seen(new Direction(bearingDeg, altitudeDeg));
        if (seen.forward() < LEAST_FORWARD) {
            return null;
        }
        return new Place(seen.right() / seen.forward() / halfWidth, seen.up() / seen.forward() / halfHeight);
    }

    /** The direction that falls on a place, its bearing 0 to 360. */
    public Direction direction(double x, double y) {
        double right = x * halfWidth;
        double up = y * halfHeight;
        double cosine = Math.cos(Math.toRadians(axis.altitudeDeg()));
        double sine = Math.sin(Math.toRadians(axis.altitudeDeg()));
        double along = cosine - up * sine;
        double bearingDeg = axis.bearingDeg() + Math.toDegrees(Math.atan2(right, along));
        return new Direction((bearingDeg % 360 + 360) % 360,
                Math.toDegrees(Math.atan2(sine + up * cosine, Math.hypot(right, along))));
    }

    /** Angle in space from a direction to the nearest point of the frame, 0 to 180°; 0 inside. */
    public double offFrameDeg(double bearingDeg, double altitudeDeg) {
        Place place = place(bearingDeg, altitudeDeg);
        if (place != null && place.inFrame()) {
            return 0;
        }
        Direction.Seen seen = axis.seen(new Direction(bearingDeg, altitudeDeg));
        double right = Math.abs(seen.right());
        double up = Math.abs(seen.up());
        return Math.toDegrees(Math.min(toEdge(halfWidth, halfHeight, right, up, seen.forward()),
                toEdge(halfHeight, halfWidth, up, right, seen.forward())));
    }

    /**
     * Angle, radians, to an edge that lies {@code out} from the middle of the frame at a distance of one and reaches
     * {@code half} to either side. The edge is a piece of a great circle; where the foot of the perpendicular lies
     * beyond its end, the corner is the nearest. Both parts of the direction are taken as positive: the frame is
     * the same left and right, above and below.
     */
    private static double toEdge(double out, double half, double across, double beside, double forward) {
        double slant = Math.sqrt(1 + out * out);
        double towards = (across * out + forward) / slant;
        double nearest = Math.min(Math.atan2(beside, towards), Math.atan2(half, slant));
        double cosine = towards * Math.cos(nearest) + beside * Math.sin(nearest);
        return Math.acos(Math.max(-1, Math.min(1, cosine)));
    }
}
