package understorey.optics;

/** How large a blur may be on the sensor and still pass for a point. */
public final class CircleOfConfusion {

    private CircleOfConfusion() {
    }

    /**
     * Circle of confusion d / 1500, mm, d the sensor's diagonal: R. F. Lyon, <cite>Depth of Field Outside the
     * Box</cite>, 2006. A convention of how sharp is sharp, for a whole frame seen from about its own
     * diagonal; others take 0.03 mm to 0.05 mm where this gives 0.029 mm (36 × 24 mm).
     */
    public static double mm(double widthMm, double heightMm) {
        return Math.hypot(widthMm, heightMm) / 1500;
    }
}
