package understorey.plan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Wishes of the author about the date of a trip.
 *
 * @param weekdays      wanted weekdays; empty for all
 * @param avoid         days not wanted
 * @param springWarmerC difference of this spring from a usual one, °C; negative for a colder one
 */
public record DayWishes(List<DayOfWeek> weekdays, List<Stretch> avoid, @Nullable Double springWarmerC) {

    /** No wishes. */
    public static final DayWishes NONE = new DayWishes(List.of(), List.of(), null);

    /** A range of dates, both ends included. */
    public record Stretch(LocalDate from, LocalDate to) {

        boolean holds(LocalDate date) {
            return !date.isBefore(from) && !date.isAfter(to);
        }
    }

    /** Whether a date is one to avoid. */
    public boolean avoids(LocalDate date) {
        return avoid.stream().anyMatch(stretch -> stretch.holds(date));
    }

    /** Whether the weekday of a date is wanted. */
    public boolean wants(DayOfWeek weekday) {
        return weekdays.isEmpty() || weekdays.contains(weekday);
    }
}
