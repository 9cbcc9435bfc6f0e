package understorey.season.model;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Models with temperatures, compared with the plain mean of the years on record: each year is predicted from the others, and
 * the model with the smallest error is taken if it beats the mean by at least 5 %. The margin is an assumption: the best of
 * four models sometimes beats the mean by luck alone. So the choice itself must beat
 * the mean as well, by {@link #rmseOfChoiceD()}.
 */
public final class SpringModels {

    /** Least number of years: with fewer, a line fits anything. */
    public static final int LEAST_YEARS = 4;
    private static final double BEATS = 0.95;
    private static final int[] WINDOWS_D = {30, 60};
    private static final double[] BASES_C = {0, 5};
    /** Least days from the start of a sum to the earliest peak: a shorter sum says little. */
    private static final int LEAST_SUM_D = 30;
    /** Days by which a late year may exceed the usual one. */
    private static final int LATEST_D = 90;

    /** A model with its error and that of the mean of the same years. */
    public record Trial(int n, double rmseD, double rmseOfMeanD, SpringModel model) {

        double share() {
            return rmseOfMeanD == 0 ? Double.POSITIVE_INFINITY : rmseD / rmseOfMeanD;
        }

        public boolean helps() {
            return share() < BEATS;
        }
    }

    private final PastYears past;
    private final Springs springs;
    private final SumStart start;
    private final int leastYears;
    private final List<Trial> trials = new ArrayList<>();
    private int mostYears;

    public SpringModels(PastYears past, Springs springs, SumStart start) {
        this(past, springs, start, LEAST_YEARS);
    }

    private SpringModels(PastYears past, Springs springs, SumStart start, int leastYears) {
        this.past = past;
        this.springs = springs;
        this.start = start;
        this.leastYears = leastYears;
        int end = (int) Math.round(PlainMean.mean(past.peakD())) - 1;
        for (int length : WINDOWS_D) {
            window(end - length + 1, end);
        }
        if (earliestSinceStart() >= LEAST_SUM_D) {
            for (double base : BASES_C) {
                thermal(new DegreeDays(DegreeDays.Rule.ABOVE_BASE, 0, base), end + LATEST_D);
            }
        }
    }

    /** The best model; null if too few years have temperatures. */
    public @Nullable Trial best() {
        return trials.stream().min(Comparator.comparingDouble(Trial::share)).orElse(null);
    }

    /** The most years with temperatures that any model found. */
    public int mostYears() {
        return mostYears;
    }

    /**
     * Error of the choice itself: each year is predicted by the model that the others alone would choose, or by their plain
     * mean if no model helps them. The error of the model chosen is too small for that, since it was
     * chosen for being small: M. Stone, Journal of the Royal Statistical Society B 36, 1974 (double cross-validation,
     * from memory). Root of the mean square, days.
     */
    public double rmseOfChoiceD() {
        double squares = 0;
        int n = 0;
        for (int i = 0; i < past.n(); i++) {
            int season = past.seasons()[i];
            Trial best = new SpringModels(past.without(i), springs, start, leastYears - 1).best();
            Prediction peak = best == null || !best.helps() ? PlainMean.of(past.without(i).peakD()).next()
                    : best.model().peak(season, springs.of(season));
            if (peak != null) {
                squares += (past.peakD()[i] - peak.day()) * (past.peakD()[i] - peak.day());
                n++;
            }
        }
        return n == 0 ? 0 : Math.sqrt(squares / n);
    }

    private double sinceStart(int i) {
        return past.peakD()[i] - start.day(past.seasons()[i]);
    }

    private double earliestSinceStart() {
        return IntStream.range(0, past.n()).mapToDouble(this::sinceStart).min().orElse(Double.POSITIVE_INFINITY);
    }

    private void window(int from, int to) {
        List<double[]> pairs = new ArrayList<>();
        for (int i = 0; i < past.n(); i++) {
            double mean = springs.of(past.seasons()[i]).mean(from, to);
            if (!Double.isNaN(mean)) {
                pairs.add(new double[] {mean, past.peakD()[i]});
            }
        }
        mostYears = Math.max(mostYears, pairs.size());
        if (pairs.size() >= leastYears) {
            double[] days = column(pairs, 1);
            WindowModel line = WindowModel.of(column(pairs, 0), days);
            if (line != null) {
                trials.add(new Trial(line.n(), line.leftOutD(), PlainMean.of(days).leftOutD(),
                        new SpringModel.Window(line, from, to)));
            }
        }
    }

    private void thermal(DegreeDays degreeDays, int to) {
        List<DailyMeans> means = new ArrayList<>();
        List<double[]> days = new ArrayList<>();
        for (int i = 0; i < past.n(); i++) {
            int season = past.seasons()[i];
            DailyMeans spring = springs.of(season).from(start.day(season));
            if (!Double.isNaN(degreeDays.sumTo(ThermalTime.wholeDay(sinceStart(i)), spring))) {
                means.add(spring);
                days.add(new double[] {sinceStart(i)});
            }
        }
        mostYears = Math.max(mostYears, days.size());
        if (days.size() >= leastYears) {
            double[] peaks = column(days, 0);
            ThermalTime sum = ThermalTime.of(degreeDays, means.toArray(new DailyMeans[0]), peaks);
            if (sum != null) {
                trials.add(new Trial(sum.n(), sum.leftOutD(), PlainMean.of(peaks).leftOutD(),
                        new SpringModel.Thermal(sum, start, to)));
            }
        }
    }

    private static double[] column(List<double[]> rows, int column) {
        return rows.stream().mapToDouble(row -> row[column]).toArray();
    }
}
