package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.List;
import understorey.scene.Drawing.Curves;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Drawing.Spots;
import understorey.scene.Seed;

/** A fungus with a cap: its stalk with a ring, its gills, its cap with warts. Shapes are drawn by eye. */
final class Toadstool {

    private Toadstool() {
    }

    static List<Mark> marks(double x, double y, double px, double footY, Seed seed) {
        double r = px / 2;
        double foot = Math.min(footY, y + 2.6 * r);
        List<Mark> marks = new ArrayList<>();
        marks.add(new Curves("wart", 0, List.of(List.of(new Point(x - 0.2 * r, y), new Point(x - 0.17 * r, (y + foot) / 2),
                new Point(x - 0.34 * r, foot),
                new Point(x, foot + 0.2 * r), new Point(x + 0.34 * r, foot), new Point(x + 0.17 * r, (y + foot) / 2), new Point(x + 0.2 * r, y)))));
        marks.add(new Curves("petal-rear", 0, List.of(List.of(new Point(x - r, y + 0.1 * r), new Point(x, y + 0.55 * r),
                new Point(x + r, y + 0.1 * r),
                new Point(x, y - 0.2 * r), new Point(x - r, y + 0.1 * r)))));
        marks.add(new Curves("petal", 0, List.of(List.of(new Point(x - r, y + 0.12 * r), new Point(x - 0.95 * r, y - 0.75 * r),
                new Point(x, y - 0.78 * r),
                new Point(x + 0.95 * r, y - 0.75 * r), new Point(x + r, y + 0.12 * r), new Point(x, y + 0.38 * r), new Point(x - r, y + 0.12 * r)))));
        List<Point> warts = new ArrayList<>();
        for (int i = 0; i < 14; i++) {
            double far = 0.86 * Math.sqrt((i + 0.4) / 14);
            double angle = i * FlowerHead.GOLDEN + seed.share(1, 58);
            warts.add(new Point(x + far * r * Math.cos(angle), y - 0.25 * r + 0.42 * far * r * Math.sin(angle)));
        }
        marks.add(new Spots("wart-spot", 0.13 * r, warts));
        return marks;
    }
}
