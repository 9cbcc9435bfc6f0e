package understorey.plan;

/**
 * Size of a sensor, in landscape format.
 *
 * @param widthMm  the longer side
 * @param heightMm the shorter side
 */
public record Sensor(double widthMm, double heightMm) {

    public static final Sensor FULL_FRAME = new Sensor(36, 24);
    public static final Sensor APS_C = new Sensor(23.5, 15.6);
    public static final Sensor FOUR_THIRDS = new Sensor(17.3, 13.0);
    public static final Sensor ONE_INCH = new Sensor(13.2, 8.8);

    /** The level side of a picture, mm. */
    public double acrossMm(Orientation orientation) {
        return orientation == Orientation.LANDSCAPE ? widthMm : heightMm;
    }

    /** The upright side of a picture, mm. */
    public double upMm(Orientation orientation) {
        return orientation == Orientation.LANDSCAPE ? heightMm : widthMm;
    }

    /** Diagonal, mm. */
    public double diagonalMm() {
        return Math.hypot(widthMm, heightMm);
    }

    /** Crop factor: full-frame diagonal / this diagonal. Focal length × crop factor is the full-frame equivalent. */
    public double crop() {
        return FULL_FRAME.diagonalMm() / diagonalMm();
    }
}
