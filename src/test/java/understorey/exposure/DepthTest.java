package understorey.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.LEGS;
import static understorey.Samples.kinds;
import static understorey.Samples.picture;
import static understorey.Samples.with;
import static understorey.exposure.Fits.PRIME;
import static understorey.exposure.Fits.fit;
import static understorey.exposure.Fits.viewAt;

import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.advice.ApertureAdvice;
import understorey.kit.LensFit;
import understorey.kit.Verdict;

class DepthTest {

    /** Nobody asked for a depth: ISO goes up first, and where that is not enough the lens is opened past the proposal. */
    @Test
    void opensPastADepthThatNobodyAskedFor() {
        LensFit left = fit(picture("Dusk floor").equivalent(50), PRIME);
        Settings dusk = Fits.settings(left, 2, 0, null);
        assertEquals(3200, dusk.iso());
        assertTrue(dusk.fNumber() < left.fNumberNeeded(), dusk.fNumber() + " for " + left.fNumberNeeded());
        assertTrue(kinds(dusk.reasons()).contains(ApertureAdvice.ApertureOpenedOn.class));
        LensFit asked = fit(viewAt(8), PRIME);
        assertTrue(Fits.settings(asked, 2, 0, null).fNumber() >= asked.fNumberNeeded());
    }

    @Test
    void cannotHoldAHopelesslyDeepViewInOneFrame() {
        Samples.Picture deep = picture("Deep").equivalent(50).sharp(0.6, Double.POSITIVE_INFINITY);
        assertEquals(Verdict.CANNOT, Fits.settings(fit(deep, PRIME), 12, 0, null).verdict());
        Settings stacked = Fits.settings(fit(deep, with(PRIME, LEGS)), 12, 0, null);
        assertTrue(stacked.stackFrames() > 1 && stacked.verdict() != Verdict.CANNOT, () -> stacked.stackFrames() + " frames");
    }
}
