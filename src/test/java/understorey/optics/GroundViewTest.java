package understorey.optics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GroundViewTest {

    private static final AngleOfView FIFTY = AngleOfView.of(50, 36, 24);

    private static GroundView view(double heightM, double tiltDeg, double slopeDeg) {
        return new GroundView(heightM, tiltDeg, slopeDeg, FIFTY, 0);
    }

    /** By hand: 1.5 / sin 30° = 3 m; 45° on ground rising by 15° is 60°, 1.5·cos 15° / sin 60° = 1.673 m. */
    @ParameterizedTest
    @CsvSource({"1.5,30,0,3", "1.5,45,15,1.673", "1.5,90,0,1.5", "1.5,90,30,1.5"})
    void findsTheGroundOnTheLensAxis(double heightM, double tiltDeg, double slopeDeg, double distanceM) {
        assertEquals(distanceM, view(heightM, tiltDeg, slopeDeg).distanceM(0), 0.0005);
    }

    /** The bottom edge of a 50 mm lens lies 13.5° below its axis: 1.5 / sin 36.5° at a tilt of 23°. */
    @Test
    void findsTheGroundOnTheBottomEdge() {
        GroundView view = view(1.5, 23, 0);
        assertEquals(-0.24, view.lowestRow(), 1e-12);
        assertEquals(1.5 / Math.sin(Math.toRadians(23) + Math.atan(0.24)), view.distanceM(view.lowestRow()), 1e-9);
    }

    @Test
    void takesACameraTiltedPastTheUprightAsItsMirrorImage() {
        assertEquals(70, view(1.5, 90, 20).axisDeg(), 1e-12);
        assertEquals(-70, view(1.5, -90, -20).axisDeg(), 1e-12);
    }

    /**
     * The horizon stays where it is in the frame: 10° over 13.5° of half a 50 mm frame is tan 10° / 0.24 = 0.7347 of
     * its half height, for 200 mm atan(0.7347 × 0.06) = 2.524°, for 24 mm 20.17°.
     */
    @ParameterizedTest
    @CsvSource({"50,10", "200,2.524", "24,20.17"})
    void aimsAnotherLensWithTheHorizonAtTheSameHeightInTheFrame(double focalMm, double tiltDeg) {
        assertEquals(tiltDeg, view(1.5, 10, 0).through(AngleOfView.of(focalMm, 36, 24), 0).tiltDeg(), 0.005);
        assertEquals(tiltDeg - 5, view(1.5, 5, 5).through(AngleOfView.of(focalMm, 36, 24), 0).tiltDeg(), 0.005);
    }

    /** Framed width on the bottom edge: depth along the axis times the frame's width over the focal length. */
    @ParameterizedTest
    @ValueSource(doubles = {28, 35, 85, 135, 200, 400})
    void keepsTheNearestFlowersAsLargeInTheFrame(double focalMm) {
        GroundView planned = view(1.5, 8, 0);
        GroundView other = planned.through(AngleOfView.of(focalMm, 36, 24), 0);
        double plannedM = planned.distanceM(-0.24) * Math.cos(Math.atan(0.24)) * 36 / 50;
        double edge = 12 / focalMm;
        double otherM = other.distanceM(-edge) * Math.cos(Math.atan(edge)) * 36 / focalMm;
        assertEquals(plannedM, otherM, 0.04 * plannedM);
    }

    @Test
    void comesBackToThePlannedAimThroughThePlannedLens() {
        for (double[] aim : new double[][]{{23, 0}, {-10, 0}, {80, 30}, {90, 0}, {5, -20}}) {
            assertEquals(aim[0], view(1.5, aim[0], aim[1]).through(FIFTY, 0).tiltDeg(), 1e-9);
        }
    }

    @Test
    void laysTheAxisAlongTheGround() {
        assertEquals(0, view(1.5, 20, 12).along(0.4).axisDeg(), 1e-12);
        assertEquals(0.4, view(1.5, 20, 12).along(0.4).heightM(), 0);
    }

    @ParameterizedTest
    @CsvSource({"0,0,0,0", "1,91,0,0", "1,0,-91,0", "1,0,0,-1", "NaN,0,0,0", "1,NaN,0,0"})
    void refusesWhatIsNoView(double heightM, double tiltDeg, double slopeDeg, double closestM) {
        assertThrows(IllegalArgumentException.class,
                () -> new GroundView(heightM, tiltDeg, slopeDeg, FIFTY, closestM));
    }
}
