package understorey.sky;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import org.jspecify.annotations.Nullable;
import org.shredzone.commons.suncalc.MoonIllumination;
import org.shredzone.commons.suncalc.MoonTimes;
import understorey.plan.Position;

/**
 * Rise, set and phase of the moon at a place on a local date. Rise and set are the first of the date, within about
 * 2 minutes at middle latitudes. About once a month a date has no rise, or no set.
 *
 * @param rise                the upper edge rises over a flat sea-level horizon
 * @param set                 the upper edge sinks below it
 * @param illuminatedFraction lit share of the disc at 12:00 local time, 0 to 1, within 0.01
 * @param phaseDeg            at 12:00 local time: 0 new, 90 first quarter, 180 full, 270 last quarter; below 360
 * @param upAllDay            neither rise nor set, and the moon up
 * @param downAllDay          neither rise nor set, and the moon down
 */
public record MoonDay(@Nullable ZonedDateTime rise, @Nullable ZonedDateTime set, double illuminatedFraction, double phaseDeg,
        boolean upAllDay, boolean downAllDay) {

    /** The moon at a place on a date of its time zone. */
    public static MoonDay of(Position place, LocalDate date, ZoneId zone) {
        LocalDay day = LocalDay.of(date, zone);
        MoonTimes times = MoonTimes.compute().on(day.start()).at(place.latitude(), place.longitude())
                .limit(Duration.between(day.start(), day.end())).execute();
        ZonedDateTime rise = onDate(times.getRise(), day);
        ZonedDateTime set = onDate(times.getSet(), day);
        boolean still = rise == null && set == null;
        MoonIllumination lit = MoonIllumination.compute().on(date.atTime(12, 0).atZone(zone)).execute();
        return new MoonDay(rise, set, lit.getFraction(), (lit.getPhase() + 180) % 360,
                still && times.isAlwaysUp(), still && times.isAlwaysDown());
    }

    /** Drops an event after the date: the library searches whole hours and can find one just behind the end. */
    private static @Nullable ZonedDateTime onDate(@Nullable ZonedDateTime event, LocalDay day) {
        return event != null && day.contains(event.toEpochSecond()) ? event : null;
    }
}
