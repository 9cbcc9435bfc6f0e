package understorey.light;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import understorey.sky.Interval;

/**
 * Splits a day into stretches with a grade of light and stretches without. Between two moments of the day each whole
 * minute is tried, so an end is the last minute that still has the grade: flecks of sun, clouds and the skyline change the
 * light at once.
 */
final class LightStretches {

    /** Moments further apart have hours without a forecast between them. */
    private static final Duration STEP = Duration.ofMinutes(5);

    /**
     * One stretch.
     *
     * @param good whether it has the grade
     * @param from index of its first moment
     * @param to   index after its last moment
     * @param when from minute to minute
     */
    record Stretch(boolean good, int from, int to, Interval when) {
    }

    private final List<Moment> day;
    private final ToDoubleFunction<Moment> quality;
    private final Function<ZonedDateTime, @Nullable Moment> at;
    private final Outlook.Grade grade;
    private final boolean[] good;

    private LightStretches(List<Moment> day, ToDoubleFunction<Moment> quality, Function<ZonedDateTime, @Nullable Moment> at,
                           Outlook.Grade grade) {
        this.day = day;
        this.quality = quality;
        this.at = at;
        this.grade = grade;
        this.good = new boolean[day.size()];
        for (int i = 0; i < good.length; i++) {
            good[i] = has(day.get(i));
        }
    }

    /**
     * The stretches in order, without a gap but for hours that have no moments and for dips between two moments.
     *
     * @param at the light at a time; null if the cloud cover is unknown
     */
    static List<Stretch> of(List<Moment> day, ToDoubleFunction<Moment> quality, Function<ZonedDateTime, @Nullable Moment> at,
                            Outlook.Grade grade) {
        LightStretches split = new LightStretches(day, quality, at, grade);
        split.dropInstants();
        List<Stretch> stretches = new ArrayList<>();
        int from = 0;
        while (from < split.good.length) {
            int to = split.end(from);
            stretches.add(new Stretch(split.good[from], from, to, split.when(from, to)));
            from = to;
        }
        return stretches;
    }

    private boolean has(@Nullable Moment moment) {
        return moment != null && quality.applyAsDouble(moment) >= grade.least();
    }

    /** Drops a stretch of a single moment. */
    private void dropInstants() {
        int from = 0;
        while (from < good.length) {
            int to = end(from);
            if (good[from] && when(from, to).length().isZero()) {
                good[from] = false;
            }
            from = to;
        }
    }

    private int end(int from) {
        int to = from + 1;
        while (to < good.length && good[to] == good[from] && !(good[to] && (apart(to) || dips(to)))) {
            to++;
        }
        return to;
    }

    private boolean apart(int i) {
        return Duration.between(time(i - 1), time(i)).compareTo(STEP) > 0;
    }

    /** Whether the light is worse between two good moments: flecks or the sun itself come or go. */
    private boolean dips(int i) {
        Moment before = day.get(i - 1);
        Moment after = day.get(i);
        if (before.clear() == after.clear() && before.contrastStops() == 0 == (after.contrastStops() == 0)) {
            return false;
        }
        boolean dips = false;
        for (ZonedDateTime time = time(i - 1).plusMinutes(1); time.isBefore(time(i)); time = time.plusMinutes(1)) {
            dips |= !has(at.apply(time));
        }
        return dips;
    }

    private Interval when(int from, int to) {
        ZonedDateTime begins = good[from] ? begins(from) : from > 0 ? ends(from) : time(0);
        ZonedDateTime ends = good[from] ? ends(to) : to < good.length ? begins(to) : time(to - 1);
        return new Interval(begins, ends);
    }

    /** The first minute of a good stretch from its first moment back. */
    private ZonedDateTime begins(int first) {
        ZonedDateTime begins = time(first);
        while (first > 0 && begins.minusMinutes(1).isAfter(time(first - 1)) && has(at.apply(begins.minusMinutes(1)))) {
            begins = begins.minusMinutes(1);
        }
        return begins;
    }

    /** The last minute of a good stretch from its last moment on. */
    private ZonedDateTime ends(int after) {
        ZonedDateTime ends = time(after - 1);
        while (after < good.length && ends.plusMinutes(1).isBefore(time(after)) && has(at.apply(ends.plusMinutes(1)))) {
            ends = ends.plusMinutes(1);
        }
        return ends;
    }

    private ZonedDateTime time(int i) {
        return day.get(i).sun().time();
    }
}
