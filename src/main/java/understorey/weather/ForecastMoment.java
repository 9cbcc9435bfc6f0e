package understorey.weather;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.plan.ForecastHour;
import understorey.weather.Forecast.Row;

/**
 * A forecast at one instant. A quantity is linear between two rows that give it; the last row holds for the hour that begins
 * then; before the first row and after that hour nothing is known. Rows join over midnight, but not over a date without
 * rows. Times are instants, so that a clock change bends no line.
 */
final class ForecastMoment {

    /** How long a row holds by itself. */
    static final long HOUR_S = 3600;

    /** Rain goes on between wet rows up to six hours apart, the longest step of most forecasts: common practice, no source. */
    private static final long RAIN_GOES_ON_S = 6 * HOUR_S;

    /** A quantity of a row. */
    enum Quantity {
        OKTA, WIND, GUST, TEMPERATURE, DEW_POINT, HUMIDITY, RAIN, RAIN_CHANCE, TEMPERATURE_850, WIND_850;

        /** Its value in a row; null if the row does not give it. Dew point and humidity follow from each other. */
        @Nullable Double of(ForecastHour row) {
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

    private final List<Row> rows;
    private final long nowS;
    private final LocalDate yesterday;
    private final LocalDate tomorrow;
    /** Rows that have begun. */
    private final int begun;

    /** Finds the instant among rows in order of time. */
    ForecastMoment(ZonedDateTime time, List<Row> rows) {
        this.rows = rows;
        nowS = time.toEpochSecond();
        yesterday = time.toLocalDate().minusDays(1);
        tomorrow = time.toLocalDate().plusDays(1);
        int from = 0;
        int to = rows.size();
        while (from < to) {
            int middle = (from + to) / 2;
            if (rows.get(middle).startS() <= nowS) {
                from = middle + 1;
            } else {
                to = middle;
            }
        }
        begun = from;
    }

    /** True when the instant lies between two rows that join, or in the hour of one. */
    boolean covered() {
        return begun > 0 && (inHourOf(rows.get(begun - 1))
                || begun < rows.size() && joined(rows.get(begun - 1), rows.get(begun)));
    }

    /** A row that gives a quantity, and its value. */
    private record Given(Row row, double value) {
    }

    /** The quantity, linear between rows; null if it is unknown. */
    @Nullable Double straight(Quantity quantity) {
        Given before = before(quantity);
        Given after = after(quantity);
        if (before != null && after != null && joined(before.row, after.row)) {
            long beganS = before.row.startS();
            double share = (double) (nowS - beganS) / (after.row.startS() - beganS);
            return before.value * (1 - share) + after.value * share;
        }
        return inItsHour(before);
    }

    /** Rain, mm, of the row whose hour this is, or that goes on between such hours; null before and after, and without rain figures. */
    @Nullable Double rainMm() {
        return between(Quantity.RAIN);
    }

    /** Chance of rain, 0 to 1, of the row whose hour this is, or of rain that goes on; else null. */
    @Nullable Double rainChance() {
        Double rainMm = between(Quantity.RAIN);
        Double chance = between(Quantity.RAIN_CHANCE);
        boolean goesOn = rainMm != null && rainMm > 0 && chance != null && chance > 0;
        return goesOn ? chance : inItsHour(before(Quantity.RAIN_CHANCE));
    }

    /** Of the row whose hour this is. Between two rows close together the smaller of both: rain stops next to a dry row. */
    private @Nullable Double between(Quantity quantity) {
        Given before = before(quantity);
        Given after = after(quantity);
        if (before == null || after == null || inHourOf(before.row) || !joined(before.row, after.row)) {
            return inItsHour(before);
        }
        boolean close = after.row.startS() - before.row.startS() <= RAIN_GOES_ON_S;
        return close ? Math.min(before.value, after.value) : 0;
    }

    private @Nullable Double inItsHour(@Nullable Given given) {
        return given != null && inHourOf(given.row) ? Double.valueOf(given.value) : null;
    }

    /** The last row begun that gives the quantity, of this date or the one before; null if there is none. */
    private @Nullable Given before(Quantity quantity) {
        for (int i = begun - 1; i >= 0 && !rows.get(i).date().isBefore(yesterday); i--) {
            Double value = quantity.of(rows.get(i).hour());
            if (value != null) {
                return new Given(rows.get(i), value);
            }
        }
        return null;
    }

    /** The next row that gives the quantity, of this date or the one after; null if there is none. */
    private @Nullable Given after(Quantity quantity) {
        for (int i = begun; i < rows.size() && !rows.get(i).date().isAfter(tomorrow); i++) {
            Double value = quantity.of(rows.get(i).hour());
            if (value != null) {
                return new Given(rows.get(i), value);
            }
        }
        return null;
    }

    private static boolean joined(Row before, Row after) {
        return !after.date().isAfter(before.date().plusDays(1)) && after.startS() > before.startS();
    }

    private boolean inHourOf(Row row) {
        return nowS < row.endS();
    }

    private static @Nullable Double dewPointC(ForecastHour row) {
        return row.dewPointC() != null || row.temperatureC() == null || row.humidity() == null || row.humidity() <= 0
                ? row.dewPointC() : Double.valueOf(Humidity.dewPointC(row.temperatureC(), row.humidity()));
    }

    private static @Nullable Double humidity(ForecastHour row) {
        return row.humidity() != null || row.temperatureC() == null || row.dewPointC() == null ? row.humidity()
                : Double.valueOf(Humidity.relative(row.temperatureC(), row.dewPointC()));
    }
}
