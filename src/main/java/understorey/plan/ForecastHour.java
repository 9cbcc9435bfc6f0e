package understorey.plan;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import org.jspecify.annotations.Nullable;

/**
 * Forecast for the hour that begins at {@code time}; a component is null if the author left it out.
 *
 * @param date            null when the trip has one day, and does not pass midnight
 * @param temperatureC    air
 * @param dewPointC       of the air; null when only humidity is given
 * @param humidity        relative, 0 to 1
 * @param windMs          mean at 10 m
 * @param gustMs          at 10 m
 * @param okta            cloud cover, 0 to 8
 * @param rainMm          in the hour
 * @param rainChance      0 to 1
 * @param temperature850C of the air at 850 hPa, about 1.5 km up
 * @param wind850Ms       of the air at 850 hPa
 */
public record ForecastHour(@Nullable LocalDate date, LocalTime time, @Nullable Double temperatureC, @Nullable Double dewPointC,
                           @Nullable Double humidity, @Nullable Double windMs, @Nullable Double gustMs, @Nullable Double okta,
                           @Nullable Double rainMm, @Nullable Double rainChance, @Nullable Double temperature850C,
                           @Nullable Double wind850Ms) {

    /** Local time at which the hour begins, in a trip on a date. */
    public LocalDateTime begins(LocalDate day) {
        return (date == null ? day : date).atTime(time);
    }
}
