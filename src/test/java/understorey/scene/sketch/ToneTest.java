package understorey.scene.sketch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.optics.FlowerCover;
import understorey.optics.FlowerLayer;
import understorey.optics.GroundView;
import understorey.pages.DrawingWords;
import understorey.plan.Slope;
import understorey.plan.Subject;
import understorey.plan.Viewpoint;
import understorey.reading.SubjectCatalogue;
import understorey.scene.Drawing;

/** The tone of a sketch, measured, is the cover that the pages state: the model of {@link FlowerCover}. */
class ToneTest {

    private static final double WITHIN = 0.05;

    @Test
    void eachThirdOfTheGroundIsAsLightAsTheStatedCover() {
        List<String> wrong = new ArrayList<>();
        int measured = 0;
        for (String key : List.of("ramsons", "bluebell", "wood-anemone", "snowdrop", "fireweed", "namaqualand-daisy", "heather", "foxglove", "lesser-celandine")) {
            Subject subject = SubjectCatalogue.builtIn().find(key);
            for (double mm : new double[] {20, 50, 135}) {
                for (double slopeDeg : new double[] {0, -8}) {
                    Setup setup = Setups.of(Samples.picture(key).of(subject).from(new Viewpoint.Height(subject.heightHighM() + 1.2)).equivalent(mm)
                            .tilt(mm < 30 ? 25 : 10).sharp(2, 20), new Slope(Math.abs(slopeDeg), slopeDeg < 0 ? 90 : 270), null, null);
                    if (setup != null) {
                        measured += check(setup, key + " " + mm + " mm " + slopeDeg + "°", wrong);
                    }
                }
            }
        }
        assertEquals(List.of(), wrong);
        assertTrue(measured > 60, "only " + measured);
    }

    private static int check(Setup setup, String name, List<String> wrong) {
        FlowerCover cover = FlowerCover.of(new GroundView(setup.fit().heightM(), setup.fit().tiltDeg(),
                setup.riseDeg(), setup.fit().view(), 0.05), FlowerLayer.of((setup.lowM() + setup.highM()) / 2,
                setup.subject().flowerAreaIndex().typical()));
        Drawing drawing = ViewfinderSketch.of(setup).drawing(DrawingWords.BUILT_IN);
        Canvas canvas = Canvas.of(drawing);
        double top = drawing.height() * (1 - cover.ground());
        double third = drawing.height() * cover.ground() / 3;
        double[] stated = {cover.far(), cover.middle(), cover.near()};
        for (int i = 0; i < 3; i++) {
            double tone = canvas.mean(top + i * third, top + (i + 1) * third);
            if (Math.abs(tone - stated[i]) > WITHIN) {
                wrong.add(String.format(java.util.Locale.ROOT, "%s third %d: %.3f for %.3f%n", name, i, tone, stated[i]));
            }
        }
        return 3;
    }
}
