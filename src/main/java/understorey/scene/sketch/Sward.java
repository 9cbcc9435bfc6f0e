package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import understorey.optics.FlowerLayer;
import understorey.scene.Drawing.Curves;
import understorey.scene.Drawing.Glyph;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Drawing.Stamps;
import understorey.scene.Seed;

/**
 * Leaves on the ground, placed by the seed and projected: tufts from the camera on, and patches of small leaves beyond, until
 * they are too small to see. Their number is by eye, the length of a tuft half the height of the plant.
 */
final class Sward {

    /** A wider tuft is drawn blade by blade. */
    static final double MOST_PX = 46;
    private static final SizeSteps SIZES = new SizeSteps(1.3);
    private static final double LEAST_M = 0.3;
    private static final int PATCHES = 80;
    private static final int LEAVES = 11;
    private static final String DARK = "leaf-dark";
    private static final String SHADE = "leaf-shade";
    private static final String LIGHT = "leaf-light";
    /** The same leaves in all sketches, so that a page defines them once. */
    private static final Seed ALIKE = new Seed(1);

    /** Leaves of one kind: narrower ones than {@code allPx} are thinned out. */
    private record Layer(List<Motif> motifs, double wideM, double perM2, double strip, double leastPx, double allPx, double mostPx, int most) {
    }

    private final Setup setup;
    private final Perspective perspective;
    private final Trunks trunks;
    private final Seed seed;
    private double endM;

    Sward(Setup setup, Perspective perspective, Trunks trunks, Seed seed) {
        this.setup = setup;
        this.perspective = perspective;
        this.trunks = trunks;
        this.seed = seed;
    }

    /** Width of a tuft, metres. */
    static double wideM(Setup setup) {
        return Math.max(0.06, Math.min(0.3, 0.3 * (setup.lowM() + setup.highM())));
    }

    List<Mark> tufts(double fromM, int most) {
        double wideM = wideM(setup);
        return marks(new Layer(List.of(Motif.TUFT, Motif.TUFT_LEFT), wideM, 1.5 / (wideM * wideM), 0.1, 4.5, 13, MOST_PX, most),
                Math.max(fromM, perspective.nearestAheadM()));
    }

    /** From where the tufts end. */
    List<Mark> patches() {
        double wideM = 7 * wideM(setup);
        return marks(new Layer(List.of(Motif.SWARD), wideM, 0.5 / (wideM * wideM), 0.16, 16, 60, 230, PATCHES), Math.max(LEAST_M, endM));
    }

    private List<Mark> marks(Layer layer, double fromM) {
        Map<Integer, List<List<Point>>> bySize = new TreeMap<>();
        double ahead = fromM;
        int placed = 0;
        for (int strip = 0; strip < 200 && placed < layer.most() && ahead < FlowerLayer.FAR_M; strip++) {
            double thick = layer.strip() * Math.max(0.1, perspective.distanceM(ahead, 0));
            double depth = perspective.depthM(ahead + thick / 2, 0);
            if (depth > 0.05) {
                double px = layer.wideM() * perspective.pxPerM(depth);
                if (px < layer.leastPx()) {
                    break;
                }
                placed += px > layer.mostPx() ? 0 : strip(layer, strip, ahead, thick, depth, bySize.computeIfAbsent(
                        SIZES.of(px), any -> layer.motifs().stream().<List<Point>>map(motif -> new ArrayList<>()).toList()));
            }
            ahead += thick;
        }
        endM = ahead;
        List<Mark> marks = new ArrayList<>();
        layer.motifs().forEach(motif -> marks.add(new Glyph(motif.id, motif == Motif.SWARD ? patch() : tuft(motif))));
        bySize.forEach((size, kinds) -> {
            for (int kind = 0; kind < kinds.size(); kind++) {
                if (!kinds.get(kind).isEmpty()) {
                    marks.add(new Stamps(layer.motifs().get(kind).id, SIZES.px(size), 1, kinds.get(kind)));
                }
            }
        });
        return marks;
    }

    private int strip(Layer layer, int strip, double ahead, double thick, double depth, List<List<Point>> kinds) {
        double wide = 2 * perspective.halfWidthM(depth) + layer.wideM();
        double px = layer.wideM() * perspective.pxPerM(depth);
        int number = (int) Math.min(layer.most(), layer.perM2() * wide * thick * Math.min(1, px / layer.allPx()) + seed.share(strip, 31));
        int placed = 0;
        for (int i = 0; i < number; i++) {
            int index = strip * 701 + i;
            double at = ahead + thick * (1 - (i + 0.5) / number);
            double atDepth = perspective.depthM(at, 0);
            double x = perspective.x((seed.share(index, 32) - 0.5) * wide, atDepth);
            double y = perspective.y(at, 0, atDepth);
            if (perspective.inFrame(x, y, px / 2) && !trunks.hides(x, y, atDepth)) {
                kinds.get(index % kinds.size()).add(new Point(Math.round(x), Math.round(y)));
                placed++;
            }
        }
        return placed;
    }

    /** Blades from one foot, dark ones behind. */
    private static List<Mark> tuft(Motif motif) {
        List<Mark> marks = new ArrayList<>();
        List<String> tones = List.of(DARK, SHADE, LIGHT);
        double[][] angles = motif == Motif.TUFT ? new double[][] {{-150, -60}, {-105}, {-128, -35}}
                : new double[][] {{-120, -30}, {-70, -158}, {-95}};
        for (int tone = 0; tone < tones.size(); tone++) {
            List<List<Point>> blades = new ArrayList<>();
            for (double angle : angles[tone]) {
                blades.add(blade(Math.toRadians(angle), 4.6 + 0.8 * ALIKE.share((int) angle + 200, 33)));
            }
            marks.add(new Curves(tones.get(tone), 0, blades));
        }
        return marks;
    }

    private static List<Point> blade(double angle, double length) {
        double tipX = length * Math.cos(angle);
        double tipY = length * Math.sin(angle) * 0.75;
        double asideX = -Math.sin(angle) * length * 0.22;
        double asideY = Math.cos(angle) * length * 0.22;
        Point foot = new Point(0, 1);
        return List.of(foot, new Point(tipX * 0.45 + asideX, tipY * 0.6 + asideY), new Point(tipX, tipY),
                new Point(tipX * 0.45 - asideX, tipY * 0.6 - asideY), foot);
    }

    private static List<Mark> patch() {
        List<List<Point>> light = new ArrayList<>();
        List<List<Point>> shade = new ArrayList<>();
        for (int i = 0; i < LEAVES; i++) {
            double x = -4.6 + 9.2 * (i + ALIKE.share(i, 37)) / LEAVES;
            double y = 2.4 * (ALIKE.share(i, 38) - 0.5);
            double lean = 1.6 * (ALIKE.share(i, 39) - 0.5);
            (i % 3 == 0 ? light : shade).add(List.of(new Point(x, y), new Point(x + lean - 0.2, y - 0.6), new Point(x + lean, y - 0.65),
                    new Point(x + lean + 0.3, y - 0.2), new Point(x, y)));
        }
        return List.of(new Curves(SHADE, 0, shade), new Curves(LIGHT, 0, light));
    }
}
