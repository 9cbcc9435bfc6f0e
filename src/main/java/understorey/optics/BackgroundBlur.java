package understorey.optics;

/** Blur of what is not in focus. */
public final class BackgroundBlur {

    private BackgroundBlur() {
    }

    /**
     * Diameter on the sensor of the blur disc of a point, mm: (f²/N)·|D − s| / (D·(s − f)), for a point at
     * infinity f² / (N·(s − f)). For s above f and a point at any positive distance, before or behind the
     * focus; N as marked. Thin-lens geometry; the disc equals the circle of confusion at the limits of
     * {@link DepthOfField}.
     *
     * @param subjectMm where the lens is focused
     * @param pointMm   where the point lies
     */
    public static double discMm(double focalMm, double fNumber, double subjectMm, double pointMm) {
        double atInfinityMm = focalMm * focalMm / (fNumber * (subjectMm - focalMm));
        return Double.isInfinite(pointMm) ? atInfinityMm
                : atInfinityMm * Math.abs(pointMm - subjectMm) / pointMm;
    }
}
