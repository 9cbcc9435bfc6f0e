package understorey.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import understorey.Samples;
import understorey.advice.DirectionAdvice;
import understorey.light.SunDirection.Part;
import understorey.light.SunDirection.Where;
import understorey.optics.AngleOfView;
import understorey.optics.Projection;
import understorey.plan.Position;
import understorey.sky.SunAt;

/** Sides, flare and thirds are common practice, no source: the rules are held, and the angles against the outside. */
class SunDirectionTest {

    private static final ZonedDateTime NOON = LocalDate.of(2027, 5, 8).atTime(12, 0).atZone(ZoneOffset.UTC);
    private static final AngleOfView WIDE = AngleOfView.of(24, 36, 24);

    private static SunAt sun(double azimuthDeg, double altitudeDeg) {
        return new SunAt(NOON, azimuthDeg, altitudeDeg);
    }

    /** Reda and Andreas, NREL/TP-560-34302, Table A5.1: incidence 25.187° on a slope of 30° turned 10° east of south. */
    @Test
    void standsToTheAxisAsInTheSpaExample() {
        SunAt sun = SunAt.of(new Position(39.742476, -105.1786),
                ZonedDateTime.of(2003, 10, 17, 12, 30, 30, 0, ZoneOffset.ofHours(-7)));
        SunDirection direction = SunDirection.of(sun, Projection.of(170, -60, WIDE));
        assertEquals(25.18700, direction.angleDeg(), 0.02);
        assertEquals(194.340241 - 170, direction.bearingDeg(), 0.02);
        assertEquals(90 - 50.111622, direction.apparentAltitudeDeg(), 0.02);
    }

    @ParameterizedTest
    @CsvSource({"0,10,BACK", "45,10,BACK", "315,10,BACK", "45.1,10,SIDE", "90,10,SIDE", "270,10,SIDE", "134.9,10,SIDE",
        "135,10,FRONT", "225,10,FRONT", "180,10,FRONT", "0,54.9,BACK", "0,55,OVERHEAD", "180,70,OVERHEAD", "90,90,OVERHEAD"})
    void namesTheLightByTheRule(double azimuthDeg, double altitudeDeg, Side side) {
        assertEquals(side, SunDirection.of(sun(azimuthDeg, altitudeDeg), 0).side());
        assertEquals(side, SunDirection.of(sun(azimuthDeg, altitudeDeg), Projection.of(0, 20, WIDE)).side());
    }

    @Test
    void countsBearingsToTheRightAndByTheShortWay() {
        assertEquals(20, SunDirection.of(sun(10, 5), 350).bearingDeg(), 1e-12);
        assertEquals(-20, SunDirection.of(sun(350, 5), 10).bearingDeg(), 1e-12);
        assertEquals(90, SunDirection.of(sun(180, 5), 90).bearingDeg(), 1e-12);
    }

    /** The apparent altitude is 29′ above a true one of zero. */
    @Test
    void isNothingWhileTheSunIsDown() {
        assertNotNull(SunDirection.of(sun(90, -0.6), 90));
        assertNull(SunDirection.of(sun(90, -0.95), 90));
        assertNull(SunDirection.of(sun(90, -20), Projection.of(90, 0, WIDE)));
    }

    /** On 36 × 24 mm a lens of 24 mm sees 73.7° by 53.1° (Claff 2006): a third of the half width is 14.0°. */
    @ParameterizedTest
    @CsvSource({"100,2,MIDDLE", "113,2,MIDDLE", "115,2,RIGHT", "85,2,LEFT", "100,12,TOP", "85,15,TOP_LEFT", "115,15,TOP_RIGHT"})
    void tellsTheThirdOfTheFrame(double azimuthDeg, double altitudeDeg, Part part) {
        SunDirection direction = SunDirection.of(sun(azimuthDeg, altitudeDeg), Projection.of(100, 0, WIDE));
        assertEquals(part, direction.part());
        assertEquals(Where.IN_FRAME, direction.where());
    }

    @ParameterizedTest
    @CsvSource({"85,BOTTOM_LEFT", "100,BOTTOM", "115,BOTTOM_RIGHT"})
    void tellsTheLowerThirdsWhereTheCameraLooksUp(double azimuthDeg, Part part) {
        assertEquals(part, SunDirection.of(sun(azimuthDeg, 2), Projection.of(100, -20, WIDE)).part());
    }

    /** Half of 73.7° is 36.87°: the right edge of a level frame. */
    @Test
    void flaresWithinFifteenDegreesOfTheEdge() {
        Projection camera = Projection.of(100, 0, WIDE);
        assertEquals(Where.IN_FRAME, SunDirection.of(sun(136.8, 0), camera).where());
        assertEquals(Where.JUST_OUTSIDE, SunDirection.of(sun(136.9, 0), camera).where());
        assertEquals(Where.JUST_OUTSIDE, SunDirection.of(sun(151.8, 0), camera).where());
        assertEquals(Where.AWAY, SunDirection.of(sun(151.9, 0), camera).where());
        assertEquals(Where.AWAY, SunDirection.of(sun(280, 0), camera).where());
        assertNull(SunDirection.of(sun(280, 0), camera).part());
        assertNull(SunDirection.of(sun(100, 3), 100).where());
    }

    @Test
    void neitherLightsNorFlaresBehindTheLand() {
        SunDirection direction = SunDirection.of(sun(100, 3), Projection.of(100, 0, WIDE));
        assertEquals(List.of(DirectionAdvice.SunAhead.class, DirectionAdvice.SunInFrame.class), Samples.kinds(direction.reasons(true, true)));
        assertEquals(List.of(DirectionAdvice.SunHiddenByLand.class), Samples.kinds(direction.reasons(false, true)));
        assertEquals(List.of(DirectionAdvice.SunBeside.class, DirectionAdvice.SunNearFrame.class),
                Samples.kinds(SunDirection.of(sun(148, 3), Projection.of(100, 0, WIDE)).reasons(true, true)));
        assertEquals(List.of(DirectionAdvice.SunBehindYou.class), Samples.kinds(SunDirection.of(sun(270, 3), 100).reasons(true, true)));
        assertEquals(List.of(DirectionAdvice.SunOverhead.class), Samples.kinds(SunDirection.of(sun(270, 63), 100).reasons(true, true)));
    }

    @Property
    void dependsOnTheTurnBetweenSunAndAxisAlone(@ForAll @DoubleRange(min = 0, max = 360) double azimuthDeg,
            @ForAll @DoubleRange(min = 0, max = 90) double altitudeDeg,
            @ForAll @DoubleRange(min = 0, max = 360) double facingDeg, @ForAll @DoubleRange(min = -30, max = 90) double tiltDeg) {
        SunDirection one = SunDirection.of(sun(azimuthDeg, altitudeDeg), Projection.of(facingDeg, tiltDeg, WIDE));
        SunDirection turned = SunDirection.of(sun(azimuthDeg + 90, altitudeDeg), Projection.of(facingDeg + 90, tiltDeg, WIDE));
        assertEquals(one.angleDeg(), turned.angleDeg(), 1e-9);
        assertEquals(one.offFrameDeg(), turned.offFrameDeg(), 1e-5);
        assertEquals(Math.abs(one.bearingDeg()), Math.abs(turned.bearingDeg()), 1e-9);
        assertEquals(one.part() != null, one.where() == Where.IN_FRAME);
        assertTrue(one.offFrameDeg() <= one.angleDeg() + 1e-5);
    }
}
