package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.List;
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
 * as clusters of dots up to {@value #PETALS_PX} px, petal by petal beyond. Each look has the petal area that the flower
 * area index gives a stem, so that any number of them has the tone that is stated.
 */
final class Bloom {

    static final double DOTS_PX = 3.4;
    static final double PETALS_PX = 11;
    private static final double UNKNOWN_SHARE = 0.3;
    private static final int MOST_FLORETS = 9;
    private static final double SMALLER = 0.8;
    private static final double LARGER = 1.25;
    private static final int DOTS = 6;
    private static final double GOLDEN = 2.39996;

    /** A look: its glyph, how much wider it is than the head, and how many of the stems bear one. */
    record Look(Motif motif, double times, double share) {
    }

    /** Petal area of a head as a camera sees it, share of the square of its width. */
    private final double petalShare;
    private final double headM;
    private final FlowerHead head;
    private final Floret.View view;
    private final int flowers;
    private final double dotWidth;
    private final Look petals;
    private final Look dots;

    Bloom(Setup setup, double aboveDeg, Seed seed) {
        Subject subject = setup.subject();
        Subject.AreaIndex index = subject.flowerAreaIndex();
        headM = setup.headM();
        petalShare = index == null || !setup.stemsKnown() ? UNKNOWN_SHARE
                : FlowerLayer.SPHERICAL * index.typical() / setup.stemsPerM2() / (headM * headM);
        head = FlowerHead.of(subject, MOST_FLORETS, seed);
        view = Floret.View.of(0, 0, 1, aboveDeg);
        flowers = head.florets().size();
        dotWidth = Math.max(1.3, Math.min(4, FlowerHead.WIDTH * Math.sqrt(4 / Math.PI * petalShare / dots().size())));
        petals = look(Motif.PETALS, PetalArea.of(head.florets().stream().flatMap(floret -> floret.petals(view).stream()).toList())
                / (FlowerHead.WIDTH * FlowerHead.WIDTH));
        dots = flowers == 1 ? petals
                : look(Motif.DOTS, dots().size() * Math.PI / 4 * dotWidth * dotWidth / (FlowerHead.WIDTH * FlowerHead.WIDTH));
    }

    private Look look(Motif motif, double area) {
        double times = Math.max(SMALLER, Math.min(LARGER, Math.sqrt(petalShare / area)));
        return new Look(motif, times, petalShare / (area * times * times));
    }

    /** The look of a head so wide, px; null for a spot. */
    @Nullable Look at(double px) {
        return px < DOTS_PX ? null : px < PETALS_PX ? dots : petals;
    }

    /** Petal area that a camera sees of so many stems, square metres. */
    double seenM2(double stems) {
        return petalShare * headM * headM * stems;
    }

    /** Diameter of a spot with the petal area of a head so wide. */
    double spot(double px) {
        return px * Math.sqrt(4 / Math.PI * petalShare);
    }

    /** Least share of the heads that a look draws, so that its tone is right. */
    double drawnShare() {
        return Math.min(1, Math.min(petals.share(), dots.share()));
    }

    /** The glyphs that are needed. */
    List<Mark> glyphs(Set<Motif> motifs) {
        return motifs.stream().map(motif -> (Mark) new Glyph(motif.id, switch (motif) {
            case PETALS -> petalMarks();
            case DOTS -> List.of(new Spots("petal-dot", dotWidth, dots()));
            default -> List.of(new Spots("petal-dot", FlowerHead.WIDTH, List.of(new Point(0, 0))));
        })).toList();
    }

    private List<Mark> petalMarks() {
        List<List<Point>> outlines = new ArrayList<>();
        List<Point> eyes = new ArrayList<>();
        for (Floret floret : head.florets()) {
            outlines.addAll(floret.petals(view));
            if (floret.cut().petals > 0 && floret.cut() != Floret.Cut.HANGING && view.near(floret.axis()) > 0.2) {
                eyes.add(view.point(floret.at()));
            }
        }
        List<Mark> marks = new ArrayList<>(List.of(new Curves("petal", 0, outlines)));
        if (!eyes.isEmpty()) {
            marks.add(new Spots("eye", head.florets().get(0).cut() == Floret.Cut.RAY ? 3 : flowers == 1 ? 2 : 0.8, eyes));
        }
        return marks;
    }

    /** A dome of dots, or as many dots as there are flowers on a spike. */
    private List<Point> dots() {
        List<Point> dots = new ArrayList<>();
        if (head.stalks()) {
            for (int i = 0; i < DOTS; i++) {
                double far = 3.7 * Math.sqrt((i + 0.5) / DOTS);
                dots.add(new Point(far * Math.cos(i * GOLDEN), far * Math.sin(i * GOLDEN) * 0.75));
            }
        } else {
            head.florets().forEach(floret -> dots.add(view.point(floret.at().plus(0.6 * floret.size(), floret.axis()))));
        }
        return dots;
    }
}
