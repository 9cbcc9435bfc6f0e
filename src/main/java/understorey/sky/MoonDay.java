package understorey.sky;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import org.shredzone.commons.suncalc.MoonIllumination;
import org.shredzone.commons.suncalc.MoonTimes;
import understorey.plan.Position;

/**
 * What the moon does at a place on a local date. Rise and set are the first of the date, within about two
 * minutes at middle latitudes, and null when there is none, which happens about once a month each.
 *
 * @param rise                upper edge on a flat sea-level horizon, rising
 * @param set                 the same, sinking
 * @param illuminatedFraction lit share of the disc at 12:00 local time, 0 to 1, within 0.01
 * @param phaseDeg            at 12:00 local time: 0 new, 90 first quarter, 180 full, 270 last quarter; below 360
 * @param upAllDay            neither rise nor set, and the moon up
 * @param downAllDay          neither rise nor set, and the moon down
 */
public record MoonDay(ZonedDateTime rise, ZonedDateTime set, double illuminatedFraction, double phaseDeg,
        boolean upAllDay, boolean downAllDay) {

    /** The moon's day at a place on a date as its zone counts it. */
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

    /** The library rounds its window up to whole hours of search, so an event may lie just behind the date. */
    private static ZonedDateTime onDate(ZonedDateTime event, LocalDay day) {
        return event != null && day.contains(event.toEpochSecond()) ? event : null;
    }
}
