package understorey.sky;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * A stretch of time.
 *
 * @param from first instant
 * @param to   end, not before {@code from}; no longer part of the stretch
 */
public record Interval(ZonedDateTime from, ZonedDateTime to) {

    public Interval {
        if (to.isBefore(from)) {
            throw new IllegalArgumentException("ends before it begins: " + from + " to " + to);
        }
    }

    /** A local date from its first instant to that of the next: 23, 24 or 25 hours, also where a zone skips midnight. */
    public static Interval day(LocalDate date, ZoneId zone) {
        return new Interval(date.atStartOfDay(zone), date.plusDays(1).atStartOfDay(zone));
    }

    /** True from the first instant to just before the end. */
    public boolean contains(ZonedDateTime time) {
        return !time.isBefore(from) && time.isBefore(to);
    }

    /** Elapsed time between the ends; a clock change does not alter it. */
    public Duration length() {
        return Duration.between(from, to);
    }

    /** Instant halfway between the ends. */
    public ZonedDateTime middle() {
        return from.plus(length().dividedBy(2));
    }

    /** Intersection of two lists of stretches, both in order and without overlap. */
    public static List<Interval> common(List<Interval> some, List<Interval> others) {
        List<Interval> common = new ArrayList<>();
        for (Interval one : some) {
            for (Interval other : others) {
                ZonedDateTime from = one.from.isAfter(other.from) ? one.from : other.from;
                ZonedDateTime to = one.to.isBefore(other.to) ? one.to : other.to;
                if (from.isBefore(to)) {
                    common.add(new Interval(from, to));
                }
            }
        }
        return List.copyOf(common);
    }
}
