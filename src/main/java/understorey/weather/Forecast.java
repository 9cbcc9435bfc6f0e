package understorey.weather;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.plan.ForecastHour;
import understorey.plan.SkyWord;
import understorey.weather.ForecastMoment.Quantity;

/** A forecast whose rows are instants. */
public final class Forecast {

    /**
     * A row of the forecast.
     *
     * @param startS of its hour, epoch seconds; of an hour that comes twice, the first one
     */
    record Row(ForecastHour hour, LocalDate date, long startS) {

        private static Row of(ForecastHour hour, LocalDate day, ZoneId zone) {
            LocalDateTime start = hour.begins(day);
            return new Row(hour, start.toLocalDate(), start.toEpochSecond(zone.getRules().getOffset(start)));
        }

        /** How long a row holds by itself. */
        long endS() {
            return startS + ForecastMoment.HOUR_S;
        }
    }

    private final List<Row> rows;

    /**
     * For a time zone.
     *
     * @param hours in order of time
     * @param day   the date of rows without one
     */
    public Forecast(List<ForecastHour> hours, LocalDate day, ZoneId zone) {
        this.rows = hours.stream().map(hour -> Row.of(hour, day, zone)).toList();
    }

    List<Row> rows() {
        return rows;
    }

    ForecastMoment at(ZonedDateTime time) {
        return new ForecastMoment(time, rows);
    }

    /**
     * The weather at a time: linear between the rows. The last row holds for the hour that begins then; before the first row and
     * after that hour there is only the word for the sky. Rain and its chance hold for the row's hour; between such hours no rain
     * falls.
     */
    public Weather weather(ZonedDateTime time, @Nullable SkyWord word) {
        ForecastMoment moment = at(time);
        Double okta = moment.straight(Quantity.OKTA);
        Double wordOkta = word == null ? null : Double.valueOf(word.okta());
        return new Weather(okta == null ? wordOkta : okta, moment.straight(Quantity.WIND),
                moment.straight(Quantity.GUST), moment.straight(Quantity.TEMPERATURE),
                moment.straight(Quantity.DEW_POINT), moment.straight(Quantity.HUMIDITY), moment.rainMm(),
                moment.rainChance());
    }
}
