package understorey.plan;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import org.jspecify.annotations.Nullable;

/**
 * Clock times of a visit. A leave at or before the arrival is on the next day, so a visit lasts a day at most.
 *
 * @param arrive null if the author left it out; such a visit does not pass midnight
 * @param leave  null if the author left it out
 */
public record Stay(@Nullable LocalTime arrive, @Nullable LocalTime leave) {

    /** Length of a visit without a leave: common practice, no source. */
    public static final Duration USUAL = Duration.ofHours(4);

    /** Whether the visit ends on the day after its date. */
    public boolean passesMidnight() {
        return arrive != null && !(leave == null ? arrive.plus(USUAL) : leave).isAfter(arrive);
    }

    /** When a clock time of the visit is, in a trip on a date: a time before the arrival is after midnight. */
    public LocalDateTime at(LocalDate date, LocalTime time) {
        return date.plusDays(arrive != null && passesMidnight() && time.isBefore(arrive) ? 1 : 0).atTime(time);
    }

    /** When the visit ends; null without an arrival and without a leave. */
    public @Nullable LocalDateTime leave(LocalDate date) {
        LocalTime end = leave == null && arrive != null && passesMidnight() ? arrive.plus(USUAL) : leave;
        return end == null ? null : date.plusDays(passesMidnight() ? 1 : 0).atTime(end);
    }

    /**
     * First clock time that is of the trip's date: midnight. Of a visit past midnight it is noon, or the full hour of an arrival
     * before noon, so that the evening and the morning after it are one day.
     */
    public LocalTime dayBegins() {
        return arrive == null || !passesMidnight() ? LocalTime.MIDNIGHT : arrive.isBefore(LocalTime.NOON) ? LocalTime.of(arrive.getHour(), 0) : LocalTime.NOON;
    }
}
