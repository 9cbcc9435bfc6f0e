package understorey.weather;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.plan.ForecastHour;
import understorey.plan.SkyWord;
import understorey.weather.ForecastMoment.Quantity;

/**
 * The air of the 4 hours before sunrise, or of the hour after if the forecast has no damp before. The damp is that
 * nearest to mist; wind and cloud are means of the night, because the air takes hours to cool.
 *
 * @param spreadC      smallest difference of temperature and dew point
 * @param windMs       mean at 10 m; null if unknown
 * @param okta         mean cloud cover, 0 to 8; null if unknown
 * @param index        least {@link #stabilityIndex}; null without the air at 850 hPa
 * @param afterSunrise whether the forecast has nothing earlier
 */
record DawnAir(double spreadC, @Nullable Double windMs, @Nullable Double okta, @Nullable Double index, boolean afterSunrise) {

    private static final Duration NIGHT = Duration.ofHours(4);
    private static final Duration LATEST = Duration.ofHours(1);
    private static final Duration STEP = Duration.ofMinutes(30);
    private static final double KNOT_MS = 1852 / 3600.0;

    /** The air around sunrise; null if the forecast does not say how damp it is. */
    static @Nullable DawnAir of(ZonedDateTime sunrise, List<ForecastHour> forecast, @Nullable SkyWord sky) {
        Gathering night = new Gathering(new Forecast(forecast, sunrise.toLocalDate(), sunrise.getZone()), sky);
        for (ZonedDateTime time = sunrise.minus(NIGHT); !time.isAfter(sunrise); time = time.plus(STEP)) {
            night.look(time);
        }
        if (night.moments > 0) {
            return night.air(false);
        }
        for (ZonedDateTime time = sunrise.plus(STEP); !time.isAfter(sunrise.plus(LATEST)); time = time.plus(STEP)) {
            night.look(time);
        }
        return night.moments > 0 ? night.air(true) : null;
    }

    /**
     * Fog Stability Index: 4 Ts − 2 (T850 + Td) + W850, °C and knots; the smaller, the likelier is radiation fog.
     * 2WW/TN-79/008, <em>A New Technique for Forecasting the Occurrence of Fog and Low Stratus Ceiling by Use of a
     * Flow Chart</em>; that its wind is in knots is from memory.
     *
     * @param wind850Ms wind at 850 hPa, m/s
     */
    static double stabilityIndex(double temperatureC, double temperature850C, double dewPointC, double wind850Ms) {
        return 4 * temperatureC - 2 * (temperature850C + dewPointC) + wind850Ms / KNOT_MS;
    }

    /** Sums over the moments at which the damp is known. */
    private static final class Gathering {

        private final Forecast forecast;
        private final @Nullable SkyWord sky;
        private int moments;
        private double spreadC = Double.POSITIVE_INFINITY;
        private double index = Double.POSITIVE_INFINITY;
        private final Mean windMs = new Mean();
        private final Mean okta = new Mean();

        Gathering(Forecast forecast, @Nullable SkyWord sky) {
            this.forecast = forecast;
            this.sky = sky;
        }

        void look(ZonedDateTime time) {
            Weather weather = forecast.weather(time, sky);
            Weather.Damp damp = weather.damp();
            if (damp == null) {
                return;
            }
            moments++;
            spreadC = Math.min(spreadC, damp.spreadC());
            windMs.take(weather.windMs());
            okta.take(weather.okta());
            ForecastMoment aloft = forecast.at(time);
            Double temperature850C = aloft.straight(Quantity.TEMPERATURE_850);
            Double wind850Ms = aloft.straight(Quantity.WIND_850);
            if (temperature850C != null && wind850Ms != null) {
                index = Math.min(index, stabilityIndex(damp.temperatureC(), temperature850C, damp.dewPointC(), wind850Ms));
            }
        }

        DawnAir air(boolean afterSunrise) {
            return new DawnAir(spreadC, windMs.value(), okta.value(), Double.isInfinite(index) ? null : index,
                    afterSunrise);
        }
    }

    private static final class Mean {

        private double sum;
        private int count;

        void take(@Nullable Double value) {
            if (value != null) {
                sum += value;
                count++;
            }
        }

        @Nullable Double value() {
            return count == 0 ? null : Double.valueOf(sum / count);
        }
    }
}
