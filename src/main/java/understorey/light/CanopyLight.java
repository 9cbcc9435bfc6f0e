package understorey.light;

/**
 * What a canopy lets through: random leaves at spherical angles, of which every direction sees half (G = 0.5).
 * Campbell and Norman, <em>An Introduction to Environmental Biophysics</em>, 1998, ch. 15, after Monsi and Saeki
 * 1953. Plant area index is 0 or more; an effective one already holds clumping and scattered light.
 */
public final class CanopyLight {

    private static final double EULER_GAMMA = 0.577215664901532861;

    private CanopyLight() {
    }

    /** Share of the floor that the sun reaches at an altitude in degrees: exp(−0.5 PAI / sin h); 0 for a sun at or below 0°. */
    public static double gapFraction(double altitudeDeg, double plantAreaIndex) {
        if (plantAreaIndex == 0) {
            return 1;
        }
        return altitudeDeg <= 0 ? 0 : Math.exp(-0.5 * plantAreaIndex / Math.sin(Math.toRadians(altitudeDeg)));
    }

    /**
     * Share of the light of an evenly bright sky that reaches the level floor: twice the exponential integral
     * E3(0.5 PAI), which is the gap fraction taken over the sky with its cosine.
     */
    public static double uniformSky(double plantAreaIndex) {
        return 2 * e3(0.5 * plantAreaIndex);
    }

    /**
     * Share of the light of the CIE standard overcast sky, three times as bright at the zenith as at the horizon
     * (CIE S 011/E:2003): 6/7 (E3 + 2 E4) of 0.5 PAI.
     */
    public static double overcastSky(double plantAreaIndex) {
        double x = 0.5 * plantAreaIndex;
        double e3 = e3(x);
        double e4 = (Math.exp(-x) - x * e3) / 3;
        return (e3 + 2 * e4) * 6 / 7;
    }

    /** By the recurrence of Abramowitz and Stegun 1964, 5.1.14. */
    private static double e3(double x) {
        if (x == 0) {
            return 0.5;
        }
        return (Math.exp(-x) * (1 - x) + x * x * e1(x)) / 2;
    }

    /** Abramowitz and Stegun 1964, series 5.1.11 and continued fraction 5.1.22, to 1e-10 for x above 0. */
    private static double e1(double x) {
        if (x > 1) {
            double tail = 0;
            for (int n = 80; n > 0; n--) {
                tail = n / (1 + n / (x + tail));
            }
            return Math.exp(-x) / (x + tail);
        }
        double sum = -EULER_GAMMA - Math.log(x);
        double term = 1;
        for (int n = 1; n <= 20; n++) {
            term *= -x / n;
            sum -= term / n;
        }
        return sum;
    }
}
