package understorey.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.advice.PolariserAdvice;
import understorey.light.PolariserEffect.Leaves;
import understorey.light.PolariserEffect.Sky;
import understorey.optics.AngleOfView;
import understorey.optics.Polarisation;
import understorey.optics.Projection;
import understorey.sky.SunAt;

class PolariserEffectTest {

    private static final AngleOfView WIDE = AngleOfView.of(20, 36, 24);
    private static final AngleOfView LONG = AngleOfView.of(200, 36, 24);

    private static SunAt sun(double azimuthDeg, double altitudeDeg) {
        return new SunAt(LocalDate.of(2027, 5, 8).atTime(12, 0).atZone(ZoneOffset.UTC), azimuthDeg, altitudeDeg);
    }

    private static PolariserEffect effect(SunAt sun, Projection camera) {
        return PolariserEffect.of(sun, camera, 1.0, 1.5);
    }

    /** AMS Glossary, "atmospheric polarization": strongest about 90° from the sun. */
    @Test
    void darkensMostAtRightAnglesToTheSun() {
        Sky sky = effect(sun(90, 10), Projection.of(180, 0, LONG)).sky();
        assertEquals(90, sky.fromSunDeg(), 1e-9);
        assertEquals(0.8, sky.degree(), 1e-9);
        assertEquals(2.32193, sky.middleStops(), 1e-5);
        assertFalse(sky.uneven());
        assertEquals(List.of(PolariserAdvice.PolariserSky.class, PolariserAdvice.PolariserLeavesFoot.class,
                        PolariserAdvice.PolariserLeavesBest.class, PolariserAdvice.PolariserLoss.class),
                Samples.kinds(effect(sun(90, 10), Projection.of(180, 0, LONG)).reasons()));
    }

    /** At sunrise the band passes through the zenith, at right angles to the sun's bearing: the same glossary. */
    @Test
    void darkensTheZenithAtSunrise() {
        Sky sky = effect(sun(90, 0), Projection.of(0, -90, LONG)).sky();
        assertEquals(90, sky.fromSunDeg(), 0.6);
        assertEquals(2.32193, sky.middleStops(), 0.001);
    }

    /** Half the width of 20 mm on 36 mm is 41.99° (Claff 2006: 84.0°): right angles at the edge, 48° in the middle. */
    @Test
    void leavesABandInAWideSky() {
        double halfDeg = Math.toDegrees(Math.atan(18 / 20.0));
        SunAt low = sun(90 + halfDeg, 0.0);
        PolariserEffect effect = effect(low, Projection.of(180, 0, WIDE));
        double turn = 90 - halfDeg;
        assertEquals(turn, effect.sky().fromSunDeg(), 0.02);
        assertEquals(Polarisation.skyStops(90), effect.sky().rightStops(), 0.001);
        assertEquals(Polarisation.skyStops(turn), effect.sky().middleStops(), 0.02);
        assertEquals(Polarisation.skyStops(turn - halfDeg), effect.sky().leftStops(), 0.02);
        assertTrue(effect.sky().uneven());
        assertEquals(PolariserAdvice.PolariserSkyUneven.class, Samples.kinds(effect.reasons()).get(0));
    }

    @Test
    void doesLittleTowardsTheSunAndAwayFromIt() {
        assertEquals(PolariserAdvice.PolariserSkyLittle.class, Samples.kinds(effect(sun(90, 5), Projection.of(90, 0, LONG)).reasons()).get(0));
        assertEquals(PolariserAdvice.PolariserSkyLittle.class, Samples.kinds(effect(sun(90, 5), Projection.of(270, 0, LONG)).reasons()).get(0));
    }

    /** With the horizon below the frame, its upper edge is the sky that is measured. */
    @Test
    void measuresOnTheHorizonOrElseAlongTheTop() {
        SunAt sun = sun(180, 30);
        double apparentDeg = sun.apparentAltitudeDeg();
        assertEquals(apparentDeg, effect(sun, Projection.of(180, 10, WIDE)).sky().fromSunDeg(), 1e-9);
        double topDeg = 60 + LONG.verticalDeg() / 2;
        assertEquals(topDeg - apparentDeg, effect(sun, Projection.of(180, -60, LONG)).sky().fromSunDeg(), 1e-9);
    }

    /** Half of 6.9° (200 mm, Claff 2006): from a tilt of 3.4° on the horizon is above the frame. */
    @Test
    void findsNoSkyWhereTheCameraLooksDownPastTheHorizon() {
        assertNotNull(effect(sun(90, 10), Projection.of(180, 3.3, LONG)).sky());
        PolariserEffect down = effect(sun(90, 10), Projection.of(180, 3.5, LONG));
        assertNull(down.sky());
        assertEquals(PolariserAdvice.PolariserNoSky.class, Samples.kinds(down.reasons()).get(0));
        assertNull(effect(sun(90, 10), Projection.of(180, 90, WIDE)).sky());
    }

    /** Common practice, no source: nothing to gain above 4 okta, nor after civil twilight. */
    @Test
    void gainsNothingUnderCloudOrAtNight() {
        Projection camera = Projection.of(180, 0, LONG);
        assertNotNull(PolariserEffect.of(sun(90, 10), camera, 4.0, 0).sky());
        assertNotNull(PolariserEffect.of(sun(90, 10), camera, null, 0).sky());
        PolariserEffect cloudy = PolariserEffect.of(sun(90, 10), camera, 4.1, 0);
        assertNull(cloudy.sky());
        assertEquals(PolariserAdvice.PolariserSkyClouded.class, Samples.kinds(cloudy.reasons()).get(0));
        assertFalse(Samples.kinds(cloudy.reasons()).contains(PolariserAdvice.PolariserLoss.class));
        assertNotNull(effect(sun(90, -5.9), camera).sky());
        assertNull(effect(sun(90, -6.1), camera).sky());
    }

    /** IUPAC Gold Book, BT07336: 53.12° from the normal for water, which is 36.88° above the leaf. */
    @Test
    void takesAllTheSheenWhereOneLooksDownAtTheBrewsterAngle() {
        PolariserEffect effect = effect(sun(90, 10), Projection.of(180, 36.88, LONG));
        assertEquals(1, effect.leaves().middleShare(), 1e-5);
        assertFalse(Samples.kinds(effect.reasons()).contains(PolariserAdvice.PolariserLeavesBest.class));
        assertEquals(36.88, Samples.the(PolariserAdvice.PolariserLeavesBest.class,
                effect(sun(90, 10), Projection.of(180, 2, LONG)).reasons()).angle(), 0.01);
    }

    @Test
    void seesNoLeavesFromAboveWhenItLooksUp() {
        assertNull(effect(sun(90, 10), Projection.of(180, -5, LONG)).leaves());
        Leaves level = effect(sun(90, 10), Projection.of(180, 0, WIDE)).leaves();
        assertNull(level.middleShare());
        assertEquals(WIDE.verticalDeg() / 2, level.footGrazingDeg(), 1e-9);
        Leaves down = effect(sun(90, 10), Projection.of(180, 20, LONG)).leaves();
        assertEquals(20, down.middleGrazingDeg(), 1e-9);
        assertTrue(down.footShare() > down.middleShare());
    }

    /** A wide frame may hold the best angle between two that are not: it is not called for then. */
    @Test
    void seesThatTheBestAngleLiesWithinTheFrame() {
        PolariserEffect steep = effect(sun(90, 10), Projection.of(180, 14, new AngleOfView(90, 130, 140)));
        assertTrue(steep.leaves().middleShare() < 0.9 && steep.leaves().footShare() < 0.9);
        assertFalse(Samples.kinds(steep.reasons()).contains(PolariserAdvice.PolariserLeavesBest.class));
    }

    @Property
    void staysWithinItsBoundsWhateverTheCameraSees(@ForAll @DoubleRange(min = 0, max = 360) double azimuthDeg,
            @ForAll @DoubleRange(min = -6, max = 90) double altitudeDeg, @ForAll @DoubleRange(min = -90, max = 90) double tiltDeg) {
        PolariserEffect effect = effect(sun(azimuthDeg, altitudeDeg), Projection.of(45, tiltDeg, WIDE));
        if (effect.sky() != null) {
            Sky sky = effect.sky();
            for (double stops : new double[] {sky.leftStops(), sky.middleStops(), sky.rightStops()}) {
                assertTrue(stops >= 0 && stops <= Polarisation.skyStops(90));
            }
        }
        if (effect.leaves() != null) {
            assertTrue(effect.leaves().footShare() >= 0.5 - 1e-9 && effect.leaves().footShare() <= 1);
        }
        assertTrue(effect.sky() != null || effect.leaves() != null);
    }
}
