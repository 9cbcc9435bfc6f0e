package understorey.weather;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.plan.ForecastHour;
import understorey.plan.SkyWord;
import understorey.sky.Interval;

/**
 * Drops on the flowers over a day, after rain and of dew: a thin film of water that dries in the air, computed in steps of
 * 10 minutes from rain, damp, wind and cloud of the forecast. It counts neither sun on the leaves nor shelter under others;
 * times are a rough guide.
 *
 * @param from    start of the first step
 * @param shares  of the film left at the start of each step
 * @param chances of the rain that laid the film, in each step; 1 of dew, and without a forecast of the chance
 * @param losses  of the film within each step; can be more than is left
 * @param reasons why there are drops and for how long, or why there are none; never empty
 * @param judged  false if the forecast has no rain figures and there were no drops
 * @param dryBy   when they are gone; null without drops, and if they outlast the forecast
 */
public record Drops(ZonedDateTime from, double[] shares, double[] losses, double[] chances, List<Advice> reasons, boolean judged,
                    @Nullable ZonedDateTime dryBy) {

    static final long STEP_S = 600;

    public Drops {
        reasons = List.copyOf(reasons);
    }

    /** The drops of a day; rows of the forecast without a date are of the date on which it begins, and the day before counts too. */
    public static Drops of(Interval day, List<ForecastHour> forecast, @Nullable SkyWord sky) {
        return new DropsEstimate(day, forecast, sky).drops();
    }

    /**
     * Share of the last film that is left if the rain comes, 0 to 1: 1 while it rains or dew forms, 0 at times without a
     * forecast; not a number if the forecast has no rain figures at all.
     */
    public double at(ZonedDateTime time) {
        if (!judged) {
            return Double.NaN;
        }
        int step = step(time);
        double within = (double) Math.floorMod(Duration.between(from, time).getSeconds(), STEP_S) / STEP_S;
        return step < 0 ? 0 : Math.max(0, shares[step] - losses[step] * within);
    }

    /** Chance that the drops of a time are there at all, 0 to 1: that of their rain; 1 at times without drops. */
    public double chance(ZonedDateTime time) {
        int step = step(time);
        return step < 0 ? 1 : chances[step];
    }

    /** −1 at times without a forecast. */
    private int step(ZonedDateTime time) {
        long step = Math.floorDiv(Duration.between(from, time).getSeconds(), STEP_S);
        return step < 0 || step >= shares.length ? -1 : (int) step;
    }
}
