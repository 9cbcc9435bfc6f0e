package understorey.light;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import understorey.advice.Advice;
import understorey.plan.ForecastHour;
import understorey.plan.SkyWord;

/**
 * Drops on the flowers over a date, after rain and of dew: a thin film of water that the air takes away, reckoned in
 * steps of ten minutes from what the forecast says of rain, damp, wind and cloud. Neither the sun on the leaves nor
 * shelter under others is counted; times are a rough guide.
 *
 * @param from    when the first step begins
 * @param shares  of the film at the beginning of each step
 * @param losses  of it within each step, may run past what is left
 * @param reasons why there are drops and for how long, or why there are none; never empty
 * @param judged  false when the forecast says nothing of rain and none stood
 * @param dryBy   when they are gone; null when none stood, or when they outlast the forecast
 */
public record Drops(ZonedDateTime from, double[] shares, double[] losses, List<Advice> reasons, boolean judged,
                    ZonedDateTime dryBy) {

    static final long STEP_S = 600;

    public Drops {
        reasons = List.copyOf(reasons);
    }

    /** The drops of a date; rows of the forecast without a date are of it, those of the day before count with it. */
    public static Drops of(LocalDate date, ZoneId zone, List<ForecastHour> forecast, SkyWord sky) {
        return new DropsEstimate(date, zone, forecast, sky).drops();
    }

    /**
     * Part of the last film that still stands, 0 to 1: 1 while it rains or dew forms, 0 where the forecast says nothing;
     * not a number when nobody told of rain at all.
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
