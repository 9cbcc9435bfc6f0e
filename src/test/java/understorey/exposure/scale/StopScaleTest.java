package understorey.exposure.scale;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class StopScaleTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/stop-scales.csv")
    void knowsWhatEveryMarkingMeans(String scale, double marking, double exact) {
        switch (scale) {
            case "f" -> {
                assertEquals(marking, StopScale.snapFNumber(exact));
                assertEquals(marking, StopScale.snapFNumber(marking));
                assertEquals(marking, StopScale.nextFNumberUp(Math.min(exact, marking) * 0.997));
            }
            case "s" -> shutter(marking, exact);
            default -> shutter(1 / marking, 1 / exact);
        }
    }

    private static void shutter(double marking, double exact) {
        assertEquals(marking, StopScale.snapShutterS(exact));
        assertEquals(marking, StopScale.snapShutterS(marking));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/apex.csv")
    void marksTheWholeStopsOfApex(String kind, double marking, double value) {
        if (kind.equals("Av")) {
            assertEquals(marking, StopScale.snapFNumber(Math.pow(2, value / 2)));
        } else {
            assertEquals(1 / marking, StopScale.snapShutterS(Math.pow(2, -value)));
        }
    }

    @Test
    void opensByAThirdOfAStopDownToF1() {
        assertEquals(7.1, StopScale.thirdWider(8));
        assertEquals(5.6, StopScale.thirdWider(6.3));
        assertEquals(1, StopScale.thirdWider(1));
    }

    /** APEX: Sv is 5 at ISO 100 and 7 at ISO 400, 3.125 x 2^Sv; ISO 12232 preferred values (from memory) between. */
    @ParameterizedTest
    @ValueSource(ints = {100, 125, 160, 200, 250, 320, 400, 500, 640, 800, 1000, 1250, 1600, 2000, 2500, 3200, 4000,
        5000, 6400})
    void marksThePreferredSpeedsByThirds(int iso) {
        double thirds = 3 * log2(iso / 100.0);
        assertEquals(Math.round(thirds), thirds, 3 * 0.04);
        assertEquals(iso, StopScale.nextIsoUp(Math.min(iso, 100 * Math.pow(2, Math.round(thirds) / 3.0))));
        assertEquals(iso, StopScale.nextIsoUp(iso));
    }

    @Property
    void snapsToWithinASixthOfAStopAndItsMarking(@ForAll @Scale(5) @DoubleRange(min = 0.0001, max = 2000) double seconds,
                                                 @ForAll @DoubleRange(min = 1, max = 45) double fNumber) {
        assertEquals(0, log2(StopScale.snapShutterS(seconds) / seconds), 1 / 6.0 + 0.094);
        assertEquals(0, 2 * log2(StopScale.snapFNumber(fNumber) / fNumber), 1 / 6.0 + 0.14);
    }

    @Property
    void neverOverstepsALimit(@ForAll @DoubleRange(min = 1, max = 45) double fNumber,
                              @ForAll @DoubleRange(min = 25, max = 100_000) double iso) {
        double stop = StopScale.nextFNumberUp(fNumber);
        assertTrue(Math.max(stop, Math.pow(2, Math.round(6 * log2(stop)) / 6.0)) >= fNumber * 0.999999);
        assertTrue(2 * log2(stop / fNumber) < 1 / 3.0 + 0.15, "a smaller marking would have done: " + stop);
        int speed = StopScale.nextIsoUp(iso);
        assertTrue(speed * 1.03 >= iso && log2(speed / iso) < 1 / 3.0 + 0.04);
    }

    @Test
    void takesAMarkingAsALimitForItself() {
        assertEquals(4.5, StopScale.nextFNumberUp(4.5));
        assertEquals(11, StopScale.nextFNumberUp(11.3));
        assertEquals(13, StopScale.nextFNumberUp(11.4));
    }

    @Test
    void endsTheApertureScaleAtF45() {
        assertEquals(Double.POSITIVE_INFINITY, StopScale.nextFNumberUp(46));
        assertEquals(45, StopScale.snapFNumber(90));
        assertEquals(1, StopScale.snapFNumber(0.95));
    }

    @Test
    void goesOnBeyondTheShutterScaleByDoublingAndHalving() {
        assertEquals(40, StopScale.snapShutterS(40));
        assertEquals(60, StopScale.snapShutterS(64));
        assertEquals(240, StopScale.snapShutterS(256));
        assertEquals(1 / 10_000.0, StopScale.snapShutterS(1 / 10_000.0), 1e-12);
        assertEquals(1 / 16_000.0, StopScale.snapShutterS(1 / 16_384.0), 1e-12);
    }

    @Test
    void keepsIsoWithinItsScale() {
        assertEquals(25, StopScale.nextIsoUp(3));
        assertEquals(50, StopScale.nextIsoUp(50));
        assertEquals(102_400, StopScale.nextIsoUp(1e9));
    }

    private static double log2(double value) {
        return Math.log(value) / Math.log(2);
    }
}
