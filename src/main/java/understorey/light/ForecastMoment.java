package understorey.light;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import understorey.plan.ForecastHour;

/**
 * What a forecast says at one instant. Between two rows that give a quantity it runs on a straight line; the last
 * row holds for the hour that begins then; before the first row and after that hour nothing is said. Rows join over
 * midnight, but not over a date that has none. Times are instants, so that a clock change bends no line.
 */
final class ForecastMoment {

    /** How long a row holds by itself. */
    static final long HOUR_S = 3600;

    /** What a row may give. */
    enum Quantity {
        OKTA, WIND, GUST, TEMPERATURE, DEW_POINT, HUMIDITY, RAIN, RAIN_CHANCE, TEMPERATURE_850, WIND_850;

        /** Null when the row says nothing of it; dew point and humidity stand in for one another. */
        Double of(ForecastHour row) {
            return switch (this) {
                case OKTA -> row.okta();
                case WIND -> row.windMs();
                case GUST -> row.gustMs();
                case TEMPERATURE -> row.temperatureC();
                case DEW_POINT -> dewPointC(row);
                case HUMIDITY -> humidity(row);
                case RAIN -> row.rainMm();
                case RAIN_CHANCE -> row.rainChance();
                case TEMPERATURE_850 -> row.temperature850C();
                case WIND_850 -> row.wind850Ms();
            };
        }
    }

    private final List<ForecastHour> rows;
    private final LocalDate day;
    private final ZoneId zone;
    private final long nowS;
    private final long today;
    /** Rows that have begun. */
    private final int begun;

    /**
     * Finds the instant among rows in order of time.
     *
     * @param day the date of rows that carry none
     */
    ForecastMoment(ZonedDateTime time, LocalDate day, List<ForecastHour> rows) {
        this.rows = rows;
        this.day = day;
        zone = time.getZone();
        nowS = time.toEpochSecond();
        today = time.toLocalDate().toEpochDay();
        int from = 0;
        int to = rows.size();
        while (from < to) {
            int middle = (from + to) / 2;
            if (second(rows.get(middle), day, zone) <= nowS) {
                from = middle + 1;
            } else {
                to = middle;
            }
        }
        begun = from;
    }

    /** When a row begins, seconds of the epoch; in an hour that comes twice, at its first coming. */
    static long second(ForecastHour row, LocalDate day, ZoneId zone) {
        LocalDateTime local = LocalDateTime.of(row.date() == null ? day : row.date(), row.time());
        return local.toEpochSecond(zone.getRules().getOffset(local));
    }

    /** True when the instant lies between two rows that join, or in the hour of one. */
    boolean covered() {
        ForecastHour before = begun == 0 ? null : rows.get(begun - 1);
        ForecastHour after = begun == rows.size() ? null : rows.get(begun);
        return before != null && (inHourOf(before) || joined(before, after));
    }

    /** The quantity on straight lines; null where nothing is said of it. */
    Double straight(Quantity quantity) {
        ForecastHour before = before(quantity);
        ForecastHour after = before == null ? null : after(quantity);
        if (joined(before, after)) {
            long beganS = second(before, day, zone);
            double share = (double) (nowS - beganS) / (second(after, day, zone) - beganS);
            return quantity.of(before) * (1 - share) + quantity.of(after) * share;
        }
        return before != null && inHourOf(before) ? quantity.of(before) : null;
    }

    /** Rain, mm, of the row whose hour this is; none between such hours; null before, after and where no row tells of rain. */
    Double rainMm() {
        ForecastHour before = before(Quantity.RAIN);
        if (before != null && inHourOf(before)) {
            return before.rainMm();
        }
        return before != null && joined(before, after(Quantity.RAIN)) ? Double.valueOf(0) : null;
    }

    /** Chance of rain, 0 to 1, of the row whose hour this is; null in no row's hour. */
    Double rainChance() {
        ForecastHour before = before(Quantity.RAIN_CHANCE);
        return before != null && inHourOf(before) ? before.rainChance() : null;
    }

    /** The last row begun that gives the quantity, of this date or the one before. */
    private ForecastHour before(Quantity quantity) {
        for (int i = begun - 1; i >= 0 && epochDay(rows.get(i)) >= today - 1; i--) {
            if (quantity.of(rows.get(i)) != null) {
                return rows.get(i);
            }
        }
        return null;
    }

    /** The next row that gives the quantity, of this date or the one after. */
    private ForecastHour after(Quantity quantity) {
        for (int i = begun; i < rows.size() && epochDay(rows.get(i)) <= today + 1; i++) {
            if (quantity.of(rows.get(i)) != null) {
                return rows.get(i);
            }
        }
        return null;
    }

    private boolean joined(ForecastHour before, ForecastHour after) {
        return before != null && after != null && epochDay(after) <= epochDay(before) + 1
                && second(after, day, zone) > second(before, day, zone);
    }

    private boolean inHourOf(ForecastHour row) {
        return nowS < second(row, day, zone) + HOUR_S;
    }

    private long epochDay(ForecastHour row) {
        return (row.date() == null ? day : row.date()).toEpochDay();
    }

    private static Double dewPointC(ForecastHour row) {
        boolean known = row.dewPointC() != null || row.temperatureC() == null || row.humidity() == null
                || row.humidity() <= 0;
        return known ? row.dewPointC() : Double.valueOf(Humidity.dewPointC(row.temperatureC(), row.humidity()));
    }

    private static Double humidity(ForecastHour row) {
        boolean known = row.humidity() != null || row.temperatureC() == null || row.dewPointC() == null;
        return known ? row.humidity() : Double.valueOf(Humidity.relative(row.temperatureC(), row.dewPointC()));
    }
}
