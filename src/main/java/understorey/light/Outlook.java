package understorey.light;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.plan.LightWish;
import understorey.sky.Interval;

/**
 * The light that a picture wishes for, over its day.
 *
 * @param quality of the light at the time planned, 0 to 1: the product of its wishes
 * @param grade   the same in a word
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

    /**
     * What a later moment has over an earlier one.
     *
     * @param sun whether that is the sun itself
     * @param why the earlier one is worse
     */
    public record Gain(boolean sun, Advice why) {
    }

    private static final int MOST_SPOILS = 4;
    /** Moments in half an hour, the shortest stretch of a day that is spoiled throughout. */
    private static final int SHORTEST = 6;

    /**
     * The outlook for one picture.
     *
     * @param wishes    at least one
     * @param facingDeg null for a picture without a bearing
     * @param day       moments at even steps, from the first light to the last
     * @param planned   the moment for which it is planned
     * @param at        the moment at a time between those of the day; null if the cloud cover is unknown
     */
    public static Outlook of(List<LightWish> wishes, @Nullable Double facingDeg, List<Moment> day,
                             Moment planned, Function<ZonedDateTime, @Nullable Moment> at) {
        Grade best = Grade.POOR;
        List<Interval> windows = new ArrayList<>();
        List<Spoil> spoils = new ArrayList<>();
        for (Grade grade : List.of(Grade.GOOD, Grade.FAIR)) {
            if (windows.isEmpty()) {
                spoils.clear();
                best = split(wishes, facingDeg, day, at, grade, windows, spoils) ? grade : Grade.POOR;
            }
        }
        if (best == Grade.POOR) {
            spoils = throughout(wishes, facingDeg, day);
        }
        double now = quality(wishes, planned, facingDeg);
        return new Outlook(now, Grade.of(now), because(wishes, planned, facingDeg), List.copyOf(windows), best,
                List.copyOf(spoils.subList(0, Math.min(MOST_SPOILS, spoils.size()))));
    }

    /** Fills in the windows of a grade and what spoils the rest; false when it has none. */
    private static boolean split(List<LightWish> wishes, @Nullable Double facingDeg, List<Moment> day,
                                 Function<ZonedDateTime, @Nullable Moment> at, Grade grade, List<Interval> windows,
                                 List<Spoil> spoils) {
        for (LightStretches.Stretch stretch : LightStretches.of(day, moment -> quality(wishes, moment, facingDeg), at, grade)) {
            if (stretch.good()) {
                windows.add(stretch.when());
            } else {
                spoils.add(new Spoil(stretch.when(), spoiler(wishes, facingDeg, day, stretch.from(), stretch.to())));
            }
        }
        return !windows.isEmpty();
    }

    /** How well a moment gives the light wished for, 0 to 1: the product of the wishes; 1 without wishes. */
    public static double quality(List<LightWish> wishes, Moment moment, @Nullable Double facingDeg) {
        double product = 1;
        for (LightWish wish : wishes) {
            product *= Wish.of(wish, moment, facingDeg).value();
        }
        return product;
    }

    /** What decides each wish at a moment, the weakest first. */
    public static List<Advice> because(List<LightWish> wishes, Moment moment, @Nullable Double facingDeg) {
        List<Wish> judged = new ArrayList<>();
        for (LightWish wish : wishes) {
            Wish light = Wish.of(wish, moment, facingDeg);
            int at = 0;
            while (at < judged.size() && judged.get(at).value() <= light.value()) {
                at++;
            }
            judged.add(at, light);
        }
        List<Advice> reasons = new ArrayList<>();
        for (Wish light : judged) {
            Advice reason = light.because(moment, facingDeg);
            if (!reasons.contains(reason)) {
                reasons.add(reason);
            }
        }
        return List.copyOf(reasons);
    }

    /** The wish that gains most from an earlier moment to a later one; null if none of them is spoilt earlier. */
    public static @Nullable Gain gained(List<LightWish> wishes, @Nullable Double facingDeg, Moment before, Moment then) {
        Wish spoilt = null;
        Cause lost = null;
        double most = 0;
        for (LightWish wish : wishes) {
            Wish light = Wish.of(wish, before, facingDeg);
            Wish later = Wish.of(wish, then, facingDeg);
            if (later.value() - light.value() > most && Grade.of(later.value()) != Grade.POOR) {
                most = later.value() - light.value();
                spoilt = light;
                lost = light.lostAgainst(later);
            }
        }
        return spoilt == null || lost == null || Grade.of(spoilt.least()) == Grade.GOOD ? null
                : new Gain(lost.sunHidden(), lost.advice(before, facingDeg));
    }

    /**
     * What spoils a stretch: at the edge of the better light in the day's first stretch and in the last, so that it is true
     * there; what does so most often where the whole day is spoiled or the middle of it.
     */
    private static Advice spoiler(List<LightWish> wishes, @Nullable Double facingDeg, List<Moment> day, int from, int to) {
        if (from == 0 && to < day.size()) {
            return lost(wishes, day.get(to - 1), day.get(to), facingDeg);
        }
        if (from > 0 && to == day.size()) {
            return lost(wishes, day.get(from), day.get(from - 1), facingDeg);
        }
        Moment moment = day.get(mostFrequent(wishes, facingDeg, day, from, to));
        return weakest(wishes, moment, facingDeg).against(moment, facingDeg);
    }

    /** What makes a moment worse than the better one beside it. */
    private static Advice lost(List<LightWish> wishes, Moment moment, Moment better, @Nullable Double facingDeg) {
        Cause lost = weakest(wishes, moment, facingDeg).limits();
        double most = 0;
        for (LightWish wish : wishes) {
            Wish light = Wish.of(wish, moment, facingDeg);
            Wish other = Wish.of(wish, better, facingDeg);
            if (other.value() - light.value() > most) {
                most = other.value() - light.value();
                lost = light.lostAgainst(other);
            }
        }
        return lost.advice(moment, facingDeg);
    }

    /** What spoils a whole day, one thing after another; what does so most briefly gives way to what comes before or after it. */
    private static List<Spoil> throughout(List<LightWish> wishes, @Nullable Double facingDeg, List<Moment> day) {
        List<Integer> ends = new ArrayList<>();
        for (int i = 1; i <= day.size(); i++) {
            if (i == day.size() || weakest(wishes, day.get(i), facingDeg).limits() != weakest(wishes, day.get(i - 1), facingDeg).limits()) {
                ends.add(i);
            }
        }
        int shortest = shortest(ends);
        while (ends.size() > 1 && (ends.size() > MOST_SPOILS || length(ends, shortest) < SHORTEST)) {
            ends.remove(shortest == 0 ? 0 : shortest - 1);
            shortest = shortest(ends);
        }
        List<Spoil> spoils = new ArrayList<>();
        for (int run = 0; run < ends.size(); run++) {
            int from = ends.get(run) - length(ends, run);
            int to = ends.get(run);
            Moment moment = day.get(mostFrequent(wishes, facingDeg, day, from, to));
            spoils.add(new Spoil(new Interval(time(day, from), time(day, Math.min(to, day.size() - 1))),
                    weakest(wishes, moment, facingDeg).against(moment, facingDeg)));
        }
        return spoils;
    }

    private static int shortest(List<Integer> ends) {
        int shortest = 0;
        for (int run = 1; run < ends.size(); run++) {
            shortest = length(ends, run) < length(ends, shortest) ? run : shortest;
        }
        return shortest;
    }

    private static int length(List<Integer> ends, int run) {
        return ends.get(run) - (run == 0 ? 0 : ends.get(run - 1));
    }

    private static int mostFrequent(List<LightWish> wishes, @Nullable Double facingDeg, List<Moment> day, int from, int to) {
        int[] times = new int[Cause.values().length];
        int[] middle = new int[times.length];
        int most = 0;
        for (int i = from; i < to; i++) {
            int kind = weakest(wishes, day.get(i), facingDeg).limits().ordinal();
            times[kind]++;
            middle[kind] += i;
            most = times[kind] > times[most] ? kind : most;
        }
        int near = middle[most] / times[most];
        for (int away = 0; ; away++) {
            for (int i : new int[] {near - away, near + away}) {
                if (i >= from && i < to && weakest(wishes, day.get(i), facingDeg).limits().ordinal() == most) {
                    return i;
                }
            }
        }
    }

    private static Wish weakest(List<LightWish> wishes, Moment moment, @Nullable Double facingDeg) {
        return wishes.stream().map(wish -> Wish.of(wish, moment, facingDeg)).min(Comparator.comparingDouble(Wish::value)).orElseThrow();
    }

    private static ZonedDateTime time(List<Moment> day, int i) {
        return day.get(i).sun().time();
    }
}
