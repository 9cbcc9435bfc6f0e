package understorey.light;

import java.util.ArrayList;
import java.util.List;
import understorey.advice.Advice;
import understorey.advice.ColourAdvice;
import understorey.light.illuminance.ColourTemperature;

/**
 * A white balance to begin with. Daylight keeps the warmth of low sun and the blue of twilight, for which people come; only open
 * shade, cloud and a green cast are corrected: common practice, no source.
 *
 * @param kelvin  in steps of 100
 * @param green   leaves cast their colour on the picture
 * @param reasons what kind of light it is for
 */
public record WhiteBalance(int kelvin, boolean green, List<Advice> reasons) {

    /** Which light falls on what is photographed. */
    public enum Lit { SUN, SHADE, SUN_AND_SHADE }

    private static final double STEP_K = 100;
    private static final int MOON_K = 4100;
    /** Camera presets for daylight are 5200 to 5600 K: common practice, no source. */
    private static final double DAYLIGHT_K = 5300;
    /** Presets for shade are 7000 to 8000 K: common practice, no source. */
    private static final double SHADE_K = 7500;
    /** End of the golden hour, until which the colour of the shade is the light that is photographed: common practice, no source. */
    private static final double GOLDEN_DEG = 6;
    /** WMO: up to 4 okta the sky is clear or scattered, 8 is overcast. */
    private static final double SCATTERED_OKTA = 4;
    private static final double OVERCAST_OKTA = 7.5;
    /** Less leaf and wood leaves most light to come straight from the sky: common practice, no source. */
    private static final double GREEN_INDEX = 1;

    /**
     * Daylight in the sun, which is a fleck of it under leaves, and while the sun is down. In the shade, from daylight at sunrise to
     * the preset for shade at the end of the golden hour; for both together the middle between the two in reciprocal kelvins, by
     * which colours mix. All are drawn to the overcast's as cloud grows from 2 to 8 okta. Light under a plant area index above 1 has
     * passed leaves or bounced off them, which keep back red and blue; a fleck has not.
     *
     * @param altitudeDeg of the sun, true
     * @param lit         if no cloud hides the sun
     */
    public static WhiteBalance of(double altitudeDeg, Lit lit, double okta, double plantAreaIndex) {
        Lit by = altitudeDeg > 0 ? lit : Lit.SHADE;
        boolean sun = by == Lit.SUN;
        double shaded = Math.max(0, Math.min(1, altitudeDeg / GOLDEN_DEG));
        double inSun = ColourTemperature.underCloud(DAYLIGHT_K, okta);
        double inShade = ColourTemperature.underCloud(DAYLIGHT_K + shaded * (SHADE_K - DAYLIGHT_K), okta);
        double exact = switch (by) {
            case SUN -> inSun;
            case SHADE -> inShade;
            case SUN_AND_SHADE -> 2 / (1 / inSun + 1 / inShade);
        };
        int kelvin = (int) (Math.round(exact / STEP_K) * STEP_K);
        boolean green = plantAreaIndex > GREEN_INDEX && !(sun && okta <= SCATTERED_OKTA);
        List<Advice> reasons = new ArrayList<>();
        reasons.add(light(kelvin, altitudeDeg, by, okta));
        if (green) {
            reasons.add(new ColourAdvice.GreenCast());
        }
        return new WhiteBalance(kelvin, green, List.copyOf(reasons));
    }

    /** White balance for moonlight: 4100 K in one published list, 4200 K in another. */
    public static WhiteBalance byMoon() {
        return new WhiteBalance(MOON_K, false, List.of(new ColourAdvice.WhiteBalanceMoon(MOON_K)));
    }

    private static Advice light(int kelvin, double altitudeDeg, Lit lit, double okta) {
        if (okta >= OVERCAST_OKTA) {
            return new ColourAdvice.WhiteBalanceCloud(kelvin);
        }
        if (okta > SCATTERED_OKTA) {
            return new ColourAdvice.WhiteBalanceBroken(kelvin);
        }
        if (altitudeDeg <= 0) {
            return new ColourAdvice.WhiteBalanceTwilight(kelvin, ColourTemperature.shadeKelvin(altitudeDeg, okta));
        }
        return switch (lit) {
            case SUN -> new ColourAdvice.WhiteBalanceSun(kelvin, ColourTemperature.kelvin(altitudeDeg, okta), altitudeDeg);
            case SHADE -> new ColourAdvice.WhiteBalanceShade(kelvin);
            case SUN_AND_SHADE -> new ColourAdvice.WhiteBalanceSunAndShade(kelvin);
        };
    }
}
