package understorey.kit.camera;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.plan.Filter;
import understorey.plan.Lens;
import understorey.plan.Sensor;

class ReachTest {

    private static final Lens SUPERZOOM = breathing(null);

    private static Lens breathing(Double share) {
        return new Lens("Superzoom", "A", null, 28, 300, 3.5, 6.3, 22.0, 0.5, 0.3, 67.0, 0, 500.0, share);
    }

    private static Reach reach(Lens lens, double focalMm, Filter attachment) {
        return Reach.of(new Camera(Samples.fullFrame(24), lens, Sensor.FULL_FRAME, attachment), focalMm);
    }

    /** Textbook identity of the thin lens: f·(1 + 1/m) before it and f·(1 + m) behind. */
    private static double sensorToSubjectMm(double focalMm, double magnification) {
        return focalMm * (2 + magnification + 1 / magnification);
    }

    /** Identity of the thin lens: at life size the subject lies 2f before the lens and 4f from the sensor. */
    @Test
    void standsTwoFocalLengthsOffAtLifeSize() {
        Lens lens = new Lens("Old macro", "A", null, 50, 50, 2.8, 2.8, null, 0.2, 1.0, null, 0, null);
        Reach reach = reach(lens, 50, null);
        assertEquals(100, reach.nearestMm(), 1e-9);
        assertEquals(50, reach.actingFocalMm(1), 1e-9);
    }

    /** The maker's own pair of figures, 1:1 at 0.28 m from the sensor, must come out as stated. */
    @Test
    void shrinksALensThatFocusesNearerThanFourFocalLengths() {
        Reach reach = reach(Samples.MACRO, 90, null);
        assertEquals(1, reach.greatest(), 1e-12);
        assertEquals(70, reach.actingFocalMm(1), 1e-9);
        assertEquals(280, sensorToSubjectMm(reach.actingFocalMm(1), 1), 1e-9);
        assertEquals(140, reach.nearestMm(), 1e-9);
        assertEquals(90, reach.actingFocalMm(0), 1e-9);
    }

    @Test
    void takesALensOfUnknownMagnificationForAThinOne() {
        Lens lens = new Lens("Plain", "A", null, 50, 50, 2, 2, null, 0.45, null, null, 0, null);
        Reach reach = reach(lens, 50, null);
        assertEquals(450, sensorToSubjectMm(50, reach.greatest()), 1e-9);
    }

    /** The short end owes nothing to the magnification of the long end; the closest distance holds there as well. */
    @Test
    void keepsTheMarkedFocalLengthAtTheShortEndOfALongZoom() {
        Reach reach = reach(SUPERZOOM, 28, null);
        for (double metres : new double[] {0.6, 1, 2, 5, 1000}) {
            assertEquals(28, reach.actingFocalMm(reach.magnificationAt(metres * 1000)), 1e-9);
        }
        assertEquals(500, sensorToSubjectMm(28, reach.greatest()), 1e-9);
    }

    /** Its two figures, 0.3 at 0.5 m from the sensor, come out as stated; from 3.3 m on it is a lens of 300 mm. */
    @Test
    void shortensALongZoomOnlyCloseUp() {
        Reach reach = reach(SUPERZOOM, 300, null);
        assertEquals(0.3, reach.greatest(), 1e-12);
        assertEquals(500, sensorToSubjectMm(reach.actingFocalMm(0.3), 0.3), 1e-9);
        assertEquals(300, reach.actingFocalMm(0.1), 1e-9);
        assertEquals(300 / 9700.0, reach.magnificationAt(10_000), 1e-9);
    }

    @Test
    void losesTheShareThatTheAuthorGives() {
        Reach reach = reach(breathing(0.2), 300, null);
        assertEquals(300, reach.actingFocalMm(0), 1e-9);
        assertEquals(270, reach.actingFocalMm(0.15), 1e-9);
        assertEquals(240, reach.actingFocalMm(0.3), 1e-9);
        assertEquals(300, reach(breathing(0.0), 300, null).actingFocalMm(0.3), 1e-9);
    }

    /** What is set on the ring and what is magnified change together: no figure jumps between two focal lengths. */
    @Property
    void reachesAlikeAtFocalLengthsNextToEachOther(@ForAll @DoubleRange(min = 28, max = 299.9) double focalMm) {
        for (Lens lens : new Lens[] {SUPERZOOM, breathing(0.2)}) {
            Reach reach = reach(lens, focalMm, null);
            Reach next = reach(lens, focalMm + 0.1, null);
            assertEquals(reach.greatest(), next.greatest(), 0.01);
            assertEquals(reach.actingFocalMm(0.02), next.actingFocalMm(0.02), 0.5);
            assertTrue(reach.greatest() <= 0.3 + 1e-12);
        }
    }

    /** A tube of 25 mm on a lens of 50 mm adds half of life size; focused far, that is all there is. */
    @Test
    void addsATubesLengthOverTheFocalLength() {
        Lens lens = new Lens("Plain", "A", null, 50, 50, 2, 2, null, 0.45, 0.15, null, 0, null);
        Reach reach = reach(lens, 50, Samples.tube(25));
        assertEquals(0.65, reach.greatest(), 1e-12);
        assertEquals(0.5, reach.least(), 1e-12);
        assertEquals(150, reach.farthestMm(), 1e-9);
    }

    /** Focused at infinity, a lens with a close-up lens of 2 dioptres sees what lies half a metre off, sharp. */
    @Test
    void seesAtTheCloseUpLensesOwnFocalLengthWhenFocusedFar() {
        Reach reach = reach(Samples.ZOOM, 70, Samples.closeUpLens(72, 2));
        assertEquals(500, reach.farthestMm(), 1e-9);
        assertEquals(0.14, reach.least(), 1e-12);
        assertEquals(1.3 * 1.14 - 1, reach.greatest(), 1e-12);
    }

    @Test
    void seesTheDistanceWithNothingOn() {
        assertEquals(Double.POSITIVE_INFINITY, reach(Samples.ZOOM, 70, null).farthestMm());
    }

    @Property
    void magnifiesWhatItFramedFromThere(@ForAll @DoubleRange(min = 0.01, max = 1) double magnification) {
        Reach reach = reach(Samples.MACRO, 90, null);
        assertEquals(magnification, reach.magnificationAt(reach.distanceMm(magnification)), 1e-9);
    }

    @Property
    void magnifiesMoreTheNearerItStands(@ForAll @DoubleRange(min = 24, max = 70) double focalMm,
                                        @ForAll @DoubleRange(min = 10, max = 10_000) double distanceMm,
                                        @ForAll @DoubleRange(min = 1, max = 1000) double moreMm) {
        for (Filter attachment : new Filter[] {null, Samples.tube(20), Samples.closeUpLens(72, 4)}) {
            Reach reach = reach(Samples.ZOOM, focalMm, attachment);
            double near = reach.magnificationAt(distanceMm);
            double far = reach.magnificationAt(distanceMm + moreMm);
            assertTrue(far <= near + 1e-12);
            assertTrue(near <= reach.greatest() + 1e-12 && far >= reach.least() - 1e-12);
        }
    }
}
