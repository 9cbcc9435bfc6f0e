package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import understorey.optics.FlowerLayer;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Drawing.Stamps;
import understorey.scene.Seed;

/**
 * The flowers of a frame: from the camera away, strips of ground get as many heads as the density gives, each placed by the
 * seed and projected. After {@code most} heads, or where a head is a spot of a pixel, the carpet goes on as
 * {@link FarCarpet}.
 */
final class Carpet {

    private static final double STRIP = 0.05;
    private static final SizeSteps SIZES = new SizeSteps(1.25);
    private static final SizeSteps SPOT_SIZES = new SizeSteps(1.4);
    /** A head that is blurred by less than this share of its width keeps its shape. */
    static final double KEEPS_SHAPE = 0.22;
    private static final double LEAST_STRENGTH = 0.06;
    private static final double LEAST_PX = 0.6;
    /** A flower before the lens that would veil more of the frame than this is moved aside. */
    private static final double VEIL = 0.2;
    /** Strengths are told apart in steps of this. */
    private static final double FADE = 0.55;
    private static final double DISSOLVED = 1.5;
    private static final int MANY = 24;
    private static final int STRIPS = 400;
    /** Narrower buds and faded heads are not seen. */
    private static final double UNOPENED_PX = 6;

    /** One head in the frame, seen from so far above the level. */
    record Head(double x, double y, double px, double depthM, double rightM, double aheadM, double aboveDeg, Bloom.State state) {
    }

    private record Group(Motif motif, double width, double strength, double depthM, List<Point> at) {
    }

    private final Setup setup;
    private final Perspective perspective;
    private final Focus focus;
    private final Trunks trunks;
    private final Bloom bloom;
    private final Seed seed;
    private final double leastDepthM;
    private final List<Head> heads = new ArrayList<>();
    private double farFromM;

    Carpet(Setup setup, double stemsPerM2, Perspective perspective, Trunks trunks, Bloom bloom, Seed seed, int most) {
        this.setup = setup;
        this.perspective = perspective;
        this.trunks = trunks;
        this.bloom = bloom;
        this.seed = seed;
        focus = setup.focus();
        leastDepthM = setup.closest() ? Math.max(setup.sharpToM(), setup.fit().distanceM() + setup.headM())
                : setup.close() ? setup.sharpFromM() : Math.max(0.05, 1.5 * setup.headM());
        walk(stemsPerM2, most);
    }

    /** Near ones first. */
    List<Head> heads() {
        return heads;
    }

    /** Way ahead from which heads are not drawn one by one, metres. */
    double farFromM() {
        return farFromM;
    }

    private void walk(double stemsPerM2, int most) {
        double ahead = perspective.nearestAheadM();
        double mean = (setup.lowM() + setup.highM()) / 2;
        for (int strip = 0; strip < STRIPS && ahead < FlowerLayer.FAR_M && heads.size() < most; strip++) {
            double thick = STRIP * Math.max(0.1, perspective.distanceM(ahead, mean));
            double depth = perspective.depthM(ahead + thick / 2, mean);
            double px = setup.headM() * perspective.pxPerM(Math.max(depth, 0.01));
            if (depth > leastDepthM && (bloom.spot(px) + blurPx(depth) < LEAST_PX || dissolves(px, depth))) {
                break;
            }
            if (depth > 0) {
                strip(strip, ahead, thick, depth, stemsPerM2);
            }
            ahead += thick;
        }
        farFromM = ahead;
    }

    /** True when a head of a carpet is so blurred that only the tone of the carpet is left. */
    private boolean dissolves(double px, double depth) {
        return !setup.close() && depth > setup.fit().focusM() && blurPx(depth) > DISSOLVED * bloom.spot(px);
    }

    private void strip(int strip, double ahead, double thick, double depth, double stemsPerM2) {
        double px = setup.headM() * perspective.pxPerM(depth);
        Bloom.Look look = look(px, depth, aboveDeg(ahead, (setup.lowM() + setup.highM()) / 2));
        double wide = 2 * perspective.halfWidthM(depth) + setup.headM();
        double number = stemsPerM2 * wide * thick * (look == null ? 1 : look.share());
        int whole = (int) (number + seed.share(strip, 21));
        for (int i = 0; i < Math.min(whole, 3000); i++) {
            int index = strip * 3001 + i;
            double right = (seed.share(index, 22) - 0.5) * wide;
            double at = ahead + seed.share(index, 23) * thick;
            double above = setup.lowM() + seed.share(index, 24) * (setup.highM() - setup.lowM());
            place(right, at, above, state(seed.share(index, 25)));
        }
    }

    private Bloom.State state(double share) {
        Stage stage = setup.stage();
        return share < stage.open() ? Bloom.State.OPEN : share < stage.open() + stage.buds() ? Bloom.State.BUD : Bloom.State.FADED;
    }

    private double aboveDeg(double ahead, double above) {
        return Math.toDegrees(Math.atan2(perspective.belowLensM(ahead, above), Math.max(0.05, ahead)));
    }

    private void place(double right, double ahead, double above, Bloom.State state) {
        double depth = perspective.depthM(ahead, above);
        if (depth < leastDepthM) {
            return;
        }
        double px = setup.headM() * perspective.pxPerM(depth);
        double blur = blurPx(depth);
        double x = perspective.x(right, depth);
        double y = perspective.y(ahead, above, depth);
        if (depth < setup.fit().focusM() && px + blur > VEIL * perspective.width
                || !perspective.inFrame(x, y, drawnPx(px, depth, aboveDeg(ahead, above)) / 2) || trunks.hides(x, y, depth)
                || besideSubject(x, depth)) {
            return;
        }
        if (state == Bloom.State.OPEN || px > UNOPENED_PX && blur < KEEPS_SHAPE * px) {
            heads.add(new Head(x, y, px, depth, right, ahead, aboveDeg(ahead, above), state));
        }
    }

    private boolean besideSubject(double x, double depth) {
        return setup.close() && depth < focus.sharpToM() + setup.headM()
                && Math.abs(x - perspective.width / 2) < 1.2 * setup.headM() * perspective.pxPerM(depth);
    }

    private double blurPx(double depth) {
        return focus.blurShare(depth) * perspective.width;
    }

    /** Null for a spot. */
    private Bloom.@Nullable Look look(double px, double depth, double aboveDeg) {
        return blurPx(depth) > KEEPS_SHAPE * px ? null : bloom.at(px, aboveDeg);
    }

    /** Width of a head as it is drawn. */
    private double drawnPx(double px, double depth, double aboveDeg) {
        Bloom.Look look = look(px, depth, aboveDeg);
        return look == null ? Math.max(LEAST_PX, bloom.spot(px) + blurPx(depth)) : px * look.times();
    }

    /** The heads, far ones first, in groups of one look and one size. */
    List<Mark> marks() {
        Map<Integer, Group> groups = new TreeMap<>();
        for (Head head : heads) {
            Bloom.Look look = look(head.px(), head.depthM(), head.aboveDeg());
            double spot = drawnPx(head.px(), head.depthM(), head.aboveDeg());
            SizeSteps sizes = look == null ? SPOT_SIZES : SIZES;
            int step = sizes.of(spot);
            double width = sizes.px(step);
            double strength = look == null ? Math.min(1, Math.pow(bloom.spot(head.px()) / width, 2)) : 1;
            int fade = (int) Math.round(Math.log(Math.max(LEAST_STRENGTH, strength)) / Math.log(FADE));
            Motif motif = switch (head.state()) {
                case BUD -> Motif.BUD;
                case FADED -> Motif.FADED;
                case OPEN -> look == null ? Motif.DOT : look.motif();
            };
            groups.computeIfAbsent(((step + 100) * 16 + motif.ordinal()) * 32 + fade, any -> new Group(motif, width, Math.pow(FADE, fade),
                    head.depthM(), new ArrayList<>()))
                    .at().add(new Point(Math.round(head.x()), Math.round(head.y())));
        }
        Set<Motif> motifs = EnumSet.noneOf(Motif.class);
        groups.values().forEach(group -> motifs.add(group.motif()));
        List<Mark> marks = new ArrayList<>(bloom.glyphs(motifs));
        groups.values().stream().sorted(Comparator.comparingDouble(Group::depthM).reversed()).forEach(group -> stamps(group, marks));
        return marks;
    }

    /** Faint ones in layers, so that they add up where they lie over each other. */
    private static void stamps(Group group, List<Mark> marks) {
        int layers = group.strength() > 0.7 ? 1 : group.at().size() > MANY ? 4 : 2;
        for (int layer = 0; layer < layers; layer++) {
            int from = layer * group.at().size() / layers;
            int to = (layer + 1) * group.at().size() / layers;
            if (from < to) {
                marks.add(new Stamps(group.motif().id, group.width(), group.strength(), snake(group.at().subList(from, to), group.width())));
            }
        }
    }

    /** From row to row and to and fro, so that each step is short. */
    private static List<Point> snake(List<Point> at, double px) {
        double high = Math.max(6, 2 * px);
        Comparator<Point> byRow = Comparator.comparingLong(point -> (long) Math.floor(point.y() / high));
        return at.stream().sorted(byRow.thenComparingDouble(point -> (long) Math.floor(point.y() / high) % 2 == 0 ? point.x() : -point.x()))
                .toList();
    }
}
