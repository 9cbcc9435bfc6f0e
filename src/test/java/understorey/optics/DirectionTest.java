package understorey.optics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class DirectionTest {

    /**
     * Reda and Andreas, NREL/TP-560-34302, Table A5.1: the sun at azimuth 194.340241° and zenith angle 50.111622° falls
     * on a surface of slope 30°, turned 10° from south to the east, at an incidence of 25.18700°.
     */
    @Test
    void meetsTheSunAtTheIncidenceOfTheSpaExample() {
        Direction normal = new Direction(180 - 10, 90 - 30);
        assertEquals(25.18700, normal.angleDeg(new Direction(194.340241, 90 - 50.111622)), 1e-4);
    }

    /** By hand. */
    @Test
    void measuresInSpaceAndNotByBearing() {
        assertEquals(90, new Direction(0, 0).angleDeg(new Direction(90, 40)), 1e-12);
        assertEquals(20, new Direction(0, 80).angleDeg(new Direction(180, 80)), 1e-9);
        assertEquals(60, new Direction(30, -20).angleDeg(new Direction(30, 40)), 1e-12);
        assertEquals(180, new Direction(10, 30).angleDeg(new Direction(190, -30)), 1e-12);
        assertEquals(0, new Direction(355, 7).angleDeg(new Direction(-5, 7)), 1e-12);
    }

    /** The spherical law of cosines, which is good except near 0° and 180°. */
    @Property
    void agreesWithTheLawOfCosinesBothWays(@ForAll @DoubleRange(min = -400, max = 400) double bearingDeg,
            @ForAll @DoubleRange(min = -90, max = 90) double altitudeDeg,
            @ForAll @DoubleRange(min = 0, max = 360) double toBearingDeg,
            @ForAll @DoubleRange(min = -90, max = 90) double toAltitudeDeg) {
        Direction one = new Direction(bearingDeg, altitudeDeg);
        Direction other = new Direction(toBearingDeg, toAltitudeDeg);
        double h = Math.toRadians(altitudeDeg);
        double k = Math.toRadians(toAltitudeDeg);
        double cosine = Math.sin(h) * Math.sin(k)
                + Math.cos(h) * Math.cos(k) * Math.cos(Math.toRadians(toBearingDeg - bearingDeg));
        assertEquals(cosine, Math.cos(Math.toRadians(one.angleDeg(other))), 1e-12);
        assertEquals(one.angleDeg(other), other.angleDeg(one), 1e-9);
    }
}
