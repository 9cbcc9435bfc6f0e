package understorey.light.illuminance;

/** How often a sky with clouds lets the sun through. */
public final class SunLine {

    /** Sky photographs end there; the chance below is held at its value there. */
    private static final double LOWEST_DEG = 10;

    private SunLine() {
    }

    /**
     * Chance that no cloud covers the sun, 0 to 1: (1 − s(1 + 3s)/4)^(1 + (0.55 − s/2)·cot e), with s the cloud cover as a share
     * of the sky and e the altitude. Malick and others 1979 (from memory), on sky photographs of Lund and Shanklin, <em>Journal
     * of Applied Meteorology</em> 12 (1973) 28. Valid from 10° up, for low and middle clouds: high ones let the sun through. A
     * forecast in eighths is right to about 0.1.
     */
    public static double clear(double okta, double altitudeDeg) {
        double share = okta / 8;
        double cotangent = 1 / Math.tan(Math.toRadians(Math.max(LOWEST_DEG, altitudeDeg)));
        return Math.pow(1 - share * (1 + 3 * share) / 4, 1 + (0.55 - share / 2) * cotangent);
    }
}
