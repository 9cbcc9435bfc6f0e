package understorey.sky;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.sky.Clocks.assertNear;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import understorey.plan.Position;

/** Moons against printed almanacs. */
class MoonDayTest {

    private static final Position ANYWHERE = new Position(0, 0);
    private static final double SYNODIC_DAYS = 29.530589;

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/usno-moon.csv")
    void risesAndSetsAsTheNavalObservatorySays(double latitude, double longitude, ZoneId zone, LocalDate date,
            double toleranceS, LocalTime rise, LocalTime set) {
        MoonDay moon = MoonDay.of(new Position(latitude, longitude), Interval.day(date, zone));
        assertNear(rise, date, moon.rise(), toleranceS, "moonrise");
        assertNear(set, date, moon.set(), toleranceS, "moonset");
        assertEquals(rise == null && set == null, moon.upAllDay() || moon.downAllDay());
    }

    /** US Naval Observatory: over 85° N, 135° E on 6 January 2026 it stays up, on 10 January down; over Fairbanks up on 24 June 2006. */
    @Test
    void saysWhetherAMoonWithoutRiseIsUpOrDown() {
        Position north = new Position(85, 135);
        assertTrue(MoonDay.of(north, Interval.day(LocalDate.of(2026, 1, 6), ZoneOffset.UTC)).upAllDay());
        assertTrue(MoonDay.of(north, Interval.day(LocalDate.of(2026, 1, 10), ZoneOffset.UTC)).downAllDay());
        assertFalse(MoonDay.of(north, Interval.day(LocalDate.of(2026, 1, 10), ZoneOffset.UTC)).upAllDay());
        assertTrue(MoonDay.of(new Position(64.81, -147.75), Interval.day(LocalDate.of(2006, 6, 24), ZoneOffset.ofHours(-8))).upAllDay());
    }

    /** US Naval Observatory, in Skyfield's tests: 9 to 18 September 2018 at 05:00 UT, which is noon at UTC+7. */
    @Test
    void isLitAtLocalNoonAsTheNavalObservatorySays() {
        List<Double> printed = List.of(0.0, 0.0, 0.03, 0.08, 0.15, 0.24, 0.33, 0.43, 0.52, 0.62);
        for (int i = 0; i < printed.size(); i++) {
            MoonDay moon = MoonDay.of(ANYWHERE, Interval.day(LocalDate.of(2018, 9, 9 + i), ZoneOffset.ofHours(7)));
            assertEquals(printed.get(i), moon.illuminatedFraction(), 0.01);
        }
    }

    /** The printed instant is up to half a day from noon; the moon's mean motion leads from one to the other. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/moon-phases.csv")
    void passesItsPhasesWhenTheNavalObservatorySays(OffsetDateTime time, double phaseDeg) {
        LocalDate date = time.toLocalDate();
        MoonDay moon = MoonDay.of(ANYWHERE, Interval.day(date, ZoneOffset.UTC));
        double days = Duration.between(time, date.atTime(12, 0).atOffset(ZoneOffset.UTC)).toSeconds() / 86400.0;
        double expected = phaseDeg + days * 360 / SYNODIC_DAYS;
        // The moon runs up to a sixth faster or slower than its mean: 1° in half a day, and the library's elongation 1.5° more.
        assertEquals(0, (moon.phaseDeg() - expected + 540) % 360 - 180, 3);
        assertEquals((1 - Math.cos(Math.toRadians(expected))) / 2, moon.illuminatedFraction(), 0.03);
    }
}
