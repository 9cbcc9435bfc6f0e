package understorey.light;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.LightAdvice;
import understorey.sky.Interval;

/**
 * The light that a picture wishes for, over its day.
 *
 * @param quality of the light at the time planned, 0 to 1: the product of its wishes
 * @param grade   of that quality, as a word
 * @param because what decides each wish then, the weakest first
 * @param windows the best times of the day, in order, to the minute; empty if no hour is even fair
 * @param best    the grade within those windows; {@code POOR} without windows
 * @param spoils  what spoils the time before, between and after them
 */
public record Outlook(double quality, Grade grade, List<Advice> because, List<Interval> windows, Grade best,
                      List<Spoil> spoils) {

    /** Good from 0.6, fair from 0.3: common practice, no source. */
    public enum Grade {
        GOOD(0.6), FAIR(0.3), POOR(0);

        private final double least;

        Grade(double least) {
            this.least = least;
        }

        /** Least quality of the grade. */
        public double least() {
            return least;
        }

        /** The grade of a quality, 0 to 1. */
        public static Grade of(double quality) {
            return quality >= GOOD.least ? GOOD : quality >= FAIR.least ? FAIR : POOR;
        }
    }

    /** A stretch of the day, and what most spoils its light. */
    public record Spoil(Interval when, Advice why) {
    }

    private static final int MOST_SPOILS = 4;
    /** Moments in half an hour, the shortest stretch of a day that is spoiled throughout. */
    private static final int SHORTEST = 6;

    /**
     * The outlook for one picture.
     *
     * @param wishes  at least one
     * @param day     moments at even steps, from the first light to the last
     * @param planned the moment for which it is planned
     * @param at      the moment at a time between those of the day; null if the cloud cover is unknown
     */
    public static Outlook of(Wishes wishes, List<Moment> day, Moment planned, Function<ZonedDateTime, @Nullable Moment> at) {
        Grade best = Grade.POOR;
        List<Interval> windows = new ArrayList<>();
        List<Spoil> spoils = new ArrayList<>();
        for (Grade grade : List.of(Grade.GOOD, Grade.FAIR)) {
            if (windows.isEmpty()) {
                spoils.clear();
                best = split(wishes, day, at, grade, windows, spoils) ? grade : Grade.POOR;
            }
        }
        if (best == Grade.POOR) {
            spoils = throughout(wishes, day);
        }
        double now = wishes.quality(planned);
        return new Outlook(now, Grade.of(now), wishes.because(planned), List.copyOf(windows), best,
                List.copyOf(spoils.subList(0, Math.min(MOST_SPOILS, spoils.size()))));
    }

    /** Fills in the windows of a grade and what spoils the rest; false when it has none. */
    private static boolean split(Wishes wishes, List<Moment> day, Function<ZonedDateTime, @Nullable Moment> at, Grade grade,
                                 List<Interval> windows, List<Spoil> spoils) {
        for (LightStretches.Stretch stretch : LightStretches.of(day, wishes::quality, at, grade)) {
            if (stretch.good()) {
                windows.add(stretch.when());
            } else {
                spoils.add(new Spoil(stretch.when(), spoiler(wishes, day, stretch.from(), stretch.to())));
            }
        }
        return !windows.isEmpty();
    }

    /**
     * What spoils a stretch: at the edge of the better light in the day's first stretch and in the last, so that it is true
     * there; what does so most often where the whole day is spoiled or the middle of it.
     */
    private static Advice spoiler(Wishes wishes, List<Moment> day, int from, int to) {
        if (from == 0 && to < day.size()) {
            return wishes.lost(day.get(to - 1), day.get(to));
        }
        if (from > 0 && to == day.size()) {
            return wishes.lost(day.get(from), day.get(from - 1));
        }
        return mostFrequent(limits(wishes, day.subList(from, to)));
    }

    /** What most speaks against the light at each moment. */
    private static List<LightAdvice> limits(Wishes wishes, List<Moment> moments) {
        return moments.stream().map(moment -> wishes.weakest(moment).limits()).toList();
    }

    /**
     * What spoils a whole day: the longest causes in order of time, each with its own hours. One of less than half an hour is left
     * out unless all are so short, and two of a kind beside it become one.
     */
    private static List<Spoil> throughout(Wishes wishes, List<Moment> day) {
        List<LightAdvice> limits = limits(wishes, day);
        List<Run> runs = runs(limits);
        if (runs.stream().anyMatch(run -> run.length() >= SHORTEST)) {
            runs.removeIf(run -> run.length() < SHORTEST);
        }
        for (int i = runs.size() - 1; i > 0; i--) {
            Run before = runs.get(i - 1);
            if (limits.get(before.from).getClass() == limits.get(runs.get(i).from).getClass()) {
                runs.set(i - 1, new Run(before.from, runs.remove(i).to));
            }
        }
        return runs.stream().sorted(Comparator.comparingInt(Run::length).reversed()).limit(MOST_SPOILS)
                .sorted(Comparator.comparingInt(Run::from))
                .map(run -> new Spoil(new Interval(time(day, run.from), time(day, Math.min(run.to, day.size() - 1))),
                        mostFrequent(limits.subList(run.from, run.to)))).toList();
    }

    /** Moments in a row, the last one excluded, with one cause. */
    private record Run(int from, int to) {

        int length() {
            return to - from;
        }
    }

    private static List<Run> runs(List<LightAdvice> limits) {
        List<Run> runs = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= limits.size(); i++) {
            if (i == limits.size() || limits.get(i).getClass() != limits.get(from).getClass()) {
                runs.add(new Run(from, i));
                from = i;
            }
        }
        return runs;
    }

    /** The kind of advice that comes most often, with its figures nearest to the middle of the moments that have it. */
    private static LightAdvice mostFrequent(List<LightAdvice> limits) {
        Map<Class<?>, List<Integer>> places = new HashMap<>();
        List<Integer> most = List.of();
        for (int i = 0; i < limits.size(); i++) {
            List<Integer> same = places.computeIfAbsent(limits.get(i).getClass(), kind -> new ArrayList<>());
            same.add(i);
            most = same.size() > most.size() ? same : most;
        }
        int middle = most.stream().mapToInt(Integer::intValue).sum() / most.size();
        return limits.get(most.stream().min(Comparator.comparingInt(i -> Math.abs(i - middle))).orElseThrow());
    }

    private static ZonedDateTime time(List<Moment> day, int i) {
        return day.get(i).sun().time();
    }
}
