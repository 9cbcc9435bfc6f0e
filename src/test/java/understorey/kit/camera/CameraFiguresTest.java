package understorey.kit.camera;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.plan.Sensor;

class CameraFiguresTest {

    /** B. Claff, Angle of View Values for Common Focal Lengths, 2006: 24 mm 73.7° wide; 70 mm from the formula. */
    @Test
    void tellsWhatAZoomTakesInAtItsEnds() {
        CameraFigures figures = CameraFigures.of(Samples.bag(Samples.fullFrame(24), Samples.ZOOM)).get(0);
        assertEquals(73.7, figures.widestViewDeg(), 0.1);
        assertEquals(2 * Math.toDegrees(Math.atan(18 / 70.0)), figures.narrowestViewDeg(), 1e-9);
        assertEquals(24, figures.shortestEquivalentMm(), 1e-9);
        assertEquals(70, figures.longestEquivalentMm(), 1e-9);
        assertEquals(0.3, figures.magnification());
    }

    @Test
    void countsTheSensorIn() {
        CameraFigures figures = CameraFigures
                .of(Samples.bag(Samples.body("Small body", Sensor.FOUR_THIRDS, 20), Samples.prime(25))).get(0);
        assertEquals(50, figures.longestEquivalentMm(), 0.05);
    }

    @Test
    void leavesAttachmentsOut() {
        List<CameraFigures> figures = CameraFigures.of(
                Samples.with(Samples.bag(Samples.fullFrame(24), Samples.ZOOM), Samples.tube(12)));
        assertEquals(1, figures.size());
    }
}
