package understorey.optics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Common practice, no source: the tests hold the count to what it claims, that the frames cover the depth. */
class FocusStackTest {

    /** Worked example: life size, f/5.6, c = 0.03 mm hold 0.672 mm; a fifth overlap leaves steps of 0.5376 mm. */
    @Test
    void stepsByTheDepthWithoutTheOverlap() {
        assertEquals(0.5376, FocusStack.step(Sharpness.closeUpDepthMm(5.6, 0.03, 1), 0.2), 1e-9);
    }

    /** Ten millimetres of that: ceil(9.328 / 0.5376) + 1 = 19; common practice, ceil(10 / 0.5376) + 1, takes 20. */
    @Test
    void countsTheFewestFramesThatHoldTheDepth() {
        assertEquals(19, FocusStack.frames(10, 0.672, 0.2));
    }

    @Test
    void takesOneFrameWhenOneHoldsTheDepth() {
        assertEquals(1, FocusStack.frames(12, 12, 0.3));
        assertEquals(1, FocusStack.frames(3, 12, 0.3));
        assertEquals(2, FocusStack.frames(12.01, 12, 0.3));
    }

    @Test
    void takesNoExtraFrameForAWholeNumberOfSteps() {
        assertEquals(4, FocusStack.frames(0.4, 0.1, 0));
    }

    @Property
    void coversTheDepthAndWouldNotWithAFrameLess(@ForAll @DoubleRange(min = 0.1, max = 50) double depthMm,
                                                 @ForAll @DoubleRange(min = 0.05, max = 5) double oneMm,
                                                 @ForAll @DoubleRange(min = 0, max = 0.6) double overlap) {
        int frames = FocusStack.frames(depthMm, oneMm, overlap);
        double stepMm = FocusStack.step(oneMm, overlap);
        assertTrue(oneMm + (frames - 1) * stepMm >= depthMm - 1e-6);
        assertTrue(frames == 1 || oneMm + (frames - 2) * stepMm < depthMm);
        assertTrue(frames <= Math.ceil(depthMm / stepMm) + 1);
    }

    @Test
    void refusesStepsThatLeadNowhere() {
        assertThrows(IllegalArgumentException.class, () -> FocusStack.frames(10, 0.5, 1));
        assertThrows(IllegalArgumentException.class, () -> FocusStack.frames(10, 0, 0.2));
        assertThrows(IllegalArgumentException.class, () -> FocusStack.frames(Double.POSITIVE_INFINITY, 1, 0.2));
    }
}
