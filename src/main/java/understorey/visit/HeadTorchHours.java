package understorey.visit;

import java.time.Duration;
import java.time.ZonedDateTime;

/**
 * When the way in and the way out want a lamp, by {@link DayCurve#dim}.
 *
 * @param until  the way in is dark before this; null when it is light
 * @param from   the way out is dark from this on; null when it is light
 * @param allDay it stays dark from arriving to leaving
 */
public record HeadTorchHours(ZonedDateTime arrive, ZonedDateTime until, ZonedDateTime from, ZonedDateTime leave, boolean allDay) {

    /** Darkness that ends on arriving, or begins on leaving, is none: after rounding, too. */
    public HeadTorchHours {
        until = until != null && until.isEqual(arrive) ? null : until;
        from = from != null && from.isEqual(leave) ? null : from;
    }

    /** The hours of a visit, from the light on the ground. */
    static HeadTorchHours of(DayCurve curve, ZonedDateTime arrive, ZonedDateTime leave) {
        ZonedDateTime until = curve.firstLight(arrive);
        ZonedDateTime from = curve.lastLight(leave);
        boolean allDay = until == null || from == null || !until.isBefore(leave) || !from.isAfter(arrive);
        return new HeadTorchHours(arrive, allDay ? null : until, allDay ? null : from, leave, allDay);
    }

    /** How many minutes after arriving a lamp is needed, to the minute of the clock. */
    public long minutesIn() {
        return until == null ? 0 : minutes(arrive, until);
    }

    /** How many minutes before leaving it is needed again. */
    public long minutesOut() {
        return from == null ? 0 : minutes(from, leave);
    }

    private static long minutes(ZonedDateTime from, ZonedDateTime to) {
        return Math.round(Duration.between(from, to).toSeconds() / 60.0);
    }
}
