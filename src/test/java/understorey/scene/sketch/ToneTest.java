package understorey.scene.sketch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.optics.FlowerCover;
import understorey.optics.FlowerLayer;
import understorey.optics.GroundView;
import understorey.pages.DrawingWords;
import understorey.plan.Slope;
import understorey.plan.Subject;
import understorey.plan.Viewpoint;
import understorey.reading.subject.SubjectCatalogue;
import understorey.scene.Drawing;

/** The tone of a sketch, measured, is the cover that the pages state: the model of {@link FlowerCover}. */
class ToneTest {

    private static final double WITHIN = 0.05;

    @Test
    void eachThirdOfTheGroundIsAsLightAsTheStatedCover() {
        List<String> wrong = new ArrayList<>();
        int measured = 0;
        for (String key : List.of("ramsons", "bluebell", "wood-anemone", "snowdrop", "fireweed", "namaqualand-daisy",
                "heather", "foxglove", "lesser-celandine")) {
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

    /**
     * From among the flowers: rays drawn at random, each through petals at all angles that lie between the lowest and the
     * highest heads, half a head more at both ends (Beer and Lambert's law, summed step by step), but for those so near that one would veil a
     * fifth of the frame, which are moved aside. Heads stand where chance
     * puts them, so the mean of eight sketches is compared.
     */
    @Test
    void aLowViewIsAsLightAsRaysThroughItsHeadsMakeIt() {
        List<String> wrong = new ArrayList<>();
        Random random = new Random(11);
        int measured = 0;
        for (String key : List.of("ramsons", "bluebell", "wood-anemone", "heather", "fireweed", "namaqualand-daisy",
                "snowdrop", "lesser-celandine")) {
            Subject subject = SubjectCatalogue.builtIn().find(key);
            for (double times : new double[] {0.6, 0.8, 1, 1.2}) {
                for (double mm : new double[] {20, 50}) {
                    measured += low(subject, times, mm, random, wrong);
                }
            }
        }
        assertEquals(List.of(), wrong);
        assertTrue(measured > 200, "only " + measured);
    }

    private static int low(Subject subject, double times, double mm, Random random, List<String> wrong) {
        double[] tones = new double[4];
        double[] rays = new double[4];
        for (int i = 0; i < 8; i++) {
            Setup setup = Setups.of(Samples.picture(subject.key() + i).of(subject)
                    .from(new Viewpoint.Height(times * subject.heightHighM())).equivalent(mm)
                    .tilt(mm < 30 ? 8 : 4).sharp(0.4, 8), null, null, null);
            Drawing drawing = ViewfinderSketch.of(setup).drawing(DrawingWords.BUILT_IN);
            Canvas canvas = Canvas.of(drawing);
            double horizon = Perspective.of(setup).vanishingY();
            for (int part = 0; part < 4; part++) {
                double from = part == 0 ? 0 : horizon + (part - 1) * (drawing.height() - horizon) / 3;
                double to = part == 0 ? horizon : horizon + part * (drawing.height() - horizon) / 3;
                tones[part] += canvas.mean(from, to) / 8;
                rays[part] += rays(setup, 1 - 2 * from / drawing.height(), 1 - 2 * to / drawing.height(), random) / 8;
            }
        }
        for (int part = 0; part < 4; part++) {
            if (Math.abs(tones[part] - rays[part]) > WITHIN) {
                wrong.add(String.format(java.util.Locale.ROOT, "%s %.1f %.0f mm part %d: %.3f for %.3f%n",
                        subject.key(), times, mm, part, tones[part], rays[part]));
            }
        }
        return 4;
    }

    /** Share of the rays between two rows that meet a petal; rows are 1 at the top and −1 at the bottom. */
    private static double rays(Setup setup, double top, double bottom, Random random) {
        double right = Math.tan(Math.toRadians(setup.fit().view().horizontalDeg() / 2));
        double up = Math.tan(Math.toRadians(setup.fit().view().verticalDeg() / 2));
        double tilt = Math.toRadians(setup.fit().tiltDeg());
        double thick = (FlowerHead.of(setup.subject(), 1, Stage.FULL).florets().size() > 1 ? 1 : 0.4) * setup.headM();
        double low = setup.lowM() - thick / 2;
        double high = setup.highM() + thick / 2;
        double perM = 0.5 * setup.subject().flowerAreaIndex().typical() / (high - low);
        double nearest = Math.max(0.05, 1.5 * setup.headM());
        while (setup.headM() / (2 * nearest * right) + setup.focus().blurShare(nearest) > 0.2) {
            nearest *= 1.02;
        }
        double met = 0;
        int number = 1200;
        for (int i = 0; i < number; i++) {
            double row = up * (bottom + (top - bottom) * random.nextDouble());
            double column = right * (2 * random.nextDouble() - 1);
            double climbs = row * Math.cos(tilt) - Math.sin(tilt);
            double forward = Math.cos(tilt) + row * Math.sin(tilt);
            double length = Math.sqrt(1 + row * row + column * column);
            double petals = 0;
            for (double depth = nearest; depth * forward < FlowerLayer.FAR_M && setup.fit().heightM() + climbs * depth > 0; depth *= 1.02) {
                double height = setup.fit().heightM() + climbs * depth;
                petals += height > low && height < high ? perM * length * 0.02 * depth : 0;
            }
            met += 1 - Math.exp(-petals);
        }
        return met / number;
    }
}
