package understorey.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
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

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/petal-margins.csv")
    void stayUnderClippingByTheMarginsOfTheTable(double reflectance, double stops, double onGrey, double onLeaves) {
        assertEquals(stops, Tones.aboveMidGrey(reflectance), 0.006);
        assertEquals(onGrey, Petals.marginStops(reflectance, 0.18), 0.006);
        assertEquals(onLeaves, Petals.marginStops(reflectance, 0.09), 0.006);
    }

    /** By the table white petals (0.75) clip by 0.08 of a stop when leaves are metered, and yellow ones (0.50) keep half a stop. */
    @Test
    void clipWhereLeavesAreMeteredIfTheyAreWhite() {
        ToneAdvice.PetalsClip white = assertInstanceOf(ToneAdvice.PetalsClip.class, Petals.aim(flower(Subject.Reflectance.WHITE)));
        assertEquals(0.08 + 1 / 3.0, white.less(), 0.006);
        assertInstanceOf(ToneAdvice.PetalsBright.class, Petals.aim(flower(Subject.Reflectance.YELLOW)));
    }

    @Test
    void aimByTheirColourOrNotAtAll() {
        assertInstanceOf(ToneAdvice.PetalsBright.class, Petals.aim(flower(Subject.Reflectance.PINK)));
        assertInstanceOf(ToneAdvice.PetalsMiddle.class, Petals.aim(flower(Subject.Reflectance.GREEN)));
        assertInstanceOf(ToneAdvice.PetalsDark.class, Petals.aim(flower(Subject.Reflectance.BLUE_VIOLET)));
        assertNull(Petals.aim(flower(null)));
    }

}
