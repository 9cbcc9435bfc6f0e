package understorey.season;

import java.util.ArrayList;
import java.util.List;

/**
 * The models that know temperatures, tried on the years on record and held against those years' plain mean: each year
 * is foretold from the others, and the model that misses least is taken, if it beats the mean by a twentieth at least.
 * The margin is ours: the best of four is better than the mean by luck alone now and then.
 */
final class SpringModels {

    /** With fewer, a line fits anything. */
    static final int LEAST_YEARS = 4;
    private static final double BEATS = 0.95;
    private static final int[] WINDOWS_D = {30, 60};
    private static final double[] BASES_C = {0, 5};
    /** A sum that begins later than this before the earliest peak says little. */
    private static final int LEAST_SUM_D = 30;
    /** A late year may take so many days more than the usual one. */
    private static final int LATEST_D = 90;

    /** A model at work: what it misses by, what the mean of the same years does, and what it foretells. */
    record Trial(int n, double rmseD, double rmseOfMeanD, Model model) {

        double share() {
            return rmseOfMeanD == 0 ? Double.POSITIVE_INFINITY : rmseD / rmseOfMeanD;
        }

        boolean helps() {
            return share() < BEATS;
        }
    }

    /** One of the two kinds, with the days of the season that it looks at. */
    sealed interface Model {
        int from();

        int to();

        record Window(WindowModel line, int from, int to) implements Model {
        }

        record Thermal(ThermalTime sum, int from, int to) implements Model {
        }
    }

    private final PastYears past;
    private final Springs springs;
    private final List<Trial> trials = new ArrayList<>();
    private int mostYears;

    SpringModels(PastYears past, Springs springs, Integer startDay) {
        this.past = past;
        this.springs = springs;
        int end = (int) Math.round(PlainMean.mean(past.peakD())) - 1;
        for (int length : WINDOWS_D) {
            window(end - length + 1, end);
        }
        for (double base : BASES_C) {
            if (startDay != null && earliest() - startDay >= LEAST_SUM_D) {
                thermal(new DegreeDays(DegreeDays.Rule.ABOVE_BASE, startDay, base), startDay, end + LATEST_D);
            }
        }
    }

    /** The best of them; null when too few years have temperatures. */
    Trial best() {
        Trial best = null;
        for (Trial trial : trials) {
            best = best == null || trial.share() < best.share() ? trial : best;
        }
        return best;
    }

    /** The most years that any of them found temperatures for. */
    int mostYears() {
        return mostYears;
    }

    private double earliest() {
        double earliest = Double.POSITIVE_INFINITY;
        for (double day : past.peakD()) {
            earliest = Math.min(earliest, day);
        }
        return earliest;
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
        if (pairs.size() >= LEAST_YEARS) {
            double[] days = column(pairs, 1);
            WindowModel line = WindowModel.of(column(pairs, 0), days);
            if (line != null) {
                trials.add(new Trial(line.n(), line.leftOut().rmseD(), PlainMean.of(days).leftOut().rmseD(),
                        new Model.Window(line, from, to)));
            }
        }
    }

    private void thermal(DegreeDays degreeDays, int from, int to) {
        List<DailyMeans> means = new ArrayList<>();
        List<double[]> days = new ArrayList<>();
        for (int i = 0; i < past.n(); i++) {
            DailyMeans spring = springs.of(past.seasons()[i]);
            if (!Double.isNaN(degreeDays.sumTo(ThermalTime.wholeDay(past.peakD()[i]), spring))) {
                means.add(spring);
                days.add(new double[] {past.peakD()[i]});
            }
        }
        mostYears = Math.max(mostYears, days.size());
        if (days.size() >= LEAST_YEARS) {
            double[] peaks = column(days, 0);
            ThermalTime sum = ThermalTime.of(degreeDays, means.toArray(new DailyMeans[0]), peaks);
            if (sum != null) {
                trials.add(new Trial(sum.n(), sum.leftOut().rmseD(), PlainMean.of(peaks).leftOut().rmseD(),
                        new Model.Thermal(sum, from, to)));
            }
        }
    }

    private static double[] column(List<double[]> rows, int column) {
        double[] values = new double[rows.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = rows.get(i)[column];
        }
        return values;
    }
}
