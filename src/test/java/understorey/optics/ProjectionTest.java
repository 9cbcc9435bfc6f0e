package understorey.optics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class ProjectionTest {

    private static final AngleOfView SQUARE = new AngleOfView(90, 90, 109.47);

    /** B. Claff, Angle of View Values for Common Focal Lengths, 2006: printed to 0.1°, hence 0.05° on either side. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/angle-of-view.csv")
    void putsHalfThePublishedAngleOnTheEdge(double focalMm, double widthMm, double heightMm, double horizontalDeg,
                                            double verticalDeg) {
        Projection camera = Projection.of(100, 0, AngleOfView.of(focalMm, widthMm, heightMm));
        double perDegree = 1 / Math.min(horizontalDeg, verticalDeg) * 4;
        assertPlace(1, 0, camera.place(100 + horizontalDeg / 2, 0), 0.1 * perDegree);
        assertPlace(-1, 0, camera.place(100 - horizontalDeg / 2, 0), 0.1 * perDegree);
        assertPlace(0, 1, camera.place(100, verticalDeg / 2), 0.1 * perDegree);
        assertPlace(0, -1, camera.place(100, -verticalDeg / 2), 0.1 * perDegree);
    }

    /** By hand: with half angles of 45° the edges lie one distance out. */
    @Test
    void fallsWhereTiltedCasesWorkedByHandSay() {
        Projection down = Projection.of(0, 45, SQUARE);
        assertPlace(0, 0, down.place(0, -45), 1e-12);
        assertPlace(0, 1, down.place(0, 0), 1e-12);
        assertPlace(0, -1, down.place(123, -90), 1e-12);
        assertPlace(Math.sqrt(2), 1, down.place(45, 0), 1e-12);
        assertPlace(-Math.sqrt(2), 1, down.place(-45, 0), 1e-12);
        Projection up = Projection.of(90, -45, SQUARE);
        assertPlace(0, -1, up.place(90, 0), 1e-12);
        assertPlace(0, 1, up.place(0, 90), 1e-12);
        Projection straightDown = Projection.of(90, 90, SQUARE);
        assertPlace(0, 1, straightDown.place(90, -45), 1e-12);
        assertPlace(1, 0, straightDown.place(180, -45), 1e-12);
    }

    /** Geometry: the horizon lies tan(tilt) above the axis at a distance of one, and is a level line. */
    @Test
    void showsTheLevelHorizonAsALevelLineAboveATiltedAxis() {
        AngleOfView view = AngleOfView.of(24, 36, 24);
        Projection camera = Projection.of(200, 12, view);
        double y = Math.tan(Math.toRadians(12)) / (12 / 24.0);
        for (double bearing = 150; bearing <= 250; bearing += 5) {
            assertEquals(y, camera.place(bearing, 0).y(), 1e-12);
        }
        assertEquals(0, Projection.of(200, 0, view).place(230, 0).y(), 1e-12);
        assertTrue(Projection.of(200, -12, view).place(200, 0).y() < 0);
    }

    @Test
    void hasNoPlaceForWhatLiesBehind() {
        Projection camera = Projection.of(10, 0, SQUARE);
        assertNull(camera.place(190, 0));
        assertNull(camera.place(100, 0));
        assertNull(camera.place(100, 30));
        assertNotNull(camera.place(99.9, 0));
        assertEquals(180, camera.axis().angleDeg(new Direction(190, 0)), 1e-9);
        // The corners reach furthest back: their directions make an angle of atan √2 with the axis.
        assertEquals(180 - Math.toDegrees(Math.atan(Math.sqrt(2))), camera.offFrameDeg(190, 0), 1e-9);
    }

    /** By hand: 45° to the edge; the corner of a square frame lies at (1, 1, 1). */
    @Test
    void measuresInSpaceToTheNearestEdgeOrCorner() {
        Projection camera = Projection.of(0, 0, SQUARE);
        assertEquals(0, camera.offFrameDeg(44, 10), 0);
        assertEquals(15, camera.offFrameDeg(60, 0), 1e-9);
        assertEquals(15, camera.offFrameDeg(-60, 0), 1e-9);
        assertEquals(25, camera.offFrameDeg(0, 70), 1e-9);
        assertEquals(45, camera.offFrameDeg(0, -90), 1e-9);
        double half = Math.sqrt(0.5);
        double cosine = (half * Math.sin(Math.toRadians(100)) + half + half * Math.cos(Math.toRadians(100))) / Math.sqrt(3);
        assertEquals(Math.toDegrees(Math.acos(cosine)), camera.offFrameDeg(100, 45), 1e-9);
    }

    @Property
    void leavesTheFrameByTheShortestWay(@ForAll @DoubleRange(min = 0, max = 360) double bearingDeg,
            @ForAll @DoubleRange(min = -90, max = 90) double altitudeDeg,
            @ForAll @DoubleRange(min = -90, max = 90) double tiltDeg) {
        Projection camera = Projection.of(77, tiltDeg, AngleOfView.of(28, 36, 24));
        Projection.Place place = camera.place(bearingDeg, altitudeDeg);
        double nearest = place != null && place.inFrame() ? 0 : 180;
        Direction from = new Direction(bearingDeg, altitudeDeg);
        for (int i = -200; i <= 200; i++) {
            double along = i / 200.0;
            nearest = Math.min(nearest, Math.min(from.angleDeg(camera.direction(along, 1)), from.angleDeg(camera.direction(along, -1))));
            nearest = Math.min(nearest, Math.min(from.angleDeg(camera.direction(1, along)), from.angleDeg(camera.direction(-1, along))));
        }
        double off = camera.offFrameDeg(bearingDeg, altitudeDeg);
        assertTrue(off <= nearest + 1e-5, off + " against " + nearest);
        assertEquals(nearest, off, 0.17, "the scan steps by a third of a degree");
    }

    @Property
    void putsItsAxisInTheMiddle(@ForAll @DoubleRange(min = 0, max = 360) double facingDeg,
            @ForAll @DoubleRange(min = -90, max = 90) double tiltDeg) {
        Projection camera = Projection.of(facingDeg, tiltDeg, AngleOfView.of(35, 24, 36));
        assertPlace(0, 0, camera.place(facingDeg, -tiltDeg), 1e-9);
        assertEquals(0, camera.axis().angleDeg(new Direction(facingDeg, -tiltDeg)), 1e-9);
        assertEquals(0, camera.offFrameDeg(facingDeg, -tiltDeg), 0);
    }

    @Property
    void seesTheSameWhenAllIsTurned(@ForAll @DoubleRange(min = 0, max = 360) double turnDeg,
            @ForAll @DoubleRange(min = -60, max = 60) double besideDeg,
            @ForAll @DoubleRange(min = -25, max = 25) double altitudeDeg,
            @ForAll @DoubleRange(min = -20, max = 20) double tiltDeg) {
        AngleOfView view = AngleOfView.of(24, 36, 24);
        Projection one = Projection.of(0, tiltDeg, view);
        Projection turned = Projection.of(turnDeg, tiltDeg, view);
        Projection.Place place = one.place(besideDeg, altitudeDeg);
        assertPlace(place.x(), place.y(), turned.place(turnDeg + besideDeg, altitudeDeg), 1e-9);
        assertEquals(one.axis().angleDeg(new Direction(besideDeg, altitudeDeg)), turned.axis().angleDeg(new Direction(turnDeg + besideDeg, altitudeDeg)), 1e-9);
    }

    @Property
    void findsTheWayBackFromAPlace(@ForAll @DoubleRange(min = -2, max = 2) double x,
            @ForAll @DoubleRange(min = -2, max = 2) double y, @ForAll @DoubleRange(min = -90, max = 90) double tiltDeg) {
        Projection camera = Projection.of(300, tiltDeg, AngleOfView.of(20, 36, 24));
        Direction direction = camera.direction(x, y);
        assertTrue(direction.bearingDeg() >= 0 && direction.bearingDeg() < 360);
        assertPlace(x, y, camera.place(direction.bearingDeg(), direction.altitudeDeg()), 1e-6);
    }

    @Test
    void refusesACameraThatCannotBe() {
        assertThrows(IllegalArgumentException.class, () -> Projection.of(0, 91, SQUARE));
        assertThrows(IllegalArgumentException.class, () -> Projection.of(0, Double.NaN, SQUARE));
        assertThrows(IllegalArgumentException.class, () -> Projection.of(0, 0, new AngleOfView(0, 40, 40)));
        assertFalse(new Projection.Place(1.01, 0).inFrame());
    }

    private static void assertPlace(double x, double y, Projection.Place place, double tolerance) {
        assertEquals(x, place.x(), tolerance);
        assertEquals(y, place.y(), tolerance);
    }
}
