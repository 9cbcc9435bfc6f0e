package understorey.light.illuminance;

import understorey.sky.MoonAt;

/** Light of the moon on level ground under a clear sky. */
public final class Moonlight {

    private static final double LOWEST_DEG = -0.8;
    private static final double MEAN_PARALLAX_DEG = 0.951;

    private Moonlight() {
    }

    /**
     * Illuminance, lux, of the moon and the sky that it lights: 0.27 of a full moon overhead, 0.02 at 10°, an eighth
     * of that at half moon, 0 below −0.8°. The pieces meet within 1 %; metering guides have the full moon about a
     * stop brighter. Seidelmann (ed.), <em>Explanatory Supplement to the Astronomical Almanac</em>; Urban and
     * Seidelmann, 3rd ed. 2013, p. 518; first Janiczek and DeYoung, USNO Circular 171, 1987.
     */
    public static double lux(MoonAt moon) {
        double h = moon.altitudeDeg();
        if (h < LOWEST_DEG) {
            return 0;
        }
        double x = h / 90;
        double byAltitude = h >= 20 ? cubic(x, -1.95, 4.06, -4.24, 1.56)
                : h >= 5 ? cubic(x, -2.58, 12.58, -42.58, 59.06) : cubic(x, -2.79, 24.27, -252.95, 1321.29);
        double f = moon.phaseAngleDeg();
        double byPhase = -0.00868 * f - 2.2e-9 * f * f * f * f;
        double byDistance = 2 * Math.log10(moon.parallaxDeg() / MEAN_PARALLAX_DEG);
        return Math.pow(10, byAltitude + byPhase + byDistance);
    }

    private static double cubic(double x, double l0, double l1, double l2, double l3) {
        return l0 + x * (l1 + x * (l2 + x * l3));
    }
}
