package understorey.pages.words;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;
import understorey.plan.Display;
import understorey.sky.Interval;

/**
 * Times of day as people read them: local, to the minute, half up. In 12 hours {@code 5:20 am}; 12 o’clock is noon or midnight,
 * because 12 am and 12 pm are read both ways.
 */
public record ClockWords(Display.Clock clock) {

    /** A dash for a time that does not come. */
    public String of(@Nullable ZonedDateTime time) {
        return time == null ? Words.NONE : of(minute(time));
    }

    public String of(LocalTime time) {
        if (clock == Display.Clock.HOURS_24) {
            return time.truncatedTo(ChronoUnit.MINUTES).toString();
        }
        return named(time) ? name(time) : figures(time) + half(time);
    }

    /** {@code 05:20–06:10}, {@code 5:20–6:10 am}, {@code 11:30 am–noon}. */
    public String span(Interval interval) {
        return span(interval.from(), interval.to());
    }

    /** As {@link #span}, which says so where it ends on the day after. */
    public String span(ZonedDateTime from, ZonedDateTime to, LocalDate day) {
        return start(from, to) + "–" + on(to, day);
    }

    /** {@code 09:50}; {@code 00:30 the next day} after midnight of a day. */
    public String on(ZonedDateTime time, LocalDate day) {
        return of(time) + (time.toLocalDate().equals(day) ? "" : " the next day");
    }

    public String span(ZonedDateTime from, ZonedDateTime to) {
        return start(from, to) + "–" + of(to);
    }

    /** The first time of a span: without its half of the day where the last time says it. */
    public String start(ZonedDateTime from, ZonedDateTime to) {
        LocalTime first = minute(from);
        LocalTime last = minute(to);
        boolean sameHalf = clock == Display.Clock.HOURS_12 && !named(first) && !named(last) && half(first).equals(half(last))
                && first.isBefore(last);
        return sameHalf ? figures(first) : of(first);
    }

    /** A full hour on an axis: {@code 05:00}, {@code 5 am}. */
    public String hour(ZonedDateTime hour) {
        LocalTime time = minute(hour);
        return clock == Display.Clock.HOURS_24 || named(time) ? of(time) : hourOf(time) + half(time);
    }

    /** A full hour where there is room for no more than its figure. */
    public String hourFigure(ZonedDateTime hour) {
        return String.valueOf(clock == Display.Clock.HOURS_24 ? hour.getHour() : hourOf(hour.toLocalTime()));
    }

    private static LocalTime minute(ZonedDateTime time) {
        return time.plusSeconds(30).truncatedTo(ChronoUnit.MINUTES).toLocalTime();
    }

    private static boolean named(LocalTime time) {
        return time.getHour() % 12 == 0 && time.getMinute() == 0;
    }

    private static String name(LocalTime time) {
        return time.getHour() == 0 ? "midnight" : "noon";
    }

    private static String figures(LocalTime time) {
        return hourOf(time) + (time.getMinute() < 10 ? ":0" : ":") + time.getMinute();
    }

    private static int hourOf(LocalTime time) {
        return time.getHour() % 12 == 0 ? 12 : time.getHour() % 12;
    }

    private static String half(LocalTime time) {
        return time.getHour() < 12 ? "\u00a0am" : "\u00a0pm";
    }
}
