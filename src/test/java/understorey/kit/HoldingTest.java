package understorey.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.BEANBAG;
import static understorey.Samples.LEGS;
import static understorey.Samples.MONOPOD;
import static understorey.Samples.TALL_LEGS;

import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.advice.SupportAdvice;
import understorey.kit.camera.Camera;
import understorey.plan.Bag;
import understorey.plan.Support;
import understorey.plan.Viewpoint;

class HoldingTest {

    private static Holding from(Viewpoint viewpoint, Support... supports) {
        Bag bag = Samples.with(Samples.bag(Samples.fullFrame(24), Samples.ZOOM), supports);
        Camera camera = Camera.of(bag).get(0);
        return Holding.of(bag, bag, camera, Tilt.of(Samples.picture("a").from(viewpoint).intent(), camera, 0.01, 1, 5));
    }

    @Test
    void standsAtEyeHeightOrAsHighAsTheLegsGo() {
        assertEquals(1.5, from(Viewpoint.Stance.STANDING, TALL_LEGS).heightM());
        Support low = new Support("Short legs", Support.Kind.TRIPOD, 0.1, 1.3, null, null);
        assertEquals(1.3, from(Viewpoint.Stance.STANDING, low).heightM());
    }

    @Test
    void goesToTheGroundOrAsLowAsTheLegsGo() {
        assertEquals(0.15, from(Viewpoint.Stance.GROUND, LEGS).heightM());
        Support stiff = new Support("Stiff legs", Support.Kind.TRIPOD, 0.25, 1.5, null, null);
        assertEquals(0.25, from(Viewpoint.Stance.GROUND, stiff).heightM());
    }

    @Test
    void takesABeanbagWhereTheLegsAreTooTall() {
        Holding holding = from(Viewpoint.Stance.GROUND, TALL_LEGS, BEANBAG);
        assertEquals(BEANBAG, holding.support());
        assertEquals(List.of(SupportAdvice.SupportTooTall.class), Samples.kinds(holding.reasons()));
        assertEquals(0.15, holding.heightM());
    }

    @Test
    void keepsToAHeightInFigures() {
        Holding holding = from(new Viewpoint.Height(0.375), TALL_LEGS, BEANBAG);
        assertNull(holding.support());
        assertEquals(0.375, holding.heightM());
        assertEquals(List.of(SupportAdvice.SupportTooTall.class, SupportAdvice.SupportTooShort.class), Samples.kinds(holding.reasons()));
        assertEquals(LEGS, from(new Viewpoint.Height(0.375), BEANBAG, LEGS).support());
    }

    @Test
    void prefersLegsWhateverTheirPlaceInTheBag() {
        assertEquals(LEGS, from(Viewpoint.Stance.STANDING, MONOPOD, LEGS).support());
        assertEquals(MONOPOD, from(Viewpoint.Stance.STANDING, BEANBAG, MONOPOD).support());
    }

    @Test
    void leavesOverloadedLegsAlone() {
        Support frail = new Support("Frail legs", Support.Kind.TRIPOD, 0.1, 1.5, 1.0, 300.0);
        Holding holding = from(Viewpoint.Stance.STANDING, frail);
        assertNull(holding.support());
        assertEquals(1.09, Samples.the(SupportAdvice.SupportOverloaded.class, holding.reasons()).load(), 1e-12);
    }

    @Test
    void saysThatTheBagHoldsNoSupport() {
        assertEquals(List.of(SupportAdvice.NoSupport.class), Samples.kinds(from(Viewpoint.Stance.KNEELING).reasons()));
    }

    @Test
    void isSteadyOnWhatStandsByItself() {
        assertTrue(Holding.steady(LEGS));
        assertTrue(Holding.steady(BEANBAG));
        assertFalse(Holding.steady(MONOPOD));
        assertFalse(Holding.steady(null));
    }
}
