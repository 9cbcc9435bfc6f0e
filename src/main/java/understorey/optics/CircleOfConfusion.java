package understorey.optics;

/** Largest blur on the sensor that still looks like a point. */
public final class CircleOfConfusion {

    /** On a print seen from the least distance of distinct vision: five line pairs a millimetre. */
    private static final double ON_PRINT_MM = 0.2;
    private static final double DISTINCT_VISION_MM = 250;
    /** Least distance from which people view a large print: common practice, no source. */
    private static final double ARMS_LENGTH_MM = 600;

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

    /**
     * Circle of confusion, mm, for a print that people view from arm's length: 0.2 mm in a print at 25 cm (S. F. Ray, <cite>Applied
     * Photographic Optics</cite>, 2000, p. 52, through a secondary copy), more from farther off, over the enlargement.
     * Never more than for a whole frame, so that only a print wider than about 60 cm needs a smaller circle.
     *
     * @param widthMm      of the part of the sensor that is printed
     * @param heightMm     of that part
     * @param printWidthMm of the print, above 0
     */
    public static double mm(double widthMm, double heightMm, double printWidthMm) {
        double onPrintMm = ON_PRINT_MM * ARMS_LENGTH_MM / DISTINCT_VISION_MM;
        return Math.min(mm(widthMm, heightMm), onPrintMm * widthMm / printWidthMm);
    }
}
