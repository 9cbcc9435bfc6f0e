package understorey.optics;

/**
 * Angle of view of a rectilinear lens: horizontal, vertical and diagonal.
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

    private static double degrees(double sideMm, double imageMm) {
        return Math.toDegrees(2 * Math.atan(sideMm / (2 * imageMm)));
    }
}
