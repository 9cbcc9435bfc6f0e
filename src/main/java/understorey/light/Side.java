package understorey.light;

/** Side from which the sun lights a picture, in the terms of the trade. Common practice, no source. */
public enum Side {
    /** The sun is ahead, its bearing within 45° of the axis. */
    BACK,
    /** Between back and front light, from either hand. */
    SIDE,
    /** The sun is behind the camera, its bearing 135° and more from the axis. */
    FRONT,
    /** The sun is 55° high or higher, wherever the camera looks. */
    OVERHEAD;

    static final double AHEAD_DEG = 45;
    static final double OVERHEAD_DEG = 55;

    /** By the sun's bearing from the axis, −180 to 180, and its apparent altitude, both in degrees. */
    static Side of(double bearingDeg, double apparentAltitudeDeg) {
        if (apparentAltitudeDeg >= OVERHEAD_DEG) {
            return OVERHEAD;
        }
        double turn = Math.abs(bearingDeg);
        if (turn <= AHEAD_DEG) {
            return BACK;
        }
        return turn >= 180 - AHEAD_DEG ? FRONT : SIDE;
    }
}
