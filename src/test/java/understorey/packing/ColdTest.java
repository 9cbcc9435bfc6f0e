package understorey.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.outing.LampHours;
import understorey.outing.Outing;
import understorey.plan.ForecastHour;

class ColdTest {

    private static final ZonedDateTime ARRIVE = ZonedDateTime.of(2027, 5, 8, 5, 0, 0, 0, Samples.zone());

    private static Outing outing() {
        ZonedDateTime leave = ARRIVE.plusHours(4);
        return new Outing(ARRIVE, leave, leave, new LampHours(ARRIVE, null, null, leave, false), List.of(), List.of(),
                Set.of());
    }

    private static ForecastHour hour(LocalDate date, int hour, Double celsius) {
        return new ForecastHour(date, LocalTime.of(hour, 0), celsius, null, null, null, null, null, null, null, null, null);
    }

    @Test
    void takesTheColdestWhileTheVisitLasts() {
        assertEquals(3, Cold.coldestC(List.of(hour(null, 2, -4.0), hour(null, 4, 3.0), hour(null, 6, 5.0),
                hour(null, 10, 1.0)), outing()));
        assertEquals(2, Cold.coldestC(List.of(hour(null, 4, 3.0), hour(null, 8, 2.0)), outing()));
    }

    @Test
    void takesTheNearestRowWhereNoneFallsWithinAndNoneOfAnotherDay() {
        assertEquals(7, Cold.coldestC(List.of(hour(null, 10, 7.0), hour(null, 11, 1.0)), outing()));
        assertEquals(7, Cold.coldestC(List.of(hour(LocalDate.of(2027, 5, 7), 6, -9.0), hour(LocalDate.of(2027, 5, 8), 3, 7.0)),
                outing()));
        assertNull(Cold.coldestC(List.of(), outing()));
        assertNull(Cold.coldestC(List.of(hour(null, 6, null)), outing()));
    }

    /** Four fifths at freezing: from memory of makers' discharge curves, common practice. */
    @Test
    void takesAHundredthADegreeFromTheBattery() {
        assertEquals(1, Cold.batteryShare(null));
        assertEquals(1, Cold.batteryShare(25.0));
        assertEquals(0.8, Cold.batteryShare(0.0), 1e-12);
        assertEquals(0.6, Cold.batteryShare(-30.0), 1e-12);
    }
}
