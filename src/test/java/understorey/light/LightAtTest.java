package understorey.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import understorey.Places;
import understorey.light.illuminance.CanopyLight;
import understorey.light.illuminance.Daylight;
import understorey.light.illuminance.ExposureValue;
import understorey.plan.Canopy;
import understorey.plan.Foliage;
import understorey.plan.Position;
import understorey.plan.SkylinePoint;
import understorey.plan.Slope;
import understorey.sky.Interval;
import understorey.sky.Skyline;
import understorey.sky.SunAt;

/** Light that photographers meter, and how its kinds hang together. */
class LightAtTest {

    private static final LocalDate DATE = LocalDate.of(2027, 5, 8);
    private static final Skyline LEVEL = Skyline.of(List.of(), null);
    private static final Skyline WALL = Skyline.of(List.of(new SkylinePoint(178, 0), new SkylinePoint(179, 80),
            new SkylinePoint(181, 80), new SkylinePoint(182, 0)), null);
    private static final Canopy FULL_LEAF = new Canopy(Canopy.Trees.DECIDUOUS, Foliage.Stage.FULL_LEAF, 20.0);

    private static LightAt light(double altitudeDeg, Skyline skyline, Canopy canopy) {
        SunAt sun = new SunAt(DATE.atTime(12, 0).atZone(ZoneOffset.UTC), 180, altitudeDeg);
        return LightAt.of(sun, Standpoint.of(skyline, CanopyLight.of(canopy, null, List.of(), DATE), DATE));
    }

    /** ANSI PH2.7-1986 in the encyclopedia article "Exposure value": full sun 15, front lit; open shade 12. */
    @ParameterizedTest
    @ValueSource(doubles = {30, 40, 50})
    void givesFifteenInBrightSunAndTwelveInOpenShade(double altitudeDeg) {
        LightAt light = light(altitudeDeg, LEVEL, Canopy.NONE);
        assertEquals(15, light.open().sun(), 0.5);
        assertEquals(12, light.open().shade(), 0.75);
        // Heavy overcast 12, cloudy bright 13.
        assertEquals(12.5, light.open().overcast(), 0.75);
    }

    /** The f/16 rule, common teaching text: f/16 at 1/ISO in full sun; IES 1984 for the light. */
    @ParameterizedTest
    @ValueSource(doubles = {40, 50, 60})
    void exposesFullSunAtSixteenAndOneOverIso(double altitudeDeg) {
        double sixteen = Math.log(16 * 16 * 100) / Math.log(2);
        assertEquals(sixteen, light(altitudeDeg, LEVEL, Canopy.NONE).open().sun(), 0.7);
        assertEquals(sixteen, light(altitudeDeg, LEVEL, Canopy.NONE).floorEv(0), 0.7);
    }

    /**
     * IES 1984, worked from its formulas for 127.5 klx outside the air, klx: the direct normal light, the direct light on
     * level ground and that of the sky. On 8 May the sun is farther off, which takes 1.9 % of its light (0.03 EV).
     */
    @ParameterizedTest
    @CsvSource({"10,38.045,6.606,7.259", "20,69.001,23.600,9.865", "30,83.773,41.887,11.760", "45,94.740,66.991,13.834",
        "60,100.046,86.642,15.224", "90,103.349,103.349,16.300"})
    void takesTheLargerOfUprightAndLevelLight(double altitudeDeg, double normal, double level, double sky) {
        double upright = normal * Math.cos(Math.toRadians(altitudeDeg)) + sky / 2;
        double ev = Math.log(Math.max(upright, level + sky) * 1000 / 2.5) / Math.log(2);
        assertEquals(ev, light(altitudeDeg, LEVEL, Canopy.NONE).open().sun(), 0.06);
    }

    /** ANSI PH2.7-1986, as above: 15 in full sun, at noon on the equator as well, where an upright front gets none. */
    @Test
    void givesFifteenUnderTheSunOfTheEquatorAtNoon() {
        LightAt noon = LightAt.of(SunAt.of(new Position(0, 0), LocalDate.of(2027, 3, 21).atTime(12, 7).atZone(ZoneOffset.UTC)),
                Standpoint.of(LEVEL, CanopyLight.NONE, LocalDate.of(2027, 3, 21)));
        assertTrue(noon.sun().altitudeDeg() > 88, "near the zenith");
        assertEquals(15.3, noon.open().sun(), 0.5);
        assertTrue(noon.open().sun() > noon.open().shade() + 2.5, noon.open().toString());
        assertTrue(noon.open().sun() > noon.open().overcast() + 2, noon.open().toString());
    }

    /** What people meter on the floor of a leafed wood; common practice, no source. */
    @ParameterizedTest
    @ValueSource(doubles = {30, 45, 60})
    void givesEightToTenOnTheFloorOfALeafedWood(double altitudeDeg) {
        LightAt light = light(altitudeDeg, LEVEL, FULL_LEAF);
        assertTrue(light.floor().shade() >= 8 && light.floor().shade() <= 10, light.floor().toString());
        assertTrue(light.floor().overcast() >= 8 && light.floor().overcast() <= 10, light.floor().toString());
    }

    @Test
    void throwsAShadowAsLongAsItsHeightAtFortyFive() {
        assertEquals(1, light(45, LEVEL, null).shadowPerHeight(), 0.001);
        // The air lifts a sun at 0° by some 29′ (Meeus, 2nd ed., eq. 16.4).
        assertEquals(1 / Math.tan(Math.toRadians(29 / 60.0)), light(0, LEVEL, null).shadowPerHeight(), 3);
        assertNull(light(-0.7, LEVEL, null).shadowPerHeight());
    }

    @Test
    void leavesTheSunOutWhereTheLandHidesIt() {
        LightAt hidden = light(40, WALL, FULL_LEAF);
        LightAt seen = light(40, LEVEL, FULL_LEAF);
        assertFalse(hidden.aboveSkyline());
        assertNotNull(hidden.shadowPerHeight());
        assertNull(hidden.open().sun());
        assertNull(hidden.floor().fleck());
        assertEquals(0, hidden.fleckShare(), 0);
        assertTrue(hidden.open().broken() < seen.open().broken());
        assertEquals(seen.open().shade(), hidden.open().shade(), 0.03);
        assertEquals(seen.open().overcast(), hidden.open().overcast(), 0.03);
        assertEquals(Math.exp(-1.6 / Math.sin(Math.toRadians(40))), seen.fleckShare(), 0.001);
    }

    @Test
    void isTheSameOnOpenGroundWithAndWithoutAWordForIt() {
        LightAt open = light(25, LEVEL, Canopy.NONE);
        assertEquals(open, light(25, LEVEL, null));
        assertEquals(open.open().sun(), open.floor().fleck());
        assertEquals(open.open().shade(), open.floor().shade());
        assertEquals(open.open().broken(), open.floor().broken(), 1e-12);
        assertEquals(open.open().overcast(), open.floor().overcast(), 1e-12);
        assertEquals(1, open.fleckShare(), 0);
    }

    @Test
    void givesTheFloorItsLightByCloudCover() {
        LightAt wood = light(40, LEVEL, FULL_LEAF);
        assertEquals(wood.floor().shade(), wood.floorEv(0), 0);
        assertEquals(wood.floor().shade(), wood.floorEv(2), 0);
        assertTrue(wood.floorEv(2.9) < wood.floorEv(3) && wood.floorEv(2.9) > wood.floor().shade());
        assertEquals(wood.floor().broken(), wood.floorEv(6), 1e-12);
        assertEquals(wood.floor().overcast(), wood.floorEv(8), 1e-12);
        LightAt open = light(40, LEVEL, Canopy.NONE);
        double seenDeg = open.sun().apparentAltitudeDeg();
        double level = Daylight.directNormalLux(seenDeg, 0, DATE.getDayOfYear()) * Math.sin(Math.toRadians(seenDeg)) + Daylight.skyLux(40, 0);
        assertEquals(ExposureValue.ev100(level), open.floorEv(0), 1e-12);
        assertEquals(light(40, WALL, null).open().shade(), light(40, WALL, null).floorEv(0), 0);
    }

    @Test
    void tablesTheWholeLocalDayByQuarterHours() {
        for (Places place : Places.ALL) {
            List<LightAt> table = LightTable.of(place.position(), Interval.day(place.date(), place.zone()),
                    Standpoint.of(LEVEL, CanopyLight.of(FULL_LEAF, null, List.of(), place.date()), place.date()));
            long hours = Duration.between(place.date().atStartOfDay(place.zone()),
                    place.date().plusDays(1).atStartOfDay(place.zone())).toHours();
            assertEquals(4 * hours, table.size());
            for (LightAt row : table) {
                assertTrue(Double.isFinite(row.floor().shade()) && Double.isFinite(row.floor().overcast()));
                assertEquals(row.aboveSkyline(), row.open().sun() != null);
            }
        }
    }

    /** Reda and Andreas, NREL/TP-560-34302, Table A5.1: a surface of 30° turned 10° from south to east. */
    @Test
    void fallsOnABankAtTheAngleOfThePublishedExample() {
        Standpoint bank = Standpoint.of(Skyline.of(List.of(), new Slope(30, 170)), CanopyLight.NONE, DATE);
        double cosine = bank.incidence(194.340241, 90 - 50.111622);
        assertEquals(25.187, Math.toDegrees(Math.acos(cosine)), 1e-4);
        assertEquals(0, bank.incidence(0, 10), 0);
        assertEquals(Math.sin(Math.toRadians(40)), Standpoint.of(LEVEL, CanopyLight.NONE, DATE).incidence(123, 40), 1e-12);
    }

    @Test
    void lightsABankThatFacesTheSunMoreThanLevelGround() {
        LightAt level = at(12, Standpoint.of(LEVEL, CanopyLight.NONE, DATE));
        LightAt towards = at(12, Standpoint.of(Skyline.of(List.of(), new Slope(20, 180)), CanopyLight.NONE, DATE));
        LightAt away = at(12, Standpoint.of(Skyline.of(List.of(), new Slope(20, 0)), CanopyLight.NONE, DATE));
        assertTrue(towards.floorEv(0) > level.floorEv(0) + 0.5, towards + " " + level);
        assertFalse(away.aboveSkyline());
        assertEquals(level.floor().shade(), towards.floor().shade(), 0.1);
    }

    /** Trees 18 m tall 12 m away: their tops stand at 56.3°, and their hole is sin² of what is left of the sky. */
    @Test
    void opensTheSkyInAClearing() {
        Canopy wood = new Canopy(Canopy.Trees.DECIDUOUS, Foliage.Stage.FULL_LEAF, 18.0);
        CanopyLight clearing = CanopyLight.of(wood, 12.0, List.of(), DATE);
        CanopyLight closed = CanopyLight.of(wood, null, List.of(), DATE);
        assertEquals(56.31, clearing.treeTopDeg(), 0.01);
        assertEquals(1, clearing.gapFraction(56.4), 0);
        assertTrue(clearing.gapFraction(50) < 1 && clearing.gapFraction(50) > closed.gapFraction(50));
        assertEquals(closed.gapFraction(0.01), clearing.gapFraction(0.01), 1e-9);
        double hole = Math.pow(Math.cos(Math.toRadians(56.31)), 2);
        assertTrue(clearing.uniformSky(0) > hole && clearing.uniformSky(0) < hole + 0.25, "" + clearing.uniformSky(0));
        // Leaves so dense that only the hole is left.
        assertEquals(hole, new CanopyLight(1e6, clearing.treeTopDeg(), null).uniformSky(0), 0.01);
        assertNull(CanopyLight.of(new Canopy(null, Foliage.Stage.FULL_LEAF, null), 12.0, List.of(), DATE).treeTopDeg());
    }

    /** Over a ring of land 30° high the share of an even sky on level ground is cos² of it, three quarters. */
    @Test
    void losesWhatTheLandHidesOfTheSky() {
        Standpoint gorge = Standpoint.of(Skyline.ring(30), CanopyLight.NONE, DATE);
        assertEquals(0.75, gorge.openSky(), 1e-6);
        assertEquals(Math.log(0.75) / Math.log(2), at(20, gorge).open().shade() - light(20, LEVEL, null).open().shade(), 1e-6);
    }

    private static LightAt at(double altitudeDeg, Standpoint place) {
        return LightAt.of(new SunAt(DATE.atTime(12, 0).atZone(ZoneOffset.UTC), 180, altitudeDeg), place);
    }
}
