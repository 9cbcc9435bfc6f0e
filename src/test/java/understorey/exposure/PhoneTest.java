package understorey.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.BEANBAG;
import static understorey.Samples.bag;
import static understorey.Samples.kinds;
import static understorey.Samples.picture;
import static understorey.Samples.released;
import static understorey.Samples.the;
import static understorey.Samples.with;
import static understorey.exposure.Fits.PRIME;
import static understorey.exposure.Fits.fit;
import static understorey.exposure.Fits.viewAt;

import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.advice.Advice;
import understorey.advice.PhoneAdvice;
import understorey.advice.ShutterAdvice;
import understorey.kit.LensFit;
import understorey.plan.Bag;
import understorey.plan.Subject;
import understorey.plan.Viewpoint;

class PhoneTest {

    private static final Bag PHONE = bag(Samples.phone());

    private static List<Advice> advice(Samples.Picture picture, Bag bag) {
        return Fits.settings(fit(picture, bag), 11, 0, 0.0).reasons();
    }

    @Test
    void isToldWhichCameraHowToLockHowToFireAndHowToHold() {
        List<Advice> view = advice(picture("View").equivalent(25), PHONE);
        assertEquals("main", the(PhoneAdvice.PhoneCamera.class, view).camera());
        assertEquals(24, the(PhoneAdvice.PhoneCamera.class, view).equivalent(), 1);
        assertTrue(kinds(view).containsAll(List.of(PhoneAdvice.PhoneLock.class, PhoneAdvice.PhoneBraced.class)));
        assertEquals("wide", the(PhoneAdvice.PhoneCamera.class, advice(picture("Wide").equivalent(14), PHONE)).camera());
        assertTrue(kinds(advice(picture("Low").equivalent(25).from(Viewpoint.Stance.GROUND), PHONE)).contains(PhoneAdvice.PhoneBracedLow.class));
    }

    /** A tap shakes no thousandth of a second. */
    @Test
    void isToldToUseTheTimerWhereATapShakes() {
        LensFit view = fit(picture("View").equivalent(25), PHONE);
        assertFalse(kinds(advice(picture("View").equivalent(25), PHONE)).contains(PhoneAdvice.PhoneTimer.class));
        assertTrue(kinds(Fits.settings(view, 3, 0, 0.0).reasons()).contains(PhoneAdvice.PhoneTimer.class));
    }

    /** Nothing that the bag does not have: no remote release, no bracing where something holds it. */
    @Test
    void isToldNothingThatItsBagHasNot() {
        List<Advice> rested = advice(picture("Low").equivalent(25).from(Viewpoint.Stance.GROUND), with(PHONE, BEANBAG));
        assertFalse(kinds(rested).contains(ShutterAdvice.LetGoByRemote.class));
        assertFalse(kinds(rested).contains(PhoneAdvice.PhoneBracedLow.class));
        LensFit byRemote = fit(picture("View").equivalent(25), released(PHONE));
        assertFalse(kinds(Fits.settings(byRemote, 3, 0, 0.0).reasons()).contains(PhoneAdvice.PhoneTimer.class));
    }

    /**
     * Common practice, no source: white subjects by about a stop and a third, after a meter has made them grey; small ones among leaves
     * down by a third to a stop.
     */
    @Test
    void compensatesFromTheTappedPetals() {
        Conditions even = Fits.wind(11, 0, null);
        assertEquals(1 + 1 / 3.0, Phone.compensationStops(Subject.Reflectance.WHITE, true, even), 0.1);
        assertEquals(0, Phone.compensationStops(Subject.Reflectance.GREEN, true, even), 1e-9);
        assertTrue(Phone.compensationStops(Subject.Reflectance.RED, true, even) < -0.5);
        assertEquals(-0.5, Phone.compensationStops(Subject.Reflectance.WHITE, false, even), 0.2);
        assertEquals(0, Phone.compensationStops(Subject.Reflectance.RED, false, even), 1e-9);
        Conditions flecked = new Conditions(11, 3, 0.0, 0, 0, null, Metering.GROUND, 2);
        assertEquals(-2 + 2.06 - 2 / 3.0, Phone.compensationStops(Subject.Reflectance.WHITE, true, flecked), 0.01);
    }

    @Test
    void keepsACameraFromAPhonesAdvice() {
        List<Advice> camera = Fits.settings(fit(viewAt(8), PRIME), 11, 0, null).reasons();
        assertTrue(camera.stream().noneMatch(PhoneAdvice.class::isInstance));
    }
}
