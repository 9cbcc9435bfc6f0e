package understorey.sky;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;

/** Compares an event with a printed clock time. */
final class Clocks {

    private Clocks() {
    }

    /** The event stands on the date within a tolerance of the printed time; a printed time of null means no event. */
    static void assertNear(LocalTime printed, LocalDate date, ZonedDateTime event, double toleranceS, String what) {
        if (printed == null) {
            assertNull(event, what);
            return;
        }
        assertNotNull(event, what);
        assertEquals(date, event.toLocalDate(), what);
        assertEquals(0, Duration.between(printed.atDate(date), event.toLocalDateTime()).toMillis() / 1000.0, toleranceS,
                what + " " + date);
    }
}
