package understorey.season;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import understorey.plan.Opening;
import understorey.plan.Site;
import understorey.plan.Trip;
import understorey.sky.Interval;
import understorey.sky.Stay;
import understorey.sky.SunDay;

/** The hours of a date that a trip can use: from arriving to leaving, within the site's opening. */
final class VisitHours {

    private VisitHours() {
    }

    /** Null when none is left. */
    static Interval of(Trip trip, LocalDate date) {
        Site site = trip.site();
        ZoneId zone = site.zone();
        Stay stay = Stay.of(trip, date, trip.arrive() != null ? null : SunDay.of(site.position(), date, zone));
        ZonedDateTime from = stay.arrive();
        ZonedDateTime to = stay.leave();
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
