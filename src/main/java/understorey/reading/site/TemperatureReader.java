package understorey.reading.site;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import understorey.plan.Temperatures;
import understorey.reading.files.Beside;
import understorey.yaml.Fields;
import understorey.yaml.finding.Findings;
import understorey.yaml.finding.Pos;
import understorey.yaml.tree.Csv;
import understorey.yaml.tree.Node;
import understorey.yaml.value.Dimension;
import understorey.yaml.value.Numeral;
import understorey.yaml.value.Quantity;

/**
 * Reads the daily temperatures of a site from a CSV file: a column {@code date}, and {@code mean} or {@code min} and {@code max}.
 * Each cell has its unit, or the column's name has it for all: {@code mean °C}. The mean of a day of which only the
 * ends are known is their middle, the usual practice of climatology, some tenths of a degree off (from memory).
 */
final class TemperatureReader {

    private final Findings findings;
    private final TreeMap<LocalDate, Double> means = new TreeMap<>();
    /** Names of columns by what they are without their unit: the same few on each of thousands of rows. */
    private final Map<String, String> columns = new HashMap<>();

    private TemperatureReader(Findings findings) {
        this.findings = findings;
    }

    /** Temperatures that a season names; null if it names none, or if the file cannot be read. */
    static @Nullable Temperatures read(Fields season, Beside beside) {
        Path path = season.take("temperatures") == null ? null : beside.find(season, "temperatures");
        if (path == null) {
            return null;
        }
        Findings findings = beside.open(season, path);
        return findings == null ? null : new TemperatureReader(findings).table(path.getFileName().toString());
    }

    private Temperatures table(String name) {
        if (!headed()) {
            return new Temperatures(name, List.of());
        }
        List<Node.Mapping> rows = Csv.rows(findings);
        if (rows.isEmpty()) {
            findings.warning(Pos.FILE, "this table has no rows", "add a row for each day below the line of column names");
        }
        rows.forEach(this::row);
        gaps();
        return new Temperatures(name, means.entrySet().stream()
                .map(mean -> new Temperatures.Day(mean.getKey(), mean.getValue())).toList());
    }

    /** Whether the first line names the needed columns; reported once, not for each of thousands of rows. */
    private boolean headed() {
        String header = findings.source().text().lines().findFirst().orElse("");
        List<String> names = Arrays.stream(header.split(",", -1)).map(name -> withoutUnit(name.strip().replace("\"", ""))).toList();
        boolean degrees = names.contains("mean") || names.contains("min") && names.contains("max");
        if (header.isBlank() || names.contains("date") && degrees) {
            return true;
        }
        findings.error(new Pos(1, 1, header.length()), header.contains(";") && names.size() == 1
                ? "the columns are separated by semicolons" : "the first line has no column '"
                + (names.contains("date") ? "mean" : "date") + "'",
                "separate the columns with commas; first line: date,mean or date,min,max");
        return false;
    }

    private void row(Node.Mapping row) {
        Fields f = new Fields(row, "this temperature row", findings).require("date");
        LocalDate date = f.date("date");
        Double mean = celsius(f, row, "mean");
        Double min = celsius(f, row, "min");
        Double max = celsius(f, row, "max");
        f.done();
        if (min != null && max != null && max < min) {
            f.refuse(column(row, "max"), "'max' is below 'min'", "swap them");
        }
        if (mean == null && min != null && max != null) {
            mean = (min + max) / 2;
        }
        if (date != null && mean != null && means.putIfAbsent(date, mean) != null) {
            f.refuse("date", date + " is already in this table", "delete one of the two rows");
        }
    }

    /** Temperature of a column whose name may have the unit, °C; null if the cell is empty or absent. */
    private @Nullable Double celsius(Fields f, Node.Mapping row, String plain) {
        String column = column(row, plain);
        if (column.equals(plain)) {
            return f.quantity(plain, Dimension.TEMPERATURE, -70, 60);
        }
        Node cell = f.take(column);
        Double degrees = f.scalars().number(cell, "'" + column + "'", -100, 140);
        return degrees == null || !fahrenheit(column) ? degrees
                : Quantity.read(Numeral.show(degrees) + " °F", Dimension.TEMPERATURE).value();
    }

    /** Column of that name with a unit after it; the plain name if there is none. */
    private String column(Node.Mapping row, String plain) {
        return row.entries().keySet().stream()
                .filter(name -> plain.equals(columns.computeIfAbsent(name, TemperatureReader::withoutUnit))).findFirst().orElse(plain);
    }

    /** {@code mean} for {@code Mean (°C)}; the name itself if it has no unit. */
    private static String withoutUnit(String name) {
        String bare = name.toLowerCase(Locale.ROOT).replaceAll("[ _()°]", "");
        return bare.endsWith("c") || bare.endsWith("f") ? bare.substring(0, bare.length() - 1) : name;
    }

    private static boolean fahrenheit(String column) {
        return column.toLowerCase(Locale.ROOT).replace(")", "").endsWith("f");
    }

    private record Gap(LocalDate from, long days) {

        @Override
        public String toString() {
            return days == 1 ? "on " + from : "from " + from + " to " + from.plusDays(days - 1);
        }
    }

    /** Gives one warning for all missing days between the first and the last. */
    private void gaps() {
        List<Gap> gaps = new ArrayList<>();
        for (LocalDate date : means.keySet()) {
            LocalDate before = means.lowerKey(date);
            if (before != null && before.plusDays(1).isBefore(date)) {
                gaps.add(new Gap(before.plusDays(1), ChronoUnit.DAYS.between(before, date) - 1));
            }
        }
        if (gaps.isEmpty()) {
            return;
        }
        Gap longest = gaps.stream().reduce((one, other) -> other.days() > one.days() ? other : one).orElseThrow();
        long missing = gaps.stream().mapToLong(Gap::days).sum();
        findings.warning(Pos.FILE, (missing == 1 ? "1 day is" : missing + " days are") + " missing"
                + (gaps.size() > 1 ? " in " + gaps.size() + " gaps, the longest " + longest
                        : ": " + (missing == 1 ? longest.from() : longest)),
                "short gaps are filled in; a year with a long gap is not used");
    }
}
