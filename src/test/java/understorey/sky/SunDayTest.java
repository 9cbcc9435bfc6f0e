package understorey.sky;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.stream.Stream;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;
import net.e175.klaus.solarpositioning.SunriseResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import understorey.Places;
import understorey.plan.Position;

/** Days of the sun against an independent library, and against their own definitions. */
class SunDayTest {

    private static final double[] LONGITUDES = {-150, -40, 0, 75};

    /** net.e175.klaus:solarpositioning 2.0.4 (NREL SPA), the twentieth of each month. */
    @ParameterizedTest
    @ValueSource(ints = {-66, -60, -48, -36, -24, -12, 0, 12, 24, 36, 48, 60, 66})
    void agreesWithTheSolarPositionAlgorithm(int latitude) {
        double toleranceS = Math.abs(latitude) <= 60 ? 10 : 30;
        for (double longitude : LONGITUDES) {
            ZoneId zone = ZoneOffset.ofHours((int) Math.round(longitude / 15));
            for (int month = 1; month <= 12; month++) {
                LocalDate date = LocalDate.of(2027, month, 20);
                SunDay day = SunDay.of(new Position(latitude, longitude), Interval.day(date, zone));
                SunriseResult spa = SPA.calculateSunriseTransitSet(date.atStartOfDay(zone), latitude, longitude, DeltaT.estimate(date));
                String where = latitude + " " + longitude + " " + date;
                assertSeconds(spa.transit(), day.solarNoon(), toleranceS, where);
                if (spa instanceof SunriseResult.RegularDay regular) {
                    assertSeconds(regular.sunrise(), day.sunrise(), toleranceS, where);
                    assertSeconds(regular.sunset(), day.sunset(), toleranceS, where);
                } else {
                    assertTrue(day.upAllDay() || day.downAllDay(), where);
                }
                assertPositions(latitude, longitude, date, zone);
            }
        }
    }

    private static void assertPositions(double latitude, double longitude, LocalDate date, ZoneId zone) {
        for (SunAt sun : SunTrack.of(new Position(latitude, longitude), Interval.day(date, zone), Duration.ofHours(3))) {
            SolarPosition spa = SPA.calculateSolarPosition(sun.time(), latitude, longitude, 0, DeltaT.estimate(date));
            assertEquals(90 - spa.zenithAngle(), sun.altitudeDeg(), 0.02);
            double turned = (sun.azimuthDeg() - spa.azimuth() + 540) % 360 - 180;
            assertEquals(0, turned * Math.cos(Math.toRadians(sun.altitudeDeg())), 0.02);
        }
    }

    private static void assertSeconds(ZonedDateTime expected, ZonedDateTime actual, double toleranceS, String where) {
        assertNotNull(actual, where);
        assertEquals(0, Duration.between(expected, actual).toMillis() / 1000.0, toleranceS, where);
    }

    @ParameterizedTest
    @ValueSource(doubles = {70, 0, -45, -67})
    void keepsItsEventsOnTheirDateThroughAWholeYear(double latitude) {
        Position place = new Position(latitude, 26);
        ZoneId zone = ZoneId.of("Europe/Helsinki");
        for (LocalDate date = LocalDate.of(2027, 1, 1); date.getYear() == 2027; date = date.plusDays(1)) {
            SunDay day = SunDay.of(place, Interval.day(date, zone));
            LocalDate today = date;
            Stream.of(day.sunrise(), day.sunset(), day.solarNoon(), day.civilDawn(), day.civilDusk(), day.nauticalDawn(),
                    day.nauticalDusk(), day.astronomicalDawn(), day.astronomicalDusk())
                    .filter(event -> event != null)
                    .forEach(event -> assertEquals(today, event.toLocalDate()));
            assertEquals(day.sunrise() == null && day.sunset() == null, day.upAllDay() || day.downAllDay(), today.toString());
            assertFalse(day.upAllDay() && day.downAllDay());
            MoonDay moon = MoonDay.of(place, Interval.day(date, zone));
            Stream.of(moon.rise(), moon.set()).filter(event -> event != null)
                    .forEach(event -> assertEquals(today, event.toLocalDate()));
            assertTrue(moon.illuminatedFraction() >= 0 && moon.illuminatedFraction() <= 1);
        }
    }

    @Test
    void putsTheSunWhereEachEventSays() {
        for (Places place : new Places[] {Places.MID_LATITUDE, Places.TROPICS, Places.SOUTHERN, Places.NEAR_THE_DATE_LINE,
            Places.SHORT_DAY, Places.LONG_DAY, Places.NO_MIDNIGHT}) {
            SunDay day = day(place);
            assertAll(place.toString(),
                    () -> assertAltitude(-50 / 60.0, place, day.sunrise()),
                    () -> assertAltitude(-50 / 60.0, place, day.sunset()),
                    () -> assertAltitude(-6, place, day.civilDawn()),
                    () -> assertAltitude(-12, place, day.nauticalDusk()),
                    () -> assertAltitude(-18, place, day.astronomicalDawn()),
                    () -> assertAltitude(-4, place, day.lowSunMorning().from()),
                    () -> assertAltitude(6, place, day.lowSunMorning().to()),
                    () -> assertAltitude(6, place, day.lowSunEvening().from()),
                    () -> assertAltitude(-4, place, day.lowSunEvening().to()),
                    () -> assertEquals(day.lowSunMorning().from(), day.deepTwilightMorning().to()),
                    () -> assertEquals(day.civilDawn(), day.deepTwilightMorning().from()),
                    () -> assertEquals(day.lowSunEvening().to(), day.deepTwilightEvening().from()),
                    () -> assertEquals(day.civilDusk(), day.deepTwilightEvening().to()),
                    () -> assertTrue(day.lowSunMorning().contains(day.sunrise())),
                    () -> assertTrue(day.lowSunEvening().contains(day.sunset())));
        }
    }

    private static void assertAltitude(double altitudeDeg, Places place, ZonedDateTime event) {
        assertEquals(place.date(), event.toLocalDate());
        assertEquals(altitudeDeg, SunAt.of(place.position(), event).altitudeDeg(), 0.002);
    }

    @Test
    void runsLowSunToTheNoonPeakInThePolarNight() {
        SunDay day = day(Places.POLAR_NIGHT);
        assertTrue(day.downAllDay());
        assertTrue(day.noonAltitudeDeg() < -3 && day.noonAltitudeDeg() > -4);
        assertEquals(day.lowSunMorning().to(), day.lowSunEvening().from());
        assertEquals(0, Duration.between(day.solarNoon(), day.lowSunMorning().to()).toSeconds(), 120);
        assertNotNull(day.civilDawn());
        assertNull(day.sunrise());
    }

    @Test
    void runsLowSunFromTheMidnightLowInThePolarDay() {
        SunDay day = day(Places.POLAR_DAY);
        assertTrue(day.upAllDay());
        assertNull(day.civilDawn());
        assertNull(day.deepTwilightEvening());
        ZonedDateTime low = day.lowSunMorning().from();
        assertEquals(12, Duration.between(low, day.solarNoon()).toMinutes() / 60.0, 0.1);
        assertAltitude(6, Places.POLAR_DAY, day.lowSunMorning().to());
    }

    /** 70° N in late May: the sun does not sink to −4°, and the evening's span ends with the low after midnight. */
    @Test
    void takesTheDaylightEndForTheDateOfASpan() {
        Position place = new Position(70, 26);
        LocalDate date = LocalDate.of(2027, 5, 25);
        SunDay day = SunDay.of(place, Interval.day(date, ZoneId.of("Europe/Helsinki")));
        assertEquals(date, day.lowSunEvening().from().toLocalDate());
        assertEquals(date.plusDays(1), day.lowSunEvening().to().toLocalDate());
        assertEquals(date, day.lowSunMorning().to().toLocalDate());
    }

    private static SunDay day(Places place) {
        return SunDay.of(place.position(), Interval.day(place.date(), place.zone()));
    }
}
