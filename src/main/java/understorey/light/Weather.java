package understorey.light;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.function.Function;
import understorey.plan.ForecastHour;
import understorey.plan.SkyWord;

/**
 * The weather at an instant: the forecast's, on straight lines between its hours, else the sky in one word.
 *
 * @param okta   cloud cover, 0 to 8; null when nobody said
 * @param windMs mean at 10 m; null when nobody said
 * @param gustMs at 10 m; null when nobody said
 */
public record Weather(Double okta, Double windMs, Double gustMs) {

    /** Between the hours of the forecast; before the first and after the last hour, that hour's. */
    public static Weather at(ZonedDateTime time, List<ForecastHour> forecast, SkyWord word) {
        Double okta = between(time, forecast, ForecastHour::okta);
        return new Weather(okta != null ? okta : word == null ? null : Double.valueOf(word.okta()),
                between(time, forecast, ForecastHour::windMs), between(time, forecast, ForecastHour::gustMs));
    }

    private static Double between(ZonedDateTime time, List<ForecastHour> forecast,
                                  Function<ForecastHour, Double> value) {
        ForecastHour before = null;
        ForecastHour after = null;
        LocalDate today = time.toLocalDate();
        LocalTime now = time.toLocalTime();
        for (ForecastHour hour : forecast) {
            if (value.apply(hour) == null || hour.date() != null && !hour.date().equals(today)) {
                continue;
            }
            if (!hour.time().isAfter(now)) {
                before = hour;
            } else if (after == null) {
                after = hour;
            }
        }
        if (before == null || after == null) {
            ForecastHour only = before == null ? after : before;
            return only == null ? null : value.apply(only);
        }
        double share = seconds(before.time(), now) / seconds(before.time(), after.time());
        return value.apply(before) * (1 - share) + value.apply(after) * share;
    }

    private static double seconds(LocalTime from, LocalTime to) {
        return Duration.between(from, to).toSeconds();
    }
}
