package understorey.season;

import static understorey.advice.Measure.DAYS;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import understorey.advice.Advice;
import understorey.advice.SeasonAdvice;
import understorey.plan.Site;
import understorey.plan.Temperatures;

/** Foretells a peak by temperatures where they are of use, and says why not where they are not. */
final class SpringForecast {

    /** What an author says of a spring in a word is right to about so much, °C (ours). */
    private static final double WORD_ERROR_C = 0.5;

    private final PastYears past;
    private final Springs springs;
    private final int season;
    private final Double warmerC;
    private final Integer start;
    private final List<Advice> reasons = new ArrayList<>();
    private FloweringWindow.Method method;

    SpringForecast(PastYears past, Temperatures temperatures, int season, Double warmerC, Site site) {
        this.past = past;
        this.springs = new Springs(past.scale(), temperatures);
        this.season = season;
        this.warmerC = warmerC;
        this.start = start(past.scale(), site.position().latitude());
    }

    List<Advice> reasons() {
        return reasons;
    }

    FloweringWindow.Method method() {
        return method;
    }

    /** 1 January, or 1 July in the south, before the anchor, on the season's scale; a day beside it in leap years. */
    private static Integer start(SeasonScale scale, double latitude) {
        LocalDate anchor = scale.anchor().atYear(2027);
        LocalDate start = LocalDate.of(2027, latitude < 0 ? 7 : 1, 1);
        LocalDate before = start.isAfter(anchor) ? start.minusYears(1) : start;
        return (int) -ChronoUnit.DAYS.between(before, anchor);
    }

    /** Null where the mean of the years is the better guide; the reasons then say why. */
    Prediction peak() {
        SpringModels models = new SpringModels(past, springs, start);
        SpringModels.Trial best = models.best();
        if (best == null) {
            reasons.add(new SeasonAdvice.TemperatureTooFewYears(models.mostYears(), SpringModels.LEAST_YEARS));
            return null;
        }
        if (!best.helps()) {
            reasons.add(compared(best));
            return null;
        }
        if (warmerC == null && !springs.tells(season, best.model().from(), best.model().to())) {
            reasons.add(new SeasonAdvice.TemperatureNoneThisYear());
            return null;
        }
        Prediction peak = best.model() instanceof SpringModels.Model.Window window ? byWindow(window, best)
                : byThermalTime((SpringModels.Model.Thermal) best.model(), best);
        if (peak != null) {
            reasons.add(compared(best));
        }
        return peak;
    }

    private static Advice compared(SpringModels.Trial trial) {
        return trial.helps() ? new SeasonAdvice.TemperatureHelped(trial.n(), trial.rmseD(), trial.rmseOfMeanD())
                : new SeasonAdvice.TemperatureDidNotHelp(trial.n(), trial.rmseD(), trial.rmseOfMeanD());
    }

    private Prediction byWindow(SpringModels.Model.Window window, SpringModels.Trial trial) {
        DailyMeans spring = springs.expected(season, window.from(), window.to(), warmth());
        double celsius = spring.mean(window.from(), window.to());
        if (Double.isNaN(celsius)) {
            return null;
        }
        double open = openC(window.from(), window.to());
        Prediction peak = window.line().at(celsius).with(Math.abs(window.line().slope()) * open);
        method = FloweringWindow.Method.TEMPERATURE_WINDOW;
        reasons.add(new SeasonAdvice.ByWindow(trial.n(), past.scale().date(season, window.from()),
                past.scale().date(season, window.to()), celsius, FloweringForecast.halfWidth(peak)));
        if (!window.line().covers(celsius)) {
            reasons.add(new SeasonAdvice.OutsideRecordedRange(celsius, window.line().lowX(), window.line().highX()));
        }
        restAsUsual(open);
        return peak;
    }

    private Prediction byThermalTime(SpringModels.Model.Thermal thermal, SpringModels.Trial trial) {
        Prediction peak = thermal.sum().next(springs.expected(season, thermal.from(), thermal.to(), warmth()));
        if (peak == null) {
            return null;
        }
        int day = (int) peak.day();
        double open = openC(thermal.from(), day);
        double known = known(thermal.from(), day);
        if (open > 0 && known < 1) {
            double perDay = open / (1 - known);
            Prediction cold = thermal.sum().next(springs.expected(season, thermal.from(), thermal.to(), warmth() - perDay));
            Prediction warm = thermal.sum().next(springs.expected(season, thermal.from(), thermal.to(), warmth() + perDay));
            peak = peak.with(cold == null || warm == null ? 10 : (cold.day() - warm.day()) / 2);
        }
        method = FloweringWindow.Method.THERMAL_TIME;
        reasons.add(new SeasonAdvice.ByThermalTime(trial.n(), thermal.sum().degreeDays().baseC(),
                past.scale().date(season, thermal.from()), FloweringForecast.halfWidth(peak)));
        restAsUsual(open);
        return peak;
    }

    private double warmth() {
        return warmerC == null ? 0 : warmerC;
    }

    /** What is still open in the mean of a stretch, °C: an author's word on the spring closes most of it. */
    private double openC(int from, int to) {
        double open = springs.openC(season, from, to);
        return warmerC == null ? open : Math.min(open, WORD_ERROR_C * (1 - known(from, to)));
    }

    /** The share of a stretch that was measured. */
    private double known(int from, int to) {
        DailyMeans spring = springs.of(season);
        int known = 0;
        for (int day = from; day <= to; day++) {
            known += Double.isNaN(spring.at(day)) ? 0 : 1;
        }
        return known / (to - from + 1.0);
    }

    private void restAsUsual(double open) {
        if (open > 0 && warmerC == null) {
            reasons.add(new SeasonAdvice.RestAsUsual());
        }
    }
}
