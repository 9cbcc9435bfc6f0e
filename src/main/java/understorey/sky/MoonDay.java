package understorey.sky;

import java.time.ZonedDateTime;
import org.jspecify.annotations.Nullable;
import org.shredzone.commons.suncalc.MoonIllumination;
import org.shredzone.commons.suncalc.MoonTimes;
import understorey.plan.Position;

/**
 * Rise, set and phase of the moon at a place on a local date, or from one noon to the next. Rise and set are the first of that day, within about
 * 2 minutes at middle latitudes. About once a month a date has no rise, or no set.
 *
 * @param rise                the upper edge rises over a flat sea-level horizon
 * @param set                 the upper edge sinks below it
 * @param illuminatedFraction lit share of the disc in the middle of the day, 0 to 1, within 0.01
 * @param phaseDeg            in the middle of the day: 0 new, 90 first quarter, 180 full, 270 last quarter; below 360
 * @param upAllDay            neither rise nor set, and the moon up
 * @param downAllDay          neither rise nor set, and the moon down
 */
public record MoonDay(@Nullable ZonedDateTime rise, @Nullable ZonedDateTime set, double illuminatedFraction, double phaseDeg,
        boolean upAllDay, boolean downAllDay) {

    /** The moon at a place over a day, which may begin at noon. */
    public static MoonDay of(Position place, Interval day) {
        MoonTimes times = MoonTimes.compute().on(day.from()).at(place.latitude(), place.longitude())
                .limit(day.length()).execute();
        ZonedDateTime rise = onDate(times.getRise(), day);
        ZonedDateTime set = onDate(times.getSet(), day);
        boolean still = rise == null && set == null;
        MoonIllumination lit = MoonIllumination.compute().on(day.middle()).execute();
        return new MoonDay(rise, set, lit.getFraction(), (lit.getPhase() + 180) % 360,
                still && times.isAlwaysUp(), still && times.isAlwaysDown());
    }

    /** Drops an event after the day: the library searches whole hours and can find one just behind the end. */
    private static @Nullable ZonedDateTime onDate(@Nullable ZonedDateTime event, Interval day) {
        return event != null && day.contains(event) ? event : null;
    }
}
