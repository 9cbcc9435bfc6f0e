package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.optics.FlowerLayer;
import understorey.optics.Projection;
import understorey.scene.Drawing.Area;
import understorey.scene.Drawing.Box;
import understorey.scene.Drawing.Curves;
import understorey.scene.Drawing.Glow;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Drawing.Stop;
import understorey.scene.Drawing.Wash;
import understorey.scene.Seed;
import understorey.sky.Skyline;

/** What lies behind the carpet: sky and haze, the glow round the sun, the far wood, and the tone of the ground. */
final class Backdrop {

    private static final int FAR_TREES = 26;
    private static final int MIDDLE_TREES = 14;
    private static final double FAR_TRUNK_M = 0.36;
    /** Distance of the leaves that close a wood, metres. */
    private static final double LEAVES_M = 45;
    /** Share of full leaf from which far leaves are drawn, and up to which land shows through: our choice, by eye. */
    private static final double LEAST_LEAVES = 0.1;
    private static final double THIN_LEAVES = 0.35;
    private static final int LAND_POINTS = 16;
    /** Distance over which air veils two thirds of what is behind it, metres: our choice, by eye; mist is nearer. */
    private static final double HAZE_M = 45;
    private static final double MIST_M = 22;
    private static final double MOST_HAZE = 0.6;

    private final Setup setup;
    private final Perspective perspective;
    private final Seed seed;
    private final Trunks trunks;
    private final double horizonY;

    Backdrop(Setup setup, Perspective perspective, Seed seed, Trunks trunks, double horizonY) {
        this.trunks = trunks;
        this.setup = setup;
        this.perspective = perspective;
        this.seed = seed;
        this.horizonY = Math.max(0, Math.min(perspective.height, horizonY));
    }

    /** Sky first, ground last. */
    List<Mark> marks(Projection.@Nullable Place sun) {
        List<Mark> marks = new ArrayList<>(List.of(new Box("sky", 0, 0, perspective.width, perspective.height)));
        if (setup.closest()) {
            dissolved(marks);
            return marks;
        }
        if (horizonY > 2) {
            marks.add(new Wash("haze", 0, horizonY, List.of(new Stop(0, 0.7), new Stop(0.8, 0.05))));
            if (sun != null) {
                marks.add(new Glow("glow", perspective.point(sun), Math.round(perspective.width / 2)));
            }
            land(marks);
            farWood(marks);
        }
        if (horizonY < perspective.height) {
            marks.add(new Box("ground", 0, horizonY, perspective.width, perspective.height - horizonY));
            haze(marks);
            shade(marks);
        }
        return marks;
    }

    /** Behind a head that fills the frame: light above, leaves below, and what trunks leave after the blur. */
    private void dissolved(List<Mark> marks) {
        double middle = Math.max(0.15, Math.min(0.75, horizonY / perspective.height));
        marks.add(new Wash("leaf-wash", 0, perspective.height, List.of(new Stop(0, 0.12), new Stop(middle, 0.5), new Stop(1, 1))));
        for (int i = 0; setup.trees() && i < 4; i++) {
            double x = Math.round((i + 0.2 + 0.6 * seed.share(i, 21)) / 4 * perspective.width);
            double half = Math.round((0.03 + 0.05 * seed.share(i, 22)) * perspective.width);
            for (double share : new double[] {1, 0.85, 0.7, 0.55, 0.4}) {
                marks.add(new Box("trunk-dissolved", x - share * half, 0, 2 * share * half, perspective.height));
            }
        }
    }

    private void farWood(List<Mark> marks) {
        if (setup.trees()) {
            far("far-wood", FAR_TREES, 75, 130, 16, marks);
            canopy(marks);
            far("middle-wood", MIDDLE_TREES, FlowerLayer.FAR_M - 8, 75, 17, marks);
        }
        List<Point> brush = new ArrayList<>(List.of(new Point(0, Math.round(horizonY) + 2)));
        double x = 0;
        for (int i = 0; x < perspective.width; i++) {
            double wide = 14 + Math.round(26 * seed.share(i, 18));
            brush.add(new Point(x + wide / 2, Math.round(horizonY) - 3 - Math.round(7 * seed.share(i, 19))));
            brush.add(new Point(x + wide, Math.round(horizonY) + 1));
            x += wide;
        }
        marks.add(new Curves("brush", 0, List.of(brush)));
    }

    /** Trees of one width as far as they are in the middle, and no more of them than grow there. */
    private void far(String style, int most, double fromM, double toM, int purpose, List<Mark> marks) {
        double middleM = (fromM + toM) / 2;
        double depth = Math.max(1, perspective.depthM(middleM, 0));
        double number = 2.1 * perspective.halfWidthM(depth) * (toM - fromM) / (trunks.spacingM() * trunks.spacingM());
        double width = Math.max(0.7, Math.min(9, FAR_TRUNK_M * perspective.pxPerM(depth)));
        marks.add(new Curves(style, Math.round(2 * width) / 2.0, stems((int) Math.min(most, Math.max(3, number)), fromM, toM, purpose)));
    }

    /** Leaves of far trees close the wood towards its top. */
    private void canopy(List<Mark> marks) {
        double depth = perspective.depthM(LEAVES_M, 0);
        double base = perspective.y(LEAVES_M, 0.35 * trunks.treesM(), Math.max(1, depth));
        double leaves = setup.around().leaves();
        if (leaves > LEAST_LEAVES && base > 4 && depth > 1) {
            double foot = Math.min(horizonY, base);
            marks.add(new Wash("canopy-wash", 0, foot, List.of(new Stop(0, 0.75 * leaves), new Stop(0.7, 0.5 * leaves), new Stop(1, 0))));
        }
    }

    /** Land over the level horizon, where no leaves hide it. */
    private void land(List<Mark> marks) {
        Skyline skyline = setup.around().skyline();
        Double facingDeg = setup.fit().intent().shot().facingDeg();
        if (skyline == null || facingDeg == null || setup.trees() && setup.around().leaves() > THIN_LEAVES) {
            return;
        }
        Projection projection = Projection.of(facingDeg, setup.fit().tiltDeg(), setup.fit().view());
        double half = setup.fit().view().horizontalDeg() / 2;
        List<Point> edge = new ArrayList<>(List.of(new Point(0, horizonY)));
        for (int i = 0; i <= LAND_POINTS; i++) {
            double bearing = facingDeg + (2.0 * i / LAND_POINTS - 1) * 1.1 * half;
            Projection.Place place = projection.place(bearing, skyline.angleDeg(bearing));
            if (place != null) {
                Point point = perspective.point(place);
                edge.add(new Point(point.x(), Math.min(horizonY, point.y())));
            }
        }
        edge.add(new Point(perspective.width, horizonY));
        marks.add(new Area("far-land", edge));
    }

    private List<List<Point>> stems(int number, double fromM, double toM, int purpose) {
        List<List<Point>> stems = new ArrayList<>();
        for (int i = 0; i < number; i++) {
            double ahead = fromM + (toM - fromM) * seed.share(i, purpose);
            double depth = perspective.depthM(ahead, 0);
            double topDepth = perspective.depthM(ahead, 26);
            if (depth < 1 || topDepth < depth / 4) {
                continue;
            }
            double right = (seed.share(i, purpose + 20) - 0.5) * 2.1 * perspective.halfWidthM(depth);
            double footY = Math.min(horizonY + 1, perspective.y(ahead, 0, depth));
            double topY = perspective.y(ahead, 26, topDepth);
            double footX = perspective.x(right, depth);
            double topX = perspective.x(right, topDepth);
            double share = topY < -4 ? (footY + 4) / (footY - topY) : 1;
            double x = footX + share * (topX - footX);
            double y = footY + share * (topY - footY);
            stems.add(List.of(new Point(Math.round(footX), Math.round(footY)),
                    new Point(Math.round((footX + x) / 2 + 2 * seed.share(i, 20) - 1), Math.round((footY + y) / 2)),
                    new Point(Math.round(x), Math.round(y))));
        }
        return stems;
    }

    /** The nearer the ground, the more of it is in the shade of its own leaves; most for a low or a close camera. */
    private void shade(List<Mark> marks) {
        double most = setup.close() ? 0.75 : perspective.aboveM() < 1.2 * setup.highM() ? 0.65 : 0.12;
        marks.add(new Wash("shade-wash", horizonY, perspective.height, List.of(new Stop(0, setup.close() ? 0.45 : 0), new Stop(1, most))));
    }

    /** Haze over the ground by its distance. */
    private void haze(List<Mark> marks) {
        double reachM = setup.air().mist() ? MIST_M : HAZE_M;
        List<Stop> stops = new ArrayList<>();
        for (double share : new double[] {0, 0.04, 0.12, 0.3, 0.6, 1}) {
            double y = horizonY + share * (perspective.height - horizonY);
            stops.add(new Stop(share, MOST_HAZE * (1 - Math.exp(-perspective.groundM(y) / reachM))));
        }
        marks.add(new Wash("haze", horizonY, perspective.height, stops));
    }
}
