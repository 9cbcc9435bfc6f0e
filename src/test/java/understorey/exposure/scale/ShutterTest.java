package understorey.exposure.scale;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import understorey.optics.Bellows;

class ShutterTest {

    /**
     * Encyclopedia articles citing ASA PH2.5-1960 and Ray 2000: EV 0 is f/1 at 1 s by definition, f/16 at
     * 1/125 s and ISO 100 nominally EV 15 (14.966; 1/100 s 14.644), f/2 at 1/125 s and ISO 400 nominally EV100 7.
     */
    @ParameterizedTest
    @CsvSource({"1, 1, 100, 0, 0.001", "16, 0.008, 100, 14.966, 0.001", "16, 0.01, 100, 14.644, 0.001",
        "16, 0.008, 100, 15, 0.167", "2, 0.008, 400, 7, 0.167"})
    void agreesWithExposureValues(double fNumber, double seconds, double iso, double ev100, double tolerance) {
        double stopsOff = Math.log(Shutter.seconds(fNumber, ev100, iso, 0) / seconds) / Math.log(2);
        assertEquals(0, stopsOff, tolerance);
    }

    /** ISO 2720:1974: N^2/t = L S / K and N^2/t = E S / C, with K = 12.5 and C = 250 in common use. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/ev100-luminance-illuminance.csv")
    void agreesWithTheMeterEquationsAtEveryStandardEv(double ev100, double candelas, double lux) {
        double seconds = Shutter.seconds(8, ev100, 200, 0);
        assertEquals(64 * 250 / (lux * 200), seconds, seconds * 0.005);
        double roundingOfThePrintedLuminance = ev100 < 0 ? 0.03 : 0.005;
        assertEquals(64 * 12.5 / (candelas * 200), seconds, seconds * roundingOfThePrintedLuminance);
    }

    /** ANSI PH2.7-1973: EV 15 in full sun; the old rule gives f/16 at one over the ISO there (1/3 stop apart). */
    @ParameterizedTest
    @CsvSource({"100", "200", "400", "3200"})
    void comesWithinAThirdOfAStopOfTheSunnySixteenRule(double iso) {
        assertEquals(0, Math.log(Shutter.seconds(16, 15, iso, 0) * iso) / Math.log(2), 0.36);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/neutral-density.csv")
    void lengthensBehindNeutralDensityByItsFactor(double density, double thirds) {
        double times = Shutter.seconds(8, 12, 100, thirds / 3) / Shutter.seconds(8, 12, 100, 0);
        double tolerance = 0.05 * Math.ceil(density / 3);
        assertEquals(0, Math.log(times / Math.pow(10, density)) / Math.log(2), tolerance);
    }

    /** US Army course SS0536: a polarising filter has factor 4, two stops. */
    @Test
    void lengthensFourTimesBehindATwoStopPolariser() {
        assertEquals(4, Shutter.seconds(8, 12, 100, 2) / Shutter.seconds(8, 12, 100, 0), 1e-12);
    }

    /** US Army course SS0512: 8 s at f/16 become 18 s with bellows of 18 in on a 12 in lens. */
    @Test
    void lengthensBehindBellows() {
        double ev100 = Math.log(16 * 16 / 8.0) / Math.log(2);
        assertEquals(18, Shutter.seconds(16, ev100, 100, Bellows.stops(0.5)), 1e-9);
    }

    @Property
    void halvesTheTimeWhenIsoDoubles(@ForAll @DoubleRange(min = 1, max = 45) double fNumber,
                                     @ForAll @DoubleRange(min = -6, max = 17) double ev100,
                                     @ForAll @DoubleRange(min = 25, max = 25_600) double iso) {
        double seconds = Shutter.seconds(fNumber, ev100, iso, 1.5);
        assertEquals(seconds / 2, Shutter.seconds(fNumber, ev100, 2 * iso, 1.5), seconds * 1e-12);
        assertEquals(iso, Shutter.iso(fNumber, ev100, seconds, 1.5), iso * 1e-9);
    }
}
