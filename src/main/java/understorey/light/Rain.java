package understorey.light;

import org.jspecify.annotations.Nullable;
import understorey.weather.Weather;

/** What falling rain leaves of a picture: drops hit the flowers and the lens. */
public final class Rain {

    /** Less in an hour hardly disturbs: common practice, no source. */
    private static final double LIGHT_MM = 0.5;
    /** Rain is moderate from here (WMO, from memory). */
    private static final double MODERATE_MM = 2.5;
    private static final double IN_LIGHT_RAIN = 0.5;
    private static final double IN_MODERATE_RAIN = 0.2;

    private Rain() {
    }

    /** The share that the rain expected in an hour leaves, 0 to 1; 1 if the forecast has no amount. */
    public static double leaves(Weather weather) {
        return weather.rainMm() == null ? 1 : leaves(weather.rainMm(), chance(weather.rainChance()));
    }

    /** The share that the rain of a moment leaves, 0 to 1. */
    public static double leaves(Moment moment) {
        return leaves(moment.rainMm(), moment.rainChance());
    }

    /**
     * The share left by an amount of rain in an hour, mm, and its chance, 0 to 1: a half from 0.5 mm, a straight line to a fifth
     * from 2.5 mm, weighted by the chance. Common practice, no source.
     */
    static double leaves(double rainMm, double chance) {
        double left = IN_LIGHT_RAIN - (IN_LIGHT_RAIN - IN_MODERATE_RAIN) * Wish.ramp(rainMm, LIGHT_MM, MODERATE_MM);
        return rainMm >= LIGHT_MM ? 1 - chance * (1 - left) : 1;
    }

    /** Chance of rain whose amount is forecast: 1 if no chance is. */
    static double chance(@Nullable Double forecast) {
        return forecast == null ? 1 : forecast;
    }
}
