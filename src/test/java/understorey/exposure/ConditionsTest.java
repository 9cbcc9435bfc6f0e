package understorey.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.light.LightAt;
import understorey.light.Standpoint;
import understorey.light.SunDirection;
import understorey.light.illuminance.CanopyLight;
import understorey.optics.AngleOfView;
import understorey.optics.Projection;
import understorey.sky.Skyline;
import understorey.sky.SunAt;
import understorey.weather.Weather;

class ConditionsTest {

    private static final Weather WINDY = new Weather(1.0, 2.0, 5.0, null, null, null, null, null);

    private static LightAt light(double altitudeDeg, double plantArea) {
        return LightAt.of(new SunAt(Samples.MAY_DAY.atTime(6, 0).atZone(ZoneOffset.UTC), 90, altitudeDeg),
                Standpoint.of(Skyline.of(List.of(), null), new CanopyLight(plantArea, null, null), Samples.MAY_DAY));
    }

    private static Conditions conditions(LightAt light, double okta, Weather weather, SunDirection sun, Double flowersM) {
        return Conditions.of(light, Metering.wide(light, okta), okta, weather, sun, flowersM);
    }

    /** A leafed wood leaves 0.08 of the wind at 0.3 m, to the rounding of the table: common practice, no source. */
    @Test
    void bringsWindAndGustDownToTheFlowers() {
        Conditions conditions = conditions(light(30, 4), 1, WINDY, null, 0.3);
        assertEquals(0.16, conditions.windMs(), 0.01);
        assertEquals(0.4, conditions.gustMs(), 0.025);
        assertTrue(conditions(light(30, 4), 1, WINDY, null, 1.0).windMs() > conditions.windMs() * 1.3, "taller flowers");
    }

    /** A light breeze, Beaufort 2 (1.6 to 3.3 m/s at 10 m), never still air; a gust alone stands for the mean. */
    @Test
    void assumesALightBreezeWithoutAForecast() {
        Weather silent = new Weather(1.0, null, null, null, null, null, null, null);
        Weather breeze = new Weather(1.0, 2.0, null, null, null, null, null, null);
        assertEquals(conditions(light(30, 4), 1, breeze, null, 0.3), conditions(light(30, 4), 1, silent, null, null));
        Weather gust = new Weather(1.0, null, 5.0, null, null, null, null, null);
        assertEquals(conditions(light(30, 4), 1, WINDY, null, 0.3).gustMs(), conditions(light(30, 4), 1, gust, null, 0.3).windMs());
        Conditions calm = conditions(light(30, 4), 1, silent, null, 0.3);
        assertEquals(1.6 * calm.windMs(), calm.gustMs(), 1e-9, "gusts over open land, from memory");
    }

    @Test
    void saysHowFarTheShadeLiesUnderTheLightMetered() {
        LightAt leafless = light(40, 0.8);
        Conditions clear = conditions(leafless, 1, WINDY, null, 0.3);
        assertEquals(leafless.floorEv(1), clear.ev100());
        assertEquals(clear.ev100() - leafless.floor().shade(), clear.shadeStops(), 1e-9);
        assertEquals(leafless.floor().fleck() - clear.ev100(), clear.aboveStops(), 1e-9);
        Conditions grey = conditions(leafless, 8, WINDY, null, 0.3);
        assertEquals(0, grey.contrastStops() + grey.shadeStops());
    }

    /** In a leafless wood under a high sun much of the floor is lit: its light is that of sun and shade together. */
    @Test
    void namesTheShadeOnlyWhereTheLightMeteredIsThatOfTheShade() {
        LightAt leafless = light(40, 0.8);
        assertEquals(LightAt.Metered.SUN_AND_SHADE, leafless.metered(1));
        assertTrue(conditions(leafless, 1, WINDY, null, 0.3).ev100() > leafless.floor().shade() + 1);
        LightAt inLeaf = light(40, 4);
        assertEquals(LightAt.Metered.SHADE, inLeaf.metered(1));
        assertEquals(inLeaf.floor().shade(), conditions(inLeaf, 1, WINDY, null, 0.3).ev100(), 1e-9);
        assertEquals(LightAt.Metered.GROUND, inLeaf.metered(6));
        assertEquals(LightAt.Metered.GROUND, light(40, 0).metered(1));
    }

    /** The sun stands at 90°, a 50 mm lens takes 19.8° to each side. */
    @Test
    void seesTheSunOnlyInTheFrameAndWhereItShines() {
        Double stops = conditions(light(8, 1), 1, WINDY, seen(8, 100), 0.3).sunStops();
        assertTrue(stops > 4, "a wood against the sky round the sun: " + stops);
        assertNull(conditions(light(8, 1), 6, WINDY, seen(8, 100), 0.3).sunStops(), "clouds");
        assertNull(conditions(light(8, 1), 1, WINDY, seen(8, 120), 0.3).sunStops(), "beside it");
        assertNull(conditions(light(8, 1), 1, WINDY, null, 0.3).sunStops(), "faces nowhere");
        assertNull(conditions(light(-3, 1), 1, WINDY, seen(-3, 100), 0.3).sunStops(), "down");
        assertNotNull(conditions(light(8, 0), 1, WINDY, seen(8, 100), 0.3).sunStops(), "open ground");
    }

    private static SunDirection seen(double altitudeDeg, double facingDeg) {
        return SunDirection.of(light(altitudeDeg, 1).sun(), Projection.of(facingDeg, 0, AngleOfView.of(50, 36, 24)));
    }
}
