package understorey.optics;

/** Blur by diffraction at a small aperture. */
public final class Diffraction {

    /** Wavelength of green light, to which the eye is most sensitive: 550 nm, in mm. */
    public static final double GREEN_MM = 550e-6;

    private Diffraction() {
    }

    /**
     * Diameter of the Airy disc 2.44·λ·N, mm, to its first dark ring: Edmund Optics, <cite>The Airy Disk and
     * Diffraction Limit</cite>. For a round aperture; close up, N is the working f-number N·(1 + m).
     */
    public static double airyMm(double fNumber, double wavelengthMm) {
        return 2.44 * wavelengthMm * fNumber;
    }

    /**
     * The largest f-number, as marked, whose Airy disc at 550 nm is no wider than the circle of confusion once
     * the close-up extension is counted: N·(1 + m) = c / (2.44·λ). About f/21 for 36 × 24 mm at infinity. A
     * convention, not a limit: beyond it the point of best focus itself begins to look soft.
     *
     * @param magnification 0 or more
     */
    public static double largestUsefulFNumber(double cocMm, double magnification) {
        return cocMm / (airyMm(1, GREEN_MM) * (1 + magnification));
    }
}
