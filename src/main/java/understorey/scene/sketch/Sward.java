package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import understorey.optics.FlowerLayer;
import understorey.plan.FieldGuide;
import understorey.scene.Drawing.Curves;
import understorey.scene.Drawing.Glyph;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Drawing.Stamps;
import understorey.scene.Seed;

/**
 * Leaves on the ground, placed by the seed and projected: the leaves of the plants from the camera on, in the form and the height
 * that the catalogue gives, and patches of small leaves beyond, until they are too small to see. Their number is by eye.
 */
final class Sward {

    private static final SizeSteps SIZES = new SizeSteps(1.5);
    private static final double LEAST_M = 0.3;
    private static final int PATCHES = 80;
    private static final double PATCH_M = 7 * 0.17;
    private static final int LEAVES = 11;
    /** Wider plants, in shares of the frame, would hide it. */
    private static final double MOST_WIDE = 1.1;
    /** A plant that is blurred by more of its width is not drawn. */
    private static final double BLURRED = 0.45;
    /** The row whose look is that of all plants, share of the height of the frame. */
    private static final double ROW = 0.75;
    /** Power by which smaller leaves are thinned out. */
    private static final double THINNED = 1.6;
    /** Two plants, so that not all are alike; the second is turned, radians. */
    private static final List<Motif> PLANTS = List.of(Motif.TUFT, Motif.TUFT_LEFT);
    private static final double TURN = 0.5;
    private static final List<String> TONES = List.of("leaf-dark", "leaf-shade", "leaf-light");
    /** From higher above, none is dark. */
    private static final double LIT_DEG = 20;
    /** The same leaves in all sketches, so that a page defines them once. */
    private static final Seed ALIKE = new Seed(1);

    /** Leaves of one kind: narrower ones than {@code allPx} are thinned out. */
    private record Layer(List<Motif> motifs, double wideM, double perM2, double strip, double leastPx, double allPx, double mostPx, int most) {
    }

    /** Ground from side to side with so many of a layer. */
    private record Strip(double aheadM, double thickM, double wideM, double px, double wanted) {
    }

    private final Setup setup;
    private final Perspective perspective;
    private final Trunks trunks;
    private final Seed seed;
    private double endM;

    Sward(Setup setup, Perspective perspective, Trunks trunks, Seed seed) {
        this.setup = setup;
        this.perspective = perspective;
        this.trunks = trunks;
        this.seed = seed;
    }

    /** The leaves of the plants; a fungus has none. */
    List<Mark> plants(double fromM, int most) {
        FieldGuide.LeafForm form = setup.leafForm();
        if (form == null) {
            return List.of();
        }
        Blossom leaves = Flora.BUILT_IN.foliage(form);
        double wideM = 2 * leaves.spread() * setup.leavesM();
        List<Mark> marks = new ArrayList<>();
        double aboveDeg = Motif.from(Math.toDegrees(Math.asin(Math.min(1, perspective.sineAt(ROW * perspective.height))))).aboveDeg;
        PLANTS.forEach(motif -> marks.add(new Glyph(motif.id, plant(leaves, motif.ordinal() * TURN, aboveDeg))));
        marks.addAll(marks(new Layer(PLANTS, wideM, 2.4 / (wideM * wideM), 0.1, 7, 60, MOST_WIDE * perspective.width, most),
                Math.max(fromM, perspective.nearestAheadM())));
        return marks;
    }

    /** From where the plants end. */
    List<Mark> patches() {
        List<Mark> marks = new ArrayList<>(List.of(new Glyph(Motif.SWARD.id, patch())));
        marks.addAll(marks(new Layer(List.of(Motif.SWARD), PATCH_M, 0.5 / (PATCH_M * PATCH_M), 0.16, 16, 60, 230, PATCHES), Math.max(LEAST_M, endM)));
        return marks;
    }

    private List<Mark> marks(Layer layer, double fromM) {
        List<Strip> strips = strips(layer, fromM);
        double large = strips.stream().filter(strip -> strip.px() >= layer.allPx()).mapToDouble(Strip::wanted).sum();
        double small = strips.stream().mapToDouble(Strip::wanted).sum() - large;
        double share = Math.min(1, Math.max(0, layer.most() - large) / Math.max(1, small));
        Map<Integer, List<List<Point>>> bySize = new TreeMap<>();
        for (int i = 0; i < strips.size(); i++) {
            Strip strip = strips.get(i);
            place(i, strip, strip.px() >= layer.allPx() ? 1 : share, bySize.computeIfAbsent(SIZES.of(strip.px()),
                    any -> layer.motifs().stream().<List<Point>>map(motif -> new ArrayList<>()).toList()));
        }
        List<Mark> marks = new ArrayList<>();
        bySize.forEach((size, kinds) -> {
            for (int kind = 0; kind < kinds.size(); kind++) {
                if (!kinds.get(kind).isEmpty()) {
                    marks.add(new Stamps(layer.motifs().get(kind).id, SIZES.px(size), 1, kinds.get(kind)));
                }
            }
        });
        return marks;
    }

    /** Those in the frame, near ones first. */
    private List<Strip> strips(Layer layer, double fromM) {
        List<Strip> strips = new ArrayList<>();
        double ahead = fromM;
        for (int i = 0; i < 200 && ahead < FlowerLayer.FAR_M; i++) {
            double thick = layer.strip() * Math.max(0.1, perspective.distanceM(ahead, 0));
            double depth = perspective.depthM(ahead + thick / 2, 0);
            double px = layer.wideM() * perspective.pxPerM(Math.max(0.01, depth));
            if (px < layer.leastPx()) {
                break;
            }
            if (depth > 0.05 && px < layer.mostPx() && setup.focus().blurShare(depth) * perspective.width < BLURRED * px
                    && perspective.inFrame(1, perspective.y(ahead, 0, Math.max(0.01, perspective.depthM(ahead, 0))), px / 2)) {
                double wide = 2 * perspective.halfWidthM(depth) + layer.wideM();
                strips.add(new Strip(ahead, thick, wide, px, layer.perM2() * wide * thick * Math.pow(Math.min(1, px / layer.allPx()), THINNED)));
            }
            ahead += thick;
        }
        endM = ahead;
        return strips;
    }

    private void place(int number, Strip strip, double share, List<List<Point>> kinds) {
        int wanted = (int) (strip.wanted() * share + seed.share(number, 31));
        for (int i = 0; i < wanted; i++) {
            int index = number * 701 + i;
            double at = strip.aheadM() + strip.thickM() * (1 - (i + 0.5) / wanted);
            double depth = perspective.depthM(at, 0);
            double x = perspective.x((seed.share(index, 32) - 0.5) * strip.wideM(), depth);
            double y = perspective.y(at, 0, depth);
            if (perspective.inFrame(x, y, strip.px() / 2) && !trunks.hides(x, y, depth)) {
                kinds.get(index % kinds.size()).add(new Point(Math.round(x), Math.round(y)));
            }
        }
    }

    /** Leaves from one foot, dark ones behind. */
    private static List<Mark> plant(Blossom leaves, double turn, double aboveDeg) {
        Vector foot = new Vector(0, 0, 0);
        Floret plant = new Floret(leaves, foot, new Vector(0, 1, 0), FlowerHead.WIDTH / 2 / leaves.spread(), turn, foot, false);
        List<Floret.Petal> rearFirst = plant.petals(Floret.View.of(0, 0, 1, aboveDeg), true);
        List<Mark> marks = new ArrayList<>();
        List<String> tones = aboveDeg > LIT_DEG ? TONES.subList(1, TONES.size()) : TONES;
        for (int tone = 0; tone < tones.size(); tone++) {
            marks.add(new Curves(tones.get(tone), 0, rearFirst.subList(tone * rearFirst.size() / tones.size(),
                    (tone + 1) * rearFirst.size() / tones.size()).stream().map(Floret.Petal::outline).toList()));
        }
        return marks;
    }

    private static List<Mark> patch() {
        List<List<Point>> light = new ArrayList<>();
        List<List<Point>> shade = new ArrayList<>();
        for (int i = 0; i < LEAVES; i++) {
            double x = -4.6 + 9.2 * (i + ALIKE.share(i, 37)) / LEAVES;
            double y = 2.4 * (ALIKE.share(i, 38) - 0.5);
            double lean = 1.6 * (ALIKE.share(i, 39) - 0.5);
            (i % 3 == 0 ? light : shade).add(List.of(new Point(x, y), new Point(x + lean - 0.2, y - 0.6), new Point(x + lean, y - 0.65),
                    new Point(x + lean + 0.3, y - 0.2), new Point(x, y)));
        }
        return List.of(new Curves("leaf-shade", 0, shade), new Curves("leaf-light", 0, light));
    }
}
