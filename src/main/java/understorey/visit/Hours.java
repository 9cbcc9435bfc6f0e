package understorey.visit;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.plan.Contact;
import understorey.plan.Site;
import understorey.plan.Stay;
import understorey.plan.Trip;
import understorey.sky.Interval;
import understorey.sky.SunDay;

/**
 * The hours of a visit, and the part of them in which gate and car park are open.
 *
 * @param day     local day, from whose start minutes are counted; of a visit past midnight from one noon to the next, or from the
 *                hour of an earlier arrival, or to an hour after a later leave
 * @param arrive  as given or assumed, without regard to gates
 * @param leave   as given or assumed, without regard to gates
 * @param opens   first minute of the day in which the site is open
 * @param closes  last minute in which the site and its car park are open
 * @param remarks on gates that are shut
 * @param assumed keys of the plan that the author left out
 */
public record Hours(Interval day, ZonedDateTime arrive, ZonedDateTime leave, int opens, int closes, List<Advice> remarks,
                    Set<String> assumed) {

    private static final LocalTime LAST_MINUTE = LocalTime.of(23, 59);
    private static final LocalTime NO_SUN = LocalTime.of(10, 0);

    /** The hours of a trip on a date. */
    public static Hours of(Trip trip, LocalDate date) {
        return of(trip, date, () -> SunDay.of(trip.site().position(), day(trip, date)));
    }

    /** The day of a trip, from which sun, moon and light are planned. */
    static Interval day(Trip trip, LocalDate date) {
        LocalDateTime leave = trip.stay().leave(date);
        if (leave == null || !trip.stay().passesMidnight()) {
            return Interval.day(date, trip.site().zone());
        }
        LocalDateTime noon = date.plusDays(1).atTime(LocalTime.NOON);
        LocalDateTime end = leave.isBefore(noon) ? noon : leave.truncatedTo(ChronoUnit.HOURS).plusHours(2);
        return new Interval(at(trip, date, trip.stay().dayBegins()), end.atZone(trip.site().zone()));
    }

    /**
     * The hours of a trip on a date. The default arrival is civil dawn, to the minute; without one, 2 h before solar noon;
     * 4 h before a given leave that is earlier. The default leave is 4 h later, but not past midnight unless the arrival is
     * given. Of a clock time that comes twice, the leave is the first after the arrival.
     *
     * @param sun computed only if the trip does not give the arrival
     */
    static Hours of(Trip trip, LocalDate date, Supplier<SunDay> sun) {
        Site site = trip.site();
        Interval day = day(trip, date);
        ZonedDateTime arrive = trip.arrive() == null ? assumedArrival(trip, date, sun.get()) : at(trip, date, trip.arrive());
        LocalDateTime given = trip.stay().leave(date);
        ZonedDateTime first = given == null ? assumedLeave(trip, date, arrive) : given.atZone(site.zone());
        ZonedDateTime later = first.isBefore(arrive) ? first.withLaterOffsetAtOverlap() : first;
        ZonedDateTime leave = later.isBefore(arrive) ? arrive : later;
        Set<String> assumed = new LinkedHashSet<>();
        if (trip.arrive() == null) {
            assumed.add("arrive");
        }
        if (trip.leave() == null) {
            assumed.add("leave");
        }
        Interval visit = new Interval(arrive, leave);
        Gates gates = Gates.of(site, visit);
        ZonedDateTime opens = gates.open() == null ? day.from() : gates.open().from();
        ZonedDateTime shut = gates.shut();
        ZonedDateTime closes = shut != null ? shut : trip.stay().passesMidnight() ? day.to() : at(trip, date, LAST_MINUTE);
        return new Hours(day, arrive, leave, Math.max(0, minutes(day.from(), opens)), minutes(day.from(), closes), gates.remarks(visit),
                Collections.unmodifiableSet(assumed));
    }

    /** Of the day, from which minutes are counted. */
    public ZonedDateTime start() {
        return day.from();
    }

    private static ZonedDateTime assumedArrival(Trip trip, LocalDate date, SunDay sun) {
        ZonedDateTime arrival = sun.civilDawn() != null ? sun.civilDawn()
                : sun.solarNoon() != null ? sun.solarNoon().minus(Stay.USUAL.dividedBy(2)) : at(trip, date, NO_SUN);
        ZonedDateTime minute = arrival.plusSeconds(30).truncatedTo(ChronoUnit.MINUTES);
        ZonedDateTime leaving = trip.leave() == null ? null : at(trip, date, trip.leave());
        if (leaving == null || minute.isBefore(leaving)) {
            return minute;
        }
        ZonedDateTime midnight = date.atStartOfDay(trip.site().zone());
        ZonedDateTime visit = leaving.minus(Stay.USUAL);
        return visit.isBefore(midnight) ? midnight : visit;
    }

    private static ZonedDateTime assumedLeave(Trip trip, LocalDate date, ZonedDateTime arrive) {
        ZonedDateTime late = at(trip, date, LAST_MINUTE);
        ZonedDateTime leaving = arrive.plus(Stay.USUAL);
        return leaving.isAfter(late) ? late : leaving;
    }

    /** From arriving to leaving, without regard to gates. */
    public Interval visit() {
        return new Interval(arrive, leave);
    }

    /** Part of the visit in which gate and car park are open; null if there is none. */
    public @Nullable Interval usable() {
        return from() < to() ? new Interval(at(from()), at(to())) : null;
    }

    /** First minute of the visit with the site open. */
    public int from() {
        return Math.max(opens, minute(arrive));
    }

    /** Minute by which the walk is over. */
    public int to() {
        return Math.min(closes, minute(leave));
    }

    /** Check-in time: the leave if the contact has no time, the next day if that time is not after the arrival. */
    public ZonedDateTime checkInDue(Contact contact) {
        if (contact.backBy() == null) {
            return leave;
        }
        LocalDate date = arrive.toLocalDate();
        ZonedDateTime due = date.atTime(contact.backBy()).atZone(arrive.getZone());
        return !due.isAfter(arrive) ? date.plusDays(1).atTime(contact.backBy()).atZone(arrive.getZone()) : due;
    }

    /**
     * Minute by which the walk is over, and not after the check-in time.
     *
     * @param contact null if the plan names no contact
     */
    public int home(@Nullable Contact contact) {
        return contact == null ? to() : Math.min(to(), minute(checkInDue(contact)));
    }

    /** End of the visit: the leave, or a gate that shuts before it. */
    public ZonedDateTime end() {
        return closes < minute(leave) && at(closes).isAfter(arrive) ? at(closes) : leave;
    }

    public int minute(ZonedDateTime time) {
        return minutes(start(), time);
    }

    /** Minute of a clock time: one before the arrival of a visit past midnight is on the next day. */
    public int minute(LocalTime time) {
        LocalDate date = arrive.toLocalDate();
        boolean next = leave.toLocalDate().isAfter(date) && time.isBefore(arrive.toLocalTime());
        return minute(date.plusDays(next ? 1 : 0).atTime(time).atZone(arrive.getZone()));
    }

    public ZonedDateTime at(int minute) {
        return start().plusMinutes(minute);
    }

    private static int minutes(ZonedDateTime start, ZonedDateTime time) {
        return (int) Duration.between(start, time).toMinutes();
    }

    private static ZonedDateTime at(Trip trip, LocalDate date, LocalTime time) {
        return date.atTime(time).atZone(trip.site().zone());
    }
}
