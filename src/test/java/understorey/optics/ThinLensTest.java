package understorey.optics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class ThinLensTest {

    /** US Army course SS0512: bellows of 18 in behind a 12 in lens, so v/f = 1.5 and m = v/f - 1 = 0.5. */
    @Test
    void magnifiesByTheExtensionOverTheFocalLength() {
        double subjectIn = 1 / (1 / 12.0 - 1 / 18.0);
        assertEquals(0.5, ThinLens.magnification(12, subjectIn), 1e-12);
    }

    /** Conjugates at unit magnification lie 2f before and 2f behind: textbook identity. */
    @Test
    void standsFourFocalLengthsFromTheSensorAtLifeSize() {
        assertEquals(200, ThinLens.subjectMm(100, 1), 1e-12);
        assertEquals(1, ThinLens.magnificationAtSensorDistance(100, 400), 1e-12);
    }

    @Test
    void hasNoMagnificationNearerThanFourFocalLengths() {
        assertTrue(Double.isNaN(ThinLens.magnificationAtSensorDistance(90, 280)));
    }

    /** At life size the thin lens is a quarter of the distance: a maker's 0.28 m at 1:1 is 70 mm, not 90 mm. */
    @Test
    void tellsWhatAnInnerFocusingLensHasShrunkTo() {
        assertEquals(70, ThinLens.focalMmAtSensorDistance(1, 280), 1e-12);
    }

    @Test
    void magnifiesNothingAtInfinity() {
        assertEquals(0, ThinLens.magnification(50, Double.POSITIVE_INFINITY));
        assertEquals(Double.POSITIVE_INFINITY, ThinLens.subjectMm(50, 0));
        assertEquals(0, ThinLens.magnificationAtSensorDistance(50, Double.POSITIVE_INFINITY));
    }

    @Property
    void findsBackEveryMagnification(@ForAll @DoubleRange(min = 2, max = 800) double focalMm,
                                     @ForAll @Scale(4) @DoubleRange(min = 0.0001, max = 0.99) double magnification) {
        double subjectMm = ThinLens.subjectMm(focalMm, magnification);
        double sensorMm = subjectMm + focalMm * (1 + magnification);
        double close = magnification * 1e-6;
        assertEquals(magnification, ThinLens.magnification(focalMm, subjectMm), close);
        assertEquals(magnification, ThinLens.magnificationAtSensorDistance(focalMm, sensorMm), close);
        assertEquals(focalMm, ThinLens.focalMmFor(magnification, subjectMm), focalMm * 1e-9);
        assertEquals(focalMm, ThinLens.focalMmAtSensorDistance(magnification, sensorMm), focalMm * 1e-9);
    }
}
