package understorey.light.illuminance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import understorey.light.LightAt;
import understorey.light.Standpoint;
import understorey.sky.MoonAt;
import understorey.sky.Skyline;
import understorey.sky.SunAt;

class MoonlightTest {

    private static final LocalDate DATE = LocalDate.of(2027, 5, 20);
    /** The distance at which the parallax is the mean one, 0.951°. */
    private static final double MEAN_KM = 6378.14 / Math.sin(Math.toRadians(0.951));

    private static MoonAt moon(double altitudeDeg, double phaseAngleDeg) {
        return new MoonAt(DATE.atTime(1, 0).atZone(ZoneOffset.UTC), 180, altitudeDeg, phaseAngleDeg, MEAN_KM);
    }

    /** Urban and Seidelmann, 3rd ed. 2013, p. 518, worked from the coefficients printed there. */
    @ParameterizedTest
    @CsvSource({"90,0,0.2692", "60,0,0.2160", "40,0,0.1425", "30,0,0.0977", "20,0,0.0575", "10,0,0.0236", "5,0,0.00994",
        "60,30,0.1181", "60,60,0.0610", "60,90,0.0256", "60,120,0.00687"})
    void agreesWithTheExplanatorySupplement(double altitudeDeg, double phaseAngleDeg, double lux) {
        assertEquals(lux, Moonlight.lux(moon(altitudeDeg, phaseAngleDeg)), lux * 0.006);
    }

    /** Kyba, Mohar and Posch, Astronomy and Geophysics 58 (2017) 1.31: typically 0.05 to 0.1 lux, at the very most 0.32. */
    @Test
    void staysWithinWhatAFullMoonGives() {
        assertTrue(Moonlight.lux(moon(25, 0)) > 0.05 && Moonlight.lux(moon(30, 0)) < 0.1);
        assertTrue(Moonlight.lux(new MoonAt(moon(90, 0).time(), 0, 90, 0, 356_500)) < 0.32);
        assertEquals(0, Moonlight.lux(moon(-1, 0)), 0);
    }

    /** ANSI PH2.7-1986 has −3 to −2 for a full moon above 40°; this source is about a stop darker. */
    @Test
    void countsByNightAndIsDimmedByLeavesAndClouds() {
        SunAt night = new SunAt(moon(60, 0).time(), 0, -30);
        LightAt open = LightAt.of(night, Standpoint.of(Skyline.ring(0), CanopyLight.NONE, DATE), moon(60, 0));
        LightAt wood = LightAt.of(night, Standpoint.of(Skyline.ring(0), new CanopyLight(2.1, null, null), DATE), moon(60, 0));
        assertEquals(-3.5, open.moonEv(), 0.2);
        assertEquals(open.moonEv(), open.floorEv(0), 0.05);
        assertTrue(wood.floorEv(0) < open.floorEv(0) - 1);
        assertTrue(open.floorEv(8) < open.floorEv(0) - 2);
        assertNull(LightAt.of(night, wood.place()).moonEv());
    }
}
