package understorey.light;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import understorey.light.ForecastMoment.Quantity;
import understorey.plan.ForecastHour;
import understorey.plan.SkyWord;

/**
 * The weather at an instant, as far as the forecast tells; the sky else in one word. A component is null when nobody
 * said.
 *
 * @param okta         cloud cover, 0 to 8
 * @param windMs       mean at 10 m
 * @param gustMs       at 10 m
 * @param temperatureC air
 * @param dewPointC    of the air; from the humidity where only that is given
 * @param humidity     relative, 0 to 1; from the dew point where only that is given
 * @param rainMm       in the forecast's hour
 * @param rainChance   in the forecast's hour, 0 to 1
 */
public record Weather(Double okta, Double windMs, Double gustMs, Double temperatureC, Double dewPointC, Double humidity,
        Double rainMm, Double rainChance) {

    /**
     * On straight lines between the rows of the forecast, which stand in order of time; the last row holds for the
     * hour that begins then, and before the first and after that hour only the word on the sky is left. Rain and its
     * chance hold for the row's hour; between such hours no rain falls. Rows without a date are of the time's own.
     */
    public static Weather at(ZonedDateTime time, List<ForecastHour> forecast, SkyWord word) {
        return at(time, time.toLocalDate(), forecast, word);
    }

    /** The same where rows without a date are of another day than the time. */
    static Weather at(ZonedDateTime time, LocalDate day, List<ForecastHour> forecast, SkyWord word) {
        ForecastMoment moment = new ForecastMoment(time, day, forecast);
        Double okta = moment.straight(Quantity.OKTA);
        Double wordOkta = word == null ? null : Double.valueOf(word.okta());
        return new Weather(okta == null ? wordOkta : okta, moment.straight(Quantity.WIND),
                moment.straight(Quantity.GUST), moment.straight(Quantity.TEMPERATURE),
                moment.straight(Quantity.DEW_POINT), moment.straight(Quantity.HUMIDITY), moment.rainMm(),
                moment.rainChance());
    }

    /** Temperature over dew point, °C, 0 or more; null when either is unknown. */
    public Double spreadC() {
        return temperatureC == null || dewPointC == null ? null
                : Double.valueOf(Math.max(0, temperatureC - dewPointC));
    }
}
