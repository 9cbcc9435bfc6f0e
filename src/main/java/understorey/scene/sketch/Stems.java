package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import understorey.scene.Drawing.Curves;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Seed;

/** The stems of the nearest sharp heads, from the head to its foot by projection; how they lean and bend is by eye. */
final class Stems {

    private static final int MOST = 44;
    private static final double LEAST_PX = 9;
    /** Stems lean aside by up to half this share of their height. */
    private static final double LEAN = 0.3;
    private static final double BEND = 0.12;

    private Stems() {
    }

    /** Near heads come first. */
    static List<Mark> marks(Setup setup, Perspective perspective, Seed seed, List<Carpet.Head> heads) {
        Map<Integer, List<List<Point>>> byWidth = new TreeMap<>();
        int number = 0;
        for (Carpet.Head head : setup.fungus() ? List.<Carpet.Head>of() : heads) {
            if (head.px() < LEAST_PX || number >= MOST) {
                break;
            }
            if (setup.focus().blurShare(head.depthM()) * perspective.width > Carpet.KEEPS_SHAPE * head.px()) {
                continue;
            }
            double leanM = LEAN * (seed.share(number, 80) - 0.5) * (setup.lowM() + setup.highM());
            double depth = Math.max(0.02, perspective.depthM(head.aheadM(), 0));
            double bottom = perspective.y(head.aheadM(), 0, depth);
            double footY = Math.min(bottom, perspective.height + 8);
            double footX = head.x() + (perspective.x(head.rightM() + leanM, depth) - head.x()) * (footY - head.y()) / Math.max(1, bottom - head.y());
            double bend = (seed.share(number, 79) - 0.5) * BEND * (footY - head.y());
            byWidth.computeIfAbsent(Math.max(1, (int) Math.round(0.07 * head.px())), any -> new ArrayList<>()).add(List.of(round(head.x(), head.y()),
                    round((head.x() + footX) / 2 + bend, (head.y() + footY) / 2), round(footX, footY)));
            number++;
        }
        List<Mark> marks = new ArrayList<>();
        byWidth.forEach((width, stems) -> marks.add(new Curves("stem", width, stems)));
        return marks;
    }

    private static Point round(double x, double y) {
        return new Point(Math.round(x), Math.round(y));
    }
}
