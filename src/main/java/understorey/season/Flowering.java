package understorey.season;

import java.time.LocalDate;
import java.time.Month;
import understorey.plan.Subject;

/**
 * Whether a day lies in a subject's months of flower.
 *
 * @param first    month of the site's own hemisphere
 * @param last     month of the site's own hemisphere; may lie before the first, over the turn of the year
 * @param inSeason whether the day lies within them
 * @param shifted  true when the months were moved by six, for a stand in the other hemisphere
 */
public record Flowering(Subject subject, Month first, Month last, boolean inSeason, boolean shifted) {

    /**
     * By the catalogue's months, moved by six where the site lies in the other hemisphere than the home range.
     * Null when nobody knows the subject's months.
     */
    public static Flowering of(Subject subject, double latitude, LocalDate date) {
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
