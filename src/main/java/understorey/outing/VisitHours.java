package understorey.outing;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import understorey.advice.Advice;
import understorey.advice.VisitAdvice;
import understorey.plan.Contact;
import understorey.plan.Opening;
import understorey.plan.Site;
import understorey.plan.Trip;
import understorey.sky.Stay;
import understorey.sky.SunDay;

/**
 * From when to when one is there, and how much of it gate and car park leave.
 *
 * @param start   of the local day, from which minutes are counted
 * @param opens   the first minute on the site
 * @param closes  the last one
 * @param remarks on gates that are shut
 * @param assumed the names, as in the plan's format, of what the author left out
 */
record VisitHours(ZonedDateTime start, ZonedDateTime arrive, ZonedDateTime leave, int opens, int closes, List<Advice> remarks,
                  Set<String> assumed) {

    private static final LocalTime LAST_MINUTE = LocalTime.of(23, 59);

    static VisitHours of(Trip trip, LocalDate date, SunDay sun) {
        ZonedDateTime start = date.atStartOfDay(trip.site().zone());
        Stay stay = Stay.of(trip, date, sun);
        Set<String> assumed = new LinkedHashSet<>();
        if (trip.arrive() == null) {
            assumed.add("arrive");
        }
        if (trip.leave() == null) {
            assumed.add("leave");
        }
        Site site = trip.site();
        Opening opening = site.opening() == null || !site.opening().from().isBefore(site.opening().to()) ? null : site.opening();
        ZonedDateTime opens = opening == null ? start : at(trip, date, opening.from());
        ZonedDateTime closes = opening == null ? at(trip, date, LAST_MINUTE) : at(trip, date, opening.to());
        if (site.parking() != null && site.parking().closes() != null && at(trip, date, site.parking().closes()).isBefore(closes)) {
            closes = at(trip, date, site.parking().closes());
        }
        return new VisitHours(start, stay.arrive(), stay.leave(), minutes(start, opens), minutes(start, closes),
                remarks(site, stay.arrive(), stay.leave()), Collections.unmodifiableSet(assumed));
    }

    /** The first minute of the visit on which anybody can walk. */
    int from() {
        return Math.max(opens, minute(arrive));
    }

    /** The minute by which one is back. */
    int to() {
        return Math.min(closes, minute(leave));
    }

    /** When word is due: on leaving where no time is given, on the next day where that time is not after arriving. */
    ZonedDateTime wordDue(Contact contact) {
        if (contact.backBy() == null) {
            return leave;
        }
        LocalDate day = start.toLocalDate();
        ZonedDateTime due = day.atTime(contact.backBy()).atZone(start.getZone());
        return !due.isAfter(arrive) ? day.plusDays(1).atTime(contact.backBy()).atZone(start.getZone()) : due;
    }

    /**
     * The minute by which one is back and can send the word.
     *
     * @param contact null where nobody waits for it
     */
    int home(Contact contact) {
        return contact == null ? to() : Math.min(to(), minute(wordDue(contact)));
    }

    /** The end of the visit: the author's own where no gate shuts before. */
    ZonedDateTime end() {
        return closes < minute(leave) && at(closes).isAfter(arrive) ? at(closes) : leave;
    }

    int minute(ZonedDateTime time) {
        return minutes(start, time);
    }

    int minute(LocalTime time) {
        return minute(start.toLocalDate().atTime(time).atZone(start.getZone()));
    }

    ZonedDateTime at(int minute) {
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
