package understorey.light.illuminance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import understorey.plan.Canopy.Trees;
import understorey.plan.Canopy;
import understorey.plan.Edge;

class TrunkSpaceTest {

    private static TrunkSpace beech(Edge... edges) {
        return new TrunkSpace(0.0248, 0.372, 14, 30, List.of(edges));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/trunk-sight-lines.csv")
    void seesBetweenTheTrunks(double stemsPerM2, double diameterM, double lengthM, double share) {
        assertEquals(share, new TrunkSpace(stemsPerM2, diameterM, 14, 30, List.of()).lineOfSight(lengthM), 0.0005);
    }

    /** The last digit of the table is rounded or cut. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/low-sun-depth.csv")
    void lightsTheGroundUnderTheCrownsByTheirBase(double baseM, double altitudeDeg, double depthM) {
        assertEquals(depthM, new TrunkSpace(0.0248, 0.372, baseM, 30, List.of()).deepestM(altitudeDeg), 0.1);
    }

    /** To the last digit of the table. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/low-sun-share.csv")
    void letsALowSunInFromTheEdge(double altitudeDeg, double distanceM, double plantAreaIndex, double offDeg, double share) {
        assertEquals(share, beech(new Edge(270, distanceM)).sunShare(plantAreaIndex, 270 - offDeg, altitudeDeg), 0.001);
    }

    @Test
    void countsTheNearestEdgeTowardsTheSunAndNoneBehindIt() {
        assertEquals(beech(new Edge(270, 60)).sunShare(1, 280, 8),
                beech(new Edge(90, 5), new Edge(270, 60), new Edge(300, 400)).sunShare(1, 280, 8), 1e-12);
        assertEquals(0, beech(new Edge(270, 60)).sunShare(1, 90, 8), 0);
        assertEquals(0, beech().sunShare(1, 270, 8), 0);
        assertEquals(0, beech(new Edge(270, 60)).sunShare(1, 270, -0.1), 0);
    }

    /** From about 1° to 10°: common practice, no source. */
    @Test
    void needsAnOpeningForALowSunIfNoEdgeIsKnown() {
        assertTrue(beech().needsOpening(1) && beech().needsOpening(10));
        assertFalse(beech().needsOpening(0.9) || beech().needsOpening(10.1) || beech(new Edge(0, 50)).needsOpening(5));
    }

    /**
     * Trunks in sight, N·d, of measured stands: birch (26 m) and spruce (24 m) and pine (17 m) at Järvselja, Estonia (Forestry
     * Studies 2021, doi 10.2478/fsmu-2021-0007), spruce at Tharandt, Saxony (27 m, doi 10.1186/s40663-017-0091-1), beech at
     * Virton (32 m, ICP Forests Level II, 2018). The defaults are made from the first and the last of each kind.
     */
    @ParameterizedTest
    @CsvSource({"DECIDUOUS,32,0.0092,0.01", "DECIDUOUS,25.5,0.0139,0.2", "EVERGREEN,24,0.0174,0.01", "EVERGREEN,27,0.0157,0.05",
        "EVERGREEN,17,0.0201,0.25"})
    void assumesTrunksLikeThoseOfMeasuredStands(Trees trees, double heightM, double perM, double within) {
        TrunkSpace wood = TrunkSpace.of(new Canopy(trees, null, heightM), List.of());
        assertEquals(perM, -Math.log(wood.lineOfSight(1)), within * perM);
    }

    @Test
    void takesWhatTheAuthorGivesBeforeAnyDefault() {
        TrunkSpace measured = TrunkSpace.of(new Canopy(Trees.DECIDUOUS, null, 30.0, 14.0, 248.0, 0.372), List.of());
        assertEquals(beech(), measured);
        TrunkSpace low = TrunkSpace.of(new Canopy(Trees.EVERGREEN, null, 20.0, 3.0, null, null), List.of());
        assertEquals(3, low.baseM(), 0);
        assertEquals(20, low.topM(), 0);
        assertEquals(10, TrunkSpace.of(new Canopy(Trees.EVERGREEN, null, 10.0, 14.0, null, null), List.of()).baseM(), 0);
    }
}
