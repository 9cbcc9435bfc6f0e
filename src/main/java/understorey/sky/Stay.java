package understorey.sky;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import understorey.plan.Trip;

/** From when to when the author is on the site, as given or assumed, whatever its gates. */
public record Stay(ZonedDateTime arrive, ZonedDateTime leave) {

    private static final Duration VISIT = Duration.ofHours(4);
    private static final LocalTime NO_SUN = LocalTime.of(10, 0);
    private static final LocalTime LAST_MINUTE = LocalTime.of(23, 59);

    /**
     * On a date. An arrival not given is civil dawn, to the minute; where there is none, two hours before the sun is highest;
     * four hours before a leave that comes earlier. A leave not given is four hours later, but not past midnight. Of a
     * clock time that comes twice, the leave is the first that is after the arrival.
     *
     * @param sun not asked, and may be null, where the trip gives the arrival
     */
    public static Stay of(Trip trip, LocalDate date, SunDay sun) {
        ZonedDateTime arrive = trip.arrive() == null ? assumedArrival(trip, date, sun) : at(trip, date, trip.arrive());
        ZonedDateTime leave = trip.leave() == null ? assumedLeave(trip, date, arrive) : at(trip, date, trip.leave());
        ZonedDateTime later = leave.isBefore(arrive) ? leave.withLaterOffsetAtOverlap() : leave;
        return new Stay(arrive, later.isBefore(arrive) ? arrive : later);
    }

    private static ZonedDateTime assumedArrival(Trip trip, LocalDate date, SunDay sun) {
        ZonedDateTime arrival = sun.civilDawn() != null ? sun.civilDawn()
                : sun.solarNoon() != null ? sun.solarNoon().minus(VISIT.dividedBy(2)) : at(trip, date, NO_SUN);
        ZonedDateTime minute = arrival.plusSeconds(30).truncatedTo(ChronoUnit.MINUTES);
        ZonedDateTime leaving = trip.leave() == null ? null : at(trip, date, trip.leave());
        if (leaving == null || minute.isBefore(leaving)) {
            return minute;
        }
        ZonedDateTime midnight = date.atStartOfDay(trip.site().zone());
        ZonedDateTime visit = leaving.minus(VISIT);
        return visit.isBefore(midnight) ? midnight : visit;
    }

    private static ZonedDateTime assumedLeave(Trip trip, LocalDate date, ZonedDateTime arrive) {
        ZonedDateTime late = at(trip, date, LAST_MINUTE);
        ZonedDateTime leaving = arrive.plus(VISIT);
        return leaving.isAfter(late) ? late : leaving;
    }

    private static ZonedDateTime at(Trip trip, LocalDate date, LocalTime time) {
        return date.atTime(time).atZone(trip.site().zone());
    }
}
