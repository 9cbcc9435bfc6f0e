package understorey.scene.sketch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.optics.FlowerCover;
import understorey.optics.FlowerLayer;
import understorey.optics.GroundView;
import understorey.pages.DrawingWords;
import understorey.plan.Role;
import understorey.plan.Subject;
import understorey.plan.Viewpoint;
import understorey.reading.subject.SubjectCatalogue;
import understorey.scene.Drawing;

/** A stand that is not in full flower, and drops on its petals. */
class StageTest {

    private static final Subject RAMSONS = SubjectCatalogue.builtIn().find("ramsons");

    private static Setup wide(Stage stage) {
        return setup(Samples.picture("Floor").of(RAMSONS).from(new Viewpoint.Height(1.5)).equivalent(50).tilt(12).sharp(2, 20), stage, false);
    }

    private static Setup close(String key, Stage stage, boolean drops) {
        return setup(Samples.picture("Head").of(SubjectCatalogue.builtIn().find(key)).role(Role.CLOSING), stage, drops);
    }

    private static Setup setup(Samples.Picture picture, Stage stage, boolean drops) {
        Setup full = Setups.of(picture, null, null, null);
        return new Setup(full.fit(), full.fNumber(), full.sharpFromM(), full.sharpToM(), null, null, null, null,
                new Air(false, false, drops), stage, Surroundings.BARE);
    }

    private static Drawing drawn(Setup setup) {
        return ViewfinderSketch.of(setup).drawing(DrawingWords.BUILT_IN);
    }

    private static long marks(Drawing drawing, String style) {
        return ((Drawing.Palette) drawing.marks().get(0)).marks().stream().filter(mark -> mark.style().equals(style)).count();
    }

    /** Half the open heads have half the petal area, so the cover is that of the layer with half the index. */
    @Test
    void theToneIsThatOfTheShareOfHeadsThatIsOpen() {
        for (Stage stage : List.of(Stage.FULL, Stage.of(-0.5), Stage.of(0.75))) {
            Setup setup = wide(stage);
            FlowerCover cover = FlowerCover.of(new GroundView(setup.fit().heightM(), setup.fit().tiltDeg(), 0, setup.fit().view(), 0.05),
                    FlowerLayer.of((setup.lowM() + setup.highM()) / 2, RAMSONS.flowerAreaIndex().typical() * stage.open()));
            Drawing drawing = drawn(setup);
            double tone = Canvas.of(drawing).mean(drawing.height() * (1 - cover.ground()), drawing.height());
            assertEquals(cover.cover(), tone, 0.05, stage.toString());
            assertTrue(drawing.says().contains(stage == Stage.FULL ? "The tone of the ground is the stated flower cover."
                    : String.format("The open flowers cover %.0f\u00a0%% of the ground, which has that tone.", 100 * cover.cover())), drawing.says());
        }
    }

    @Test
    void budsAndFadedFlowersAreDrawnAndSaid() {
        Drawing early = drawn(wide(Stage.of(-0.4)));
        assertTrue(early.says().contains("40\u00a0% of the flowers are still in bud"), early.says());
        assertTrue(marks(early, "bud") > 0);
        Drawing late = drawn(wide(Stage.of(0.4)));
        assertTrue(late.says().contains("40\u00a0% of the flowers are over"), late.says());
        assertTrue(marks(late, "faded") > 0);
        assertTrue(marks(drawn(close("bluebell", Stage.of(0.5), false)), "withered-edged") > 0);
        assertEquals(0, marks(drawn(close("bluebell", Stage.FULL, false)), "withered-edged"));
    }

    /** Among anemones that are half over, a photographer frames an open one. */
    @Test
    void aSingleFlowerIsOpenWhileSomeAre() {
        Drawing some = drawn(close("wood-anemone", Stage.of(0.5), false));
        assertEquals(0, marks(some, "withered-edged"));
        assertTrue(some.says().contains("The flower in focus is one that is open"), some.says());
        Drawing none = drawn(close("wood-anemone", Stage.of(1), false));
        assertTrue(marks(none, "withered-edged") > 0);
        assertTrue(none.says().contains("all flowers are over"), none.says());
    }

    @Test
    void dropsHangOnThePetalsOfACloseUpAlone() {
        Drawing wet = drawn(close("snowdrop", Stage.FULL, true));
        assertTrue(marks(wet, "drop") == 1 && wet.says().contains("Drops are drawn"), wet.says());
        Drawing dry = drawn(close("snowdrop", Stage.FULL, false));
        assertTrue(marks(dry, "drop") == 0 && !dry.says().contains("Drops"), dry.says());
        assertFalse(drawn(setup(Samples.picture("Floor").of(RAMSONS).from(new Viewpoint.Height(1.5)).equivalent(50),
                Stage.FULL, true)).says().contains("Drops"));
    }
}
