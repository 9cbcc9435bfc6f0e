package understorey.weather;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.plan.ForecastHour;
import understorey.plan.SkyWord;

/**
 * Drops on the flowers over a date, after rain and of dew: a thin film of water that dries in the air, computed in steps of
 * 10 minutes from rain, damp, wind and cloud of the forecast. It counts neither sun on the leaves nor shelter under others;
 * times are a rough guide.
 *
 * @param from    start of the first step
 * @param shares  of the film left at the start of each step
 * @param losses  of the film within each step; can be more than is left
 * @param reasons why there are drops and for how long, or why there are none; never empty
 * @param judged  false if the forecast has no rain figures and there were no drops
 * @param dryBy   when they are gone; null without drops, and if they outlast the forecast
 */
public record Drops(ZonedDateTime from, double[] shares, double[] losses, List<Advice> reasons, boolean judged,
                    @Nullable ZonedDateTime dryBy) {

    static final long STEP_S = 600;

    public Drops {
        reasons = List.copyOf(reasons);
    }

    /** The drops of a date; rows of the forecast without a date are of it, and rows of the day before count too. */
    public static Drops of(LocalDate date, ZoneId zone, List<ForecastHour> forecast, @Nullable SkyWord sky) {
        return new DropsEstimate(date, zone, forecast, sky).drops();
    }

    /**
     * Share of the last film that is left, 0 to 1: 1 while it rains or dew forms, 0 at times without a forecast; not a number
     * if the forecast has no rain figures at all.
     */
    public double at(ZonedDateTime time) {
        if (!judged) {
            return Double.NaN;
        }
        long seconds = Duration.between(from, time).getSeconds();
        int step = (int) Math.min(shares.length, Math.floorDiv(seconds, STEP_S));
        if (step < 0 || step >= shares.length) {
            return 0;
        }
        double within = (double) Math.floorMod(seconds, STEP_S) / STEP_S;
        return Math.max(0, shares[step] - losses[step] * within);
    }
}
