package understorey.season;

import java.time.LocalDate;
import java.time.Month;
import org.jspecify.annotations.Nullable;
import understorey.plan.Subject;

/**
 * Flowering months of a subject at a site, and whether a day is within them.
 *
 * @param first    month of the site's own hemisphere
 * @param last     month of the site's own hemisphere; may lie before the first, over the turn of the year
 * @param inSeason whether the day lies within them
 * @param shifted  true if the months are moved by six, for a site in the other hemisphere
 */
public record Flowering(Subject subject, Month first, Month last, boolean inSeason, boolean shifted) {

    /**
     * The months of the catalogue, moved by six if the site is in the other hemisphere than the home range; null if the
     * subject's months are unknown.
     */
    public static @Nullable Flowering of(Subject subject, double latitude, LocalDate date) {
        if (subject.monthFirst() == null || subject.monthLast() == null) {
            return null;
        }
        boolean shifted = subject.southern() != latitude < 0;
        Month first = Month.of(subject.monthFirst()).plus(shifted ? 6 : 0);
        Month last = Month.of(subject.monthLast()).plus(shifted ? 6 : 0);
        int since = Math.floorMod(date.getMonthValue() - first.getValue(), 12);
        int length = Math.floorMod(last.getValue() - first.getValue(), 12);
        return new Flowering(subject, first, last, since <= length, shifted);
    }
}
