package understorey.sky;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import understorey.Places;
import understorey.plan.Position;
import understorey.plan.SkylinePoint;
import understorey.plan.Slope;

/** The land's own horizon, and the sun that it hides. */
class SkylineTest {

    private static final Skyline LEVEL = Skyline.of(List.of(), null);
    private static final Skyline DINGLE = skyline(0, 14, 90, 6, 180, 11, 270, 17);
    /** A ridge with a narrow gap in the south-east, given out of order. */
    private static final Skyline GAP = skyline(119, 25, 120, 2, 60, 25, 126, 2, 127, 25, 300, 0, 180, 25);

    private static Skyline skyline(double... bearingsAndAngles) {
        List<SkylinePoint> points = new ArrayList<>();
        for (int i = 0; i < bearingsAndAngles.length; i += 2) {
            points.add(new SkylinePoint(bearingsAndAngles[i], bearingsAndAngles[i + 1]));
        }
        return Skyline.of(points, null);
    }

    @Test
    void runsStraightBetweenItsPointsAndRoundThroughNorth() {
        assertEquals(10, DINGLE.angleDeg(45), 1e-9);
        assertEquals(14, DINGLE.angleDeg(360), 1e-9);
        assertEquals(15.5, DINGLE.angleDeg(315), 1e-9);
        assertEquals(15.5, DINGLE.angleDeg(-45), 1e-9);
        assertEquals(0, LEVEL.angleDeg(123), 0);
        assertEquals(8, skyline(200, 8).angleDeg(20), 0);
        Skyline overNorth = skyline(350, 10, 10, 20);
        assertEquals(15, overNorth.angleDeg(0), 1e-9);
        assertEquals(12.5, overNorth.angleDeg(355), 1e-9);
    }

    @Test
    void neverShowsASunBelowTheLevelHorizon() {
        ZonedDateTime time = ZonedDateTime.of(2027, 5, 8, 4, 0, 0, 0, ZoneId.of("Europe/London"));
        assertFalse(skyline(90, -5).clears(new SunAt(time, 60, -2)));
        assertTrue(skyline(90, -5).clears(new SunAt(time, 60, 0.5)));
    }

    @Test
    void showsTheSunTwiceThroughAGap() {
        Places place = Places.MID_LATITUDE;
        List<Interval> sunlit = sunlit(GAP, place.position(), LocalDate.of(2027, 2, 20), place.zone());
        assertEquals(2, sunlit.size(), sunlit.toString());
        assertTrue(sunlit.get(0).length().compareTo(Duration.ofMinutes(40)) < 0);
        assertAgainstEverySecond(GAP, place.position(), LocalDate.of(2027, 2, 20), place.zone());
    }

    @Test
    void findsEveryCrossingThatASecondBySecondWatchFinds() {
        for (Places place : Places.ALL) {
            assertAgainstEverySecond(DINGLE, place.position(), place.date(), place.zone());
        }
        assertAgainstEverySecond(LEVEL, Places.LONG_DAY.position(), Places.LONG_DAY.date(), Places.LONG_DAY.zone());
    }

    /** The noon sun grazes a straight ridge for less than a step of the search. */
    @Test
    void findsASunThatOnlyGrazesTheRidge() {
        Places place = Places.MID_LATITUDE;
        LocalDate date = LocalDate.of(2027, 1, 12);
        ZonedDateTime noon = SunDay.of(place.position(), Interval.day(date, place.zone())).solarNoon();
        double ridge = SunAt.of(place.position(), noon).apparentAltitudeDeg() - 0.005;
        Skyline level = skyline(0, ridge);
        assertEquals(1, sunlit(level, place.position(), date, place.zone()).size());
        assertAgainstEverySecond(level, place.position(), date, place.zone());
    }

    /** A bank of 35° that falls to the south-west hides the morning sun behind its own back; the ridge hides it too. */
    @Test
    void hidesTheSunBehindTheBackOfABank() {
        Slope bank = new Slope(35, 225);
        Places place = Places.MID_LATITUDE;
        Skyline onBank = Skyline.of(List.of(new SkylinePoint(0, 3), new SkylinePoint(200, 20), new SkylinePoint(260, 4)), bank);
        assertEquals(35, onBank.angleDeg(45), 1e-9);
        assertEquals(0, Skyline.of(List.of(), bank).angleDeg(135), 1e-9);
        assertTrue(onBank.angleDeg(225) > 10, "downhill the ridge is what is seen");
        for (Places there : Places.ALL) {
            assertAgainstEverySecond(onBank, there.position(), there.date(), there.zone());
        }
        ZonedDateTime begins = sunlit(onBank, place.position(), place.date(), place.zone()).get(0).from();
        ZonedDateTime level = sunlit(LEVEL, place.position(), place.date(), place.zone()).get(0).from();
        assertTrue(Duration.between(level, begins).toHours() >= 2, level + " " + begins);
    }

    /** The sun stands in the plane of the bank when its rays fall at a right angle to the bank's normal. */
    @Property
    void hidesTheSunOnABankWhereItsRaysWouldComeFromBelow(@ForAll @DoubleRange(min = 1, max = 80) double angleDeg,
            @ForAll @DoubleRange(min = 0, max = 360) double facesDeg, @ForAll @DoubleRange(min = 0, max = 360) double bearingDeg) {
        Skyline bank = Skyline.of(List.of(new SkylinePoint(0, -89)), new Slope(angleDeg, facesDeg));
        double h = Math.toRadians(bank.angleDeg(bearingDeg));
        double s = Math.toRadians(angleDeg);
        double normal = Math.sin(h) * Math.cos(s) + Math.cos(h) * Math.sin(s) * Math.cos(Math.toRadians(bearingDeg - facesDeg));
        assertEquals(0, normal, 1e-9);
    }

    @Test
    void countsARingForWhatItHides() {
        assertEquals(0, LEVEL.evenDeg(), 1e-9);
        assertEquals(20, Skyline.ring(20).evenDeg(), 1e-9);
        assertTrue(DINGLE.evenDeg() > 6 && DINGLE.evenDeg() < 17, "" + DINGLE.evenDeg());
    }

    private static void assertAgainstEverySecond(Skyline skyline, Position place, LocalDate date, ZoneId zone) {
        List<ZonedDateTime> changes = new ArrayList<>();
        boolean lit = false;
        ZonedDateTime end = date.plusDays(1).atStartOfDay(zone);
        for (ZonedDateTime t = date.atStartOfDay(zone); t.isBefore(end); t = t.plusSeconds(1)) {
            if (skyline.clears(SunAt.of(place, t)) != lit) {
                lit = !lit;
                changes.add(t);
            }
        }
        if (lit) {
            changes.add(end);
        }
        List<ZonedDateTime> found = new ArrayList<>();
        sunlit(skyline, place, date, zone).forEach(interval -> found.addAll(List.of(interval.from(), interval.to())));
        assertEquals(changes.size(), found.size(), changes + " but " + found);
        for (int i = 0; i < found.size(); i++) {
            assertEquals(0, Duration.between(changes.get(i), found.get(i)).toMillis() / 1000.0, 5, date + " " + zone);
        }
    }

    @Test
    void givesADayOfSunInThePolarDayAndNoneInThePolarNight() {
        Places day = Places.POLAR_DAY;
        Places night = Places.POLAR_NIGHT;
        List<Interval> sunlit = sunlit(LEVEL, day.position(), day.date(), day.zone());
        assertEquals(List.of(Duration.ofHours(24)), sunlit.stream().map(Interval::length).toList());
        assertEquals(List.of(), sunlit(LEVEL, night.position(), night.date(), night.zone()));
    }

    private static List<Interval> sunlit(Skyline skyline, Position place, LocalDate date, ZoneId zone) {
        return skyline.sunlit(place, SunTrack.of(place, Interval.day(date, zone), Duration.ofMinutes(15)));
    }
}
