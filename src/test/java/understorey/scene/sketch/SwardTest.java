package understorey.scene.sketch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.pages.DrawingWords;
import understorey.plan.FieldGuide;
import understorey.plan.Subject;
import understorey.plan.Viewpoint;
import understorey.reading.subject.SubjectCatalogue;
import understorey.scene.Drawing;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;

/** Leaves have the form and the height of the catalogue. */
class SwardTest {

    private static Setup low(String key) {
        Subject subject = SubjectCatalogue.builtIn().find(key);
        return Setups.of(Samples.picture(key).of(subject).from(new Viewpoint.Height(0.75 * subject.heightHighM())).equivalent(20).tilt(0).sharp(0.2, 20),
                null, null, null);
    }

    private static List<Mark> marks(Setup setup) {
        return ((Drawing.Palette) ViewfinderSketch.of(setup).drawing(DrawingWords.BUILT_IN).marks().get(0)).marks();
    }

    private static List<Drawing.Stamps> plants(List<Mark> marks) {
        return marks.stream().filter(mark -> mark instanceof Drawing.Stamps && mark.style().startsWith(Motif.TUFT.id)).map(mark -> (Drawing.Stamps) mark).toList();
    }

    /** The shapes are written in heights of the leaves. */
    @Test
    void everyFormOfLeavesEndsAtItsHeight() {
        for (FieldGuide.LeafForm form : FieldGuide.LeafForm.values()) {
            double high = Flora.BUILT_IN.foliage(form).rings().stream().flatMap(ring -> Arrays.stream(ring.rows())).mapToDouble(row -> row[1]).max().orElseThrow();
            assertEquals(1, high, 0.06, form.name());
        }
    }

    /**
     * A level camera sees the foot of a plant as far below the middle of the frame as the lens is high there, so by its height
     * over that of the lens the plant reaches up. Sizes go in steps of half as much again.
     */
    @Test
    void leavesAreAsHighInTheFrameAsTheyGrow() {
        for (String key : List.of("ramsons", "primrose", "pink-and-white-everlasting", "wood-sorrel", "foxglove")) {
            Setup setup = low(key);
            Perspective perspective = Perspective.of(setup);
            List<Mark> marks = marks(setup);
            double top = marks.stream().filter(mark -> mark instanceof Drawing.Glyph && mark.style().equals(Motif.TUFT.id))
                    .flatMap(mark -> ((Drawing.Glyph) mark).marks().stream()).flatMap(mark -> ((Drawing.Curves) mark).runs().stream())
                    .flatMap(List::stream).mapToDouble(Point::y).min().orElseThrow();
            int measured = 0;
            for (Drawing.Stamps stamps : plants(marks)) {
                for (Point foot : stamps.at()) {
                    double pxPerM = (foot.y() - perspective.height / 2) / setup.fit().heightM();
                    double times = -top / FlowerHead.WIDTH * stamps.width() / (setup.leavesM() * pxPerM);
                    assertTrue(times > 0.6 && times < 1.6, key + " " + times);
                    measured++;
                }
            }
            assertTrue(measured > 20, key + " " + measured);
        }
    }

    @Test
    void aFungusHasNoLeavesAndNoGreenStem() {
        List<Mark> marks = marks(low("fly-agaric"));
        assertEquals(List.of(), plants(marks));
        assertTrue(marks.stream().noneMatch(mark -> mark.style().equals("stem")));
        assertTrue(plants(marks(low("ramsons"))).size() > 2);
    }
}
