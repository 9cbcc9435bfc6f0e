package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import understorey.scene.Drawing.Curves;
import understorey.scene.Drawing.Glyph;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Drawing.Stamps;
import understorey.scene.Seed;

/**
 * Tufts of leaves on the ground, placed by the seed and projected, from the camera to where a tuft is a few pixels wide;
 * beyond, the ground has one tone. Their number is by eye, their length half the height of the plant.
 */
final class Tufts {

    private static final double STEP = 1.3;
    private static final double LEAST_PX = 4.5;
    /** Narrower tufts are thinned out. */
    private static final double ALL_PX = 13;
    /** A wider tuft is drawn blade by blade. */
    static final double MOST_PX = 46;
    private static final double STRIP = 0.1;
    private static final int KINDS = 2;
    private static final List<Motif> MOTIFS = List.of(Motif.TUFT, Motif.TUFT_LEFT);

    private final Perspective perspective;
    private final Trunks trunks;
    /** All sketches have the same tufts, so that a page defines them once. */
    private static final Seed ALIKE = new Seed(1);

    private final Seed seed;
    private final double wideM;
    private final int most;

    Tufts(Setup setup, Perspective perspective, Trunks trunks, Seed seed, int most) {
        this.perspective = perspective;
        this.trunks = trunks;
        this.seed = seed;
        this.most = most;
        wideM = wideM(setup);
    }

    /** Width of a tuft, metres. */
    static double wideM(Setup setup) {
        return Math.max(0.06, Math.min(0.3, 0.6 * (setup.lowM() + setup.highM()) / 2));
    }

    /** Far ones first. */
    List<Mark> marks(double fromM) {
        Map<Integer, List<List<Point>>> bySize = new TreeMap<>();
        double perM2 = 1.5 / (wideM * wideM);
        double ahead = Math.max(fromM, perspective.nearestAheadM());
        int placed = 0;
        for (int strip = 0; strip < 200 && placed < most; strip++) {
            double thick = STRIP * Math.max(0.1, perspective.distanceM(ahead, 0));
            double depth = perspective.depthM(ahead + thick / 2, 0);
            if (depth > 0.05) {
                double px = wideM * perspective.pxPerM(depth);
                if (px < LEAST_PX) {
                    break;
                }
                placed += px > MOST_PX ? 0 : strip(strip, ahead, thick, depth, perM2, bySize.computeIfAbsent((int) Math.round(Math.log(px) / Math.log(STEP)),
                        any -> List.of(new ArrayList<>(), new ArrayList<>())));
            }
            ahead += thick;
        }
        List<Mark> marks = new ArrayList<>();
        for (int kind = 0; kind < KINDS; kind++) {
            marks.add(new Glyph(MOTIFS.get(kind).id, glyph(kind)));
        }
        bySize.forEach((size, kinds) -> {
            for (int kind = 0; kind < KINDS; kind++) {
                if (!kinds.get(kind).isEmpty()) {
                    marks.add(new Stamps(MOTIFS.get(kind).id, Math.pow(STEP, size), 1, kinds.get(kind)));
                }
            }
        });
        return marks;
    }

    private int strip(int strip, double ahead, double thick, double depth, double perM2, List<List<Point>> kinds) {
        double wide = 2 * perspective.halfWidthM(depth) + wideM;
        double px = wideM * perspective.pxPerM(depth);
        int number = (int) Math.min(most, perM2 * wide * thick * Math.min(1, px / ALL_PX) + seed.share(strip, 31));
        int placed = 0;
        for (int i = 0; i < number; i++) {
            int index = strip * 701 + i;
            double at = ahead + thick * (1 - (i + 0.5) / number);
            double atDepth = perspective.depthM(at, 0);
            double x = perspective.x((seed.share(index, 32) - 0.5) * wide, atDepth);
            double y = perspective.y(at, 0, atDepth);
            if (perspective.inFrame(x, y, px / 2) && !trunks.hides(x, y, atDepth)) {
                kinds.get(index % KINDS).add(new Point(Math.round(x), Math.round(y)));
                placed++;
            }
        }
        return placed;
    }

    /** Blades from one foot, dark ones behind. */
    private static List<Mark> glyph(int kind) {
        List<Mark> marks = new ArrayList<>();
        List<String> tones = List.of("leaf-dark", "leaf-shade", "leaf-light");
        double[][] angles = kind == 0 ? new double[][] {{-150, -60}, {-105}, {-128, -35}} : new double[][] {{-120, -30}, {-70, -158}, {-95}};
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
}
