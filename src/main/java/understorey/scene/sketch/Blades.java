package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import understorey.scene.Drawing.Curves;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Seed;

/**
 * What grows right before the camera: leaves one by one, each from its foot over its arch to its tip by projection, and the
 * stems of the nearest heads. Their number and the arch are by eye.
 */
final class Blades {

    private static final int MOST_BLADES = 66;
    private static final int LEAST_IN_STRIP = 4;
    private static final int MOST_STEMS = 44;
    private static final double STEM_PX = 9;
    private static final double STRIP = 0.12;
    /** Stems lean aside by up to half this share of their height: by eye. */
    private static final double LEAN = 0.3;
    private static final List<String> TONES = List.of("leaf-dark", "leaf-shade", "leaf-light");

    private record Blade(double depthM, int tone, List<Point> outline) {
    }

    private final Setup setup;
    private final Perspective perspective;
    private final Seed seed;
    private final double lengthM;
    private final int most;

    Blades(Setup setup, Perspective perspective, Seed seed, double share) {
        most = (int) (share * MOST_BLADES);
        this.setup = setup;
        this.perspective = perspective;
        this.seed = seed;
        lengthM = Math.max(0.06, Math.min(0.3, 0.27 * (setup.lowM() + setup.highM())));
    }

    /** Far ones first, in layers of depth; the stems between them. */
    List<Mark> marks(List<Carpet.Head> heads) {
        List<Blade> blades = blades();
        List<Mark> marks = new ArrayList<>();
        stems(heads, marks);
        int layers = blades.isEmpty() ? 0 : 3;
        for (int layer = 0; layer < layers; layer++) {
            List<Blade> here = blades.subList(layer * blades.size() / layers, (layer + 1) * blades.size() / layers);
            for (int tone = 0; tone < TONES.size(); tone++) {
                int wanted = tone;
                Trunks.curves(TONES.get(tone), here.stream().filter(blade -> blade.tone() == wanted).map(Blade::outline).toList(), 0, marks);
            }
        }
        return marks;
    }

    private List<Blade> blades() {
        List<Blade> blades = new ArrayList<>();
        double perM2 = 6 / (lengthM * lengthM);
        double ahead = Math.max(perspective.nearestAheadM(), setup.close() ? setup.sharpFromM() : 0.12);
        for (int strip = 0; strip < 60 && blades.size() < most; strip++) {
            double thick = STRIP * Math.max(0.15, perspective.distanceM(ahead, 0));
            double depth = perspective.depthM(ahead + thick / 2, lengthM / 2);
            if (depth > 0.12) {
                if (Sward.wideM(setup) * perspective.pxPerM(depth) < Sward.MOST_PX) {
                    break;
                }
                double wide = 2 * perspective.halfWidthM(depth) + lengthM;
                int number = (int) Math.min(40, Math.max(LEAST_IN_STRIP, perM2 * wide * thick) + seed.share(strip, 71));
                for (int i = 0; i < number; i++) {
                    int index = strip * 211 + i;
                    Blade blade = blade(index, (seed.share(index, 72) - 0.5) * wide, ahead + thick * seed.share(index, 73));
                    if (blade != null) {
                        blades.add(blade);
                    }
                }
            }
            ahead += thick;
        }
        blades.sort(Comparator.comparingDouble(Blade::depthM).reversed());
        return blades;
    }

    private @Nullable Blade blade(int index, double rightM, double aheadM) {
        double turn = 2 * Math.PI * seed.share(index, 74);
        double length = lengthM * (0.7 + 0.5 * seed.share(index, 75));
        double reach = length * (0.35 + 0.45 * seed.share(index, 76));
        double[] foot = at(rightM, aheadM, 0);
        double[] arch = at(rightM + 0.45 * reach * Math.cos(turn), aheadM + 0.45 * reach * Math.sin(turn), 0.85 * length);
        double[] tip = at(rightM + reach * Math.cos(turn), aheadM + reach * Math.sin(turn), length * (0.3 + 0.6 * seed.share(index, 77)));
        if (foot[2] < 0.1 || arch[2] < 0.1 || tip[2] < 0.1) {
            return null;
        }
        double half = 0.065 * length * perspective.pxPerM(arch[2]);
        double dx = tip[0] - foot[0];
        double dy = tip[1] - foot[1];
        double long_ = Math.max(1, Math.hypot(dx, dy));
        double asideX = -dy / long_ * 2 * half;
        double asideY = dx / long_ * 2 * half;
        double bellyX = 2 * arch[0] - (foot[0] + tip[0]) / 2;
        double bellyY = 2 * arch[1] - (foot[1] + tip[1]) / 2;
        boolean before = foot[2] < setup.sharpFromM();
        int tone = before ? (int) (2 * seed.share(index, 78)) % 2 : (int) (2.99 * seed.share(index, 78));
        double top = Math.min(Math.min(foot[1], tip[1]), bellyY - Math.abs(asideY));
        double left = Math.min(foot[0], tip[0]) - half;
        double right = Math.max(foot[0], tip[0]) + half;
        if (top > perspective.height || right < 0 || left > perspective.width || 2 * half > perspective.width / 5) {
            return null;
        }
        return new Blade(foot[2], tone, List.of(round(foot[0], foot[1]), round(bellyX + asideX, bellyY + asideY), round(tip[0], tip[1]),
                round(bellyX - asideX, bellyY - asideY), round(foot[0], foot[1])));
    }

    private double[] at(double right, double ahead, double above) {
        double depth = Math.max(0.02, perspective.depthM(ahead, above));
        return new double[] {perspective.x(right, depth), perspective.y(ahead, above, depth), depth};
    }

    private static Point round(double x, double y) {
        return new Point(Math.round(x), Math.round(y));
    }

    private void stems(List<Carpet.Head> heads, List<Mark> marks) {
        Map<Integer, List<List<Point>>> byWidth = new TreeMap<>();
        int number = 0;
        for (Carpet.Head head : heads) {
            if (head.px() < STEM_PX || number >= MOST_STEMS) {
                break;
            }
            double leanM = LEAN * (seed.share(number, 80) - 0.5) * (setup.lowM() + setup.highM());
            double[] foot = at(head.rightM() + leanM, head.aheadM(), 0);
            double footY = Math.min(foot[1], perspective.height + 8);
            double footX = head.x() + (foot[0] - head.x()) * (footY - head.y()) / Math.max(1, foot[1] - head.y());
            double bend = (seed.share(number, 79) - 0.5) * 0.12 * (footY - head.y());
            byWidth.computeIfAbsent(Math.max(1, (int) Math.round(0.07 * head.px())), any -> new ArrayList<>()).add(List.of(round(head.x(), head.y()),
                    round((head.x() + footX) / 2 + bend, (head.y() + footY) / 2), round(footX, footY)));
            number++;
        }
        byWidth.forEach((width, stems) -> marks.add(new Curves("stem", width, stems)));
    }
}
