package understorey.season;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.SeasonAdvice;
import understorey.plan.Site;
import understorey.plan.Temperatures;
import understorey.season.model.DailyMeans;
import understorey.season.model.PastYears;
import understorey.season.model.Prediction;
import understorey.season.model.SpringModel;
import understorey.season.model.SpringModels;
import understorey.season.model.Springs;
import understorey.season.model.SumStart;

/** Predicts a peak from temperatures if they help; otherwise its reasons say why they do not. */
final class SpringForecast {

    /** Error of the author's figure for a spring, °C: an assumption. */
    private static final double WORD_ERROR_C = 0.5;

    private final PastYears past;
    private final Springs springs;
    private final int season;
    private final @Nullable Double warmerC;
    private final SumStart start;
    private final List<Advice> reasons = new ArrayList<>();
    private FloweringWindow.Method method = FloweringWindow.Method.MEAN;

    SpringForecast(PastYears past, Temperatures temperatures, int season, @Nullable Double warmerC, Site site) {
        this.past = past;
        this.springs = new Springs(past.scale(), temperatures);
        this.season = season;
        this.warmerC = warmerC;
        this.start = SumStart.at(site.position().latitude(), past.scale());
    }

    List<Advice> reasons() {
        return reasons;
    }

    FloweringWindow.Method method() {
        return method;
    }

    /** The peak; null if the mean of the years is better, and the reasons then say why. */
    @Nullable Prediction peak() {
        SpringModels models = new SpringModels(past, springs, start);
        SpringModels.Trial best = models.best();
        if (best == null) {
            reasons.add(new SeasonAdvice.TemperatureTooFewYears(models.mostYears(), SpringModels.LEAST_YEARS));
            return null;
        }
        double missD = best.helps() ? models.rmseOfChoiceD() : best.rmseD();
        boolean helps = best.helps() && missD < best.rmseOfMeanD();
        if (!helps) {
            reasons.add(compared(best, false, missD));
            return null;
        }
        if (warmerC == null && !springs.tells(season, best.model().from(season), best.model().to())) {
            reasons.add(new SeasonAdvice.TemperatureNoneThisYear());
            return null;
        }
        double least = Math.max(FloweringForecast.LEAST_ERROR_D, missD * Math.sqrt(best.n() / (best.n() - 1.0)));
        Prediction peak = best.model() instanceof SpringModel.Window window ? byWindow(window, best.n(), least)
                : byThermalTime((SpringModel.Thermal) best.model(), best.n(), least);
        if (peak != null) {
            reasons.add(compared(best, true, missD));
        }
        return peak;
    }

    private static Advice compared(SpringModels.Trial trial, boolean helps, double missD) {
        return helps ? new SeasonAdvice.TemperatureHelped(trial.n(), missD, trial.rmseOfMeanD())
                : new SeasonAdvice.TemperatureDidNotHelp(trial.n(), missD, trial.rmseOfMeanD());
    }

    private @Nullable Prediction byWindow(SpringModel.Window window, int years, double leastErrorD) {
        DailyMeans spring = expected(window, 0);
        double celsius = spring.mean(window.from(), window.to());
        Prediction expected = window.peak(season, spring);
        if (expected == null) {
            return null;
        }
        double open = openC(window.from(), window.to());
        Prediction peak = expected.noSurerThan(leastErrorD).with(Math.abs(window.line().slope()) * open);
        method = FloweringWindow.Method.TEMPERATURE_WINDOW;
        reasons.add(new SeasonAdvice.ByWindow(years, past.scale().date(season, window.from()),
                past.scale().date(season, window.to()), celsius, FloweringForecast.halfWidth(peak)));
        if (!window.line().covers(celsius)) {
            reasons.add(new SeasonAdvice.OutsideRecordedRange(celsius, window.line().lowX(), window.line().highX()));
        }
        restAsUsual(open);
        return peak;
    }

    private @Nullable Prediction byThermalTime(SpringModel.Thermal thermal, int years, double leastErrorD) {
        Prediction expected = thermal.peak(season, expected(thermal, 0));
        if (expected == null) {
            return null;
        }
        Prediction peak = expected.noSurerThan(leastErrorD);
        int from = thermal.from(season);
        int day = (int) peak.day();
        double open = openC(from, day);
        double known = known(from, day);
        if (open > 0 && known < 1) {
            double perDay = open / (1 - known);
            Prediction cold = thermal.peak(season, expected(thermal, -perDay));
            Prediction warm = thermal.peak(season, expected(thermal, perDay));
            peak = peak.with(cold == null || warm == null ? 10 : (cold.day() - warm.day()) / 2);
        }
        method = FloweringWindow.Method.THERMAL_TIME;
        reasons.add(new SeasonAdvice.ByThermalTime(years, thermal.sum().degreeDays().baseC(),
                past.scale().date(season, from), FloweringForecast.halfWidth(peak)));
        restAsUsual(open);
        return peak;
    }

    /** The expected spring, warmer by a difference on the days without a measurement. */
    private DailyMeans expected(SpringModel model, double moreC) {
        return springs.expected(season, model.from(season), model.to(), warmth() + moreC);
    }

    private double warmth() {
        return warmerC == null ? 0 : warmerC;
    }

    /** Uncertainty of the mean of a stretch, °C: the author's figure for the spring removes most of it. */
    private double openC(int from, int to) {
        double open = springs.openC(season, from, to);
        return warmerC == null ? open : Math.min(open, WORD_ERROR_C * (1 - known(from, to)));
    }

    /** Share of the days of a stretch with a measurement. */
    private double known(int from, int to) {
        DailyMeans spring = springs.of(season);
        return IntStream.rangeClosed(from, to).filter(day -> !Double.isNaN(spring.at(day))).count() / (to - from + 1.0);
    }

    private void restAsUsual(double open) {
        if (open > 0 && warmerC == null) {
            reasons.add(new SeasonAdvice.RestAsUsual());
        }
    }
}
