package understorey.exposure.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import understorey.light.illuminance.CanopyLight;

class StemSwayTest {

    private static double wind(double wind10Ms, double plantAreaIndex, double heightM) {
        return StemSway.windAtFlowersMs(wind10Ms, new CanopyLight(plantAreaIndex, null, null), heightM);
    }

    /**
     * NWCG Firefighter Math 8.2: under a dense stand 15 mph come down to 1.5 mph, for flames, whose middle is at about a metre;
     * under an open one to 3 mph (from memory). Their wind is that at 6 m.
     */
    @Test
    void letsATenthOfTheWindThroughToAMetreUnderClosedLeaves() {
        assertEquals(1.5, wind(15, 2.5, 1), 0.1);
        assertEquals(3, wind(15, 0.8, 1), 0.3);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/wind-under-trees.csv")
    void letsThroughWhatTheTableOfStandsGives(String stand, double index, double at2M, double at30Cm) {
        assertEquals(at2M, wind(10, index, 2) / 10, 1e-9, stand);
        assertEquals(at30Cm, wind(10, index, 0.3) / 10, 0.005, stand);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/wind-profile.csv")
    void fallsOffTowardsTheGroundByTheLogarithmicProfile(double heightM, double ratio) {
        assertEquals(ratio, wind(10, 0.8, heightM) / wind(10, 0.8, 2), 0.0005);
    }

    /** The logarithmic profile over short grass, roughness length 0.03 m (from memory): ln(0.3 / 0.03) / ln(10 / 0.03). */
    @Test
    void leavesTwoFifthsInTheOpen() {
        assertEquals(Math.log(10) / Math.log(10 / 0.03), wind(10, 0, 0.3) / 10, 0.01);
    }

    @Property
    void neverLetsMoreWindThroughDenserLeavesOrLower(@ForAll @DoubleRange(min = 0, max = 7) double index,
                                                     @ForAll @DoubleRange(min = 0, max = 3) double more,
                                                     @ForAll @DoubleRange(min = 0, max = 2.5) double heightM) {
        assertTrue(wind(5, index + more, 0.3) <= wind(5, index, 0.3) + 1e-12);
        assertTrue(wind(5, index, heightM) <= wind(5, index, heightM + more) + 1e-12);
    }

    /** Common practice, no source: 2 mm to 20 mm from the beginning of Beaufort 1 to the end of Beaufort 2. */
    @Test
    void swaysTwoToTwentyMillimetresFromLightAirToLightBreeze() {
        assertEquals(0, StemSway.amplitudeMm(0));
        assertEquals(0.5, StemSway.amplitudeMm(0.15), 1e-12, "drag goes with the square of the wind");
        assertEquals(2, StemSway.amplitudeMm(0.3), 1e-12);
        assertEquals(11, StemSway.amplitudeMm(1.8), 1e-12);
        assertEquals(20, StemSway.amplitudeMm(3.3), 1e-12);
        assertTrue(StemSway.amplitudeMm(5) > 20);
        for (double windMs = 0.1; windMs < 6; windMs += 0.3) {
            assertEquals(windMs, StemSway.windMs(StemSway.amplitudeMm(windMs)), 1e-9);
        }
    }

    /** A stem sways by about 2·I of its lean, I = 0.86; a static lean leaves out resonance, so light air moves stems more. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/stem-lean.csv")
    void swaysAsACantileverLeansToAFactorOfTwoAndMoreInLightAir(double windMs, double leanMm) {
        double times = StemSway.amplitudeMm(windMs) / (2 * 0.86 * leanMm);
        assertTrue(times > 0.5, times + " times");
        assertTrue(windMs < 1 || times < 2, times + " times");
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/stem-sway.csv")
    void allowsTheWorstCaseTimesOfASineSway(double frequencyHz, double amplitudeMm, double magnification, double blurMm,
                                            double peakMmPerS, double longestMs) {
        assertEquals(longestMs / 1000, StemSway.longestS(blurMm, frequencyHz, amplitudeMm, magnification),
                longestMs / 1000 * 0.0005);
        double instant = 1e-6;
        assertEquals(peakMmPerS * instant * magnification,
                StemSway.blurMm(instant, frequencyHz, amplitudeMm, magnification),
                peakMmPerS * instant * magnification * 1e-4);
    }

    /** Counted out along the sine itself, at a thousand instants about the middle of the swing. */
    @Property(tries = 100)
    void blursAsFarAsTheStemTravels(@ForAll @Scale(3) @DoubleRange(min = 0.001, max = 2) double exposureS,
                                    @ForAll @DoubleRange(min = 1, max = 5) double frequencyHz) {
        double least = 0;
        double most = 0;
        for (int i = 0; i <= 1000; i++) {
            double at = 8 * 0.5 * Math.sin(2 * Math.PI * frequencyHz * exposureS * (i / 1000.0 - 0.5));
            least = Math.min(least, at);
            most = Math.max(most, at);
        }
        assertEquals(most - least, StemSway.blurMm(exposureS, frequencyHz, 8, 0.5), 0.005);
    }

    @Property
    void exposesExactlyToTheBlurAllowed(@ForAll @Scale(3) @DoubleRange(min = 0.005, max = 0.3) double blurMm,
                                        @ForAll @DoubleRange(min = 0.5, max = 20) double amplitudeMm) {
        double longestS = StemSway.longestS(blurMm, 2, amplitudeMm, 0.2);
        if (2 * amplitudeMm * 0.2 <= blurMm) {
            assertEquals(Double.POSITIVE_INFINITY, longestS);
            assertTrue(StemSway.blurMm(1000, 2, amplitudeMm, 0.2) <= blurMm);
        } else {
            assertEquals(blurMm, StemSway.blurMm(longestS, 2, amplitudeMm, 0.2), 1e-9);
        }
    }

    @Test
    void setsNoLimitInACalm() {
        assertEquals(Double.POSITIVE_INFINITY, StemSway.longestS(0.02, 2, StemSway.amplitudeMm(0), 0.5));
        assertEquals(0, StemSway.blurMm(30, 2, StemSway.amplitudeMm(0), 0.5));
    }
}
