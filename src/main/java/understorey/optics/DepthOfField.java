package understorey.optics;

/**
 * Near and far limits of the depth of field of a picture, and its hyperfocal distance. Millimetres from the front
 * principal plane.
 *
 * @param hyperfocalMm the focus whose far limit is only just infinity
 * @param nearMm       nearest point whose blur is no larger than the circle of confusion
 * @param farMm        farthest such point; positive infinity from the hyperfocal distance on
 */
public record DepthOfField(double hyperfocalMm, double nearMm, double farMm) {

    /** Share within which two distances count as equal, so that rounding does not decide between finite and infinite. */
    private static final double ROUNDING = 1e-9;

    /**
     * Depth of field of a thin lens: H = f²/(N·c) + f, near = s(H − f)/(H + s − 2f),
     * far = s(H − f)/(H − s), infinite when s is H or more. For s above f, up to infinity; N is the f-number
     * as marked, since these forms hold the close-up loss already. Exact for a thin lens with equal pupils
     * (Ray, through secondary copies); diffraction and aberrations are left out.
     *
     * @param cocMm     circle of confusion
     * @param subjectMm where the lens is focused
     * @throws IllegalArgumentException when a value is not positive or the subject is not beyond the focal length
     */
    public static DepthOfField of(double focalMm, double fNumber, double cocMm, double subjectMm) {
        if (!(focalMm > 0) || !(fNumber > 0) || !(cocMm > 0) || !(subjectMm > focalMm)) {
            throw new IllegalArgumentException("no image: " + focalMm + " mm at f/" + fNumber + ", circle "
                    + cocMm + " mm, subject at " + subjectMm + " mm");
        }
        double hyperfocalMm = hyperfocalMm(focalMm, fNumber, cocMm);
        double span = hyperfocalMm - focalMm;
        if (Double.isInfinite(subjectMm)) {
            return new DepthOfField(hyperfocalMm, span, Double.POSITIVE_INFINITY);
        }
        double nearMm = subjectMm * span / (span + subjectMm - focalMm);
        boolean toInfinity = subjectMm >= hyperfocalMm * (1 - ROUNDING);
        double farMm = toInfinity ? Double.POSITIVE_INFINITY : subjectMm * span / (hyperfocalMm - subjectMm);
        return new DepthOfField(hyperfocalMm, nearMm, farMm);
    }

    /** Hyperfocal distance H = f²/(N·c) + f, mm, for positive values: thin lens, as in {@link #of}. */
    public static double hyperfocalMm(double focalMm, double fNumber, double cocMm) {
        return focalMm * focalMm / (fNumber * cocMm) + focalMm;
    }

    /** Depth of field from the near limit to the far one, mm; infinite if the far limit is. */
    public double depthMm() {
        return farMm - nearMm;
    }

    /**
     * Depth of field as a difference of vergence, 1/near − 1/far, 1/mm, which is 2·N·c·(1 − f/s) / f²: nearly the same wherever far
     * subjects are focused, so that frames of a stack add up in it.
     */
    public double depthPerMm() {
        return 1 / nearMm - 1 / farMm;
    }
}
