package understorey.pages;

import java.time.Duration;
import java.time.ZonedDateTime;
import org.jspecify.annotations.Nullable;
import understorey.sky.SunDay;

/** Part of the day in which a visit falls, in a word; the limits are common practice, no source. */
final class PartOfDay {

    /** A visit within that of sunrise or sunset is at dawn or in the evening. */
    private static final Duration NEAR = Duration.ofHours(1);
    /** Half of midday. */
    private static final Duration MIDDAY = Duration.ofMinutes(90);

    private PartOfDay() {
    }

    /** The word; null where the sun has no noon on that date. */
    static @Nullable String of(SunDay sun, ZonedDateTime arrive, ZonedDateTime leave) {
        boolean dawn = sun.sunrise() != null && arrive.isBefore(sun.sunrise().plus(NEAR)) && leave.isAfter(sun.sunrise().minus(NEAR));
        boolean evening = sun.sunset() != null && leave.isAfter(sun.sunset().minus(NEAR)) && arrive.isBefore(sun.sunset().plus(NEAR));
        boolean midnight = leave.toLocalDate().isAfter(arrive.toLocalDate());
        if (dawn || evening) {
            return dawn && evening ? midnight ? "all night" : "all day" : dawn ? "dawn" : "evening";
        }
        boolean before = sun.sunrise() != null && leave.isBefore(sun.sunrise());
        boolean after = sun.sunset() != null && arrive.isAfter(sun.sunset());
        if (before || after || sun.downAllDay() || sun.upAllDay() && midnight) {
            return "night";
        }
        if (sun.solarNoon() == null) {
            return null;
        }
        Duration sinceNoon = Duration.between(sun.solarNoon(), arrive.plus(Duration.between(arrive, leave).dividedBy(2)));
        return sinceNoon.abs().compareTo(MIDDAY) <= 0 ? "midday" : sinceNoon.isNegative() ? "morning" : "afternoon";
    }
}
