package understorey.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class StemSwayTest {

    /** NWCG Firefighter Math 8.2: under a dense stand 15 mph come down to 1.5 mph. */
    @Test
    void letsATenthOfTheWindUnderClosedLeaves() {
        assertEquals(1.5, StemSway.windAtFlowersMs(15, 2.5), 1e-12);
        assertEquals(1.5, StemSway.windAtFlowersMs(15, 6), 1e-12);
    }

    /** NWCG factors of an open stand and of open ground (from memory): 0.2 and 0.4. */
    @Test
    void letsMoreOfItIntoALeaflessWoodAndTheOpen() {
        assertEquals(2, StemSway.windAtFlowersMs(10, 0.8), 1e-12);
        assertEquals(4, StemSway.windAtFlowersMs(10, 0), 1e-12);
        assertEquals(3, StemSway.windAtFlowersMs(10, 0.4), 1e-12);
        assertEquals(1.5, StemSway.windAtFlowersMs(10, 1.65), 1e-12);
    }

    @Property
    void neverLetsMoreWindThroughDenserLeaves(@ForAll @DoubleRange(min = 0, max = 7) double index,
                                              @ForAll @DoubleRange(min = 0, max = 3) double more) {
        assertTrue(StemSway.windAtFlowersMs(5, index + more) <= StemSway.windAtFlowersMs(5, index) + 1e-12);
    }

    /** An assumption of ours: 2 mm to 20 mm from the beginning of Beaufort 1 to the end of Beaufort 2. */
    @Test
    void swaysTwoToTwentyMillimetresFromLightAirToLightBreeze() {
        assertEquals(0, StemSway.amplitudeMm(0));
        assertEquals(1, StemSway.amplitudeMm(0.15), 1e-12);
        assertEquals(2, StemSway.amplitudeMm(0.3), 1e-12);
        assertEquals(11, StemSway.amplitudeMm(1.8), 1e-12);
        assertEquals(20, StemSway.amplitudeMm(3.3), 1e-12);
        assertTrue(StemSway.amplitudeMm(5) > 20);
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
