package understorey.season;

import static understorey.reason.Figure.Measure.CELSIUS;
import static understorey.reason.Figure.Measure.COUNT;
import static understorey.reason.Figure.Measure.DAYS;
import static understorey.reason.Figure.Measure.DAYS_TO_TENTH;
import static understorey.reason.Figure.Measure.DAY_OF_YEAR;

import java.util.ArrayList;
import java.util.List;
import understorey.plan.Site;
import understorey.plan.Temperatures;
import understorey.reason.Figure;
import understorey.reason.Reason;

/** Foretells a peak by temperatures where they are of use, and says why not where they are not. */
final class SpringForecast {

    /** What an author says of a spring in a word is right to about so much, °C (ours). */
    private static final double WORD_ERROR_C = 0.5;

    private final PastYears past;
    private final Springs springs;
    private final int season;
    private final Double warmerC;
    private final SumStart start;
    private final List<Reason> reasons = new ArrayList<>();
    private FloweringWindow.Method method;

    SpringForecast(PastYears past, Temperatures temperatures, int season, Double warmerC, Site site) {
        this.past = past;
        this.springs = new Springs(past.scale(), temperatures);
        this.season = season;
        this.warmerC = warmerC;
        this.start = SumStart.at(site.position().latitude(), past.scale());
    }

    List<Reason> reasons() {
        return reasons;
    }

    FloweringWindow.Method method() {
        return method;
    }

    /** Null where the mean of the years is the better guide; the reasons then say why. */
    Prediction peak() {
        SpringModels models = new SpringModels(past, springs, start);
        SpringModels.Trial best = models.best();
        if (best == null) {
            reasons.add(Reason.of(SeasonReason.TEMPERATURE_TOO_FEW_YEARS).with("years", models.mostYears(), COUNT)
                    .with("least", SpringModels.LEAST_YEARS, COUNT));
            return null;
        }
        double missD = best.helps() ? models.rmseOfChoiceD() : best.rmseD();
        boolean helps = best.helps() && missD < best.rmseOfMeanD();
        if (!helps) {
            reasons.add(compared(best, false, missD));
            return null;
        }
        if (warmerC == null && !springs.tells(season, best.model().from(season), best.model().to())) {
            reasons.add(Reason.of(SeasonReason.TEMPERATURE_NONE_THIS_YEAR));
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

    private static Reason compared(SpringModels.Trial trial, boolean helps, double missD) {
        return (helps ? Reason.of(SeasonReason.TEMPERATURE_HELPED)
                : Reason.of(SeasonReason.TEMPERATURE_DID_NOT_HELP)).with("years", trial.n(), COUNT).with("miss", missD, DAYS_TO_TENTH)
                .with("mean", trial.rmseOfMeanD(), DAYS_TO_TENTH);
    }

    private Prediction byWindow(SpringModel.Window window, int years, double leastErrorD) {
        DailyMeans spring = expected(window, 0);
        double celsius = spring.mean(window.from(), window.to());
        if (Double.isNaN(celsius)) {
            return null;
        }
        double open = openC(window.from(), window.to());
        Prediction peak = window.peak(season, spring).noSurerThan(leastErrorD)
                .with(Math.abs(window.line().slope()) * open);
        method = FloweringWindow.Method.TEMPERATURE_WINDOW;
        reasons.add(Reason.of(SeasonReason.BY_WINDOW).with("years", years, COUNT)
                .with("error", FloweringForecast.halfWidth(peak), DAYS)
                .with("from", new Figure(past.scale().date(season, window.from()), DAY_OF_YEAR))
                .with("to", new Figure(past.scale().date(season, window.to()), DAY_OF_YEAR))
                .with("temperature", celsius, CELSIUS));
        if (!window.line().covers(celsius)) {
            reasons.add(Reason.of(SeasonReason.OUTSIDE_RECORDED_RANGE).with("temperature", celsius, CELSIUS)
                    .with("low", window.line().lowX(), CELSIUS).with("high", window.line().highX(), CELSIUS));
        }
        restAsUsual(open);
        return peak;
    }

    private Prediction byThermalTime(SpringModel.Thermal thermal, int years, double leastErrorD) {
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
        reasons.add(Reason.of(SeasonReason.BY_THERMAL_TIME).with("years", years, COUNT)
                .with("error", FloweringForecast.halfWidth(peak), DAYS)
                .with("base", thermal.sum().degreeDays().baseC(), CELSIUS)
                .with("start", new Figure(past.scale().date(season, from), DAY_OF_YEAR)));
        restAsUsual(open);
        return peak;
    }

    /** The spring expected, warmer by so much on the days that nobody measured yet. */
    private DailyMeans expected(SpringModel model, double moreC) {
        return springs.expected(season, model.from(season), model.to(), warmth() + moreC);
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
            reasons.add(Reason.of(SeasonReason.REST_AS_USUAL));
        }
    }
}
