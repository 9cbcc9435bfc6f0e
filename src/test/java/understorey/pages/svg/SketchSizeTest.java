package understorey.pages.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.brief.Brief;
import understorey.brief.PlannedShot;
import understorey.pages.Briefs;
import understorey.pages.DrawingWords;
import understorey.plan.Subject;
import understorey.plan.Viewpoint;
import understorey.scene.Drawing;
import understorey.scene.sketch.Air;
import understorey.scene.sketch.Setup;
import understorey.scene.sketch.Setups;
import understorey.scene.sketch.SideView;
import understorey.scene.sketch.Stage;
import understorey.scene.sketch.ViewfinderSketch;

class SketchSizeTest {

    @Test
    void everySketchAndSideViewIsSmall() {
        int drawn = 0;
        for (Brief brief : Briefs.all()) {
            for (PlannedShot shot : brief.shots()) {
                assertEquals(shot.timed().fit().best() == null, shot.sketch() == null);
                if (shot.sketch() != null) {
                    isSmall(shot.sketch().drawing(DrawingWords.BUILT_IN), shot.sideView().drawing(DrawingWords.BUILT_IN));
                    drawn++;
                }
            }
        }
        assertTrue(drawn > 5, "only " + drawn);
    }

    @Test
    void everySubjectIsSmallWideLowAndClose() {
        Setups.everySubject().values().forEach(SketchSizeTest::isSmall);
    }

    /** Heads from many angles, faded ones, trunks, crowns, shadows and drops are all in one picture. */
    @Test
    void everySubjectIsSmallFromAmongHalfFadedFlowersInAWood() {
        for (Subject subject : Briefs.demo().subjects()) {
            for (double mm : new double[] {16, 35, 50}) {
                Setup full = Setups.inTheWood(Samples.picture("Among").of(subject).from(new Viewpoint.Height(0.75 * subject.heightHighM()))
                        .equivalent(mm).tilt(-6).sharp(1, 8), 0);
                if (full != null) {
                    isSmall(new Setup(full.fit(), full.fNumber(), full.sharpFromM(), full.sharpToM(), full.slope(), full.canopy(), null, full.sun(),
                            new Air(true, true, true), Stage.of(0.5), full.around()));
                }
            }
        }
    }

    @Property(tries = 60)
    void aSketchIsSmallWhateverThePicture(@ForAll @DoubleRange(min = 0.05, max = 2) double heightM,
            @ForAll @DoubleRange(min = 16, max = 400) double mm, @ForAll @DoubleRange(min = -50, max = 90) double tiltDeg,
            @ForAll @DoubleRange(min = -30, max = 30) double slopeDeg) {
        Setup setup = Setups.inTheWood(Samples.picture("Any").from(new Viewpoint.Height(heightM)).equivalent(mm)
                .tilt(tiltDeg), slopeDeg);
        if (setup != null) {
            isSmall(setup);
        }
    }

    private static void isSmall(Setup setup) {
        isSmall(ViewfinderSketch.of(setup).drawing(DrawingWords.BUILT_IN), SideView.of(setup).drawing(DrawingWords.BUILT_IN));
    }

    private static void isSmall(Drawing sketch, Drawing sideView) {
        String svg = Svg.shared(sketch, "sketch1", new Glyphs());
        int bytes = svg.getBytes(StandardCharsets.UTF_8).length;
        assertTrue(bytes < 25_000, bytes + ": " + sketch.says());
        assertFalse(svg.contains("NaN") || svg.contains("Infinity"), svg);
        assertTrue(svg.startsWith("<svg viewBox=") && svg.contains(" id=\"sketch1\" "), svg);
        String side = Svg.of(sideView, "side1");
        assertTrue(side.getBytes(StandardCharsets.UTF_8).length < 6_000, sideView.says());
        assertFalse(side.contains("NaN") || side.contains("Infinity"), side);
        assertTrue(Svg.again(sketch, "sketch1").contains("<use href=\"#sketch1\"/>"));
    }
}
