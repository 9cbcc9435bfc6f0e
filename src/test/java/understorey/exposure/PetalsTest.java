package understorey.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;

import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.advice.ToneAdvice;
import understorey.plan.Subject;

/** Reflectances by class of colour are from memory; middle grey is 18 %. */
class PetalsTest {

    private static Subject flower(Subject.Reflectance reflectance) {
        Subject plain = Samples.ramsons();
        return new Subject(plain.key(), plain.name(), null, null, false, 4, 6, null, null, 0.2, 0.3, 16.0, 1, null,
                reflectance, null, null, null, null, null);
    }

    /** 0.75 of the light is log2(0.75 / 0.18) = 2.06 stops above grey, 0.12 of it 0.58 below. */
    @Test
    void standWhiteTwoStopsAboveAndBlueHalfAStopBelow() {
        assertEquals(2.06, Petals.stops(Subject.Reflectance.WHITE), 0.01);
        assertEquals(-0.58, Petals.stops(Subject.Reflectance.BLUE_VIOLET), 0.01);
        assertEquals(0, Petals.stops(Subject.Reflectance.GREEN), 0.01);
    }

    @Test
    void aimByTheirColourOrNotAtAll() {
        assertInstanceOf(ToneAdvice.PetalsBright.class, Petals.aim(flower(Subject.Reflectance.WHITE)));
        assertInstanceOf(ToneAdvice.PetalsBright.class, Petals.aim(flower(Subject.Reflectance.PINK)));
        assertInstanceOf(ToneAdvice.PetalsMiddle.class, Petals.aim(flower(Subject.Reflectance.GREEN)));
        assertInstanceOf(ToneAdvice.PetalsDark.class, Petals.aim(flower(Subject.Reflectance.BLUE_VIOLET)));
        assertNull(Petals.aim(flower(null)));
    }

}
