package understorey.visit;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.VisitAdvice;
import understorey.plan.Contact;
import understorey.plan.Opening;
import understorey.plan.Site;
import understorey.plan.Trip;
import understorey.sky.Interval;
import understorey.sky.SunDay;

/**
 * The hours of a visit, and the part of them in which gate and car park are open.
 *
 * @param start   of the local day, from which minutes are counted
 * @param arrive  as given or assumed, without regard to gates
 * @param leave   as given or assumed, without regard to gates
 * @param opens   first minute in which the site is open
 * @param closes  last minute in which the site and its car park are open
 * @param remarks on gates that are shut
 * @param assumed keys of the plan that the author left out
 */
public record Hours(ZonedDateTime start, ZonedDateTime arrive, ZonedDateTime leave, int opens, int closes, List<Advice> remarks,
                    Set<String> assumed) {

    private static final LocalTime LAST_MINUTE = LocalTime.of(23, 59);
    private static final Duration VISIT = Duration.ofHours(4);
    private static final LocalTime NO_SUN = LocalTime.of(10, 0);

    /** The hours of a trip on a date. */
    public static Hours of(Trip trip, LocalDate date) {
        Site site = trip.site();
        return of(trip, date, () -> SunDay.of(site.position(), date, site.zone()));
    }

    /**
     * The hours of a trip on a date. The default arrival is civil dawn, to the minute; without one, 2 h before solar noon;
     * 4 h before a given leave that is earlier. The default leave is 4 h later, but not past midnight. Of a clock time that
     * comes twice, the leave is the first after the arrival.
     *
     * @param sun computed only if the trip does not give the arrival
     */
    static Hours of(Trip trip, LocalDate date, Supplier<SunDay> sun) {
        Site site = trip.site();
        ZonedDateTime start = date.atStartOfDay(site.zone());
        ZonedDateTime arrive = trip.arrive() == null ? assumedArrival(trip, date, sun.get()) : at(trip, date, trip.arrive());
        ZonedDateTime first = trip.leave() == null ? assumedLeave(trip, date, arrive) : at(trip, date, trip.leave());
        ZonedDateTime later = first.isBefore(arrive) ? first.withLaterOffsetAtOverlap() : first;
        ZonedDateTime leave = later.isBefore(arrive) ? arrive : later;
        Set<String> assumed = new LinkedHashSet<>();
        if (trip.arrive() == null) {
            assumed.add("arrive");
        }
        if (trip.leave() == null) {
            assumed.add("leave");
        }
        Opening opening = site.opening() == null || !site.opening().from().isBefore(site.opening().to()) ? null : site.opening();
        ZonedDateTime opens = opening == null ? start : at(trip, date, opening.from());
        ZonedDateTime closes = opening == null ? at(trip, date, LAST_MINUTE) : at(trip, date, opening.to());
        if (site.parking() != null && site.parking().closes() != null && at(trip, date, site.parking().closes()).isBefore(closes)) {
            closes = at(trip, date, site.parking().closes());
        }
        return new Hours(start, arrive, leave, minutes(start, opens), minutes(start, closes), remarks(site, arrive, leave),
                Collections.unmodifiableSet(assumed));
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
        LocalDate day = start.toLocalDate();
        ZonedDateTime due = day.atTime(contact.backBy()).atZone(start.getZone());
        return !due.isAfter(arrive) ? day.plusDays(1).atTime(contact.backBy()).atZone(start.getZone()) : due;
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
        return minutes(start, time);
    }

    public int minute(LocalTime time) {
        return minute(start.toLocalDate().atTime(time).atZone(start.getZone()));
    }

    public ZonedDateTime at(int minute) {
        return start.plusMinutes(minute);
    }

    private static int minutes(ZonedDateTime start, ZonedDateTime time) {
        return (int) Duration.between(start, time).toMinutes();
    }

    private static ZonedDateTime at(Trip trip, LocalDate date, LocalTime time) {
        return date.atTime(time).atZone(trip.site().zone());
    }

    private static List<Advice> remarks(Site site, ZonedDateTime arrive, ZonedDateTime leave) {
        List<Advice> remarks = new ArrayList<>();
        Opening opening = site.opening();
        if (opening != null && arrive.toLocalTime().isBefore(opening.from())) {
            remarks.add(new VisitAdvice.BeforeOpening(arrive, opening.from()));
        }
        if (opening != null && leave.toLocalTime().isAfter(opening.to())) {
            remarks.add(new VisitAdvice.AfterClosing(leave, opening.to()));
        }
        if (site.parking() != null && site.parking().closes() != null && leave.toLocalTime().isAfter(site.parking().closes())) {
            remarks.add(new VisitAdvice.CarParkCloses(leave, site.parking().closes()));
        }
        return List.copyOf(remarks);
    }
}
