package understorey.season.model;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import understorey.plan.Season;

/**
 * The years on record, on the scale of their season.
 *
 * @param scale   around the middle of all of them
 * @param seasons in order, each once
 * @param peakD   peak of each; from the other dates if the peak is not recorded
 * @param course  mean of the years that show it
 * @param twice   a season with more than one record; null if there is none
 */
public record PastYears(SeasonScale scale, int[] seasons, double[] peakD, Course course, @Nullable Integer twice) {

    /**
     * The years of some records, without one season.
     *
     * @param scale   null to take it from the records
     * @param without a season to leave out; null for none
     */
    public static PastYears of(List<Season.Flowering> records, @Nullable SeasonScale scale, @Nullable Integer without) {
        Course course = course(records);
        SeasonScale own = scale != null ? scale : SeasonScale.around(dates(records, course));
        TreeMap<Integer, double[]> peaks = new TreeMap<>();
        Integer twice = null;
        for (Season.Flowering record : records) {
            LocalDate peak = peak(record, course);
            int season = own.seasonOf(peak);
            if (without == null || season != without) {
                peaks.putIfAbsent(season, new double[2]);
                double[] sum = peaks.get(season);
                twice = sum[1] > 0 ? Integer.valueOf(season) : twice;
                sum[0] += own.day(season, peak);
                sum[1]++;
            }
        }
        double[] days = new double[peaks.size()];
        int[] seasons = new int[days.length];
        int i = 0;
        for (Map.Entry<Integer, double[]> peak : peaks.entrySet()) {
            seasons[i] = peak.getKey();
            days[i++] = peak.getValue()[0] / peak.getValue()[1];
        }
        return new PastYears(own, seasons, days, course, twice);
    }

    public int n() {
        return seasons.length;
    }

    /** These years without one, on the same scale. */
    PastYears without(int one) {
        int[] others = new int[n() - 1];
        double[] days = new double[n() - 1];
        for (int i = 0; i < others.length; i++) {
            others[i] = seasons[i < one ? i : i + 1];
            days[i] = peakD[i < one ? i : i + 1];
        }
        return new PastYears(scale, others, days, course, twice);
    }

    /** The day of the peak; computed from the other dates if it is not recorded. */
    public static LocalDate peak(Season.Flowering record, Course course) {
        if (record.full() != null) {
            return record.full();
        }
        if (record.first() != null && record.over() != null) {
            long days = record.over().toEpochDay() - record.first().toEpochDay();
            return record.first().plusDays(Math.round(days * course.riseD() / (course.riseD() + course.fallD())));
        }
        return record.first() != null ? record.first().plusDays(Math.round(course.riseD()))
                : Objects.requireNonNull(record.over()).minusDays(Math.round(course.fallD()));
    }

    private static List<LocalDate> dates(List<Season.Flowering> records, Course course) {
        return records.stream().map(record -> peak(record, course)).toList();
    }

    private static Course course(List<Season.Flowering> records) {
        double rise = 0;
        double fall = 0;
        int rises = 0;
        int falls = 0;
        for (Season.Flowering record : records) {
            if (record.first() != null && record.full() != null) {
                rise += record.full().toEpochDay() - record.first().toEpochDay();
                rises++;
            }
            if (record.full() != null && record.over() != null) {
                fall += record.over().toEpochDay() - record.full().toEpochDay();
                falls++;
            }
        }
        return new Course(rises == 0 ? Course.USUAL.riseD() : Math.max(1, rise / rises),
                falls == 0 ? Course.USUAL.fallD() : Math.max(1, fall / falls), rises == 0 || falls == 0);
    }
}
