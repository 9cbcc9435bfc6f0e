package understorey.light;

/**
 * Colour temperature of daylight by the sun's altitude, for setting a white balance. Published lists differ by
 * 20 % and more, so that only the order is firm: low sun, noon sun, overcast, blue sky.
 *
 * <p>Anchors: sunset 3000 K and sun at noon about 5000 K (Trilux lighting handbook), midday sun in summer 5100 to
 * 5400 K (Provita glossary), blue sky 9900 to 11 500 K (several lists), overcast 6500 K (several lists; CIE D65). The
 * altitudes are our reading: noon at 30°, noon in summer at 60°, and only blue sky left at −4°.
 */
public final class ColourTemperature {

    private static final double[][] CLEAR = {{-4, 10_000}, {0, 3000}, {30, 5000}, {60, 5300}};
    private static final double OVERCAST_K = 6500;
    private static final double CLEAR_OKTA = 2;
    private static final int STEP_K = 50;

    private ColourTemperature() {
    }

    /** Colour temperature, K in steps of 50, at an altitude in degrees and a cloud cover of 0 to 8 okta; within 20 % at best. */
    public static int kelvin(double altitudeDeg, double okta) {
        double share = Math.max(0, Math.min(1, (okta - CLEAR_OKTA) / (8 - CLEAR_OKTA)));
        double kelvin = clear(altitudeDeg) * (1 - share) + OVERCAST_K * share;
        return (int) Math.round(kelvin / STEP_K) * STEP_K;
    }

    private static double clear(double altitudeDeg) {
        if (altitudeDeg <= CLEAR[0][0]) {
            return CLEAR[0][1];
        }
        for (int i = 1; i < CLEAR.length; i++) {
            if (altitudeDeg <= CLEAR[i][0]) {
                double share = (altitudeDeg - CLEAR[i - 1][0]) / (CLEAR[i][0] - CLEAR[i - 1][0]);
                return CLEAR[i - 1][1] + share * (CLEAR[i][1] - CLEAR[i - 1][1]);
            }
        }
        return CLEAR[CLEAR.length - 1][1];
    }
}
