package understorey.pages.words;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import understorey.plan.Trip;

/** Dates as people read them. */
public final class Dates {

    private Dates() {
    }

    /** In full, without asking for the names of a locale: that would cost a tenth of a cold start. */
    public static String day(LocalDate date) {
        return Words.name(date.getDayOfWeek()) + " " + date.getDayOfMonth() + " " + Words.name(date.getMonth()) + " "
                + date.getYear();
    }

    /** The day of a trip; where the public learns the month alone, that. */
    public static String day(Trip trip, LocalDate date) {
        return trip.hidesTheDay() ? month(date) + ", with the times of the middle of the month" : day(date);
    }

    /** The day of a trip, or the middle of its month, as a sentence begins. */
    public static String onDay(Trip trip, LocalDate date) {
        return trip.hidesTheDay() ? "In mid " + month(date) : "On " + day(date);
    }

    /** {@code 8 May}; where the public learns the month alone, {@code mid May}. */
    public static String shortDay(Trip trip, LocalDate date) {
        return trip.hidesTheDay() ? "mid " + Words.name(date.getMonth()) : dayMonth(date);
    }

    /** {@code 8 May 2026}; a dash for none. */
    public static String dayAndYear(@Nullable LocalDate date) {
        return date == null ? Words.NONE : dayMonth(date) + " " + date.getYear();
    }

    private static String month(LocalDate date) {
        return Words.name(date.getMonth()) + " " + date.getYear();
    }

    /** {@code 8 May}. */
    public static String dayMonth(LocalDate date) {
        return date.getDayOfMonth() + " " + Words.name(date.getMonth());
    }

    /** {@code 1 to 11 May}, {@code 28 April to 8 May}. */
    public static String dates(LocalDate from, LocalDate to) {
        return (from.getMonth() == to.getMonth() ? String.valueOf(from.getDayOfMonth()) : dayMonth(from)) + " to "
                + dayMonth(to);
    }
}
