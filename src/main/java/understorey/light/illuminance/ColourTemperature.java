package understorey.light.illuminance;

/**
 * Colour temperature of daylight by the sun's altitude. Published lists differ by
 * 20 % and more, so that only the order is firm: low sun, noon sun, overcast, blue sky.
 *
 * <p>Anchors: sunset 3000 K and sun at noon about 5000 K (Trilux lighting handbook), midday sun in summer 5100 to
 * 5400 K (Provita glossary), blue sky 9900 to 11 500 K (several lists), overcast 6500 K (several lists; CIE D65). The
 * altitudes are our reading: noon at 30°, noon in summer at 60°, and only blue sky left at −4°. Shade by day gets light from
 * sunlit leaves and clouds besides: 7500 K (CIE daylight D75, called north sky daylight, from memory; camera presets for
 * shade are 7000 to 8000 K, common practice, no source).
 */
public final class ColourTemperature {

    private static final PiecewiseLinear CLEAR = new PiecewiseLinear(
            new double[][] {{-4, 10_000}, {0, 3000}, {30, 5000}, {60, 5300}});
    private static final PiecewiseLinear SHADE = new PiecewiseLinear(new double[][] {{-4, 10_000}, {0, 7500}});
    private static final double OVERCAST_K = 6500;
    private static final double CLEAR_OKTA = 2;
    private static final int STEP_K = 50;

    private ColourTemperature() {
    }

    /** Colour temperature of sunlight, K in steps of 50, at an altitude in degrees and a cloud cover of 0 to 8 okta; within 20 % at best. */
    public static int kelvin(double altitudeDeg, double okta) {
        return kelvin(CLEAR, altitudeDeg, okta);
    }

    /** Colour temperature of open shade, K in steps of 50, likewise; within 20 % at best. */
    public static int shadeKelvin(double altitudeDeg, double okta) {
        return kelvin(SHADE, altitudeDeg, okta);
    }

    private static int kelvin(PiecewiseLinear clear, double altitudeDeg, double okta) {
        return (int) Math.round(underCloud(clear.at(altitudeDeg), okta) / STEP_K) * STEP_K;
    }

    /** Drawn from that of a clear sky to the overcast's as cloud grows from 2 to 8 okta. */
    public static double underCloud(double clearK, double okta) {
        double share = Math.max(0, Math.min(1, (okta - CLEAR_OKTA) / (8 - CLEAR_OKTA)));
        return clearK * (1 - share) + OVERCAST_K * share;
    }
}
