package understorey.optics;

/** Focus and f-number that hold a depth. Distances and depths are mm. */
public final class Sharpness {

    private Sharpness() {
    }

    /**
     * Focus that shares the blur equally between the ends of a range: s = 2·D·d / (D + d), for a far limit of
     * infinity 2·near. Exact for the thin lens, not only for distant subjects: with the limits of
     * {@link DepthOfField}, 1/near + 1/far = 2/s whatever the aperture. US Navy NAVEDTRA 14209 prints it.
     *
     * @param nearMm above 0
     * @param farMm  from near to infinity
     */
    public static double focusMm(double nearMm, double farMm) {
        return Double.isInfinite(farMm) ? 2 * nearMm : 2 * farMm * nearMm / (farMm + nearMm);
    }

    /**
     * The smallest f-number that holds a range when focused at {@link #focusMm}:
     * N = f²·(D − d) / (c·(s − f)·(D + d)), for infinity f² / (c·(s − f)). Solved from the limits of
     * {@link DepthOfField}, hence exact for the thin lens; 0 for a range without depth. Diffraction is not
     * weighed, see {@link #balancedFNumber} and {@link Diffraction}.
     *
     * @param nearMm above the focal length
     * @param farMm  from near to infinity
     */
    public static double fNumberForRange(double focalMm, double cocMm, double nearMm, double farMm) {
        double relativeDepth = Double.isInfinite(farMm) ? 1 : (farMm - nearMm) / (farMm + nearMm);
        return focalMm * focalMm * relativeDepth / (cocMm * (focusMm(nearMm, farMm) - focalMm));
    }

    /**
     * Depth held close up 2·N·c·(1 + m) / m², mm, N as marked. For m well above f/H, where the depth before
     * and behind is nearly equal: 0.05 % under the exact pair at m = 0.36 and f/8. From secondary copies;
     * N·(1 + m) is the working f-number.
     */
    public static double closeUpDepthMm(double fNumber, double cocMm, double magnification) {
        return 2 * fNumber * cocMm * (1 + magnification) / (magnification * magnification);
    }

    /** The f-number, as marked, that holds a depth close up: {@link #closeUpDepthMm} solved for N. */
    public static double fNumberForDepth(double depthMm, double cocMm, double magnification) {
        return depthMm / closeUpDepthMm(1, cocMm, magnification);
    }

    /** The largest magnification that holds a depth close up: {@link #closeUpDepthMm} solved for m; values above 0. */
    public static double magnificationForDepth(double depthMm, double fNumber, double cocMm) {
        double spread = 2 * fNumber * cocMm;
        return (spread + Math.sqrt(spread * (spread + 4 * depthMm))) / (2 * depthMm);
    }

    /**
     * The f-number, as marked, at which the ends of a range are sharpest: {@link #bestFNumber} of the focus spread
     * 2·N·c·(1 + m) of a range that the f-number N just holds. It lies between N and the f-number whose Airy disc
     * fills the circle, so it stops down further where that sharpens the ends and less far where diffraction would
     * take more than it gives.
     *
     * @param fNumber       that just holds the range at the circle, as marked; 0 for a range without depth
     * @param magnification 0 or more
     */
    public static double balancedFNumber(double fNumber, double cocMm, double magnification) {
        return bestFNumber(2 * fNumber * cocMm * (1 + magnification)) / (1 + magnification);
    }

    /**
     * The working f-number that balances defocus and diffraction over a focus spread: N = √(375·spread), the
     * spread in mm between the focus for near and that for far, at the sensor.
     * Fits the table printed by Q.-T. Luong, <cite>How to select the f-stop</cite>, within 0.15 stop for 1 to
     * 10 mm (the formula itself, of P. Hansma, 1996, from memory). It asks for no circle of confusion: it is
     * where the ends of the range are sharpest, which is often further stopped down than they need to be.
     */
    static double bestFNumber(double focusSpreadMm) {
        return Math.sqrt(375 * focusSpreadMm);
    }
}
