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
import org.junit.jupiter.params.provider.CsvFileSource;
import understorey.Samples;
import understorey.advice.ColourAdvice;
import understorey.light.WhiteBalance.Lit;

class WhiteBalanceTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/daylight-colour.csv")
    void beginsWithinThePublishedRange(String light, double altitudeDeg, Lit lit, double okta, int fromK, int toK) {
        int kelvin = WhiteBalance.of(altitudeDeg, lit, okta, 0).kelvin();
        assertTrue(kelvin >= fromK && kelvin <= toK, light + ": " + kelvin);
    }

    /** The lists differ among themselves, and agree on this order only. */
    @Test
    void keepsThePublishedOrder() {
        int sunset = WhiteBalance.of(0.2, Lit.SUN, 0, 0).kelvin();
        int noon = WhiteBalance.of(50, Lit.SUN, 0, 0).kelvin();
        int overcast = WhiteBalance.of(50, Lit.SUN, 8, 0).kelvin();
        int shade = WhiteBalance.of(50, Lit.SHADE, 0, 0).kelvin();
        assertTrue(sunset < noon && noon < overcast && overcast < shade);
    }

    @Test
    void saysWhatLightItIsFor() {
        assertEquals(List.of(ColourAdvice.WhiteBalanceSun.class), kinds(30, Lit.SUN, 1, 0));
        assertEquals(List.of(ColourAdvice.WhiteBalanceShade.class), kinds(30, Lit.SHADE, 4, 0));
        assertEquals(List.of(ColourAdvice.WhiteBalanceShade.class), kinds(-3, Lit.SUN, 0, 0));
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
