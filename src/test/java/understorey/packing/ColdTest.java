package understorey.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.plan.ForecastHour;
import understorey.sky.Interval;

class ColdTest {

    private static final ZonedDateTime ARRIVE = ZonedDateTime.of(2027, 5, 8, 5, 0, 0, 0, Samples.zone());

    private static final Interval VISIT = new Interval(ARRIVE, ARRIVE.plusHours(4));

    private static ForecastHour hour(LocalDate date, int hour, Double celsius) {
        return new ForecastHour(date, LocalTime.of(hour, 0), celsius, null, null, null, null, null, null, null, null, null);
    }

    @Test
    void takesTheColdestWhileTheVisitLasts() {
        assertEquals(3, Cold.coldestC(List.of(hour(null, 2, -4.0), hour(null, 4, 3.0), hour(null, 6, 5.0),
                hour(null, 10, 1.0)), VISIT));
        assertEquals(2, Cold.coldestC(List.of(hour(null, 4, 3.0), hour(null, 8, 2.0)), VISIT));
    }

    @Test
    void takesTheNearestRowWhereNoneFallsWithinAndNoneOfAnotherDay() {
        assertEquals(7, Cold.coldestC(List.of(hour(null, 10, 7.0), hour(null, 11, 1.0)), VISIT));
        assertEquals(7, Cold.coldestC(List.of(hour(LocalDate.of(2027, 5, 7), 6, -9.0), hour(LocalDate.of(2027, 5, 8), 3, 7.0)),
                VISIT));
        assertNull(Cold.coldestC(List.of(), VISIT));
        assertNull(Cold.coldestC(List.of(hour(null, 6, null)), VISIT));
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
