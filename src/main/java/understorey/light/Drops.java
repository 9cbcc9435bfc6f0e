package understorey.light;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import understorey.plan.ForecastHour;
import understorey.plan.SkyWord;
import understorey.reason.Reason;

/**
 * Drops on the flowers over a date, after rain and of dew: a thin film of water that the air takes away, reckoned in
 * steps of ten minutes from what the forecast says of rain, damp, wind and cloud. Neither the sun on the leaves nor
 * shelter under others is counted; times are a rough guide.
 */
public final class Drops {

    static final long STEP_S = 600;

    private final ZonedDateTime from;
    private final double[] shares;
    private final double[] losses;
    private final List<Reason> reasons;
    private final ZonedDateTime dryBy;

    /**
     * Drops as reckoned.
     *
     * @param shares of the film at the beginning of each step
     * @param losses of it within each step, may run past what is left
     */
    Drops(ZonedDateTime from, double[] shares, double[] losses, List<Reason> reasons, ZonedDateTime dryBy) {
        this.from = from;
        this.shares = shares;
        this.losses = losses;
        this.reasons = List.copyOf(reasons);
        this.dryBy = dryBy;
    }

    /** The drops of a date; rows of the forecast without a date are of it, those of the day before count with it. */
    public static Drops of(LocalDate date, ZoneId zone, List<ForecastHour> forecast, SkyWord sky) {
        return new DropsReckoning(date, zone, forecast, sky).drops();
    }

    /** Part of the last film that still stands, 0 to 1: 1 while it rains or dew forms, 0 where the forecast says nothing. */
    public double at(ZonedDateTime time) {
        long seconds = Duration.between(from, time).getSeconds();
        int step = (int) Math.min(shares.length, Math.floorDiv(seconds, STEP_S));
        if (step < 0 || step >= shares.length) {
            return 0;
        }
        double within = (double) Math.floorMod(seconds, STEP_S) / STEP_S;
        return Math.max(0, shares[step] - losses[step] * within);
    }

    /** Why there are drops and for how long, or why there are none; never empty. */
    public List<Reason> reasons() {
        return reasons;
    }

    /** When the flowers last fall dry on the date; null when no drops stood, or when they outlast what the forecast covers. */
    public ZonedDateTime dryBy() {
        return dryBy;
    }
}
