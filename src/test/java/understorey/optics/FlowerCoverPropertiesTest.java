package understorey.optics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** What must hold whatever the camera, the ground and the flowers. */
class FlowerCoverPropertiesTest {

    private static final double ROUNDING = 1e-9;

    @Provide
    Arbitrary<GroundView> views() {
        return Combinators.combine(Arbitraries.doubles().between(0.01, 30), Arbitraries.doubles().between(-90, 90),
                Arbitraries.doubles().between(-90, 90), Arbitraries.doubles().between(6, 800),
                Arbitraries.oneOf(Arbitraries.just(0.0), Arbitraries.doubles().between(0, 3))).as((height, tilt, slope, focal, closest) ->
                new GroundView(height, tilt, slope, AngleOfView.of(focal, 36, 24), closest));
    }

    @Provide
    Arbitrary<FlowerLayer> layers() {
        return Combinators.combine(Arbitraries.doubles().between(0.01, 3), Arbitraries.doubles().between(0, 8))
                .as(FlowerLayer::of);
    }

    @Property(tries = 3000)
    void everyShareIsAShare(@ForAll("views") GroundView view, @ForAll("layers") FlowerLayer layer) {
        FlowerCover cover = FlowerCover.of(view, layer);
        for (double share : new double[]{cover.cover(), cover.near(), cover.middle(), cover.far(), cover.ground(),
            cover.flowers()}) {
            assertTrue(share >= 0 && share <= 1 + ROUNDING, cover::toString);
        }
        assertTrue(cover.nearestM() > 0 && cover.nearestM() <= cover.farthestM(), cover::toString);
        assertFalse(Double.isNaN(cover.depthM()));
        if (view.aboveM() >= layer.headsM() * view.cosSlope() && view.closestM() == 0) {
            assertTrue(cover.flowers() >= cover.cover() * cover.ground() - ROUNDING);
        }
    }

    @Property
    void seesNoGroundAboveTheHorizon(@ForAll @DoubleRange(min = 0.01, max = 30) double heightM,
                                     @ForAll @DoubleRange(min = 0, max = 60) double up,
                                     @ForAll @DoubleRange(min = 20, max = 800) double focalMm) {
        AngleOfView angle = AngleOfView.of(focalMm, 36, 24);
        double tiltDeg = Math.max(-90, -angle.verticalDeg() / 2 - up);
        FlowerCover cover = FlowerCover.of(new GroundView(heightM, tiltDeg, 0, angle, 0.3), FlowerLayer.of(0.3, 1));
        assertEquals(0, cover.ground(), 0);
        assertEquals(0, cover.cover(), 0);
    }

    @Property(tries = 2000)
    void moreFlowersNeverCoverLess(@ForAll("views") GroundView view, @ForAll("layers") FlowerLayer layer,
                                   @ForAll @DoubleRange(min = 0, max = 2) double more) {
        FlowerCover few = FlowerCover.of(view, layer);
        FlowerCover many = FlowerCover.of(view, FlowerLayer.of(layer.headsM(), layer.areaIndex() + more));
        assertTrue(many.cover() >= few.cover() - ROUNDING);
        assertTrue(many.flowers() >= few.flowers() - ROUNDING);
    }

    /** A frame full of ground: every row then looks flatter. */
    @Property(tries = 2000)
    void aFlatterViewNeverCoversLess(@ForAll @DoubleRange(min = 0.05, max = 2) double heightM,
                                     @ForAll @DoubleRange(min = 24, max = 400) double focalMm,
                                     @ForAll @DoubleRange(min = 0, max = 1) double steep,
                                     @ForAll @DoubleRange(min = 0, max = 1) double flat,
                                     @ForAll("layers") FlowerLayer layer) {
        AngleOfView angle = AngleOfView.of(focalMm, 36, 24);
        double half = angle.verticalDeg() / 2;
        double least = half + 3;
        double steepDeg = least + (90 - half - least) * Math.max(steep, flat);
        double flatDeg = least + (90 - half - least) * Math.min(steep, flat);
        FlowerCover down = FlowerCover.of(new GroundView(heightM, steepDeg, 0, angle, 0), layer);
        FlowerCover along = FlowerCover.of(new GroundView(heightM, flatDeg, 0, angle, 0), layer);
        assertTrue(along.cover() >= down.cover() - 0.003, () -> down + " " + along);
    }

    @Property(tries = 2000)
    void groundThatRisesAheadThinsTheCover(@ForAll @DoubleRange(min = 0.5, max = 2) double heightM,
                                           @ForAll @DoubleRange(min = 24, max = 400) double focalMm,
                                           @ForAll @DoubleRange(min = 0.01, max = 0.6) double areaIndex,
                                           @ForAll @DoubleRange(min = 1, max = 25) double slopeDeg) {
        AngleOfView angle = AngleOfView.of(focalMm, 36, 24);
        double tiltDeg = angle.verticalDeg() / 2 + 3;
        FlowerLayer layer = FlowerLayer.of(0.3, areaIndex);
        double level = FlowerCover.of(new GroundView(heightM, tiltDeg, 0, angle, 0), layer).cover();
        double rising = FlowerCover.of(new GroundView(heightM, tiltDeg, slopeDeg, angle, 0), layer).cover();
        assertTrue(rising < level);
    }

    /** At one stand and one tilt a longer lens sees a part of what a shorter one sees. */
    @Property(tries = 2000)
    void aLongerLensFromOnePlaceNeverTakesInMoreGround(@ForAll("views") GroundView view,
                                                       @ForAll @DoubleRange(min = 1, max = 10) double longer) {
        AngleOfView angle = view.angle();
        double focalMm = 12 / Math.tan(Math.toRadians(angle.verticalDeg() / 2)) * longer;
        GroundView narrow = new GroundView(view.heightM(), view.tiltDeg(), view.slopeDeg(),
                AngleOfView.of(focalMm, 36, 24), view.closestM());
        FlowerLayer layer = FlowerLayer.of(0.3, 0.1);
        assertTrue(FlowerCover.of(narrow, layer).depthM() <= FlowerCover.of(view, layer).depthM() + 1e-6);
    }
}
