package understorey.pages.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.brief.Brief;
import understorey.brief.PlannedShot;
import understorey.pages.Briefs;
import understorey.pages.DrawingWords;
import understorey.plan.Role;
import understorey.plan.Subject;
import understorey.plan.Viewpoint;
import understorey.scene.Drawing;
import understorey.scene.sketch.Setup;
import understorey.scene.sketch.Setups;
import understorey.scene.sketch.SideView;
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
        for (Subject subject : Briefs.demo().subjects()) {
            double high = subject.heightHighM() == null ? 0.3 : subject.heightHighM();
            for (Samples.Picture picture : List.of(Samples.picture("Wide").from(new Viewpoint.Height(high + 1.2)).equivalent(50).tilt(10),
                    Samples.picture("Low").from(new Viewpoint.Height(0.75 * high)).equivalent(20).tilt(-6), Samples.picture("Close").role(Role.CLOSING))) {
                Setup setup = Setups.inTheWood(picture.of(subject).sharp(0.4, 8), 0);
                if (setup != null) {
                    isSmall(ViewfinderSketch.of(setup).drawing(DrawingWords.BUILT_IN), SideView.of(setup).drawing(DrawingWords.BUILT_IN));
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
            isSmall(ViewfinderSketch.of(setup).drawing(DrawingWords.BUILT_IN), SideView.of(setup).drawing(DrawingWords.BUILT_IN));
        }
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
