package understorey.weather;

import org.jspecify.annotations.Nullable;

/**
 * The weather at an instant from the forecast; without one there, only the author's word for the sky. A component is null if it is
 * unknown.
 *
 * @param okta         cloud cover, 0 to 8
 * @param windMs       mean at 10 m
 * @param gustMs       at 10 m
 * @param temperatureC air
 * @param dewPointC    of the air; from the humidity if only that is given
 * @param humidity     relative, 0 to 1; from the dew point if only that is given
 * @param rainMm       in the forecast's hour
 * @param rainChance   in the forecast's hour, 0 to 1
 */
public record Weather(@Nullable Double okta, @Nullable Double windMs, @Nullable Double gustMs, @Nullable Double temperatureC,
        @Nullable Double dewPointC, @Nullable Double humidity, @Nullable Double rainMm, @Nullable Double rainChance) {

    /** True if a mean wind or a gust is known. */
    public boolean hasWind() {
        return windMs != null || gustMs != null;
    }

    /** Air with a known temperature and dew point, °C. */
    record Damp(double temperatureC, double dewPointC) {

        /** Temperature above the dew point, °C, 0 or more. */
        double spreadC() {
            return Math.max(0, temperatureC - dewPointC);
        }
    }

    /** How damp the air is; null if its temperature or its dew point is unknown. */
    @Nullable Damp damp() {
        return temperatureC == null || dewPointC == null ? null : new Damp(temperatureC, dewPointC);
    }
}
