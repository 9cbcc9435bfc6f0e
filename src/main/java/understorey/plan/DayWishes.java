package understorey.plan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;

/**
 * What the author says on which day to go, beside the days themselves.
 *
 * @param weekdays      the only ones wanted; empty when all are
 * @param avoid         days not wanted
 * @param springWarmerC by how much this year's spring is warmer than usual, °C; negative for a colder one, null when
 *                      the author did not say
 */
public record DayWishes(List<DayOfWeek> weekdays, List<Stretch> avoid, Double springWarmerC) {

    /** Nothing wished. */
    public static final DayWishes NONE = new DayWishes(List.of(), List.of(), null);

    /** Days in a row, both ends included. */
    public record Stretch(LocalDate from, LocalDate to) {

        boolean holds(LocalDate date) {
            return !date.isBefore(from) && !date.isAfter(to);
        }
    }

    /** Whether the day is among those to avoid. */
    public boolean avoids(LocalDate date) {
        for (Stretch stretch : avoid) {
            if (stretch.holds(date)) {
                return true;
            }
        }
        return false;
    }

    /** Whether its weekday is wanted. */
    public boolean wants(DayOfWeek weekday) {
        return weekdays.isEmpty() || weekdays.contains(weekday);
    }
}
