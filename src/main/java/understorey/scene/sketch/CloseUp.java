package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.List;
import understorey.plan.FieldGuide;
import understorey.scene.Drawing.Curves;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Drawing.Spots;
import understorey.scene.Seed;

/** The plant that a close picture is framed for: its head petal by petal, as high as it grows or as it is not cut off. */
final class CloseUp {

    private static final int MOST_FLORETS = 14;
    private static final double FOLDS_PX = 110;

    private final Setup setup;
    private final Perspective perspective;
    private final Seed seed;
    private final double px;

    CloseUp(Setup setup, Perspective perspective, Seed seed) {
        this.setup = setup;
        this.perspective = perspective;
        this.seed = seed;
        px = setup.headM() * perspective.pxPerM(setup.fit().distanceM());
    }

    List<Mark> marks() {
        double distance = setup.fit().distanceM();
        double ahead = perspective.aheadOnAxisM(distance);
        double above = (setup.lowM() + setup.highM()) / 2;
        double y = perspective.y(ahead, above, perspective.depthM(ahead, above));
        double room = Math.min(px, perspective.height) / 2 * 0.999;
        double whole = Math.max(room, Math.min(perspective.height - room, y));
        above += (y - whole) / perspective.pxPerM(distance);
        double x = perspective.width / 2;
        double footDepth = Math.max(Perspective.LEAST_DEPTH_M, perspective.depthM(ahead, 0));
        double footY = perspective.y(ahead, Math.min(0, above - setup.lowM()), footDepth);
        double aboveDeg = Math.max(-30, Math.min(70, setup.fit().tiltDeg()));
        FieldGuide guide = setup.subject().guide();
        if (guide != null && guide.form() == FieldGuide.Form.CAP) {
            return Toadstool.marks(x, whole, px, Math.min(footY, perspective.height + 20), seed);
        }
        FlowerHead head = FlowerHead.of(setup.subject(), MOST_FLORETS, seed);
        Floret.View view = Floret.View.of(x, whole, px / FlowerHead.WIDTH, aboveDeg);
        List<Mark> marks = new ArrayList<>();
        stem(head, view, x, Math.min(footY, perspective.height + 60), marks);
        head.florets().forEach(floret -> floret(floret, view, head, marks));
        return marks;
    }

    private void stem(FlowerHead head, Floret.View view, double x, double footY, List<Mark> marks) {
        List<List<Point>> stem = new ArrayList<>();
        Point top = view.point(head.arch().isEmpty() ? new Floret.Vector(0, -1.2, 0) : head.arch().get(0));
        stem.add(List.of(new Point(x + 0.05 * (footY - top.y()), footY), new Point(top.x() + 0.01 * (footY - top.y()), (top.y() + footY) / 2), top));
        if (!head.arch().isEmpty()) {
            stem.add(head.arch().stream().map(view::point).toList());
        }
        marks.add(new Curves("stem", Math.max(1.5, 0.034 * px), stem));
        if (head.stalks()) {
            marks.add(new Curves("stem", Math.max(0.8, 0.014 * px), head.florets().stream().map(floret -> stalk(floret, view, top)).toList()));
        }
    }

    private static List<Point> stalk(Floret floret, Floret.View view, Point from) {
        Point to = view.point(floret.at());
        return List.of(from, new Point(from.x() + 0.6 * (to.x() - from.x()), from.y() + 0.4 * (to.y() - from.y())), to);
    }

    private void floret(Floret floret, Floret.View view, FlowerHead head, List<Mark> marks) {
        boolean rear = floret.at().z() < -0.2 * FlowerHead.WIDTH / 2 && head.florets().size() > 4;
        List<List<Point>> petals = floret.petals(view);
        if (floret.cut().petals <= 6 && px > FOLDS_PX && !rear && head.florets().size() == 1) {
            petals.forEach(petal -> marks.add(new Curves("petal-edged", 0, List.of(petal))));
        } else {
            marks.add(new Curves(rear ? "petal-rear" : "petal-edged", 0, petals));
        }
        if (px > FOLDS_PX && !rear) {
            marks.add(new Curves("fold", 0, floret.folds(view)));
        }
        if (floret.cut().petals > 0 && floret.cut() != Floret.Cut.HANGING && view.near(floret.axis()) > -0.1) {
            eye(floret, view, head.florets().size() == 1, marks);
        }
    }

    /** The middle of a flower: an eye, and stamens round it. */
    private void eye(Floret floret, Floret.View view, boolean single, List<Mark> marks) {
        Point middle = view.point(floret.at());
        double radius = floret.size() * view.scale();
        boolean rays = floret.cut() == Floret.Cut.RAY;
        if (px > FOLDS_PX && !rays) {
            List<Point> stamens = new ArrayList<>();
            int number = single ? 16 : 6;
            for (int i = 0; i < number; i++) {
                double angle = 2 * Math.PI * (i + 0.5) / number + floret.turn();
                double far = radius * (single && i % 2 == 0 ? 0.18 : 0.3);
                stamens.add(new Point(middle.x() + far * Math.cos(angle), middle.y() + far * 0.75 * Math.sin(angle) - 0.1 * radius));
            }
            marks.add(new Spots("stamen", Math.max(1, 0.07 * radius), stamens));
        }
        marks.add(new Spots("eye", (rays ? 0.6 : single ? 0.3 : 0.2) * radius, List.of(middle)));
        if (rays) {
            marks.add(new Spots("eye-dark", 0.3 * radius, List.of(middle)));
        }
    }
}
