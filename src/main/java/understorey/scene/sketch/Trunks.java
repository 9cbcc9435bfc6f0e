package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.optics.FlowerLayer;
import understorey.plan.Canopy;
import understorey.scene.Drawing.Curves;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Seed;

/**
 * The trees of a wood as a frame shows them, to scale: one trunk on each square that the stems per hectare give, as thick as
 * the canopy says; without them one on each {@value #SPACING_M} m, a quarter to half a metre thick, as in many a tall wood
 * (common practice, no source). The seed says which one grows where. Trunks taper, flare at their feet and pale with
 * distance.
 */
final class Trunks {

    static final double SPACING_M = 6;
    private static final double THIN_M = 0.25;
    private static final double THICK_M = 0.5;
    private static final double HECTARE_M2 = 10_000;
    /** Trunks taper to their tops by this share. */
    private static final double TAPER = 0.75;
    private static final int POLES = 5;
    private static final double POLE_M = 0.1;
    private static final double BARK_PX = 6;
    private static final double UNKNOWN_TOP_M = 20;
    /** No trunk is drawn right in front of the camera. */
    private static final double CLEAR_M = 5;
    private static final double LEAST_PX = 1.1;
    private static final int MOST = 36;
    /** Distances beyond which air pales a trunk by one more tone, metres: our choice, by eye. */
    private static final double[] PALER_M = {15, 22, 32, 45};
    private static final List<String> TONES = List.of("trunk-near", "trunk-nearer", "trunk-middle", "trunk-farther", "trunk-far");
    private static final List<String> THIN = List.of("pole-near", "pole-nearer", "pole-middle", "pole-farther", "pole-far");

    private static final String BIRCH = "trunk-birch";
    /** The tone over whose trunks the crowns are. */
    private static final int CROWNED = 2;

    private final Setup setup;
    private final Perspective perspective;
    private final Seed seed;
    private final SunOnTrunks light;
    private final Shadows shadows;
    private final double spacingM;
    private final double[] depthAt;
    private final double[] footAt;
    private final List<Trunk> trunks = new ArrayList<>();
    private final Bark.@Nullable Tree usual;
    private final Crowns crowns;

    Trunks(Setup setup, Perspective perspective, Seed seed) {
        this.setup = setup;
        this.perspective = perspective;
        this.seed = seed;
        usual = Bark.usual(setup);
        crowns = new Crowns(setup, perspective, seed, treesM());
        light = SunOnTrunks.of(setup);
        shadows = new Shadows(setup, perspective);
        Canopy canopy = setup.canopy();
        spacingM = canopy == null || canopy.stemsPerHa() == null ? SPACING_M
                : Math.max(1.5, Math.min(20, Math.sqrt(HECTARE_M2 / canopy.stemsPerHa())));
        depthAt = new double[(int) perspective.width + 1];
        footAt = new double[depthAt.length];
        Arrays.fill(depthAt, Double.POSITIVE_INFINITY);
        if (setup.trees() && !setup.closest()) {
            grow();
        }
    }

    /** Far ones first. */
    List<Trunk> trunks() {
        return trunks;
    }

    /** True when trunks cast shadows. */
    boolean shadowed() {
        return !shadows.marks().isEmpty();
    }

    double spacingM() {
        return spacingM;
    }

    Crowns crowns() {
        return crowns;
    }

    /** The kind of tree that is drawn; null for no kind, and where no bark is seen. */
    Bark.@Nullable Tree kind() {
        return trunks.stream().anyMatch(trunk -> trunk.half() > BARK_PX) ? usual : null;
    }

    private Bark bark() {
        return usual == null ? Bark.RIDGED : usual.bark();
    }

    /** True when a trunk is before that place. */
    boolean hides(double x, double y, double depthM) {
        int column = (int) x;
        return column >= 0 && column < depthAt.length && depthAt[column] < depthM && y < footAt[column];
    }

    private void grow() {
        Double diameterM = setup.canopy() == null ? null : setup.canopy().stemDiameterM();
        double thin = diameterM == null ? THIN_M : 0.65 * diameterM;
        double thick = diameterM == null ? THICK_M : 1.35 * diameterM;
        for (int row = 0; row * spacingM < FlowerLayer.FAR_M; row++) {
            double edgeM = perspective.halfWidthM(Math.max(1, perspective.depthM((row + 1) * spacingM, 0))) + spacingM;
            int side = (int) Math.min(60, edgeM / spacingM);
            for (int column = -side; column <= side; column++) {
                int index = row * 251 + column;
                double right = (column + seed.share(index, 11) - 0.5) * spacingM;
                double ahead = (row + seed.share(index, 12)) * spacingM;
                if (bark() == Bark.COPPICE && index % 4 != 0) {
                    stool(index, right, ahead);
                } else {
                    tree(index, right, ahead, thin + (thick - thin) * Math.pow(seed.share(index, 13), 1.5), 0.03);
                }
            }
        }
        trunks.sort(Comparator.comparingDouble(Trunk::depthM).reversed());
    }

    /** Poles of one stool lean apart. */
    private void stool(int index, double rightM, double aheadM) {
        for (int pole = 0; pole < POLES; pole++) {
            int at = index * 7 + pole;
            tree(at, rightM + 0.5 * (seed.share(at, 16) - 0.5), aheadM, POLE_M * (0.6 + 0.8 * seed.share(at, 17)), 0.16);
        }
    }

    private void tree(int index, double rightM, double aheadM, double thickM, double leans) {
        double depth = perspective.depthM(aheadM, 0);
        double clearM = setup.clearingRadiusM() == null ? CLEAR_M : Math.max(CLEAR_M, setup.clearingRadiusM());
        if (depth < 1 || Math.hypot(rightM, aheadM) < clearM || setup.close() && depth < 2 * setup.fit().distanceM() + 2) {
            return;
        }
        crowns.add(index, rightM, aheadM);
        if (trunks.size() >= MOST) {
            return;
        }
        if (depth < PALER_M[1]) {
            shadows.add(rightM, aheadM, thickM, treesM());
        }
        double top = topM(aheadM, depth);
        double topDepth = perspective.depthM(aheadM, top);
        double footY = perspective.y(aheadM, 0, depth);
        double topY = perspective.y(aheadM, top, topDepth);
        double leanM = leans * top * (seed.share(index, 14) - 0.5) * 2;
        double half = thickM / 2 * perspective.pxPerM(depth);
        double halfTop = (1 - TAPER) * thickM / 2 * perspective.pxPerM(topDepth);
        double blur = setup.focus().blurShare(depth) * perspective.width;
        Trunk trunk = new Trunk(perspective.x(rightM, depth), footY, half, perspective.x(rightM + leanM, topDepth), topY, halfTop,
                depth, blur, seed.share(index, 15) - 0.5);
        if (footY < 0 || topY > perspective.height || footY - topY < 3 || half + blur / 2 < LEAST_PX / 2
                || !seen(trunk.cut(-4))) {
            return;
        }
        trunks.add(trunk.cut(-4));
    }

    /** Up to near its top, or to where a camera that looks down would lose it. */
    private double topM(double aheadM, double depthM) {
        double top = 0.95 * treesM();
        double topDepth = perspective.depthM(aheadM, top);
        return topDepth >= depthM / 4 ? top : top * 0.75 * depthM / (depthM - topDepth);
    }

    double treesM() {
        Double treesM = setup.canopy() == null ? null : setup.canopy().heightM();
        return treesM == null ? UNKNOWN_TOP_M : treesM;
    }

    private boolean seen(Trunk trunk) {
        double left = Math.min(trunk.footX() - trunk.half(), trunk.topX() - trunk.halfTop());
        double right = Math.max(trunk.footX() + trunk.half(), trunk.topX() + trunk.halfTop());
        if (right < 0 || left > perspective.width) {
            return false;
        }
        boolean seen = false;
        for (int x = (int) Math.max(0, trunk.footX() - trunk.half()); x <= Math.min(perspective.width, trunk.footX() + trunk.half()); x++) {
            seen |= depthAt[x] > trunk.depthM();
            if (depthAt[x] > trunk.depthM()) {
                depthAt[x] = trunk.depthM();
                footAt[x] = trunk.footY();
            }
        }
        return seen || trunk.footX() < 0 || trunk.footX() > perspective.width;
    }

    /** Those of one tone after the other, the palest first; crowns over the far ones. */
    List<Mark> marks() {
        List<Mark> marks = new ArrayList<>(shadows.marks());
        for (int tone = TONES.size() - 1; tone >= 0; tone--) {
            int wanted = tone;
            List<Trunk> alike = trunks.stream().filter(trunk -> tone(trunk.depthM()) == wanted).toList();
            boolean white = bark() == Bark.WHITE && tone < TONES.size() - 2;
            int paler = bark() == Bark.SMOOTH && tone < CROWNED ? tone + 1 : tone;
            curves(white ? BIRCH : TONES.get(paler),
                    alike.stream().filter(trunk -> trunk.half() >= 2).map(trunk -> trunk.outline(0)).toList(), 0, marks);
            for (double width : alike.stream().filter(trunk -> trunk.half() < 2).map(Trunks::poleWidth).distinct().sorted().toList()) {
                curves(THIN.get(tone), alike.stream().filter(trunk -> trunk.half() < 2 && poleWidth(trunk) == width)
                        .map(Trunk::middle).toList(), width, marks);
            }
            light.marks(alike, marks);
            curves("bark", alike.stream().filter(trunk -> trunk.half() > BARK_PX).flatMap(trunk -> bark().lines(trunk).stream()).toList(),
                    white ? 2 : 0, marks);
            if (tone == CROWNED) {
                marks.addAll(crowns.marks());
            }
        }
        return marks;
    }

    private static double poleWidth(Trunk trunk) {
        return Math.max(1, Math.round(3 * trunk.half()) / 2.0);
    }

    private static int tone(double depthM) {
        int tone = 0;
        while (tone < PALER_M.length && depthM > PALER_M[tone]) {
            tone++;
        }
        return tone;
    }

    static void curves(String style, List<List<Point>> runs, double width, List<Mark> marks) {
        if (!runs.isEmpty()) {
            marks.add(new Curves(style, width, runs));
        }
    }
}
