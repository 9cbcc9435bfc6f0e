package understorey.season;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import understorey.plan.Opening;
import understorey.plan.Site;
import understorey.plan.Trip;
import understorey.sky.Interval;
import understorey.sky.SunDay;

/**
 * The hours of a date that a trip can use: from arrival to leaving, within the site's opening. Where the author gives
 * neither, from civil dawn for four hours, as the running order has it.
 */
final class VisitHours {

    private static final Duration VISIT = Duration.ofHours(4);
    private static final LocalTime NO_DAWN = LocalTime.of(10, 0);
    private static final LocalTime LAST = LocalTime.of(23, 59);

    private VisitHours() {
    }

    /** Null when none is left. */
    static Interval of(Trip trip, LocalDate date) {
        Site site = trip.site();
        ZoneId zone = site.zone();
        ZonedDateTime from = trip.arrive() != null ? at(date, trip.arrive(), zone) : dawn(trip, date);
        ZonedDateTime latest = at(date, LAST, zone);
        ZonedDateTime to = trip.leave() != null ? at(date, trip.leave(), zone) : earlier(from.plus(VISIT), latest);
        Opening opening = site.opening();
        if (opening != null) {
            from = later(from, at(date, opening.from(), zone));
            to = earlier(to, at(date, opening.to(), zone));
        }
        if (site.parking() != null && site.parking().closes() != null) {
            to = earlier(to, at(date, site.parking().closes(), zone));
        }
        return from.isBefore(to) ? new Interval(from, to) : null;
    }

    private static ZonedDateTime dawn(Trip trip, LocalDate date) {
        ZoneId zone = trip.site().zone();
        SunDay sun = SunDay.of(trip.site().position(), date, zone);
        ZonedDateTime dawn = sun.civilDawn() != null ? sun.civilDawn()
                : sun.solarNoon() != null ? sun.solarNoon().minus(VISIT.dividedBy(2)) : at(date, NO_DAWN, zone);
        return trip.leave() == null || dawn.isBefore(at(date, trip.leave(), zone)) ? dawn
                : later(date.atStartOfDay(zone), at(date, trip.leave(), zone).minus(VISIT));
    }

    private static ZonedDateTime at(LocalDate date, LocalTime time, ZoneId zone) {
        return date.atTime(time).atZone(zone);
    }

    private static ZonedDateTime later(ZonedDateTime one, ZonedDateTime other) {
        return one.isAfter(other) ? one : other;
    }

    private static ZonedDateTime earlier(ZonedDateTime one, ZonedDateTime other) {
        return one.isBefore(other) ? one : other;
    }
}
