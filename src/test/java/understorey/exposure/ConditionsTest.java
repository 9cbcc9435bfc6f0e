package understorey.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.LEGS;
import static understorey.Samples.with;
import static understorey.exposure.Fits.PRIME;
import static understorey.exposure.Fits.fit;
import static understorey.exposure.Fits.viewAt;

import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.kit.LensFit;
import understorey.light.CanopyLight;
import understorey.light.LightAt;
import understorey.light.Standpoint;
import understorey.light.Weather;
import understorey.sky.Skyline;
import understorey.sky.SunAt;

class ConditionsTest {

    private static final Weather WINDY = new Weather(1.0, 2.0, 5.0);

    private static LightAt light(double altitudeDeg, double plantArea) {
        return LightAt.of(new SunAt(Samples.MAY_DAY.atTime(6, 0).atZone(ZoneOffset.UTC), 90, altitudeDeg),
                Standpoint.of(Skyline.of(List.of()), new CanopyLight(plantArea, null), Samples.MAY_DAY));
    }

    /** NWCG Firefighter Math 8.2: a tenth of the wind under a dense stand; gusts by the same share. */
    @Test
    void bringsWindAndGustDownToTheFlowers() {
        Conditions conditions = Conditions.of(light(30, 4), 1, WINDY, null);
        assertEquals(0.2, conditions.windMs(), 1e-12);
        assertEquals(0.5, conditions.gustMs(), 1e-12);
        assertNull(Conditions.of(light(30, 4), 1, new Weather(1.0, null, null), null).worstWindMs());
    }

    @Test
    void saysHowFarTheShadeLiesUnderTheLightMetered() {
        LightAt leafless = light(40, 0.8);
        Conditions clear = Conditions.of(leafless, 1, WINDY, null);
        assertEquals(leafless.floorEv(1), clear.ev100());
        assertEquals(clear.ev100() - leafless.floor().shade(), clear.shadeStops(), 1e-9);
        assertEquals(leafless.floor().fleck() - clear.ev100(), clear.aboveStops(), 1e-9);
        Conditions grey = Conditions.of(leafless, 8, WINDY, null);
        assertEquals(0, grey.contrastStops() + grey.shadeStops());
    }

    @Test
    void seesTheSunOnlyWhereItShinesAndThePictureFacesSomewhere() {
        Conditions.Sun sun = Conditions.of(light(8, 1), 1, WINDY, 100.0).sun();
        assertEquals(-10, sun.asideDeg(), 1e-9);
        assertTrue(sun.stops() > 4, "a wood against the sky round the sun: " + sun.stops());
        assertNull(Conditions.of(light(8, 1), 6, WINDY, 100.0).sun());
        assertNull(Conditions.of(light(8, 1), 1, WINDY, null).sun());
        assertNull(Conditions.of(light(-3, 1), 1, WINDY, 100.0).sun());
        assertNotNull(Conditions.of(light(8, 0), 1, WINDY, 100.0).sun());
    }

    /** An hour on, the sun higher: more light, a shorter time; the hour's own time stands beside it. */
    @Test
    void setsForAnotherHourByItsOwnLight() {
        LensFit fit = fit(viewAt(8), with(PRIME, LEGS));
        Weather still = new Weather(8.0, 0.0, 0.0);
        OtherHour early = OtherHour.of(fit, light(5, 2), 8, still, null);
        OtherHour late = OtherHour.of(fit, light(15, 2), 8, still, null);
        assertEquals(light(5, 2).sun().time(), early.time());
        assertEquals(light(5, 2).floorEv(8), early.settings().ev100());
        assertTrue(late.settings().shutterS() < early.settings().shutterS());
    }
}
