package understorey.optics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows worked by hand, and the average against one taken point by point. */
class FlowerCoverTest {

    /** So narrow that the whole frame is one look. */
    private static final AngleOfView ONE_LOOK = new AngleOfView(0.02, 0.02, 0.03);
    private static final FlowerLayer THIN = FlowerLayer.of(0.3, 0.1);

    private static GroundView view(double heightM, double tiltDeg, double slopeDeg, double focalMm) {
        return new GroundView(heightM, tiltDeg, slopeDeg, AngleOfView.of(focalMm, 36, 24), 0.3);
    }

    private static GroundView look(double heightM, double tiltDeg, double slopeDeg, double closestM) {
        return new GroundView(heightM, tiltDeg, slopeDeg, ONE_LOOK, closestM);
    }

    /**
     * 1 − exp(−0.05 / sin 30°) = 0.0952 from above and from among the heads. From 0.15 m the look passes half of the
     * heads of 0.3 m before the ground: 0.15 / sin 30° = 0.3 m of 0.6 m, so 1 − exp(−0.05) = 0.0488 are seen there; focused
     * no nearer than 0.2 m it has 0.1 m left, 1 − exp(−0.05 / 0.3 × 0.1) = 0.0165. On ground that rises by 15° a tilt of
     * 15° runs in at 30° as well.
     */
    @ParameterizedTest
    @CsvSource({"1.5,30,0,0,0.09516,0.09516", "0.31,30,0,0,0.09516,0.09516", "0.3,30,0,0,0.09516,0.09516",
        "0.15,30,0,0,0.09516,0.04877", "0.15,30,0,0.2,0.09516,0.01653", "1.5,15,15,0,0.09516,0.09516",
        "1.5,45,-15,0,0.09516,0.09516", "1.5,90,0,0,0.04877,0.04877", "1.5,90,60,0,0.09516,0.09516"})
    void coversWhatOneLookMeetsOnItsWayThroughTheLayer(double heightM, double tiltDeg, double slopeDeg,
                                                       double closestM, double cover, double flowers) {
        FlowerCover one = FlowerCover.of(look(heightM, tiltDeg, slopeDeg, closestM), THIN);
        assertEquals(cover, one.cover(), 2e-4);
        assertEquals(flowers, one.flowers(), 2e-4);
        assertEquals(1, one.ground(), 1e-9);
    }

    /**
     * Nilson 1971 (from memory): exp(−G·A / sin ε) is bare wherever the camera is, also among the heads. The table gives A,
     * ε and the bare share for spherical angles.
     */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/flower-layer.csv")
    void coversAsThePublishedGapFractionFromAnyHeight(double areaIndex, double grazingDeg, double bare) {
        for (double heightM : new double[] {1.5, 0.5, 0.3, 0.15, 0.05}) {
            FlowerCover one = FlowerCover.of(look(heightM, grazingDeg, 0, 0), FlowerLayer.of(0.3, areaIndex));
            assertEquals(1 - bare, one.cover(), 2e-4);
        }
    }

    /** Aimed alike, with the horizon on the upper third; heads and flower areas of the catalogue, from thin to thick. */
    @ParameterizedTest
    @CsvSource({"0.375,0.08848", "0.375,0.2765", "0.3,0.17136", "0.15,0.01979", "0.7,0.63", "1.2,0.1"})
    void neverThinsTheCarpetForALowerCamera(double headsM, double areaIndex) {
        for (double focalMm : new double[] {14, 24, 50, 200}) {
            double tiltDeg = Math.toDegrees(Math.atan(4 / focalMm));
            double before = 0;
            for (double heightM = 2; heightM > 0.05; heightM *= 0.95) {
                double cover = FlowerCover.of(view(heightM, tiltDeg, 0, focalMm), FlowerLayer.of(headsM, areaIndex)).cover();
                assertTrue(cover >= before - 1e-4, heightM + " m at " + focalMm + " mm: " + before + ", then " + cover);
                before = cover;
            }
        }
    }

    /** On a bank of 20° rising away the lens stands 1.5·cos 20° = 1.4095 m off the ground, so 2.819 m away at 30°. */
    @Test
    void measuresHeightsPlumbAndDistancesToTheBank() {
        FlowerCover one = FlowerCover.of(look(1.5, 10, 20, 0), THIN);
        assertEquals(2.819, one.nearestM(), 0.002);
        assertEquals(2.819, one.farthestM(), 0.002);
    }

    /**
     * From among heads of 0.3 m, 0.1 m up: level, all the way to 60 m, 1 − exp(−0.05 / 0.3 × 60) = 0.99995; up at 30°
     * until 0.2 m higher, 0.4 m of way, 1 − exp(−0.0667) = 0.0645; neither meets the ground.
     */
    @ParameterizedTest
    @CsvSource({"0,0.99995", "-30,0.06449"})
    void passesFlowersOnTheWayUpAndOutOfTheLayer(double tiltDeg, double flowers) {
        FlowerCover one = FlowerCover.of(look(0.1, tiltDeg, 0, 0), THIN);
        assertEquals(flowers, one.flowers(), 2e-4);
        assertEquals(0, one.ground(), 0);
        assertEquals(0, one.cover(), 0);
        assertEquals(0, one.depthM(), 0);
        assertEquals(Double.POSITIVE_INFINITY, one.nearestM());
    }

    @Test
    void showsNeitherGroundNorFlowersAboveTheHorizonFromOverTheHeads() {
        FlowerCover up = FlowerCover.of(view(1.5, -20, 0, 50), THIN);
        assertEquals(0, up.ground(), 0);
        assertEquals(0, up.flowers(), 0);
        assertEquals(0, FlowerCover.of(view(1.5, 10, -40, 50), THIN).ground(), 0);
    }

    /** Level from 1.5 m: the upper half is no ground, nor is what lies past 60 m, 0.025 of 0.24 in the lower. */
    @Test
    void countsAsGroundWhatLiesNearerThanTheFlowersGoOn() {
        FlowerCover level = FlowerCover.of(view(1.5, 0, 0, 50), THIN);
        assertEquals((0.24 - 0.025) / 0.48, level.ground(), 1e-9);
        assertEquals(1.5 / Math.sin(Math.atan(0.24)), level.nearestM(), 1e-9);
        assertEquals(Math.hypot(60, 1.5), level.farthestM(), 1e-9);
        assertTrue(level.near() < level.middle() && level.middle() < level.far());
        assertEquals((level.near() + level.middle() + level.far()) / 3, level.cover(), 1e-12);
    }

    /** Straight down a frame reaches as far behind the foot of the camera as before it. */
    @Test
    void looksStraightDownAtTheGroundRoundItsFoot() {
        FlowerCover down = FlowerCover.of(view(1.5, 90, 0, 24), THIN);
        assertEquals(1, down.ground(), 1e-12);
        assertEquals(down.near(), down.far(), 1e-9);
        assertEquals(1.5, down.nearestM(), 1e-9);
        assertEquals(1.5 * Math.sqrt(1.25), down.farthestM(), 1e-9);
    }

    @Test
    void leavesOutTheGroundThatTheLensDoesNotFocusOn() {
        AngleOfView wide = AngleOfView.of(20, 36, 24);
        FlowerCover near = FlowerCover.of(new GroundView(0.15, 10, 0, wide, 0.05), THIN);
        FlowerCover far = FlowerCover.of(new GroundView(0.15, 10, 0, wide, 0.5), THIN);
        assertTrue(far.nearestM() > 0.5 && near.nearestM() < 0.3);
        assertTrue(far.ground() < near.ground());
        assertEquals(0, FlowerCover.of(new GroundView(1.5, 90, 0, wide, 2), THIN).ground(), 0);
    }

    /** Point by point over 400 rows and 200 columns, each look traced through the layer by itself. */
    @ParameterizedTest
    @CsvSource({"1.5,23,0,50,0.3,0.09", "1.5,8,0,24,0.3,0.6", "1.5,30,0,12,0.2,0.3", "1.5,2,0,200,0.3,0.02",
        "0.15,0,0,20,0.4,0.09", "0.15,5,0,24,0.4,0.3", "0.35,0,0,35,0.3,0.05", "1.2,10,15,28,0.5,0.2",
        "1.2,30,-15,28,0.5,0.2", "1.5,20,0,16,0.2,0.001", "0.1,-5,5,35,1.2,0.1"})
    void averagesOverEveryPointOfTheFrame(double heightM, double tiltDeg, double slopeDeg, double focalMm,
                                          double headsM, double areaIndex) {
        GroundView view = view(heightM, tiltDeg, slopeDeg, focalMm);
        FlowerCover cover = FlowerCover.of(view, FlowerLayer.of(headsM, areaIndex));
        double ground = 0;
        double onGround = 0;
        double flowers = 0;
        for (int i = 0; i < 400; i++) {
            for (int j = 0; j < 200; j++) {
                double up = (2 * (i + 0.5) / 400 - 1) * 12 / focalMm;
                double[] traced = trace(view, headsM, areaIndex, up, (j + 0.5) / 200 * 18 / focalMm);
                ground += traced[0] / 80_000;
                onGround += traced[0] * traced[2] / 80_000;
                flowers += traced[1] / 80_000;
            }
        }
        assertEquals(ground, cover.ground(), 0.003);
        assertEquals(ground == 0 ? 0 : onGround / ground, cover.cover(), 0.003);
        assertEquals(flowers, cover.flowers(), 0.003);
    }

    /**
     * Whether a look meets ground in focus and reach, how much flower it meets, and how much it would meet on its way to
     * the ground through the whole layer; in plumb coordinates.
     */
    private static double[] trace(GroundView view, double headsM, double areaIndex, double up, double side) {
        double tilt = Math.toRadians(view.tiltDeg());
        double slope = Math.toRadians(view.slopeDeg());
        double length = Math.sqrt(1 + up * up + side * side);
        double ahead = (Math.cos(tilt) + up * Math.sin(tilt)) / length;
        double rise = (-Math.sin(tilt) + up * Math.cos(tilt)) / length;
        double overGround = rise - ahead * Math.tan(slope);
        double alongGround = ahead * Math.cos(slope) + rise * Math.sin(slope);
        double out = alongGround > 0 ? FlowerLayer.FAR_M / alongGround : 1e9;
        double in = view.closestM() * length;
        double ground = overGround < 0 ? -view.heightM() / overGround : 1e9;
        boolean shows = ground >= in && ground <= out;
        double heads = (headsM - view.heightM()) / overGround;
        if (overGround < 0) {
            in = Math.max(in, heads);
            out = Math.min(out, ground);
        } else {
            out = view.heightM() >= headsM ? 0 : Math.min(out, heads);
        }
        double way = Math.max(0, out - in);
        double perMetre = 0.5 * areaIndex / (headsM * Math.cos(slope));
        double whole = headsM / Math.max(1e-9, -overGround);
        return new double[]{shows ? 1 : 0, 1 - Math.exp(-perMetre * way), 1 - Math.exp(-perMetre * whole)};
    }
}
