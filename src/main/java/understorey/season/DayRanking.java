package understorey.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.DayAdvice;
import understorey.plan.Shot;
import understorey.plan.Subject;
import understorey.plan.Trip;

/**
 * Ranking of the days of a trip.
 *
 * @param windows  of the subjects, in the order of their pictures; more than one per subject if the days are in two of
 *                 its seasons
 * @param days     in order of date
 * @param best     the day to go
 * @param findings what the author should know about the choice
 */
public record DayRanking(List<FloweringWindow> windows, List<RankedDay> days, LocalDate best, List<Advice> findings) {

    /** Days within the same fiftieth of the best score count as equal. */
    private static final double STEPS = 50;

    /** Ranks at least one day of a trip. */
    public static DayRanking of(Trip trip, List<LocalDate> dates) {
        List<FloweringWindow> windows = new ArrayList<>();
        for (LocalDate date : dates) {
            for (Shot shot : trip.shots()) {
                addWindow(windows, trip, shot.subject(), date);
            }
        }
        DayJudge judge = new DayJudge(trip, windows);
        return ranked(windows, dates.stream().map(judge::day).toList());
    }

    /** The windows of a trip's subjects nearest to a day. */
    public static List<FloweringWindow> windows(Trip trip, LocalDate near) {
        List<FloweringWindow> windows = new ArrayList<>();
        for (Shot shot : trip.shots()) {
            addWindow(windows, trip, shot.subject(), near);
        }
        return List.copyOf(windows);
    }

    private static void addWindow(List<FloweringWindow> windows, Trip trip, Subject subject, LocalDate date) {
        if (window(windows, subject, date) == null) {
            FloweringWindow window = FloweringWindow.of(trip.site(), subject, date, trip.wishes().springWarmerC());
            if (window != null) {
                windows.add(window);
            }
        }
    }

    /** The window of a subject that a day belongs to; null if there is none. */
    static @Nullable FloweringWindow window(List<FloweringWindow> windows, Subject subject, LocalDate date) {
        return windows.stream().filter(window -> window.subject().key().equals(subject.key()) && window.covers(date))
                .findFirst().orElse(null);
    }

    /**
     * The best first: days with any chance of flowers before hopeless ones, wanted days before others, then by score,
     * flowers and date. If every wanted day is hopeless, a wanted day is still the best.
     */
    private static DayRanking ranked(List<FloweringWindow> windows, List<RankedDay> days) {
        double most = days.stream().mapToDouble(RankedDay::score).max().orElse(0);
        boolean flowersFirst = days.stream().anyMatch(day -> day.wanted() && !day.hopeless());
        double step = most == 0 ? 1 : most / STEPS;
        List<RankedDay> order = new ArrayList<>(days);
        order.sort(Comparator.comparing((RankedDay day) -> flowersFirst && day.hopeless())
                .thenComparing(day -> !day.wanted())
                .thenComparing(day -> -Math.round(day.score() / step))
                .thenComparing(day -> day.flower() == null ? 0 : -Math.round(day.flower() * 100))
                .thenComparing(RankedDay::date));
        RankedDay best = order.get(0);
        List<Advice> findings = new ArrayList<>();
        if (!best.wanted()) {
            findings.add(new DayAdvice.NoDayWanted(best.date()));
        }
        List<RankedDay> ranked = days.stream()
                .map(day -> day.ranked(order.indexOf(day) + 1, day == best ? tied(order, step) : day.reasons())).toList();
        return new DayRanking(List.copyOf(windows), ranked, best.date(), List.copyOf(findings));
    }

    /** The best day's reasons, with one more if the next day is as good. */
    private static List<Advice> tied(List<RankedDay> order, double step) {
        RankedDay best = order.get(0);
        RankedDay next = order.size() < 2 ? null : order.get(1);
        if (next == null || next.wanted() != best.wanted() || best.score() == 0
                || Math.round(best.score() / step) != Math.round(next.score() / step)) {
            return best.reasons();
        }
        List<Advice> reasons = new ArrayList<>(best.reasons());
        boolean flowers = best.flower() != null && next.flower() != null
                && Math.round(best.flower() * 100) > Math.round(next.flower() * 100);
        reasons.add(flowers ? new DayAdvice.DayAsGoodMoreFlowers(next.date()) : new DayAdvice.DayAsGoodEarlier(next.date()));
        return List.copyOf(reasons);
    }

    /** How many of the days the author wants; all where none is wanted. */
    public int possible() {
        int wanted = (int) days.stream().filter(RankedDay::wanted).count();
        return wanted == 0 ? days.size() : wanted;
    }

    /** The result of a day; null if it is not among the days. */
    public @Nullable RankedDay day(LocalDate date) {
        return days.stream().filter(day -> day.date().equals(date)).findFirst().orElse(null);
    }
}
