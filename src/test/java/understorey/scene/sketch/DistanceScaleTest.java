package understorey.scene.sketch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.optics.AngleOfView;
import understorey.optics.Projection;
import understorey.plan.Role;
import understorey.plan.Viewpoint;

class DistanceScaleTest {

    private static Setup setup() {
        return Setups.of(Samples.picture("Ground").from(new Viewpoint.Height(1.5)).equivalent(50).tilt(15).sharp(2, 20), null, null, null);
    }

    /** The ground 1.5 m below the lens and d along an axis that is tilted 15° down, by the projection of directions. */
    @Test
    void aTickIsWhereTheGroundOfThatDistanceFalls() {
        Setup setup = setup();
        double focusM = setup.fit().focusM();
        double ahead = (focusM - 1.5 * Math.sin(Math.toRadians(15))) / Math.cos(Math.toRadians(15));
        AngleOfView view = setup.fit().view();
        Projection.Place place = Projection.of(0, 15, view).place(0, -Math.toDegrees(Math.atan2(1.5, ahead)));
        DistanceScale.Tick focus = DistanceScale.of(setup).ticks().stream().filter(DistanceScale.Tick::focus).findFirst().orElseThrow();
        assertEquals((1 - place.y()) / 2, focus.top(), 0.001);
    }

    @Test
    void noTwoDistancesTouchAndFartherOnesAreHigher() {
        DistanceScale scale = DistanceScale.of(setup());
        List<Double> tops = scale.ticks().stream().map(DistanceScale.Tick::top).sorted().toList();
        assertTrue(tops.size() > 1);
        for (int i = 1; i < tops.size(); i++) {
            assertTrue(tops.get(i) - tops.get(i - 1) >= 0.1, tops.toString());
        }
        assertTrue(scale.sharpTop() < scale.sharpFoot());
    }

    @Test
    void aCloseUpHasNone() {
        assertEquals(List.of(), DistanceScale.of(Setups.inTheWood(Samples.picture("Head").role(Role.CLOSING), 0)).ticks());
    }
}
