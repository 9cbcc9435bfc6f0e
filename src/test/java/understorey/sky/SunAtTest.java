package understorey.sky;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import understorey.Places;
import understorey.plan.Position;

/** Positions of the sun against printed ones, and the track made of them. */
class SunAtTest {

    /** Reda & Andreas, NREL/TP-560-34302, Table A5.1: elevation 39.872046° without refraction, azimuth 194.340241°. */
    @Test
    void standsWhereTheSpaExampleSays() {
        ZonedDateTime time = ZonedDateTime.of(2003, 10, 17, 12, 30, 30, 0, ZoneOffset.ofHours(-7));
        SunAt sun = SunAt.of(new Position(39.742476, -105.1786), time);
        assertEquals(39.872046, sun.altitudeDeg(), 0.02);
        assertEquals(194.340241, sun.azimuthDeg(), 0.02);
    }

    /** Near the zenith the bearing means little, so it is weighed by the cosine of the altitude. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/horizons-sun-positions.csv")
    void standsWhereHorizonsSays(OffsetDateTime time, double azimuthDeg, double airlessDeg, double refractedDeg) {
        SunAt sun = SunAt.of(new Position(0, 0), time.atZoneSameInstant(ZoneOffset.UTC));
        assertEquals(airlessDeg, sun.altitudeDeg(), 0.02);
        assertEquals(refractedDeg, sun.apparentAltitudeDeg(), 0.03);
        assertEquals(0, (sun.azimuthDeg() - azimuthDeg) * Math.cos(Math.toRadians(airlessDeg)), 0.02);
    }

    /**
     * Right ascension and declination of the sun by Meeus, Astronomical Algorithms, 2nd ed., example 25.b, p. 169,
     * and the US Naval Observatory (PyEphem's tests); turned to the horizon with the sidereal time of Meeus eq. 12.4.
     */
    @ParameterizedTest
    @CsvSource({"1992-10-12T23:59:01Z,13,13,30.749,-7.783817", "2007-09-25T00:00Z,12,5,42.537,-0.618697",
        "2007-10-01T00:00Z,12,27,19.721,-2.952461"})
    void standsWhereMeeusAndTheNavalObservatoryPutIt(OffsetDateTime time, int hours, int minutes, double seconds, double declinationDeg) {
        double latitudeDeg = 40;
        double longitudeDeg = 170;
        double days = Duration.between(OffsetDateTime.parse("2000-01-01T12:00Z"), time).toMillis() / 86_400_000.0;
        double siderealDeg = 280.46061837 + 360.98564736629 * days + longitudeDeg;
        double hourAngle = Math.toRadians(siderealDeg - 15 * (hours + minutes / 60.0 + seconds / 3600));
        double latitude = Math.toRadians(latitudeDeg);
        double declination = Math.toRadians(declinationDeg);
        double altitudeDeg = Math.toDegrees(Math.asin(Math.sin(latitude) * Math.sin(declination)
                + Math.cos(latitude) * Math.cos(declination) * Math.cos(hourAngle)));
        SunAt sun = SunAt.of(new Position(latitudeDeg, longitudeDeg), time.atZoneSameInstant(ZoneOffset.UTC));
        assertEquals(altitudeDeg, sun.altitudeDeg(), 0.02);
    }

    /** Sæmundsson's formula in Meeus, 2nd ed., example 16.a, p. 107: 24.618′ at a true altitude of 33.246′. */
    @Test
    void isLiftedByTheAirAsInMeeus() {
        assertEquals(24.618, 60 * Refraction.liftDeg(33.246 / 60), 0.01);
        assertEquals(0, Refraction.liftDeg(90), 0.001);
    }

    @Test
    void neverSinksToTheEyeWhileItRises() {
        double last = -91;
        for (double h = -90; h <= 90; h += 0.01) {
            double apparent = h + Refraction.liftDeg(h);
            assertTrue(apparent > last && apparent >= h, "at " + h);
            last = apparent;
        }
    }

    @Test
    void tracksTheWholeLocalDayByEvenSteps() {
        for (Places place : Places.ALL) {
            List<SunAt> track = SunTrack.of(place.position(), Interval.day(place.date(), place.zone()), Duration.ofMinutes(15));
            assertEquals(place.date().atStartOfDay(place.zone()), track.get(0).time());
            for (int i = 1; i < track.size(); i++) {
                assertEquals(Duration.ofMinutes(15), Duration.between(track.get(i - 1).time(), track.get(i).time()));
                assertEquals(place.date(), track.get(i).time().toLocalDate());
            }
        }
        assertEquals(92, track(Places.SHORT_DAY).size());
        assertEquals(96, track(Places.SOUTHERN).size());
        assertEquals(100, track(Places.LONG_DAY).size());
        assertEquals(92, track(Places.NO_MIDNIGHT).size());
    }

    private static List<SunAt> track(Places place) {
        return SunTrack.of(place.position(), Interval.day(place.date(), place.zone()), Duration.ofMinutes(15));
    }

    @Test
    void refusesAStepThatLeadsNowhere() {
        Places place = Places.TROPICS;
        assertThrows(IllegalArgumentException.class,
                () -> SunTrack.of(place.position(), Interval.day(place.date(), place.zone()), Duration.ZERO));
    }

    @Test
    void liesBetweenTwoQuartersOfAnHour() {
        for (Places place : List.of(Places.MID_LATITUDE, Places.LONG_DAY, Places.POLAR_DAY)) {
            List<SunAt> track = SunTrack.of(place.position(), Interval.day(place.date(), place.zone()), Duration.ofMinutes(15));
            for (int i = 1; i < track.size(); i++) {
                SunAt middle = SunAt.between(track.get(i - 1), track.get(i), 1 / 3.0);
                SunAt exact = SunAt.of(place.position(), track.get(i - 1).time().plusMinutes(5));
                assertEquals(exact.time(), middle.time());
                assertEquals(exact.altitudeDeg(), middle.altitudeDeg(), 0.05);
                assertEquals(0, Skyline.turned(exact.azimuthDeg() - middle.azimuthDeg()), 0.1);
            }
        }
    }
}
