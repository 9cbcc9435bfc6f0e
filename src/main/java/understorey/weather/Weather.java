package understorey.weather;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.plan.ForecastHour;
import understorey.plan.SkyWord;
import understorey.weather.ForecastMoment.Quantity;

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

    /**
     * The weather at a time: linear between the rows of the forecast, which are in order of time. The last row holds for the
     * hour that begins then; before the first row and after that hour there is only the word for the sky. Rain and its
     * chance hold for the row's hour; between such hours no rain falls. Rows without a date are of the date of the time.
     */
    public static Weather at(ZonedDateTime time, List<ForecastHour> forecast, @Nullable SkyWord word) {
        return at(time, time.toLocalDate(), forecast, word);
    }

    /** The weather at a time, if rows without a date are of a given day. */
    static Weather at(ZonedDateTime time, LocalDate day, List<ForecastHour> forecast, @Nullable SkyWord word) {
        ForecastMoment moment = new ForecastMoment(time, day, forecast);
        Double okta = moment.straight(Quantity.OKTA);
        Double wordOkta = word == null ? null : Double.valueOf(word.okta());
        return new Weather(okta == null ? wordOkta : okta, moment.straight(Quantity.WIND),
                moment.straight(Quantity.GUST), moment.straight(Quantity.TEMPERATURE),
                moment.straight(Quantity.DEW_POINT), moment.straight(Quantity.HUMIDITY), moment.rainMm(),
                moment.rainChance());
    }

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
