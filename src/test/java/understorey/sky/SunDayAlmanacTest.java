package understorey.sky;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.sky.Clocks.assertNear;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import understorey.plan.Position;

/** Events of the sun against printed almanacs. */
class SunDayAlmanacTest {

    private static final Position GOLDEN = new Position(39.742476, -105.1786);
    private static final ZoneId MST = ZoneOffset.ofHours(-7);

    /** NREL/TP-560-34302, Table A5.1; the sunset printed there, 17:20:19, is the evening's before. */
    @Test
    void givesTheSunsetOfTheLocalDateInTheSpaExample() {
        LocalDate date = LocalDate.of(2003, 10, 17);
        SunDay day = SunDay.of(GOLDEN, Interval.day(date, MST));
        assertNear(LocalTime.of(6, 12, 43), date, day.sunrise(), 10, "sunrise");
        assertNear(LocalTime.of(11, 46, 4), date, day.solarNoon(), 10, "noon");
        assertNear(LocalTime.of(17, 18, 50), date, day.sunset(), 10, "sunset");
    }

    /** NREL web calculator, in pvlib's tests; sunset of 2015-08-02 by solarpositioning 2.0.4, since the printed one is of August 1. */
    @ParameterizedTest
    @CsvSource({"2015-01-02,07:21:55,12:04:45,16:47:43", "2015-08-02,05:00:27,12:06:58,19:12:53"})
    void agreesWithTheNrelCalculatorAtGolden(LocalDate date, LocalTime rise, LocalTime noon, LocalTime set) {
        SunDay day = SunDay.of(GOLDEN, Interval.day(date, MST));
        assertNear(rise, date, day.sunrise(), 10, "sunrise");
        assertNear(noon, date, day.solarNoon(), 10, "noon");
        assertNear(set, date, day.sunset(), 10, "sunset");
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/spa-almanac-sunrise.csv")
    void agreesWithTheAstronomicalAlmanac(LocalDate date, double latitude, LocalTime rise, LocalTime set) {
        SunDay day = SunDay.of(new Position(latitude, 0), Interval.day(date, ZoneOffset.UTC));
        assertNear(rise, date, day.sunrise(), 10, "sunrise");
        assertNear(set, date, day.sunset(), 10, "sunset");
    }

    /** Whole minutes: a perfect program is up to 30 s off. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/usno-sun-2019.csv")
    void agreesWithTheNavalObservatoryTables(double latitude, double longitude, String offset, LocalDate date,
            LocalTime rise, LocalTime set) {
        SunDay day = SunDay.of(new Position(latitude, longitude), Interval.day(date, ZoneId.of(offset)));
        assertNear(rise, date, day.sunrise(), 40, "sunrise");
        assertNear(set, date, day.sunset(), 40, "sunset");
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/clock-change-days.csv")
    void followsTheClockThroughItsChanges(double latitude, double longitude, ZoneId zone, LocalDate date,
            LocalTime rise, LocalTime noon, LocalTime set) {
        SunDay day = SunDay.of(new Position(latitude, longitude), Interval.day(date, zone));
        assertNear(rise, date, day.sunrise(), 60, "sunrise");
        assertNear(set, date, day.sunset(), 60, "sunset");
        if (noon != null) {
            assertNear(noon, date, day.solarNoon(), 10, "noon");
        }
        assertEquals(rise == null, day.upAllDay());
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/twilight-times.csv")
    void agreesWithPrintedTwilights(double latitude, double longitude, ZoneOffset offset, LocalDate date, double toleranceS,
            LocalTime astronomicalDawn, LocalTime nauticalDawn, LocalTime civilDawn, LocalTime sunrise,
            LocalTime sunset, LocalTime civilDusk, LocalTime nauticalDusk, LocalTime astronomicalDusk) {
        SunDay day = SunDay.of(new Position(latitude, longitude), Interval.day(date, offset));
        LocalTime[] printed = {astronomicalDawn, nauticalDawn, civilDawn, sunrise, sunset, civilDusk, nauticalDusk, astronomicalDusk};
        ZonedDateTime[] found = {day.astronomicalDawn(), day.nauticalDawn(), day.civilDawn(), day.sunrise(), day.sunset(),
            day.civilDusk(), day.nauticalDusk(), day.astronomicalDusk()};
        for (int i = 0; i < printed.length; i++) {
            if (printed[i] != null) {
                LocalTime local = printed[i].plusSeconds(offset.getTotalSeconds());
                assertNear(local, date, found[i], toleranceS, "event " + i);
            }
        }
    }

    /** US Naval Observatory, tabled by Astronomy Engine: the sun creeps there, so its altitude at the printed time is held. */
    @ParameterizedTest
    @CsvSource({"90,0,2022-03-18T13:02Z", "90,0,2022-09-25T04:13Z", "-90,0,2022-03-22T18:07Z", "-90,0,2022-09-20T21:52Z",
        "89,30,2022-03-16T08:11Z", "89,30,2022-03-16T12:37Z", "89,30,2022-03-20T01:39Z", "89,30,2022-03-20T20:31Z",
        "89,30,2022-03-20T23:14Z", "-88,45,2022-03-27T07:19Z", "-88,45,2022-03-27T10:37Z"})
    void standsOnTheHorizonAtPrintedPolarEvents(double latitude, double longitude, OffsetDateTime time) {
        SunAt sun = SunAt.of(new Position(latitude, longitude), time.atZoneSameInstant(ZoneOffset.UTC));
        assertEquals(SunDay.RISE_DEG, sun.altitudeDeg(), 0.02);
    }

    /** US Naval Observatory: 01:39 and 23:14 up, 20:31 down; a hundredth of a degree is some minutes there. */
    @Test
    void givesTheFirstOfTwoSunrisesNearThePole() {
        LocalDate date = LocalDate.of(2022, 3, 20);
        SunDay day = SunDay.of(new Position(89, 30), Interval.day(date, ZoneOffset.UTC));
        assertNear(LocalTime.of(1, 39), date, day.sunrise(), 180, "first sunrise");
        assertNear(LocalTime.of(20, 31), date, day.sunset(), 360, "sunset");
    }

    /** Astral's tests: the sun over Tromsø neither rises nor sets on that day. */
    @Test
    void saysWhenTheSunStaysUp() {
        SunDay day = SunDay.of(new Position(69.6, 18.95), Interval.day(LocalDate.of(2019, 6, 5), ZoneId.of("Europe/Oslo")));
        assertTrue(day.upAllDay());
        assertNull(day.sunrise());
        assertNull(day.sunset());
    }
}
