package understorey.sky;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import understorey.plan.Position;

class MoonAtTest {

    /** JPL Horizons, listings of 2018-12, refracted, height 10 m: without parallax the altitude would be up to 1° off. */
    @ParameterizedTest
    @CsvSource({"-30,150,2018-12-02T00:00,308.6575,43.4962", "-30,150,2018-12-03T18:00,88.6042,14.2031",
        "29,-81,2018-12-02T12:00,139.3479,53.0131", "29,-81,2018-12-03T18:00,243.9348,27.3929",
        "15,75,2018-12-02T06:00,257.3399,41.6385"})
    void standsWhereHorizonsHasIt(double latitude, double longitude, LocalDateTime utc, double azimuthDeg, double altitudeDeg) {
        MoonAt moon = MoonAt.of(new Position(latitude, longitude), utc.atZone(ZoneOffset.UTC));
        assertEquals(azimuthDeg, moon.azimuthDeg(), 0.1 / Math.cos(Math.toRadians(altitudeDeg)));
        assertEquals(altitudeDeg, moon.altitudeDeg(), 0.1);
    }

    /** Meeus, <em>Astronomical Algorithms</em>, 2nd ed., example 48.a: phase angle 69.08°, distance 368 410 km. */
    @Test
    void isLitAsInThePrintedExample() {
        MoonAt moon = MoonAt.of(new Position(0, 0), LocalDateTime.of(1992, 4, 12, 0, 0).atZone(ZoneOffset.UTC));
        assertEquals(69.08, moon.phaseAngleDeg(), 0.7);
        assertEquals(368_410, moon.distanceKm(), 1500);
    }
}
