package understorey.brief;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import understorey.advice.Advice;
import understorey.plan.Subject;
import understorey.plan.Trip;
import understorey.plan.When;
import understorey.scene.Drawing;
import understorey.scene.SeasonChart;
import understorey.season.DayRanking;
import understorey.season.FloweringWindow;

/**
 * Resolves the days of a trip to one, before anything else is planned. Where the author chose the day nothing waits for
 * the flowers: they are looked into on another core.
 */
final class SeasonPlanner {

    private final DayRanking ranking;
    private final LocalDate date;
    private final CompletableFuture<SeasonBrief> brief;

    SeasonPlanner(Trip trip) {
        boolean chosen = trip.when() instanceof When.On;
        this.ranking = chosen ? null : DayRanking.of(trip, trip.when().days());
        this.date = chosen ? trip.when().days().get(0) : ranking.best();
        this.brief = CompletableFuture.supplyAsync(() -> brief(chosen ? DayRanking.windows(trip, date) : covering()));
    }

    private List<FloweringWindow> covering() {
        List<FloweringWindow> covering = new ArrayList<>();
        for (FloweringWindow window : ranking.windows()) {
            if (window.covers(date)) {
                covering.add(window);
            }
        }
        return List.copyOf(covering);
    }

    private SeasonBrief brief(List<FloweringWindow> windows) {
        List<Drawing> charts = new ArrayList<>();
        for (FloweringWindow window : windows) {
            charts.add(SeasonChart.of(window, date));
        }
        return new SeasonBrief(windows, List.copyOf(charts), ranking);
    }

    LocalDate date() {
        return date;
    }

    /** Of a subject; null when nobody knows its season. */
    FloweringWindow window(Subject subject) {
        for (FloweringWindow window : brief().windows()) {
            if (window.subject().key().equals(subject.key())) {
                return window;
            }
        }
        return null;
    }

    /** What the author should look into. */
    List<Advice> findings() {
        List<Advice> findings = new ArrayList<>(ranking == null ? List.of() : ranking.findings());
        for (FloweringWindow window : brief().windows()) {
            findings.addAll(window.findings());
        }
        return findings;
    }

    SeasonBrief brief() {
        return brief.join();
    }
}
