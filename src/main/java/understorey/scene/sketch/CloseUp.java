package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.List;
import understorey.plan.Subject;
import understorey.scene.Drawing.Curves;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Drawing.Spots;
import understorey.scene.Seed;

/**
 * The plant that a close picture is framed for: its head petal by petal from the side that the camera sees, as high as it
 * grows or as it is not cut off. Of a stand that is not in full flower, the head has buds or faded flowers.
 */
final class CloseUp {

    /** Wider heads have edges and veins. */
    private static final double VEINS_PX = 110;
    private static final String EDGED = "-edged";
    private static final int MOST_DROPS = 14;
    /** Share of open flowers from which one is found easily: our choice. */
    private static final double SOME = 0.2;

    private final Setup setup;
    private final Perspective perspective;
    private final Seed seed;
    private final double px;
    private final List<Mark> marks = new ArrayList<>();

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
        if (setup.fungus()) {
            return Toadstool.marks(x, whole, px, Math.min(footY, perspective.height + 20), seed);
        }
        FlowerHead head = FlowerHead.of(setup.subject(), 1, chosen(setup) ? Stage.FULL : setup.stage());
        Floret.View view = Floret.View.of(x, whole, larger() * px / FlowerHead.WIDTH, Math.max(-60, Math.min(75, setup.fit().tiltDeg())));
        leaves(head, view);
        stem(head, view, Math.min(footY, perspective.height + 60));
        head.rearFirst(view).forEach(floret -> floret(floret, view));
        if (setup.air().drops()) {
            drops(head, view);
        }
        return marks;
    }

    /** True when an open flower is framed among others that are not, as a photographer does while there are some. */
    static boolean chosen(Setup setup) {
        Integer flowers = setup.subject().flowersOpen();
        double open = setup.stage().open();
        return (flowers == null || flowers == 1) && open < 1 && open >= SOME;
    }

    /** Where the frame holds one flower, the others of its head lie beyond its edges. */
    private double larger() {
        Subject subject = setup.subject();
        return setup.partOfHead() && subject.flowersOpen() != null ? Math.sqrt(subject.flowersOpen()) : 1;
    }

    private void leaves(FlowerHead head, Floret.View view) {
        Petals petals = new Petals(px > VEINS_PX ? EDGED : "", marks);
        head.leaves().forEach(leaf -> petals.add(leaf.petals(view, false)));
        petals.end();
    }

    private void stem(FlowerHead head, Floret.View view, double footY) {
        List<List<Point>> stem = new ArrayList<>(List.of(head.stem().stream().map(view::point).toList()));
        Point top = stem.get(0).get(0);
        if (footY > top.y()) {
            stem.add(List.of(top, new Point(top.x() + 0.01 * (footY - top.y()), (top.y() + footY) / 2),
                    new Point(top.x() + 0.06 * (footY - top.y()), footY)));
        }
        marks.add(new Curves("stem", Math.max(1.5, 0.034 * px), stem));
        if (head.florets().size() > 1) {
            marks.add(new Curves("stem", Math.max(0.8, 0.014 * px), head.florets().stream().map(floret -> floret.stalk(view)).toList()));
        }
    }

    private void floret(Floret floret, Floret.View view) {
        Petals petals = new Petals(px > VEINS_PX ? EDGED : "", marks);
        List<Floret.Petal> seen = floret.petals(view, false);
        petals.add(seen);
        petals.end();
        boolean open = view.near(floret.axis()) > -0.1 && !floret.faded();
        if (floret.blossom().veins() && px > VEINS_PX && open) {
            marks.add(new Curves("fold", 0, seen.stream().filter(petal -> petal.tone().equals("petal")).map(Floret.Petal::vein).toList()));
        }
        double radius = floret.size() * view.scale();
        List<Point> stamens = floret.about(floret.blossom().stamens(), view);
        if (px > VEINS_PX && !stamens.isEmpty() && !floret.faded() && (open || floret.blossom().stamens()[2] > 0.6)) {
            marks.add(new Spots("stamen", Math.max(1, 0.075 * radius), stamens));
        }
        if (open && view.near(floret.axis()) > 0.15) {
            middle(floret, view, radius);
        }
    }

    private void middle(Floret floret, Floret.View view, double radius) {
        Point middle = view.point(floret.at().plus(0.08 * floret.size(), floret.axis()));
        Blossom blossom = floret.blossom();
        if (blossom.eye() > 0) {
            marks.add(new Spots("eye", blossom.eye() * radius, List.of(middle)));
        }
        if (blossom.disc() > 0) {
            marks.add(new Spots("eye-dark", blossom.disc() * radius, List.of(middle)));
        }
        if (blossom.specks().length > 0) {
            marks.add(new Spots("eye-dark", Math.max(1, 0.09 * radius), floret.about(blossom.specks(), view)));
        }
    }

    /** Drops hang from the lowest points of petals, nearest ones first. */
    private void drops(FlowerHead head, Floret.View view) {
        List<Point> drops = new ArrayList<>();
        List<Point> lights = new ArrayList<>();
        double wide = Math.max(4, Math.min(14, 0.055 * px));
        List<Floret.Petal> petals = head.florets().stream().flatMap(floret -> floret.petals(view, false).stream()).toList();
        int step = Math.max(1, petals.size() / MOST_DROPS);
        for (int i = (int) (seed.share(1, 57) * step); i < petals.size(); i += step) {
            List<Point> outline = petals.get(i).outline();
            Point lowest = outline.stream().reduce((one, other) -> outline.indexOf(other) % 2 == 0 && other.y() > one.y() ? other : one)
                    .orElseThrow();
            drops.add(new Point(lowest.x(), lowest.y() + 0.25 * wide));
            lights.add(new Point(lowest.x() - 0.18 * wide, lowest.y() + 0.08 * wide));
        }
        marks.add(new Spots("drop", wide, drops));
        marks.add(new Spots("drop-light", 0.4 * wide, lights));
    }
}
