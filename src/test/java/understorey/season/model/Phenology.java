package understorey.season.model;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The open flowering data that the models are held against. */
public final class Phenology {

    /** One plant's day. */
    public record Plant(int phase, int year, int day, Integer printed) {
    }

    private Phenology() {
    }

    /** Temperatures and days of the years of a file that have both. */
    public static double[][] pairs(String file, int firstYear, int lastYear) {
        List<double[]> pairs = new ArrayList<>();
        for (String[] row : rows(file)) {
            int year = Integer.parseInt(row[0]);
            if (year >= firstYear && year <= lastYear && !row[1].isEmpty() && !row[2].isEmpty()) {
                pairs.add(new double[] {Double.parseDouble(row[2]), Double.parseDouble(row[1])});
            }
        }
        double[][] columns = new double[2][pairs.size()];
        for (int i = 0; i < pairs.size(); i++) {
            columns[0][i] = pairs.get(i)[0];
            columns[1][i] = pairs.get(i)[1];
        }
        return columns;
    }

    public static Map<Integer, DailyMeans> harvard() {
        Map<Integer, List<Double>> celsius = new TreeMap<>();
        Map<Integer, Integer> first = new TreeMap<>();
        for (String[] row : rows("harvard-temperatures")) {
            int year = Integer.parseInt(row[0]);
            first.putIfAbsent(year, Integer.parseInt(row[1]));
            for (String value : row[2].split(" ")) {
                celsius.computeIfAbsent(year, y -> new ArrayList<>()).add(Double.parseDouble(value));
            }
        }
        Map<Integer, DailyMeans> means = new TreeMap<>();
        celsius.forEach((year, values) -> means.put(year, new DailyMeans(first.get(year),
                values.stream().mapToDouble(Double::doubleValue).toArray())));
        return means;
    }

    public static List<Plant> plants(int phase) {
        List<Plant> plants = new ArrayList<>();
        for (String[] row : rows("harvard-vaccinium")) {
            if (Integer.parseInt(row[0]) == phase) {
                plants.add(new Plant(phase, Integer.parseInt(row[1]), Integer.parseInt(row[2]),
                        row[3].isEmpty() ? null : Integer.valueOf(row[3])));
            }
        }
        return plants;
    }

    public static List<String[]> rows(String file) {
        try (InputStream in = Phenology.class.getResourceAsStream("/reference/" + file + ".csv")) {
            List<String[]> rows = new ArrayList<>();
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n")) {
                if (!line.startsWith("#")) {
                    rows.add(line.split(",", -1));
                }
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
