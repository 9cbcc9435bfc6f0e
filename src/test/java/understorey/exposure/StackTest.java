package understorey.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.LEGS;
import static understorey.Samples.MACRO;
import static understorey.Samples.bag;
import static understorey.Samples.fullFrame;
import static understorey.Samples.kinds;
import static understorey.Samples.picture;
import static understorey.Samples.with;
import static understorey.exposure.Fits.PRIME;
import static understorey.exposure.Fits.deepStarOnLegs;
import static understorey.exposure.Fits.fit;
import static understorey.exposure.Fits.wind;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.advice.DepthAdvice;
import understorey.kit.LensFit;
import understorey.kit.Verdict;
import understorey.optics.DepthOfField;

/** Overlap and still air are common practice, no source; the tests hold the frames to what they claim. */
class StackTest {

    /** At life size the disc of f/10.7 fills the circle (2.44 λ N (1 + m), Edmund Optics): f/11 as marked. */
    @Test
    void stacksFramesThatDiffractionLeavesSharp() {
        Settings settings = Exposure.of(deepStarOnLegs(), List.of(), wind(9, 0.0, 0.04));
        assertEquals(11, settings.fNumber());
        Stack stack = settings.stack();
        double oneMm = 2 * 11 * Fits.CIRCLE_MM * 2;
        assertEquals(0.8 * oneMm, stack.stepM() * 1000, oneMm * 0.001);
        assertEquals(1 + Math.ceil((20 - oneMm) / (0.8 * oneMm)), stack.frames());
        assertEquals(stack.frames(), settings.stackFrames());
        assertEquals(0.020, settings.sharpToM() - settings.sharpFromM(), 1e-9);
        assertTrue(kinds(settings.reasons()).contains(DepthAdvice.StackByRail.class), "at life size the ring is at its end");
    }

    /** The focus ring of a lens that goes nearer makes the steps; a lens at its end is moved as a whole. */
    @Test
    void movesTheCameraWhereTheFocusRingEnds() {
        LensFit half = fit(picture("Half life size").wide(0.072).deep(0.02), with(bag(fullFrame(24), MACRO), LEGS));
        Settings byRing = Exposure.of(half, List.of(), wind(9, 0.0, 0.0));
        assertTrue(!byRing.stack().byRail() && kinds(byRing.reasons()).contains(DepthAdvice.Stack.class));
        assertTrue(byRing.stack().firstM() >= half.nearestFocusM());
        Settings byRail = Exposure.of(deepStarOnLegs(), List.of(), wind(9, 0.0, 0.0));
        assertTrue(byRail.stack().byRail());
        assertTrue(byRail.stack().firstM() < deepStarOnLegs().nearestFocusM());
    }

    /** Half of a depth asked may reach behind the lens: nothing is sharp nearer than its front. */
    @Test
    void isSharpFromTheLensAtTheNearest() {
        LensFit deep = fit(picture("Deep").wide(0.07).deep(0.5), with(bag(fullFrame(24), MACRO), LEGS));
        for (Settings settings : List.of(Exposure.of(deep, List.of(), wind(9, 0.0, 0.0)), Exposure.of(deep, List.of(), wind(9, 0.4, 0.9)))) {
            assertTrue(settings.sharpFromM() >= 0, settings.sharpFromM() + " m");
            assertTrue(settings.stack() == null || settings.stack().firstM() >= 0);
        }
    }

    /** Common practice, no source: nobody takes more than some hundred frames of one picture. */
    @Test
    void takesOneFrameWhereAStackWouldBeOfHundreds() {
        LensFit deep = fit(picture("Deep").wide(0.036).deep(2), with(bag(fullFrame(24), MACRO), LEGS));
        Settings settings = Exposure.of(deep, List.of(), wind(9, 0.0, 0.0));
        assertNull(settings.stack());
        assertEquals(Verdict.COMPROMISE, settings.verdict());
        assertTrue(Samples.the(DepthAdvice.OneFrameTooMany.class, settings.reasons()).frames() > 100);
        assertTrue(settings.sharpFromM() > 0 && settings.sharpToM() - settings.sharpFromM() < 0.01);
    }

    @Test
    void takesOneFrameInAGustOrFromTheHand() {
        Settings gusty = Exposure.of(deepStarOnLegs(), List.of(), wind(9, 0.1, 0.5));
        assertEquals(1, gusty.stackFrames());
        assertTrue(kinds(gusty.reasons()).contains(DepthAdvice.OneFrameInWind.class));
        LensFit byHand = fit(picture("Deep").wide(0.036).deep(0.02), bag(fullFrame(24), MACRO));
        Settings held = Exposure.of(byHand, List.of(), wind(9, 0.0, 0.0));
        assertNull(held.stack());
        assertTrue(kinds(held.reasons()).contains(DepthAdvice.OneFrameByHand.class));
        assertTrue(gusty.sharpToM() - gusty.sharpFromM() < 0.01);
    }

    @Test
    void stacksWhenNobodyKnowsTheWind() {
        assertTrue(Fits.settings(deepStarOnLegs(), 9, 0, null).stackFrames() > 1);
    }

    @Test
    void stacksNeitherWhatOneFrameHoldsNorBehindAFixedAperture() {
        assertEquals(1, Exposure.of(Fits.starOnLegs(), List.of(), wind(9, 0.0, 0.0)).stackFrames());
        LensFit phone = fit(picture("a").wide(0.1).deep(0.1), with(bag(Samples.phone()), LEGS));
        Settings settings = Exposure.of(phone, List.of(), wind(9, 0.0, 0.0));
        assertEquals(1, settings.stackFrames());
        assertTrue(!phone.holdsDepth() && !kinds(settings.reasons()).contains(DepthAdvice.OneFrameByHand.class));
    }

    /** Frame after frame the limits of sharpness overlap, from near to far. */
    @Property(tries = 200)
    void holdsAViewWithoutAGap(@ForAll @DoubleRange(min = 0.55, max = 1) double nearM,
                               @ForAll @DoubleRange(min = 1, max = 60) double times) {
        double farM = times > 50 ? Double.POSITIVE_INFINITY : nearM * times;
        LensFit fit = fit(picture("a").equivalent(50).sharp(nearM, farM), with(PRIME, LEGS));
        Stack stack = Exposure.of(fit, List.of(), wind(9, 0.0, 0.0)).stack();
        if (stack == null) {
            assertTrue(fit.holdsDepth());
            return;
        }
        assertTrue(stack.sharpFromM() <= nearM * (1 + 1e-9));
        assertTrue(stack.sharpToM() >= farM * (1 - 1e-9));
        double fNumber = Aperture.ofStack(fit).first();
        DepthOfField before = null;
        for (int i = 0; i < stack.frames(); i++) {
            double share = i / (stack.frames() - 1.0);
            double focusM = 1 / ((1 - share) / stack.firstM() + share / stack.lastM());
            DepthOfField here = fit.depthOfField(fNumber, focusM * 1000);
            assertTrue(before == null || here.nearMm() < before.farMm());
            before = here;
        }
        assertTrue(stack.firstM() < stack.lastM() && stack.stepM() == null);
    }

    @Test
    void stacksNoViewThatBeginsNearerThanTheLensFocuses() {
        LensFit fit = fit(picture("a").equivalent(50).sharp(0.3, 40), with(PRIME, LEGS));
        assertNull(Exposure.of(fit, List.of(), wind(9, 0.0, 0.0)).stack());
    }

    @Property(tries = 200)
    void holdsTheDepthAskedCloseUp(@ForAll @DoubleRange(min = 0.03, max = 0.2) double wideM,
                                   @ForAll @DoubleRange(min = 0.1, max = 0.9) double share) {
        LensFit fit = fit(picture("a").wide(wideM).deep(wideM * share), with(bag(fullFrame(24), MACRO), LEGS));
        Settings settings = Exposure.of(fit, List.of(), wind(9, 0.0, 0.0));
        double heldM = settings.sharpToM() - settings.sharpFromM();
        double aThirdOfAStopAndItsMarking = Math.pow(2, 1 / 4.0);
        assertTrue(heldM * aThirdOfAStopAndItsMarking * 1.01 >= wideM * share, heldM + " of " + wideM * share);
    }
}
