package understorey.brief;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.plan.Subject;
import understorey.plan.Trip;
import understorey.plan.When;
import understorey.scene.Scene;
import understorey.scene.chart.SeasonChart;
import understorey.season.DayRanking;
import understorey.season.FloweringWindow;

/**
 * When to go.
 *
 * @param date    the author's, or the best of those that were open
 * @param windows of the subjects whose season is known, in the order of their pictures, in the season of that day
 * @param charts  of each window
 * @param ranking of the days that were open; null where the author chose the day
 */
public record SeasonBrief(LocalDate date, List<FloweringWindow> windows, List<Scene> charts,
                          @Nullable DayRanking ranking) {

    static SeasonBrief of(Trip trip) {
        if (trip.when() instanceof When.On on) {
            LocalDate date = on.days().get(0);
            return of(trip, date, DayRanking.windows(trip, date), null);
        }
        DayRanking ranking = DayRanking.of(trip, trip.when().days());
        LocalDate date = ranking.best();
        return of(trip, date, ranking.windows().stream().filter(window -> window.covers(date)).toList(), ranking);
    }

    /** Years on record are not told of a place to be protected: who knows the days knows the wood. */
    private static SeasonBrief of(Trip trip, LocalDate date, List<FloweringWindow> found, @Nullable DayRanking ranking) {
        List<FloweringWindow> windows = trip.sparesThePlace() ? found.stream().map(FloweringWindow::withoutRecords).toList() : found;
        return new SeasonBrief(date, windows, windows.stream().map(window -> SeasonChart.of(window, date, trip.hidesTheDay())).toList(), ranking);
    }

    /** Of the first picture whose subject's season is known; null when none is. */
    public @Nullable FloweringWindow window() {
        return windows.isEmpty() ? null : windows.get(0);
    }

    /** Of a subject; null when its season is unknown. */
    @Nullable FloweringWindow window(Subject subject) {
        return windows.stream().filter(window -> window.subject().key().equals(subject.key())).findFirst().orElse(null);
    }

    /** What the author should look into. */
    List<Advice> findings() {
        List<Advice> findings = new ArrayList<>(ranking == null ? List.of() : ranking.findings());
        windows.forEach(window -> findings.addAll(window.findings()));
        return findings;
    }
}
