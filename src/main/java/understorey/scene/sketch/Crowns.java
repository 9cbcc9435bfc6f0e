package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import understorey.plan.Foliage;
import understorey.scene.Drawing.Curves;
import understorey.scene.Drawing.Glyph;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Drawing.Spots;
import understorey.scene.Drawing.Stamps;
import understorey.scene.Seed;

/**
 * The crowns of trees, where the frame holds them: sprays of twigs or of leaves between the lowest branches and the top of each
 * tree, to scale, farther ones paler. Their number grows with the leaves of the day; their look is by eye.
 */
final class Crowns {

    private static final double SPRAY_M = 2.6;
    private static final SizeSteps SIZES = new SizeSteps(1.4);
    private static final double LEAST_PX = 7;
    private static final double MOST_PX = 90;
    private static final int MOST = 76;
    private static final double NEAR_M = 26;
    /** Lowest living branches of a tall wood, share of its height: common practice, no source. */
    private static final double BASE = 0.42;
    /** Leaves from which trees break bud, are half in leaf, and in full leaf: half-way between the stages of a canopy. */
    private static final double[] FROM = {0.08, 0.35, 0.77};
    private static final int[] SPRAYS = {3, 4, 5, 8};
    private static final Seed ALIKE = new Seed(3);

    private final Setup setup;
    private final Perspective perspective;
    private final Seed seed;
    private final double topM;
    private final Map<Motif, Map<Integer, List<Point>>> sprays = new EnumMap<>(Motif.class);
    private int placed;

    Crowns(Setup setup, Perspective perspective, Seed seed, double topM) {
        this.setup = setup;
        this.perspective = perspective;
        this.seed = seed;
        this.topM = topM;
    }

    /** How far the leaves are. */
    static Foliage.Stage stage(Setup setup) {
        int stage = 0;
        while (stage < FROM.length && setup.around().leaves() >= FROM[stage]) {
            stage++;
        }
        return Foliage.Stage.values()[stage];
    }

    /** The crown of one tree. */
    void add(int index, double rightM, double aheadM) {
        Double lowest = setup.canopy() == null ? null : setup.canopy().baseM();
        double baseM = lowest == null ? BASE * topM : lowest;
        Foliage.Stage stage = stage(setup);
        for (int i = 0; i < SPRAYS[stage.ordinal()] && placed < MOST; i++) {
            int at = index * 17 + i;
            double above = baseM + (topM - baseM) * seed.share(at, 91);
            double wide = 2.2 * (1.2 - (above - baseM) / (topM - baseM + 1));
            double ahead = aheadM + wide * (seed.share(at, 92) - 0.5) * 2;
            double depth = perspective.depthM(ahead, above);
            if (depth < 2) {
                continue;
            }
            double px = SPRAY_M * perspective.pxPerM(depth);
            double x = perspective.x(rightM + wide * (seed.share(at, 93) - 0.5) * 2, depth);
            double y = perspective.y(ahead, above, depth);
            if (px > LEAST_PX && px < MOST_PX && perspective.inFrame(x, y, px / 2) && setup.focus().blurShare(depth) * perspective.width < px / 3) {
                boolean near = aheadM < NEAR_M;
                boolean bare = stage == Foliage.Stage.LEAFLESS || stage == Foliage.Stage.BUD_BURST && i % 2 == 0
                        || stage == Foliage.Stage.HALF_LEAF && i % 4 == 0;
                Motif motif = bare ? near ? Motif.TWIGS : Motif.FAR_TWIGS : near ? Motif.SPRAY : Motif.FAR_SPRAY;
                sprays.computeIfAbsent(motif, any -> new TreeMap<>()).computeIfAbsent(SIZES.of(px), any -> new ArrayList<>())
                        .add(new Point(Math.round(x), Math.round(y)));
                placed++;
            }
        }
    }

    /** True when some are in the frame. */
    boolean seen() {
        return placed > 0;
    }

    /** Far ones first. */
    List<Mark> marks() {
        List<Mark> marks = new ArrayList<>();
        sprays.forEach((motif, sizes) -> {
            marks.add(new Glyph(motif.id, motif == Motif.SPRAY || motif == Motif.FAR_SPRAY ? leaves(motif) : twigs(motif)));
            sizes.forEach((size, at) -> marks.add(new Stamps(motif.id, SIZES.px(size), 1, at)));
        });
        return marks;
    }

    private List<Mark> leaves(Motif motif) {
        boolean small = stage(setup) == Foliage.Stage.BUD_BURST;
        List<Point> leaves = new ArrayList<>();
        for (int i = 0; i < (small ? 9 : 12); i++) {
            double far = 5.2 * Math.sqrt((i + 0.5) / 12);
            leaves.add(new Point(far * Math.cos(i * FlowerHead.GOLDEN),
                    0.62 * far * Math.sin(i * FlowerHead.GOLDEN) + 1.4 * (ALIKE.share(i, 94) - 0.5)));
        }
        return List.of(new Spots(motif == Motif.SPRAY ? "crown-near" : "crown-far", small ? 0.7 : 1.9, leaves));
    }

    private static List<Mark> twigs(Motif motif) {
        List<List<Point>> twigs = new ArrayList<>(List.of(List.of(new Point(-5, 2.4), new Point(-1, 1.6), new Point(5, -2.6))));
        for (int i = 0; i < 5; i++) {
            double x = -3.4 + 1.5 * i;
            double y = 2 - 0.7 * i;
            double up = i % 2 == 0 ? -2.6 : 1.5;
            twigs.add(List.of(new Point(x, y), new Point(x + 1, y + 0.35 * up), new Point(x + 2.2 + 0.8 * ALIKE.share(i, 95), y + up - 0.6)));
        }
        return List.of(new Curves(motif == Motif.TWIGS ? "twigs" : "far-twigs", 0.2, twigs));
    }
}
