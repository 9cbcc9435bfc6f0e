package understorey.brief;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import understorey.plan.Subject;
import understorey.plan.Trip;
import understorey.plan.When;
import understorey.reason.Reason;
import understorey.scene.Drawing;
import understorey.scene.SeasonChart;
import understorey.season.DayRanking;
import understorey.season.FloweringWindow;

/** Resolves the days of a trip to one, before anything else is planned. */
final class SeasonPlanner {

    private final DayRanking ranking;
    private final LocalDate date;
    private final List<FloweringWindow> windows;

    SeasonPlanner(Trip trip) {
        if (trip.when() instanceof When.On on) {
            this.ranking = null;
            this.date = on.date();
            this.windows = DayRanking.windows(trip, date);
        } else {
            this.ranking = DayRanking.of(trip, trip.when().days());
            this.date = ranking.best();
            this.windows = ranking.windows().stream().filter(window -> window.covers(date)).toList();
        }
    }

    LocalDate date() {
        return date;
    }

    /** Of a subject; null when nobody knows its season. */
    FloweringWindow window(Subject subject) {
        for (FloweringWindow window : windows) {
            if (window.subject().key().equals(subject.key())) {
                return window;
            }
        }
        return null;
    }

    /** What the author should look into. */
    List<Reason> findings() {
        List<Reason> findings = new ArrayList<>(ranking == null ? List.of() : ranking.findings());
        windows.forEach(window -> findings.addAll(window.findings()));
        return findings;
    }

    SeasonBrief brief() {
        List<Drawing> charts = new ArrayList<>();
        windows.forEach(window -> charts.add(SeasonChart.of(window, date)));
        return new SeasonBrief(windows, List.copyOf(charts), ranking);
    }
}
