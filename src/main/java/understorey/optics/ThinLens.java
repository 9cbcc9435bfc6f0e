package understorey.optics;

/**
 * Distance, focal length and magnification of a thin lens, each from the other two. Distances are mm,
 * magnification is image size over subject size.
 */
public final class ThinLens {

    private ThinLens() {
    }

    /**
     * Magnification m = f / (s − f), s from the front principal plane to the subject. For s above f; 0 at
     * infinity, and meaningless (negative or infinite) at f and nearer, where no real image forms. Thin lens,
     * Ray through secondary copies.
     */
    public static double magnification(double focalMm, double subjectMm) {
        return focalMm / (subjectMm - focalMm);
    }

    /**
     * Distance to the subject s = f·(1 + 1/m), from the front principal plane. For m above 0; infinite at 0.
     * The inverse of {@link #magnification}.
     */
    public static double subjectMm(double focalMm, double magnification) {
        return focalMm * (1 + 1 / magnification);
    }

    /**
     * Magnification at a distance from sensor to subject, as makers state the closest focus: the smaller root, 0 to 1, of
     * f·(2 + m + 1/m) = distance. {@code NaN} when the distance is under 4f, where no thin lens forms an image; a real
     * lens that focuses there has shortened its focal length ({@link #focalMmAtSensorDistance}). A real lens also adds the
     * gap between its principal planes, which makers do not state.
     */
    public static double magnificationAtSensorDistance(double focalMm, double sensorToSubjectMm) {
        double sumOfRoots = sensorToSubjectMm / focalMm - 2;
        // The product of the roots is 1; this form of the smaller one loses no digits far away.
        return 2 / (sumOfRoots + Math.sqrt(sumOfRoots * sumOfRoots - 4));
    }

    /**
     * Focal length f = distance / (2 + m + 1/m) that reaches a magnification at a distance from sensor to
     * subject. For m above 0. With a maker's closest focus and greatest magnification it is the focal length
     * that an inner-focusing lens has shrunk to, as far as a thin lens can represent it.
     */
    public static double focalMmAtSensorDistance(double magnification, double sensorToSubjectMm) {
        return sensorToSubjectMm / (2 + magnification + 1 / magnification);
    }

    /**
     * Focal length f = s·m / (1 + m) that reaches a magnification from a distance to the front principal
     * plane. For positive values; solved from {@link #magnification}.
     */
    public static double focalMmFor(double magnification, double subjectMm) {
        return subjectMm * magnification / (1 + magnification);
    }
}
