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
import org.junit.jupiter.params.provider.ValueSource;

class StopScaleTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/stop-scales.csv")
    void knowsWhatEveryMarkingMeans(String scale, double marking, double exact) {
        double tolerance = exact * 0.003;
        switch (scale) {
            case "f" -> {
                assertEquals(exact, StopScale.exactFNumber(marking), tolerance);
                assertEquals(marking, StopScale.snapFNumber(exact));
                assertEquals(marking, StopScale.snapFNumber(marking));
            }
            case "s" -> {
                assertEquals(exact, StopScale.exactShutterS(marking), tolerance);
                assertEquals(marking, StopScale.snapShutterS(exact));
                assertEquals(marking, StopScale.snapShutterS(marking));
            }
            default -> {
                assertEquals(exact, 1 / StopScale.exactShutterS(1 / marking), tolerance);
                assertEquals(1 / marking, StopScale.snapShutterS(1 / exact));
                assertEquals(1 / marking, StopScale.snapShutterS(1 / marking));
            }
        }
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/apex.csv")
    void marksTheWholeStopsOfApex(String kind, double marking, double value) {
        double exact = kind.equals("Av")
                ? 2 * log2(StopScale.exactFNumber(marking))
                : -log2(StopScale.exactShutterS(1 / marking));
        assertEquals(value, exact, 1e-9);
    }

    /** APEX: Sv is 5 at ISO 100 and 7 at ISO 400, 3.125 x 2^Sv; ISO 12232 preferred values (from memory) between. */
    @ParameterizedTest
    @ValueSource(ints = {100, 125, 160, 200, 250, 320, 400, 500, 640, 800, 1000, 1250, 1600, 2000, 2500, 3200, 4000,
        5000, 6400})
    void marksThePreferredSpeedsByThirds(int iso) {
        double thirds = 3 * log2(iso / 100.0);
        assertEquals(Math.round(thirds), thirds, 3 * 0.04);
        assertEquals(iso, StopScale.snapIso(100 * Math.pow(2, Math.round(thirds) / 3.0)));
        assertEquals(iso, StopScale.nextIsoUp(iso));
    }

    @Property
    void snapsToWithinASixthOfAStopAndItsMarking(@ForAll @Scale(5) @DoubleRange(min = 0.0001, max = 2000) double seconds,
                                                 @ForAll @DoubleRange(min = 1, max = 45) double fNumber,
                                                 @ForAll @DoubleRange(min = 25, max = 100_000) double iso) {
        assertEquals(0, log2(StopScale.snapShutterS(seconds) / seconds), 1 / 6.0 + 0.094);
        assertEquals(0, 2 * log2(StopScale.snapFNumber(fNumber) / fNumber), 1 / 6.0 + 0.14);
        assertEquals(0, log2(StopScale.snapIso(iso) / iso), 1 / 6.0 + 0.04);
    }

    @Property
    void neverOverstepsALimit(@ForAll @Scale(5) @DoubleRange(min = 0.0001, max = 2000) double seconds,
                              @ForAll @DoubleRange(min = 1, max = 45) double fNumber,
                              @ForAll @DoubleRange(min = 25, max = 100_000) double iso) {
        double time = StopScale.nextShutterDownS(seconds);
        assertTrue(Math.min(time, StopScale.exactShutterS(time)) <= seconds * 1.000001);
        assertTrue(log2(seconds / time) < 1 / 3.0 + 0.1, "a longer marking would have done: " + time);
        double stop = StopScale.nextFNumberUp(fNumber);
        assertTrue(Math.max(stop, StopScale.exactFNumber(stop)) >= fNumber * 0.999999);
        assertTrue(2 * log2(stop / fNumber) < 1 / 3.0 + 0.15, "a smaller marking would have done: " + stop);
        int speed = StopScale.nextIsoUp(iso);
        assertTrue(speed * 1.03 >= iso && log2(speed / iso) < 1 / 3.0 + 0.04);
    }

    @Test
    void takesAMarkingAsALimitForItself() {
        assertEquals(4.5, StopScale.nextFNumberUp(4.5));
        assertEquals(11, StopScale.nextFNumberUp(11.3));
        assertEquals(13, StopScale.nextFNumberUp(11.4));
        assertEquals(1 / 125.0, StopScale.nextShutterDownS(1 / 125.0));
        assertEquals(1 / 60.0, StopScale.nextShutterDownS(1 / 60.0));
        assertEquals(1 / 60.0, StopScale.nextShutterDownS(1 / 62.0), "1/60 is exactly 1/64");
        assertEquals(15, StopScale.nextShutterDownS(15));
        assertEquals(13, StopScale.nextShutterDownS(14.9));
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
        assertEquals(25, StopScale.snapIso(3));
        assertEquals(50, StopScale.snapIso(50));
        assertEquals(102_400, StopScale.snapIso(1e9));
        assertEquals(102_400, StopScale.nextIsoUp(1e9));
    }

    private static double log2(double value) {
        return Math.log(value) / Math.log(2);
    }
}
