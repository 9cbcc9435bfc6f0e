package understorey.season;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import understorey.plan.Season;
import understorey.plan.Temperatures;
import understorey.season.model.Phenology;

/**
 * The likely span of the peak, four years in five, against open flowering data: Aono and Saito 2010 (Kyoto), Ehrlén and
 * Valdés 2020 (Tullgarn), O'Keefe (Harvard Forest, HF003). One year is left out, and its span is worked out from n other
 * years and its own spring, as the page prints it. The n years and the one left out are drawn at random from the series.
 */
class LikelySpanTest {

    private static final int DRAWS = 250;
    private static final double LEAST = 0.78;
    private static final double MOST = 0.88;
    private static final List<Series> WITH_TEMPERATURES = List.of(tullgarn(), harvard(501), harvard(371));
    private static final List<Series> WITHOUT = List.of(kyoto(), tullgarn().withoutTemperatures(),
            harvard(501).withoutTemperatures());

    /** The day of the peak of each year, and the temperatures of the place; null without a station. */
    private record Series(String name, List<LocalDate> peaks, Temperatures temperatures) {

        Series withoutTemperatures() {
            return new Series(name + " without temperatures", peaks, null);
        }

        boolean holds(List<Integer> years, int leftOut) {
            List<Season.Flowering> records = new ArrayList<>();
            years.forEach(year -> records.add(new Season.Flowering(null, peaks.get(year), null)));
            LocalDate peak = peaks.get(leftOut);
            FloweringWindow.Expected span = FloweringWindow.of(Woods.wood(53, 200.0,
                    new Season("ramsons", records, temperatures, List.of())), Woods.RAMSONS, peak, null).peak();
            return !peak.isBefore(span.from()) && !peak.isAfter(span.to());
        }
    }

    private static Series kyoto() {
        List<LocalDate> peaks = new ArrayList<>();
        for (String[] row : Phenology.rows("kyoto-cherry")) {
            if (!row[1].isEmpty()) {
                peaks.add(LocalDate.ofYearDay(Integer.parseInt(row[0]), Integer.parseInt(row[1])));
            }
        }
        return new Series("Kyoto", peaks, null);
    }

    /** Each day of March, April and May is as warm as its month. */
    private static Series tullgarn() {
        List<LocalDate> peaks = new ArrayList<>();
        List<Temperatures.Day> days = new ArrayList<>();
        for (String[] row : Phenology.rows("lathyrus-months")) {
            int year = Integer.parseInt(row[0]);
            peaks.add(LocalDate.ofYearDay(year, (int) Math.round(Double.parseDouble(row[1]) + 80)));
            String[] celsius = row[2].split(" ");
            for (int i = 0; i < celsius.length; i++) {
                YearMonth month = YearMonth.of(year, 3 + i);
                for (int day = 1; day <= month.lengthOfMonth(); day++) {
                    days.add(new Temperatures.Day(month.atDay(day), Double.parseDouble(celsius[i])));
                }
            }
        }
        return new Series("Tullgarn", peaks, new Temperatures("tullgarn", days));
    }

    private static Series harvard(int phase) {
        List<Temperatures.Day> days = new ArrayList<>();
        Phenology.harvard().forEach((year, means) -> {
            for (int day = means.firstDay(); day <= means.lastDay(); day++) {
                days.add(new Temperatures.Day(LocalDate.of(year, 1, 1).plusDays(day - 1), means.at(day)));
            }
        });
        days.sort(Comparator.comparing(Temperatures.Day::date));
        Map<Integer, List<Integer>> plants = new TreeMap<>();
        Phenology.plants(phase).forEach(plant -> plants.computeIfAbsent(plant.year(), year -> new ArrayList<>())
                .add(plant.day()));
        List<LocalDate> peaks = new ArrayList<>();
        plants.forEach((year, all) -> peaks.add(LocalDate.ofYearDay(year,
                (int) Math.round(all.stream().mapToInt(day -> day).average().orElseThrow()))));
        return new Series("Harvard " + phase, peaks, new Temperatures("harvard", days));
    }

    private static double held(Series series, int n) {
        Random random = new Random(n);
        List<Integer> years = new ArrayList<>(IntStream.range(0, series.peaks().size()).boxed().toList());
        int held = 0;
        for (int draw = 0; draw < DRAWS; draw++) {
            Collections.shuffle(years, random);
            held += series.holds(years.subList(0, n), years.get(n)) ? 1 : 0;
        }
        return (double) held / DRAWS;
    }

    private static void holdsFourInFive(List<Series> all, int n) {
        Map<String, Double> shares = new TreeMap<>();
        all.forEach(series -> shares.put(series.name(), held(series, n)));
        double mean = shares.values().stream().mapToDouble(share -> share).average().orElseThrow();
        assertTrue(mean >= LEAST && mean <= MOST, n + " years: " + shares);
        assertTrue(shares.values().stream().allMatch(share -> share > 0.68 && share < 0.94), n + " years: " + shares);
    }

    @ParameterizedTest
    @ValueSource(ints = {4, 6, 8, 10})
    void holdsFourYearsInFiveWhereTheModelIsChosenByTheSameYears(int n) {
        holdsFourInFive(WITH_TEMPERATURES, n);
    }

    @ParameterizedTest
    @ValueSource(ints = {4, 6, 8, 10})
    void holdsFourYearsInFiveByTheMeanAlone(int n) {
        holdsFourInFive(WITHOUT, n);
    }

    /** Each year of every run of n + 1 years is left out in turn. */
    @ParameterizedTest
    @ValueSource(ints = {4, 6, 8, 10})
    void holdsFourYearsInFiveOfRunsOfYears(int n) {
        double sum = 0;
        for (Series series : WITH_TEMPERATURES) {
            int held = 0;
            int cases = 0;
            for (int first = 0; first + n < series.peaks().size(); first++) {
                for (int leftOut = first; leftOut <= first + n; leftOut++) {
                    List<Integer> others = new ArrayList<>(IntStream.rangeClosed(first, first + n).boxed().toList());
                    others.remove(Integer.valueOf(leftOut));
                    held += series.holds(others, leftOut) ? 1 : 0;
                    cases++;
                }
            }
            sum += (double) held / cases;
        }
        double mean = sum / WITH_TEMPERATURES.size();
        assertTrue(mean >= LEAST && mean <= MOST, n + " years: " + mean);
    }
}
