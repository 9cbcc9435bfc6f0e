package understorey.visit;

import java.time.Duration;
import java.time.ZonedDateTime;
import org.jspecify.annotations.Nullable;
import understorey.sky.Interval;

/**
 * Hours in which the way in and the way out need a head torch, by {@link DayCurve#dim}. A night between two lights has its dusk as
 * {@code from} and its dawn as {@code until}, which is later.
 *
 * @param until  the way in is dark before this; null if it is light, and if it is dark all day
 * @param from   the way out is dark from this on; null if it is light, and if it is dark all day
 * @param allDay dark from arriving to leaving
 */
public record HeadTorchHours(ZonedDateTime arrive, @Nullable ZonedDateTime until, @Nullable ZonedDateTime from,
                             ZonedDateTime leave, boolean allDay) {

    /** Darkness that ends at the arrival, or begins at the leave, does not count, after rounding either. */
    public HeadTorchHours {
        until = until != null && until.isEqual(arrive) ? null : until;
        from = from != null && from.isEqual(leave) ? null : from;
    }

    /** The hours of a visit, from the light on the ground. */
    public static HeadTorchHours of(DayCurve curve, ZonedDateTime arrive, ZonedDateTime leave) {
        ZonedDateTime until = curve.firstLight(arrive);
        ZonedDateTime from = curve.lastLight(leave);
        if (until == null || from == null || !until.isBefore(leave) || !from.isAfter(arrive)) {
            return new HeadTorchHours(arrive, null, null, leave, true);
        }
        ZonedDateTime dusk = curve.firstDusk(until);
        if (dusk == null || !dusk.isBefore(from)) {
            return new HeadTorchHours(arrive, until, from, leave, false);
        }
        boolean between = until.isEqual(arrive) && from.isEqual(leave);
        return new HeadTorchHours(arrive, between ? curve.firstLight(dusk.plusMinutes(1)) : until, dusk, leave, false);
    }

    /** The dark hours of a visit that begins and ends in the light; null for any other. */
    public @Nullable Interval between() {
        return until != null && from != null && from.isBefore(until) ? new Interval(from, until) : null;
    }

    /** True where the way in or the way out is dark. */
    public boolean needed() {
        return allDay || until != null || from != null;
    }

    /** True where any of a stretch of the visit is dark. */
    public boolean neededBetween(ZonedDateTime begin, ZonedDateTime end) {
        boolean in = until != null && begin.isBefore(until);
        boolean out = from != null && end.isAfter(from);
        return allDay || (between() == null ? in || out : in && out);
    }

    /** Minutes after arriving in which a head torch is needed. */
    public long minutesIn() {
        return until == null ? 0 : minutes(arrive, until);
    }

    /** Minutes before leaving in which a head torch is needed. */
    public long minutesOut() {
        return from == null ? 0 : minutes(from, leave);
    }

    private static long minutes(ZonedDateTime from, ZonedDateTime to) {
        return Math.round(Duration.between(from, to).toSeconds() / 60.0);
    }
}
