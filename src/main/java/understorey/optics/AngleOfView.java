package understorey.optics;

/**
 * What a rectilinear lens takes in, side to side, top to bottom and corner to corner.
 *
 * @param horizontalDeg along the frame's width, 0 to 180
 * @param verticalDeg   along the frame's height, 0 to 180
 * @param diagonalDeg   corner to corner, 0 to 180
 */
public record AngleOfView(double horizontalDeg, double verticalDeg, double diagonalDeg) {

    /**
     * Angle of view focused at infinity: 2·atan(side / 2f), the sides and f in mm. For any positive sizes;
     * within 0.1° of B. Claff, <cite>Angle of View Values for Common Focal Lengths</cite>, 2006. Marked focal
     * lengths are rounded by up to 5 % (from memory), which weighs more.
     */
    public static AngleOfView of(double focalMm, double widthMm, double heightMm) {
        return of(focalMm, widthMm, heightMm, 0);
    }

    /**
     * Angle of view at a magnification of 0 (infinity) or more: the image lies f·(1 + m) behind the lens, so
     * 2·atan(side / (2f(1 + m))). Thin lens; at life size a 50 mm lens sees what 100 mm sees at infinity.
     */
    public static AngleOfView of(double focalMm, double widthMm, double heightMm, double magnification) {
        if (!(focalMm > 0) || !(widthMm > 0) || !(heightMm > 0) || !(magnification >= 0)) {
            throw new IllegalArgumentException(
                    "no such view: " + focalMm + " mm on " + widthMm + " × " + heightMm + " at " + magnification);
        }
        double imageMm = focalMm * (1 + magnification);
        return new AngleOfView(
                degrees(widthMm, imageMm),
                degrees(heightMm, imageMm),
                degrees(Math.hypot(widthMm, heightMm), imageMm));
    }

    /**
     * True when a direction lies within the frame of a level camera that is tilted down: the direction turned into
     * the lens's axes and projected straight, x / z against tan(angle / 2). Exact for a rectilinear lens, for angles
     * of view below 180°.
     *
     * @param asideDeg    of the lens axis by bearing, either way
     * @param altitudeDeg above the horizontal
     * @param tiltDeg     of the lens axis below the horizontal; negative looks up
     */
    public boolean holds(double asideDeg, double altitudeDeg, double tiltDeg) {
        double aside = Math.toRadians(asideDeg);
        double altitude = Math.toRadians(altitudeDeg);
        double tilt = Math.toRadians(tiltDeg);
        double ahead = Math.cos(altitude) * Math.cos(aside);
        double depth = ahead * Math.cos(tilt) - Math.sin(altitude) * Math.sin(tilt);
        double up = ahead * Math.sin(tilt) + Math.sin(altitude) * Math.cos(tilt);
        return depth > 0 && Math.abs(Math.cos(altitude) * Math.sin(aside)) <= depth * halfTangent(horizontalDeg)
                && Math.abs(up) <= depth * halfTangent(verticalDeg);
    }

    private static double halfTangent(double viewDeg) {
        return Math.tan(Math.toRadians(viewDeg / 2));
    }

    private static double degrees(double sideMm, double imageMm) {
        return Math.toDegrees(2 * Math.atan(sideMm / (2 * imageMm)));
    }
}
