package understorey.scene.chart;

import java.util.ArrayList;
import java.util.List;
import understorey.scene.Drawing.Hatch;
import understorey.scene.Drawing.Point;
import understorey.scene.Lettering.Stretch;

/** Textures as plain strokes, which print on any paper and need no pattern that two drawings of a page would share. */
final class Hatching {

    private static final double SHORTEST = 4;
    /** Between a word and the strokes around it. */
    private static final double MARGIN = 3;

    private Hatching() {
    }

    /** Level strokes a spacing apart in a box, px, from one spacing below its top; none in the places left plain, in order from the left. */
    static Hatch ruled(String style, Stretch box, double spacing, List<Stretch> plain) {
        List<Point> ends = new ArrayList<>();
        for (double y = box.top() + spacing; y < box.bottom(); y += spacing) {
            double from = box.left();
            for (Stretch place : plain) {
                boolean meets = y > place.top() - MARGIN && y < place.bottom() + MARGIN
                        && place.right() > box.left() && place.left() < box.right();
                if (meets) {
                    stroke(from, place.left() - MARGIN, y, ends);
                    from = Math.max(from, place.right() + MARGIN);
                }
            }
            stroke(from, box.right(), y, ends);
        }
        return new Hatch(style, ends);
    }

    private static void stroke(double from, double to, double y, List<Point> ends) {
        if (to - from >= SHORTEST) {
            ends.add(new Point(from, y));
            ends.add(new Point(to, y));
        }
    }

    /** Strokes that rise to the right at 45°, a spacing apart along the foot of the box, px. */
    static Hatch slanted(String style, Stretch box, double spacing) {
        double height = box.bottom() - box.top();
        List<Point> ends = new ArrayList<>();
        for (double foot = box.left() - height + spacing; foot < box.right(); foot += spacing) {
            double from = Math.max(foot, box.left());
            double to = Math.min(foot + height, box.right());
            if (to - from > 1) {
                ends.add(new Point(from, box.bottom() - (from - foot)));
                ends.add(new Point(to, box.bottom() - (to - foot)));
            }
        }
        return new Hatch(style, ends);
    }
}
