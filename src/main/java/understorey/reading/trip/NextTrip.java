package understorey.reading.trip;

import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import understorey.schema.PlanFiles;
import understorey.yaml.finding.Findings;
import understorey.yaml.tree.Node;
import understorey.yaml.tree.TextFile;
import understorey.yaml.tree.TreeReader;

/** An earlier trip as a new one: its text with another title, with later dates, and without its forecast. Comments stay. */
public final class NextTrip {

    private static final Pattern DATE = Pattern.compile("\\b\\d{4}-\\d{2}-\\d{2}\\b");
    private static final Set<String> DATED = Set.of("date", "dates", "avoid");

    private NextTrip() {
    }

    /**
     * The text of the new trip. Dates move on by the fewest whole years that bring the last of them past {@code today}. A text that is no
     * YAML comes back with the new title only.
     */
    public static String of(String text, String title, LocalDate today) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        TreeMap<Integer, String> keys = keys(text);
        int years = years(lines, keys, today);
        keys.forEach((from, key) -> {
            Integer next = keys.higherKey(from);
            int to = next == null ? lines.size() : next - 1;
            for (int i = from - 1; i < to; i++) {
                String line = lines.get(i);
                if (DATED.contains(key)) {
                    lines.set(i, DATE.matcher(line).replaceAll(date -> later(date.group(), years)));
                } else if (key.equals("forecast") && !line.isBlank() && !line.startsWith("#")) {
                    lines.set(i, "# " + line);
                } else if (key.equals("trip") && i == from - 1) {
                    lines.set(i, "trip: " + PlanFiles.quoted(title));
                }
            }
        });
        return String.join("\n", lines) + "\n";
    }

    /** The keys of the trip by the line, from 1, on which each stands. */
    private static TreeMap<Integer, String> keys(String text) {
        TreeMap<Integer, String> keys = new TreeMap<>();
        Findings findings = TextFile.decode(text.getBytes(StandardCharsets.UTF_8), "trip");
        Node.Mapping trip = TreeReader.read(findings);
        for (Map.Entry<String, Node.Entry> entry : trip == null ? Set.<Map.Entry<String, Node.Entry>>of() : trip.entries().entrySet()) {
            keys.put(entry.getValue().key().line(), entry.getKey());
        }
        return keys;
    }

    private static int years(List<String> lines, TreeMap<Integer, String> keys, LocalDate today) {
        LocalDate last = LocalDate.MIN;
        for (Map.Entry<Integer, String> key : keys.entrySet()) {
            Integer next = keys.higherKey(key.getKey());
            if (DATED.contains(key.getValue())) {
                Matcher dates = DATE.matcher(String.join("\n", lines.subList(key.getKey() - 1, next == null ? lines.size() : next - 1)));
                while (dates.find()) {
                    LocalDate date = date(dates.group());
                    last = date.isAfter(last) ? date : last;
                }
            }
        }
        int years = 0;
        while (last.isAfter(LocalDate.MIN) && !last.plusYears(years).isAfter(today)) {
            years++;
        }
        return years;
    }

    private static String later(String date, int years) {
        LocalDate read = date(date);
        return read.equals(LocalDate.MIN) ? date : read.plusYears(years).toString();
    }

    /** The earliest date of all for what is no date. */
    private static LocalDate date(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException none) {
            return LocalDate.MIN;
        }
    }
}
