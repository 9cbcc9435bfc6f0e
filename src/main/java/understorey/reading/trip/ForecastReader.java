package understorey.reading.trip;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import understorey.plan.ForecastHour;
import understorey.plan.Stay;
import understorey.plan.When;
import understorey.reading.files.Beside;
import understorey.yaml.Fields;
import understorey.yaml.finding.Findings;
import understorey.yaml.finding.Pos;
import understorey.yaml.tree.Csv;
import understorey.yaml.tree.Node;
import understorey.yaml.value.Dimension;

/** Reads the forecast of a trip: rows in the trip itself, or a CSV file with the same column names. */
final class ForecastReader {

    private final @Nullable When when;
    private final Stay stay;
    private final Set<LocalDate> days = new HashSet<>();
    private final List<ForecastHour> hours = new ArrayList<>();
    private final Set<String> taken = new HashSet<>();

    private ForecastReader(@Nullable When when, Stay stay) {
        this.when = when;
        this.stay = stay;
        if (when != null) {
            days.addAll(when.days());
            when.days().stream().filter(day -> stay.passesMidnight()).forEach(day -> days.add(day.plusDays(1)));
        }
    }

    /**
     * Hours in order; empty if there is no forecast.
     *
     * @param when null when it is not known
     */
    static List<ForecastHour> read(Fields trip, @Nullable When when, Stay stay, Beside beside) {
        ForecastReader reader = new ForecastReader(when, stay);
        if (trip.take("forecast") instanceof Node.Scalar) {
            Path path = beside.find(trip, "forecast");
            Findings table = path == null ? null : beside.open(trip, path);
            if (table != null) {
                reader.table(table);
            }
        } else {
            for (Fields row : trip.blocks("forecast", "this forecast row")) {
                reader.row(row);
            }
        }
        reader.hours.sort(ForecastReader::byTime);
        return List.copyOf(reader.hours);
    }

    /** Hours without a date apply to any date and come first. */
    private static int byTime(ForecastHour one, ForecastHour other) {
        int dated = Boolean.compare(one.date() != null, other.date() != null);
        int day = dated != 0 || one.date() == null ? dated : one.date().compareTo(other.date());
        return day != 0 ? day : one.time().compareTo(other.time());
    }

    private void table(Findings findings) {
        List<Node.Mapping> rows = Csv.rows(findings);
        if (rows.isEmpty() && findings.errors() == 0) {
            findings.warning(Pos.FILE, "this table has no rows", "add a row for each hour below the line of column names");
        }
        for (Node.Mapping row : rows) {
            row(new Fields(row, "this forecast row", findings));
        }
    }

    private void row(Fields f) {
        f.require("time");
        LocalDate written = f.date("date");
        LocalTime time = f.clock("time");
        Double temperature = f.quantity("temperature", Dimension.TEMPERATURE, -60, 60);
        Double dew = f.quantity("dew_point", Dimension.TEMPERATURE, -80, 40);
        if (temperature != null && dew != null && dew > temperature) {
            f.refuse("dew_point", "'dew_point' is above 'temperature'", "check both values");
        }
        Double humidity = f.quantity("humidity", Dimension.SHARE, 0, 1);
        Double wind = f.quantity("wind", Dimension.SPEED, 0, 80);
        Double gust = f.quantity("gust", Dimension.SPEED, 0, 120);
        if (wind != null && gust != null && gust < wind) {
            f.refuse("gust", "'gust' is below 'wind'", "check both values");
        }
        Double okta = okta(f);
        Double rain = f.quantity("rain", Dimension.RAIN, 0, 500);
        Double chance = f.quantity("rain_chance", Dimension.SHARE, 0, 1);
        Double temperature850 = f.quantity("temperature_850", Dimension.TEMPERATURE, -60, 60);
        Double wind850 = f.quantity("wind_850", Dimension.SPEED, 0, 80);
        f.done();
        LocalDate date = time == null ? written : date(written, time);
        if (time == null || !placed(f, date, time)) {
            return;
        }
        hours.add(new ForecastHour(date, time, temperature, dew, humidity, wind,
                gust, okta, rain, chance, temperature850, wind850));
    }

    /**
     * The date of a row. A visit on one date needs none, and has none unless it passes midnight: then the hours before its day
     * begins are of the next date.
     */
    private @Nullable LocalDate date(@Nullable LocalDate written, LocalTime time) {
        if (!(when instanceof When.On on)) {
            return written;
        }
        if (!stay.passesMidnight()) {
            return on.date().equals(written) ? null : written;
        }
        return written != null ? written : on.date().plusDays(time.isBefore(stay.dayBegins()) ? 1 : 0);
    }

    /** True if the row is for a date of the trip and no other row has its hour. */
    private boolean placed(Fields f, @Nullable LocalDate date, LocalTime time) {
        boolean outside = date != null && when != null && !days.contains(date);
        if (outside) {
            f.findings().warning(f.at("date"), "this row is for a day outside the trip and is ignored",
                    "correct its date, or delete it");
            return false;
        }
        if (when != null && !(when instanceof When.On) && !f.has("date")) {
            f.findings().error(f.pos(), "'date' is missing in this forecast row",
                    "this trip has several dates, so each row needs its own");
            return false;
        }
        if (!taken.add(date + " " + time)) {
            f.refuse("time", "this hour is already in the forecast", "delete one of the two rows");
            return false;
        }
        return true;
    }

    /** Cloud cover in eighths, from a bare number, {@code 6 okta} or {@code 75 %}. */
    private static @Nullable Double okta(Fields f) {
        Node node = f.take("cloud");
        if (node instanceof Node.Scalar scalar) {
            String text = scalar.text().strip();
            if (text.endsWith("%")) {
                Double share = f.scalars().quantity(node, "'cloud'", Dimension.SHARE, 0, 1);
                return share == null ? null : share * 8;
            }
            if (text.toLowerCase(Locale.ROOT).endsWith("okta")) {
                String bare = text.substring(0, text.length() - 4).strip();
                return f.scalars().number(new Node.Scalar(bare, bare.isEmpty(), scalar.pos()), "'cloud'", 0, 8);
            }
        }
        return f.scalars().number(node, "'cloud'", 0, 8);
    }
}
