package understorey.kit.camera;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.MACRO;
import static understorey.Samples.ZOOM;

import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.plan.Bag;
import understorey.plan.Lens;
import understorey.plan.Sensor;

class CameraTest {

    @Test
    void neverPutsALensOnAMountThatIsNotItsOwn() {
        Lens other = new Lens("Other make", "B", null, 50, 50, 2, 2, null, 0.4, null, null, 0, null);
        List<Camera> cameras = Camera.of(Samples.bag(Samples.fullFrame(24), other, ZOOM));
        assertEquals(List.of(ZOOM), cameras.stream().map(Camera::lens).toList());
    }

    @Test
    void givesABuiltInLensTheSensorBehindIt() {
        List<Camera> cameras = Camera.of(Samples.bag(Samples.phone(), ZOOM));
        assertEquals(List.of("main", "wide"), cameras.stream().map(camera -> camera.lens().name()).toList());
        assertEquals(new Sensor(6.4, 4.8), cameras.get(1).sensor());
    }

    @Test
    void triesAttachmentsAfterAllPlainLensesAndOnlyOnThreadsThatTakeThem() {
        Bag bag = Samples.with(Samples.bag(Samples.fullFrame(24), ZOOM, MACRO), Samples.closeUpLens(72, 3),
                Samples.tube(12), Samples.POLARISER);
        List<Camera> cameras = Camera.of(bag);
        assertEquals(5, cameras.size());
        assertNull(cameras.get(0).attachment());
        assertNull(cameras.get(1).attachment());
        assertEquals(List.of("Close-up lens", "Tube 12.0", "Tube 12.0"),
                cameras.subList(2, 5).stream().map(camera -> camera.attachment().name()).toList());
        assertTrue(cameras.stream().noneMatch(camera -> camera.lens() == MACRO && camera.closeUpTimes(90) != 1));
    }

    @Test
    void weighsBodyLensAndAttachment() {
        assertEquals(660 + 430, new Camera(Samples.fullFrame(24), ZOOM, Sensor.FULL_FRAME, null).weightG());
        assertEquals(660 + 430 + 90,
                new Camera(Samples.fullFrame(24), ZOOM, Sensor.FULL_FRAME, Samples.tube(12)).weightG());
        assertEquals(190, Camera.of(Samples.bag(Samples.phone())).get(0).weightG());
    }

    @Test
    void shortensTheFocalLengthByACloseUpLens() {
        Camera camera = new Camera(Samples.fullFrame(24), ZOOM, Sensor.FULL_FRAME, Samples.closeUpLens(72, 10));
        assertEquals(1.5, camera.closeUpTimes(50), 1e-12);
        assertEquals(0, camera.tubeMm());
    }
}
