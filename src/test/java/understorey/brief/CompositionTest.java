package understorey.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.MAY_DAY;
import static understorey.Samples.kinds;
import static understorey.Samples.picture;
import static understorey.Samples.the;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import understorey.Samples;
import understorey.advice.Advice;
import understorey.advice.ComposeAdvice;
import understorey.optics.FlowerCover;
import understorey.optics.FlowerLayer;
import understorey.plan.Canopy;
import understorey.plan.Foliage;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.SkyWord;
import understorey.plan.SkylinePoint;
import understorey.plan.Trip;
import understorey.plan.Viewpoint;
import understorey.reading.PlansReader;
import understorey.share.Sharing;

/** Geometry worked by hand: a 36 × 24 mm frame at 50 mm is 27.0° high, at 24 mm 53.1°; tan of the halves 0.24 and 0.5. */
class CompositionTest {

    private static List<Advice> looked(Canopy trees, double landDeg, Shot shot) {
        Brief brief = brief(trees, landDeg, shot);
        return brief.composition(brief.timed().get(0));
    }

    private static Brief brief(Canopy trees, double landDeg, Shot shot) {
        Site wood = Samples.wood();
        Site site = new Site(wood.name(), wood.slug(), null, wood.position(), null, wood.zone(),
                List.of(new SkylinePoint(0, landDeg)), trees, wood.spots(),
                wood.walks(), null, null, List.of(), List.of(), null, null, false, List.of(), null, List.of(), null);
        Trip trip = Samples.trip(site, MAY_DAY, "10:00", "14:00", List.of(), shot);
        return Planner.brief(new Trip(trip.title(), trip.slug(), null, trip.site(), trip.when(), trip.arrive(), trip.leave(), trip.gear(),
                List.of(), null, SkyWord.OVERCAST, List.of(), null, trip.shots(), null));
    }

    private static Canopy beeches(Foliage.Stage stage) {
        return new Canopy(Canopy.Trees.DECIDUOUS, stage, 20.0);
    }

    private static Shot view(double focalMm, double tiltDeg, double nearM) {
        return picture("a view").from(new Viewpoint.Height(1.5)).equivalent(focalMm).tilt(tiltDeg).sharp(nearM, 40).shot();
    }

    /**
     * A level lens 1.5 m up sees ground from 1.5 / 0.24 = 6.25 m and from 1.5 / 0.5 = 3 m on, along its axis. From the lens that is
     * hypot(6.25, 1.5) = 6.43 m and hypot(3, 1.5) = 3.35 m; focused near, it sees up to 2 % less.
     */
    @ParameterizedTest
    @CsvSource({"50, 6.43", "24, 3.35"})
    void saysWhereTheGroundInTheFrameBeginsAndWhetherItIsSharp(double focalMm, double nearestM) {
        assertEquals(nearestM, the(ComposeAdvice.ForegroundSharp.class, looked(null, 0, view(focalMm, 0, 1.5))).nearest(), 0.02 * nearestM);
        List<Advice> soft = looked(null, 0, picture("far").from(new Viewpoint.Height(1.5)).equivalent(70).tilt(14).sharp(12, 13).shot());
        assertTrue(kinds(soft).contains(ComposeAdvice.ForegroundSoft.class), soft.toString());
        ComposeAdvice.ForegroundSoft foreground = the(ComposeAdvice.ForegroundSoft.class, soft);
        assertTrue(foreground.nearest() < foreground.from());
    }

    /** The carpet and the foreground begin at one distance. */
    @Test
    void givesTheNearestGroundAsTheFlowerCoverDoes() {
        Brief brief = brief(null, 0, view(50, 8, 2));
        TimedShot shot = brief.timed().get(0);
        FlowerCover cover = FlowerCover.of(shot.fit().best().ground(0), FlowerLayer.of(0.3, 0.5));
        assertEquals(cover.nearestM(), the(ComposeAdvice.ForegroundSharp.class, brief.composition(shot)).nearest(), 1e-9);
    }

    /** Level: half of the frame. Land of 6.84° (tan 0.12) takes half of that half away. Tilted by half its height or more: none. */
    @Test
    void measuresTheShareOfTheSkyAboveTheSkyline() {
        assertEquals(0.5, the(ComposeAdvice.SkyHeld.class, looked(null, 0, view(50, 0, 4))).share(), 0.01);
        assertEquals(0.25, the(ComposeAdvice.SkyHeld.class, looked(null, 6.84, view(50, 0, 4))).share(), 0.01);
        List<Advice> tilted = looked(null, 0, view(50, 13.5, 4));
        assertFalse(kinds(tilted).contains(ComposeAdvice.SkyHeld.class) || kinds(tilted).contains(ComposeAdvice.SkyWhite.class), tilted.toString());
    }

    /**
     * An even sky is 1/0.18 times as bright as mid-grey ground that all of it lights: 2.47 stops, which a sensor with 2.97 stops
     * above mid-grey (ISO 12232, quoted) still holds. A leafed wood costs the ground three to four stops more, the sky nothing
     * (common practice).
     */
    @Test
    void saysThatSkyBehindTreesTurnsWhiteAndInTheOpenDoesNot() {
        assertTrue(kinds(looked(null, 0, view(50, 0, 4))).contains(ComposeAdvice.SkyHeld.class));
        double leafed = the(ComposeAdvice.SkyWhite.class, looked(beeches(Foliage.Stage.FULL_LEAF), 0, view(50, 0, 4))).over();
        double bare = the(ComposeAdvice.SkyWhite.class, looked(beeches(Foliage.Stage.LEAFLESS), 0, view(50, 0, 4))).over();
        assertTrue(leafed > 2.47 + 3 && leafed < 2.47 + 5.5, "" + leafed);
        assertTrue(bare > 2.97 && bare < leafed, bare + " " + leafed);
    }

    /** The darkest frame of a bracket for a sun in the frame holds the sky as well. */
    @Test
    void asksForNoBracketThatTheSettingsHave() {
        Trip trip = PlansReader.read(Path.of("plans")).trips().stream().filter(one -> one.slug().equals("paper-stars-on-red-sand"))
                .findFirst().orElseThrow();
        Brief brief = Planner.brief(Sharing.forAudience(trip));
        assertTrue(brief.shot("Through the petals").settings().bracketStops().get(0) < 0);
        assertFalse(kinds(brief.composition(brief.shot("Through the petals"))).contains(ComposeAdvice.SkyWhite.class));
        assertTrue(kinds(brief.composition(brief.shot("Pink to the trees"))).contains(ComposeAdvice.SkyHeld.class));
    }

    /** A level 24 mm sees the top of a tree of 20 m from (20 − 1.5) / 0.5 = 37 m on; 50 mm from 77 m on, which no wood lets you see. */
    @Test
    void saysFromWhereATreeIsWhole() {
        assertEquals(37, the(ComposeAdvice.TreesWholeFrom.class, looked(beeches(Foliage.Stage.LEAFLESS), 0, view(24, 0, 4))).from(), 0.5);
        assertTrue(kinds(looked(beeches(Foliage.Stage.LEAFLESS), 0, view(50, 0, 4))).contains(ComposeAdvice.TrunksOnly.class));
    }

    /** Ramsons of 37.5 cm at 6.25 m stand in a frame 3 m high there: an eighth. A head of 45 mm in a frame of 90 mm: half. */
    @Test
    void saysHowLargeAPlantOrAFlowerIsInTheFrame() {
        assertEquals(0.125, the(ComposeAdvice.NearestPlant.class, looked(null, 0, view(50, 0, 1.5))).share(), 0.005);
        List<Advice> head = looked(null, 0, picture("head").wide(0.09).deep(0.005).shot());
        assertEquals(16 * Math.sqrt(8) / 90, the(ComposeAdvice.HeadFills.class, head).share(), 0.02);
        assertTrue(kinds(head).contains(ComposeAdvice.LookBehindFlower.class));
    }

    @Test
    void looksForALineOnlyWhereTheAuthorNamesNone() {
        assertTrue(kinds(looked(null, 0, view(50, 0, 4))).contains(ComposeAdvice.LookForLine.class));
        Trip trip = PlansReader.read(Path.of("plans")).trips().stream()
                .filter(one -> one.slug().equals("first-light-in-the-ramsons")).findFirst().orElseThrow();
        Brief brief = Planner.brief(Sharing.forAudience(trip));
        assertFalse(kinds(brief.composition(brief.shot("The white floor"))).contains(ComposeAdvice.LookForLine.class));
        assertTrue(kinds(brief.composition(brief.shot("Down among the leaves"))).contains(ComposeAdvice.LookForLine.class));
    }
}
