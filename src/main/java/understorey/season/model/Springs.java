package understorey.season.model;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import understorey.plan.Temperatures;

/**
 * The temperatures of the seasons on record and of the one to come, each on its season's own scale. Gaps of up to five
 * days are bridged by a straight line (common practice, no source).
 */
public final class Springs {

    private static final int BRIDGED_D = 5;

    private final SeasonScale scale;
    private final DailyMeans means;

    public Springs(SeasonScale scale, Temperatures temperatures) {
        this.scale = scale;
        this.means = bridged(temperatures.days());
    }

    private static DailyMeans bridged(List<Temperatures.Day> days) {
        if (days.isEmpty()) {
            return new DailyMeans(0, new double[0]);
        }
        int first = (int) days.get(0).date().toEpochDay();
        double[] celsius = new double[(int) days.get(days.size() - 1).date().toEpochDay() - first + 1];
        int filled = -1;
        for (Temperatures.Day day : days) {
            int at = (int) day.date().toEpochDay() - first;
            boolean bridge = at - filled - 1 <= BRIDGED_D;
            for (int i = filled + 1; i < at; i++) {
                celsius[i] = bridge ? celsius[filled] + (day.meanC() - celsius[filled]) * (i - filled) / (at - filled)
                        : Double.NaN;
            }
            celsius[at] = day.meanC();
            filled = at;
        }
        return new DailyMeans(first, celsius);
    }

    /** A season as measured; days without a measurement are not numbers. */
    public DailyMeans of(int season) {
        return means.from((int) scale.anchor().atYear(season).toEpochDay());
    }

    /** Whether any day of a stretch of a season was measured. */
    public boolean tells(int season, int from, int to) {
        DailyMeans spring = of(season);
        return IntStream.rangeClosed(from, to).anyMatch(day -> !Double.isNaN(spring.at(day)));
    }

    /** A coming season: as measured so far, then the mean of all other seasons, warmer by a difference. */
    public DailyMeans expected(int season, int from, int to, double warmerC) {
        DailyMeans spring = of(season);
        double[] celsius = new double[to - from + 1];
        for (int day = from; day <= to; day++) {
            double measured = spring.at(day);
            celsius[day - from] = Double.isNaN(measured) ? usual(season, day) + warmerC : measured;
        }
        return new DailyMeans(from, celsius);
    }

    /**
     * Uncertainty of the mean of a stretch: how much its days without a measurement differ between seasons, standard
     * deviation in °C over the whole stretch.
     */
    public double openC(int season, int from, int to) {
        DailyMeans spring = of(season);
        List<Double> sums = new ArrayList<>();
        for (int other : seasons()) {
            double sum = 0;
            for (int day = from; day <= to && other != season; day++) {
                sum += Double.isNaN(spring.at(day)) ? of(other).at(day) : 0;
            }
            if (other != season && !Double.isNaN(sum)) {
                sums.add(sum / (to - from + 1));
            }
        }
        double[] values = sums.stream().mapToDouble(Double::doubleValue).toArray();
        return values.length < 2 ? 0 : PlainMean.of(values).deviation();
    }

    private double usual(int without, int day) {
        double sum = 0;
        int n = 0;
        for (int season : seasons()) {
            double celsius = season == without ? Double.NaN : of(season).at(day);
            if (!Double.isNaN(celsius)) {
                sum += celsius;
                n++;
            }
        }
        return sum / n;
    }

    private int[] seasons() {
        if (means.celsius().length == 0) {
            return new int[0];
        }
        int first = scale.seasonOf(LocalDate.ofEpochDay(means.firstDay()));
        int last = scale.seasonOf(LocalDate.ofEpochDay(means.lastDay()));
        return IntStream.rangeClosed(first, last).toArray();
    }
}
