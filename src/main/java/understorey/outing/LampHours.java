package understorey.outing;

import java.time.ZonedDateTime;
import understorey.sky.SunDay;

/**
 * When the way in and the way out want a lamp. Whoever arrives before sunrise or leaves after sunset walks in
 * twilight or worse, and a wood is darker than the open. The times are those of civil twilight, sun at −6°,
 * where it has an end.
 *
 * @param until  the way in is dark before this; null when it is light
 * @param from   the way out is dark from this on; null when it is light
 * @param allDay true in a polar night without twilight
 */
public record LampHours(ZonedDateTime until, ZonedDateTime from, boolean allDay) {

    static LampHours of(SunDay sun, ZonedDateTime arrive, ZonedDateTime leave) {
        if (sun.downAllDay() && sun.civilDawn() == null) {
            return new LampHours(null, null, true);
        }
        ZonedDateTime until = null;
        if (sun.downAllDay() || before(arrive, sun.sunrise())) {
            until = before(sun.sunrise(), sun.civilDawn()) || sun.civilDawn() == null
                    ? sun.sunrise() : sun.civilDawn();
        }
        ZonedDateTime from = null;
        ZonedDateTime sunset = before(sun.sunset(), sun.sunrise()) ? null : sun.sunset();
        if (sun.downAllDay() && sun.civilDusk() != null || before(sunset, leave)) {
            from = before(sun.civilDusk(), sunset) || sun.civilDusk() == null ? sunset : sun.civilDusk();
        }
        return new LampHours(until, from, false);
    }

    private static boolean before(ZonedDateTime a, ZonedDateTime b) {
        return a != null && b != null && a.isBefore(b);
    }
}
