package understorey.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import understorey.Samples;
import understorey.advice.ColourAdvice;
import understorey.light.WhiteBalance.Lit;
import understorey.light.illuminance.ColourTemperature;

class WhiteBalanceTest {

    /** Common practice, no source: daylight keeps the colours that low sun and twilight are photographed for. */
    @ParameterizedTest
    @CsvSource({"60, SUN", "10, SUN", "0.2, SUN", "0.2, SHADE", "0.2, SUN_AND_SHADE", "-4, SHADE", "-4, SUN"})
    void keepsTheColourOfLowSunAndTwilight(double altitudeDeg, Lit lit) {
        int kelvin = WhiteBalance.of(altitudeDeg, lit, 0, 0).kelvin();
        assertTrue(kelvin >= 5200 && kelvin <= 5600, kelvin + " K");
    }

    /** Common practice, no source: camera presets are 5200 to 5600 K, 6000 to 6500 K and 7000 to 8000 K. */
    @Test
    void correctsShadeAndCloud() {
        int shade = WhiteBalance.of(30, Lit.SHADE, 0, 0).kelvin();
        int overcast = WhiteBalance.of(30, Lit.SHADE, 8, 0).kelvin();
        assertTrue(shade >= 7000 && shade <= 8000, shade + " K");
        assertTrue(overcast >= 6000 && overcast <= 6500, overcast + " K");
    }

    @Test
    void saysWhatTheLightIsThatItKeeps() {
        assertEquals(new ColourAdvice.WhiteBalanceSun(5300, ColourTemperature.kelvin(1, 0), 1), WhiteBalance.of(1, Lit.SUN, 0, 0).reasons().get(0));
        assertEquals(new ColourAdvice.WhiteBalanceTwilight(5300, 10_000), WhiteBalance.of(-4, Lit.SHADE, 0, 0).reasons().get(0));
    }

    /** The colour does not leap at sunrise. */
    @Test
    void goesFromDaylightToShadeWithoutALeap() {
        for (double h = -2; h < 8; h += 0.1) {
            assertEquals(WhiteBalance.of(h, Lit.SHADE, 0, 0).kelvin(), WhiteBalance.of(h + 0.1, Lit.SHADE, 0, 0).kelvin(), 100);
        }
    }

    @Test
    void saysWhatLightItIsFor() {
        assertEquals(List.of(ColourAdvice.WhiteBalanceSun.class), kinds(30, Lit.SUN, 1, 0));
        assertEquals(List.of(ColourAdvice.WhiteBalanceShade.class), kinds(30, Lit.SHADE, 4, 0));
        assertEquals(List.of(ColourAdvice.WhiteBalanceTwilight.class), kinds(-3, Lit.SUN, 0, 0));
        assertEquals(List.of(ColourAdvice.WhiteBalanceBroken.class), kinds(30, Lit.SUN, 6, 0));
        assertEquals(List.of(ColourAdvice.WhiteBalanceCloud.class), kinds(30, Lit.SHADE, 8, 0));
    }

    /** Common practice, no source: the cast is that of light through leaves, which a fleck of sun is not. */
    @Test
    void findsAGreenCastInTheShadeOfLeaves() {
        assertTrue(WhiteBalance.of(40, Lit.SHADE, 0, 3.2).green());
        assertTrue(WhiteBalance.of(40, Lit.SUN, 8, 2.1).green());
        assertFalse(WhiteBalance.of(40, Lit.SUN, 0, 3.2).green());
        assertFalse(WhiteBalance.of(40, Lit.SHADE, 0, 0.8).green());
        assertFalse(WhiteBalance.of(40, Lit.SHADE, 0, 0).green());
        assertEquals(List.of(ColourAdvice.WhiteBalanceShade.class, ColourAdvice.GreenCast.class), kinds(40, Lit.SHADE, 0, 3.2));
    }

    @Property
    void goesByHundredsTowardsTheOvercastAsCloudsGrow(@ForAll @DoubleRange(min = -20, max = 90) double altitudeDeg,
            @ForAll @DoubleRange(min = 0, max = 8) double okta, @ForAll @DoubleRange(min = 0, max = 8) double more,
            @ForAll Lit lit) {
        int thin = WhiteBalance.of(altitudeDeg, lit, okta, 0).kelvin();
        int thick = WhiteBalance.of(altitudeDeg, lit, Math.min(8, okta + more), 0).kelvin();
        assertEquals(0, thin % 100);
        assertTrue(Math.abs(thick - 6500) <= Math.abs(thin - 6500));
    }

    private static List<Class<?>> kinds(double altitudeDeg, Lit lit, double okta, double plantAreaIndex) {
        return Samples.kinds(WhiteBalance.of(altitudeDeg, lit, okta, plantAreaIndex).reasons());
    }
}
