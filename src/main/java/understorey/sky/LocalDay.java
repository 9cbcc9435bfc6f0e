package understorey.sky;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;

/** A local date from its first instant to that of the next: 23, 24 or 25 hours, also where a zone skips midnight. */
record LocalDay(ZonedDateTime start, ZonedDateTime end) {

    static LocalDay of(LocalDate date, ZoneId zone) {
        return new LocalDay(date.atStartOfDay(zone), date.plusDays(1).atStartOfDay(zone));
    }

    double startSecond() {
        return start.toEpochSecond();
    }

    double endSecond() {
        return end.toEpochSecond();
    }

    boolean contains(double epochSecond) {
        return epochSecond >= startSecond() && epochSecond < endSecond();
    }
}
