package understorey.visit;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.VisitAdvice;
import understorey.plan.Opening;
import understorey.plan.Parking;
import understorey.plan.Site;
import understorey.sky.Interval;

/**
 * The gates of a site around a visit.
 *
 * @param open    opening hours that the visit has most of, those of its date if it has none; null for a site that is always open
 * @param carPark when the car park closes; null if it does not
 */
record Gates(@Nullable Interval open, @Nullable ZonedDateTime carPark) {

    /** The gates of a visit: opening hours of the evening before, of the date or of the day after. */
    static Gates of(Site site, Interval visit) {
        LocalDate date = visit.from().toLocalDate();
        Opening opening = site.opening();
        Interval open = opening == null ? null : Stream.of(date, date.minusDays(1), date.plusDays(1))
                .map(day -> hours(opening, day, site.zone())).reduce((one, other) -> shared(other, visit) > shared(one, visit) ? other : one).orElseThrow();
        Parking parking = site.parking();
        LocalTime closes = parking == null ? null : parking.closes();
        return new Gates(open, closes == null ? null : closing(closes, visit.from()));
    }

    private static Interval hours(Opening opening, LocalDate date, ZoneId zone) {
        LocalDate end = opening.to().isAfter(opening.from()) ? date : date.plusDays(1);
        ZonedDateTime from = date.atTime(opening.from()).atZone(zone);
        ZonedDateTime to = end.atTime(opening.to()).atZone(zone);
        return new Interval(from, to.isBefore(from) ? from : to);
    }

    private static long shared(Interval open, Interval visit) {
        return Interval.common(List.of(open), List.of(visit)).stream().map(Interval::length).mapToLong(Duration::toSeconds).sum();
    }

    /** A car park that closes in the small hours closes in the night that follows an afternoon. */
    private static ZonedDateTime closing(LocalTime closes, ZonedDateTime arrive) {
        boolean next = closes.isBefore(LocalTime.NOON) && !arrive.toLocalTime().isBefore(LocalTime.NOON);
        return arrive.toLocalDate().plusDays(next ? 1 : 0).atTime(closes).atZone(arrive.getZone());
    }

    /** Last time at which site and car park are open; null if neither closes. */
    @Nullable ZonedDateTime shut() {
        return Stream.of(open == null ? null : open.to(), carPark).filter(Objects::nonNull).min(Comparator.naturalOrder()).orElse(null);
    }

    /** True if the car park is the first to close. */
    boolean carParkFirst() {
        return open == null || carPark != null && !carPark.isAfter(open.to());
    }

    /** What a visit has to know of its gates. */
    List<Advice> remarks(Interval visit) {
        List<Advice> remarks = new ArrayList<>();
        if (open != null && visit.from().isBefore(open.from())) {
            remarks.add(new VisitAdvice.BeforeOpening(visit.from(), open.from().toLocalTime()));
        }
        if (open != null && visit.to().isAfter(open.to())) {
            remarks.add(new VisitAdvice.AfterClosing(visit.to(), open.to().toLocalTime()));
        }
        if (carPark != null && visit.to().isAfter(carPark)) {
            remarks.add(new VisitAdvice.CarParkCloses(visit.to(), carPark.toLocalTime()));
        }
        return List.copyOf(remarks);
    }
}
