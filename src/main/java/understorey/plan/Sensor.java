package understorey.plan;

/**
 * A sensor, landscape way up.
 *
 * @param widthMm  the longer side
 * @param heightMm the shorter side
 */
public record Sensor(double widthMm, double heightMm) {

    public static final Sensor FULL_FRAME = new Sensor(36, 24);
    public static final Sensor APS_C = new Sensor(23.5, 15.6);
    public static final Sensor FOUR_THIRDS = new Sensor(17.3, 13.0);
    public static final Sensor ONE_INCH = new Sensor(13.2, 8.8);

    /** Corner to corner, mm. */
    public double diagonalMm() {
        return Math.hypot(widthMm, heightMm);
    }

    /** Full-frame diagonal over this diagonal: focal length × crop is the full-frame equivalent. */
    public double crop() {
        return FULL_FRAME.diagonalMm() / diagonalMm();
    }
}
