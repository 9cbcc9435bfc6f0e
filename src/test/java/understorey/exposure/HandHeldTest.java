package understorey.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Common practice, no source: the tests hold the rule to its own words. */
class HandHeldTest {

    @Test
    void isOneOverTheFullFrameEquivalent() {
        assertEquals(1 / 50.0, HandHeld.longestS(50, 1, 0), 1e-12);
        assertEquals(1 / 75.0, HandHeld.longestS(50, 1.5, 0), 1e-12);
    }

    @Test
    void doublesWithEachStopOfStabilisation() {
        assertEquals(8 / 50.0, HandHeld.longestS(50, 1, 3), 1e-12);
    }
}
