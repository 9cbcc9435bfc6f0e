package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import understorey.optics.FlowerLayer;
import understorey.plan.Subject;
import understorey.scene.Drawing.Curves;
import understorey.scene.Drawing.Glyph;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Drawing.Spots;
import understorey.scene.Seed;

/**
 * How the heads of one picture look by their size in the frame: as spots where they are smaller than {@value #DOTS_PX} px,
 * as clusters of dots up to {@value #PETALS_PX} px, petal by petal beyond, seen from one of a few angles. Each look has the
 * petal area that the flower area index gives a stem, so that any number of them has the tone that is stated.
 */
final class Bloom {

    static final double DOTS_PX = 3.4;
    static final double PETALS_PX = 11;
    private static final double UNKNOWN_SHARE = 0.3;
    /** Of the flowers of a head, how many are drawn in a view, and the most petals of a head. */
    private static final double PART = 0.6;
    private static final double MOST_PETALS = 24;
    /** A head with more petals is seen from fewer sides in a picture. */
    private static final double HEAVY = 15;
    private static final double FEWER = 0.5;
    private static final double SMALLER = 0.8;
    private static final double LARGER = 1.25;
    private static final double FLAT = 0.4;
    /** Flowers of a head are drawn smaller rather than fewer heads, down to this share of their width. */
    private static final double LEAST_FLOWER = 0.5;
    private static final int DOTS = 6;
    private static final Seed ALIKE = new Seed(1);
    private static final String PETAL = "petal";
    private static final List<String> TONES = List.of("leaf-light", "withered", "petal-dim", PETAL);

    /** What a head is. */
    enum State { OPEN, BUD, FADED }

    /** A look: its glyph, how much wider it is than the head, and how many of the stems bear one. */
    record Look(Motif motif, double times, double share) {
    }

    /** Petal area of a head as a camera sees it, share of the square of its width. */
    private final double petalShare;
    private final double headM;
    private final double part;
    private final FlowerHead head;
    private final Subject subject;
    private final double dotWidth;
    private final Map<Motif, Look> petals = new EnumMap<>(Motif.class);
    private final Map<Motif, List<Mark>> drawn = new EnumMap<>(Motif.class);
    private final boolean fungus;
    private final boolean heavy;
    private final boolean low;
    private double flowerTimes = 1;
    private final Look dots;

    Bloom(Setup setup) {
        subject = setup.subject();
        Subject.AreaIndex index = subject.flowerAreaIndex();
        headM = setup.headM();
        petalShare = index == null || !setup.stemsKnown() ? UNKNOWN_SHARE
                : FlowerLayer.SPHERICAL * index.typical() / setup.stemsPerM2() / (headM * headM);
        FlowerHead whole = FlowerHead.of(subject, 1, Stage.FULL);
        part = Math.min(PART, MOST_PETALS / petals(whole));
        head = FlowerHead.of(subject, part, Stage.FULL);
        heavy = petals(head) > HEAVY;
        low = setup.amongFlowers();
        fungus = setup.fungus();
        if (head.florets().size() > 1) {
            double share = look(Motif.ABOVE, area(Motif.ABOVE)).share();
            flowerTimes = Math.max(LEAST_FLOWER, Math.min(1, Math.sqrt(share)));
            drawn.clear();
        }
        dotWidth = Math.max(1.3, Math.min(4, FlowerHead.WIDTH * Math.sqrt(4 / Math.PI * petalShare / dots().size())));
        dots = look(Motif.DOTS, dots().size() * Math.PI / 4 * dotWidth * dotWidth);
    }

    /** Petals that are seen. */
    private static double petals(FlowerHead head) {
        return head.florets().stream().mapToDouble(floret -> floret.blossom().petals() / (floret.blossom().tube() ? 2.0 : 1)).sum();
    }

    private Look look(Motif motif, double area) {
        double share = area / (FlowerHead.WIDTH * FlowerHead.WIDTH);
        double times = Math.max(SMALLER, Math.min(LARGER, Math.sqrt(petalShare / share)));
        return new Look(motif, times, petalShare / (share * times * times));
    }

    /** The look of an open head so wide, px, from so far above the level; null for a spot. */
    @Nullable Look at(double px, double aboveDeg) {
        return px < DOTS_PX ? null : px < PETALS_PX && head.florets().size() > 1 ? dots
                : petals.computeIfAbsent(side(aboveDeg), motif -> look(motif, area(motif)));
    }

    /** From where it is seen. */
    private Motif side(double aboveDeg) {
        return !heavy ? Motif.from(aboveDeg) : !low ? Motif.from(Math.max(Motif.ABOVE.aboveDeg, aboveDeg))
                : head.florets().size() > 1 ? Motif.LEVEL : Motif.from(Math.max(Motif.LEVEL.aboveDeg, Math.min(Motif.ABOVE.aboveDeg, aboveDeg)));
    }

    /** Of the petals that are seen, in square parts of a head. */
    private double area(Motif motif) {
        return PetalArea.of(marks(motif).stream().filter(mark -> mark.style().startsWith(PETAL)).flatMap(mark -> ((Curves) mark).runs().stream()).toList());
    }

    private static Floret.View view(Motif motif) {
        return Floret.View.of(0, 0, 1, motif.aboveDeg);
    }

    /** Height of a head, metres: about its width, and of one open flower less (by eye). */
    double thickM() {
        return head.florets().size() > 1 ? headM : FLAT * headM;
    }

    /** Petal area that a camera sees of so many open stems, square metres. */
    double seenM2(double stems) {
        return petalShare * headM * headM * stems;
    }

    /** Diameter of a spot with the petal area of a head so wide. */
    double spot(double px) {
        return px * Math.sqrt(4 / Math.PI * petalShare);
    }

    /** Least share of the open heads that a look draws, so that its tone is right. */
    double drawnShare() {
        return Math.min(1, Math.min(dots.share(), petals.values().stream().mapToDouble(Look::share).min().orElse(1)));
    }

    /** The glyphs that are needed. */
    List<Mark> glyphs(Set<Motif> motifs) {
        return motifs.stream().map(motif -> (Mark) new Glyph(motif.id, marks(motif))).toList();
    }

    private List<Mark> marks(Motif motif) {
        return drawn.computeIfAbsent(motif, any -> motif == Motif.DOT ? List.of(new Spots("petal-dot", FlowerHead.WIDTH, List.of(new Point(0, 0))))
                : motif == Motif.DOTS ? List.of(new Spots("petal-dot", dotWidth, dots()))
                : fungus ? Toadstool.marks(0, 0, FlowerHead.WIDTH, FlowerHead.WIDTH, ALIKE)
                : marks(motif == Motif.BUD ? unopened(new Stage(1, 0)) : motif == Motif.FADED ? unopened(new Stage(0, 1)) : head, motif));
    }

    private FlowerHead unopened(Stage stage) {
        return FlowerHead.of(subject, heavy ? FEWER * part : part, stage);
    }

    /** As few marks as there are tones: those of the rear first. */
    private List<Mark> marks(FlowerHead whole, Motif motif) {
        FlowerHead head = whole.with(flowerTimes);
        Floret.View view = view(motif);
        List<Mark> marks = new ArrayList<>();
        if (head.florets().size() > 1) {
            List<List<Point>> stems = new ArrayList<>(List.of(head.stem().stream().map(view::point).toList()));
            if (motif == Motif.BUD) {
                head.florets().forEach(floret -> stems.add(floret.stalk(view)));
            }
            marks.add(new Curves("stem", 0.4, stems));
        }
        Map<String, List<List<Point>>> petals = new HashMap<>();
        head.rearFirst(view).forEach(floret -> floret.petals(view, true)
                .forEach(petal -> petals.computeIfAbsent(petal.tone(), tone -> new ArrayList<>()).add(petal.outline())));
        TONES.forEach(tone -> Trunks.curves(tone, petals.getOrDefault(tone, List.of()), 0, marks));
        List<Point> eyes = head.florets().stream().filter(floret -> floret.blossom().eye() > 0 && view.near(floret.axis()) > 0.2 && !floret.faded())
                .map(floret -> view.point(floret.at().plus(0.1 * floret.size(), floret.axis()))).toList();
        if (!eyes.isEmpty()) {
            Floret first = head.florets().get(0);
            marks.add(new Spots("eye", Math.max(0.6, 0.9 * first.blossom().eye() * first.size()), eyes));
        }
        return marks;
    }

    /** A dome of dots, or as many dots as there are flowers. */
    private List<Point> dots() {
        Floret.View view = view(Motif.DOTS);
        List<Point> dots = new ArrayList<>();
        if (head.florets().size() > 1) {
            head.florets().forEach(floret -> dots.add(view.point(floret.at().plus(0.6 * floret.size(), floret.axis()))));
        }
        for (int i = 0; dots.size() < DOTS; i++) {
            double far = 3.7 * Math.sqrt((i + 0.5) / DOTS);
            dots.add(new Point(far * Math.cos(i * FlowerHead.GOLDEN), far * Math.sin(i * FlowerHead.GOLDEN) * 0.75));
        }
        return dots;
    }
}
