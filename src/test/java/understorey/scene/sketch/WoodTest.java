package understorey.scene.sketch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.optics.Projection;
import understorey.pages.DrawingWords;
import understorey.plan.Canopy;
import understorey.plan.SkylinePoint;
import understorey.plan.Viewpoint;
import understorey.reading.subject.SubjectCatalogue;
import understorey.scene.Drawing;
import understorey.scene.Drawing.Mark;
import understorey.sky.Skyline;

/** The wood behind the flowers: bark, crowns, and the land that a bare wood lets through. */
class WoodTest {

    private static final Canopy TALL = new Canopy(Canopy.Trees.DECIDUOUS, null, 24.0);

    private static Setup setup(String flower, Canopy canopy, double leaves, Skyline skyline) {
        Samples.Picture picture = Samples.picture("Wood").of(SubjectCatalogue.builtIn().find(flower))
                .from(new Viewpoint.Height(0.5)).equivalent(20).tilt(-8).sharp(0.5, 40);
        Setup plain = Setups.of(picture, null, canopy, null);
        return new Setup(plain.fit(), plain.fNumber(), plain.sharpFromM(), plain.sharpToM(), null, canopy, null, null, Air.CLEAR, Stage.FULL,
                new Surroundings(leaves, skyline));
    }

    private static Drawing drawn(Setup setup) {
        return ViewfinderSketch.of(setup).drawing(DrawingWords.BUILT_IN);
    }

    private static List<Mark> marks(Drawing drawing) {
        return ((Drawing.Palette) drawing.marks().get(0)).marks();
    }

    private static int stamps(Drawing drawing, Motif motif) {
        return marks(drawing).stream().filter(mark -> mark instanceof Drawing.Stamps && mark.style().equals(motif.id))
                .mapToInt(mark -> ((Drawing.Stamps) mark).at().size()).sum();
    }

    private static int sprays(Drawing drawing) {
        return stamps(drawing, Motif.SPRAY) + stamps(drawing, Motif.FAR_SPRAY);
    }

    private static int twigs(Drawing drawing) {
        return stamps(drawing, Motif.TWIGS) + stamps(drawing, Motif.FAR_TWIGS);
    }

    @Test
    void crownsFollowTheLeavesOfTheDay() {
        Drawing bare = drawn(setup("ramsons", TALL, 0, null));
        Drawing bursting = drawn(setup("ramsons", TALL, 0.17, null));
        Drawing half = drawn(setup("ramsons", TALL, 0.54, null));
        Drawing full = drawn(setup("ramsons", TALL, 1, null));
        assertTrue(twigs(bare) > 10 && sprays(bare) == 0, twigs(bare) + " " + sprays(bare));
        assertTrue(twigs(bursting) > 5 && sprays(bursting) > 5);
        assertTrue(sprays(half) > sprays(bursting) && twigs(half) > 0);
        assertTrue(twigs(full) == 0 && sprays(full) > sprays(half));
        assertTrue(bare.says().contains("The crowns are bare") && full.says().contains("in full leaf"), bare.says() + full.says());
    }

    /** 1.5 m over level ground a frame that ends at 3.5° over the level holds no branch nearer than 8 m / tan 3.5° = 130 m: none is said. */
    @Test
    void noCrownIsSaidWhereTheFrameHoldsNone() {
        Samples.Picture down = Samples.picture("Down").from(new Viewpoint.Height(1.5)).equivalent(50).tilt(12).sharp(2, 20);
        assertFalse(drawn(Setups.of(down, null, TALL, null)).says().contains("crowns"));
    }

    /** Trees named above each flower in the catalogue, those of the site's kind alone. */
    @Test
    void barkIsThatOfAUsualTreeThatFitsTheSite() {
        assertEquals(Bark.SMOOTH, bark("bluebell", Canopy.Trees.DECIDUOUS));
        assertEquals(Bark.WHITE, bark("foxglove", Canopy.Trees.DECIDUOUS));
        assertEquals(Bark.PLATED, bark("fly-agaric", Canopy.Trees.EVERGREEN));
        assertEquals(Bark.WHITE, bark("fly-agaric", Canopy.Trees.DECIDUOUS));
        assertEquals(Bark.PEELING, bark("pink-and-white-everlasting", Canopy.Trees.EVERGREEN));
        assertEquals(Bark.COPPICE, bark("primrose", Canopy.Trees.DECIDUOUS));
        assertNull(Bark.usual(setup("bush-lily", new Canopy(Canopy.Trees.EVERGREEN, null, 20.0), 1, null)));
        String says = drawn(setup("bluebell", TALL, 0, null)).says();
        assertTrue(says.contains("as that of beech, a usual tree above bluebell"), says);
    }

    private static Bark bark(String flower, Canopy.Trees trees) {
        return Objects.requireNonNull(Bark.usual(setup(flower, new Canopy(trees, null, 20.0), 1, null))).bark();
    }

    /** A ridge of 12° all round is 12° over the level in the middle of the frame, and is not seen through leaves. */
    @Test
    void theSkylineShowsThroughABareWoodWhereTheProjectionPutsIt() {
        Skyline ridge = Skyline.of(List.of(new SkylinePoint(0, 12), new SkylinePoint(180, 12)), null);
        Setup setup = setup("ramsons", TALL, 0, ridge);
        Drawing drawing = drawn(setup);
        Drawing.Area land = (Drawing.Area) marks(drawing).stream().filter(mark -> mark.style().equals("far-land")).findFirst().orElseThrow();
        Projection.Place middle = Projection.of(90, -8, setup.fit().view()).place(90, 12);
        double top = land.points().get(land.points().size() / 2).y();
        assertEquals(drawing.height() / 2 * (1 - middle.y()), top, 1);
        assertTrue(marks(drawn(setup("ramsons", TALL, 0.6, ridge))).stream().noneMatch(mark -> mark.style().equals("far-land")));
        assertTrue(marks(drawn(setup("ramsons", null, 0, ridge))).stream().anyMatch(mark -> mark.style().equals("far-land")));
    }

    /** A trunk of one thickness is half as wide at twice the distance, so far stems are thin and near ones wide. */
    @Test
    void trunksAreAsWideAsTheyAreFar() {
        Setup setup = setup("ramsons", new Canopy(Canopy.Trees.EVERGREEN, null, 24.0, null, 400.0, 0.4), 1, null);
        List<Trunk> trunks = new Trunks(setup, Perspective.of(setup), new understorey.scene.Seed(1)).trunks();
        assertTrue(trunks.size() > 10);
        for (Trunk trunk : trunks) {
            double thickM = 2 * trunk.half() / Perspective.of(setup).pxPerM(trunk.depthM());
            assertTrue(thickM > 0.25 && thickM < 0.55, thickM + " m");
        }
    }
}
