package understorey.kit.camera;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.MACRO;
import static understorey.Samples.POLARISER;
import static understorey.Samples.RING;
import static understorey.Samples.ZOOM;

import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.advice.FitAdvice;
import understorey.advice.HelpAdvice;
import understorey.plan.Filter;
import understorey.plan.Lens;

class PolarisingTest {

    private static final Filter NARROW = new Filter("Narrow polariser", Filter.Kind.POLARISER, 62.0, 1.3, null, null,
            null, null, null);

    private static Polarising on(Lens lens, Filter... filters) {
        return Polarising.of(Samples.with(Samples.bag(Samples.fullFrame(24)), filters), lens, true);
    }

    @Test
    void screwsStraightOntoItsOwnThread() {
        Polarising polarising = on(ZOOM, RING, POLARISER);
        assertEquals(List.of(POLARISER), polarising.filters());
        assertEquals(1.5, polarising.lossStops());
        assertEquals(List.of(FitAdvice.PolariserOn.class), Samples.kinds(polarising.reasons()));
    }

    @Test
    void goesOnByAStepUpRingThatSitsNearestTheLens() {
        Polarising polarising = on(MACRO, POLARISER, RING);
        assertEquals(List.of(RING, POLARISER), polarising.filters());
        assertEquals(List.of(FitAdvice.PolariserByRing.class), Samples.kinds(polarising.reasons()));
        assertFalse(polarising.missing());
    }

    @Test
    void prefersAStraightFitToARing() {
        assertEquals(List.of(NARROW), on(MACRO, POLARISER, RING, NARROW).filters());
    }

    @Test
    void asksForTheRingThatIsMissing() {
        Polarising polarising = on(MACRO, POLARISER);
        assertTrue(polarising.missing());
        assertEquals(0, polarising.lossStops());
        assertEquals(62, Samples.the(HelpAdvice.HelpStepUpRing.class, polarising.reasons()).lens());
        assertEquals(72, Samples.the(HelpAdvice.HelpStepUpRing.class, polarising.reasons()).thread());
    }

    /** No step-up ring brings a small filter onto a wider lens without dark corners. */
    @Test
    void findsNoUseInAPolariserThatIsNarrowerThanTheLens() {
        assertEquals(List.of(FitAdvice.PolariserMissing.class), Samples.kinds(on(ZOOM, NARROW).reasons()));
    }

    @Test
    void findsNoThreadOnAPhone() {
        Lens phone = Samples.phone().fixedLenses().get(0);
        assertEquals(List.of(FitAdvice.PolariserNoThread.class), Samples.kinds(on(phone, POLARISER).reasons()));
    }

    @Test
    void staysInTheBagUnasked() {
        Polarising polarising = Polarising.of(Samples.with(Samples.bag(Samples.fullFrame(24)), POLARISER), ZOOM, false);
        assertTrue(polarising.filters().isEmpty() && polarising.reasons().isEmpty());
        assertFalse(polarising.missing());
    }
}
