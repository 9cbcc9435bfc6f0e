package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import understorey.plan.FieldGuide;
import understorey.plan.Subject;
import understorey.scene.Seed;
import understorey.scene.sketch.Floret.Cut;
import understorey.scene.sketch.Floret.Vector;

/**
 * How the flowers of a head are arranged, {@value #WIDTH} parts wide about its middle: spread over a half globe, hung along
 * an arch, up a spike, or a single one. Shapes are drawn by eye.
 *
 * @param florets the rear ones first, for a camera a little above
 * @param arch    the stem above its straight part, from below: point, control point, end and so on
 * @param stalks  from where the flowers of an umbel part to each flower
 */
record FlowerHead(List<Floret> florets, List<Vector> arch, boolean stalks) {

    static final double WIDTH = 10;
    private static final double R = WIDTH / 2;
    private static final double GOLDEN = 2.39996;
    private static final Comparator<Floret> REAR_FIRST = Comparator.comparingDouble(floret -> floret.at().z() + floret.axis().z());

    /** The head of a subject with no more flowers than that. */
    static FlowerHead of(Subject subject, int most, Seed seed) {
        FieldGuide guide = subject.guide();
        Integer open = subject.flowersOpen();
        int flowers = Math.max(1, Math.min(most, open == null ? 1 : open));
        FieldGuide.Form form = guide == null ? flowers > 1 ? FieldGuide.Form.UMBEL : FieldGuide.Form.STAR : guide.form();
        return switch (form) {
            case UMBEL -> umbel(flowers, guide != null && guide.second() == FieldGuide.Form.TUBE, seed);
            case STAR -> flowers > 1 ? cluster(flowers, Cut.OVAL, seed) : single(Cut.OVAL, seed);
            case CUP, CAP -> single(Cut.CUP, seed);
            case DAISY -> single(Cut.RAY, seed);
            case NODDING -> nodding();
            case BELL, TUBE -> flowers > 1 ? arched(flowers, form == FieldGuide.Form.TUBE) : nodding();
            case SPIKE, CATKIN -> spike(Math.max(flowers, Math.min(most, 7)), guide == null || guide.second() == null ? form : guide.second(), seed);
            case LIPPED -> flowers > 1 ? spike(flowers, form, seed) : violet();
        };
    }

    private static FlowerHead single(Cut cut, Seed seed) {
        Vector axis = new Vector(0.3 * (seed.share(1, 51) - 0.5), 0.8, 0.55).unit();
        return new FlowerHead(List.of(new Floret(new Vector(0, -0.6, 0), axis, R, seed.share(1, 52), cut)), List.of(), false);
    }

    private static FlowerHead umbel(int flowers, boolean trumpets, Seed seed) {
        List<Floret> florets = new ArrayList<>();
        for (int i = 0; i < flowers; i++) {
            double up = Math.max(-0.25, 1 - (i + 0.5) / flowers * 1.05);
            double around = Math.sqrt(1 - up * up);
            Vector out = new Vector(around * Math.cos(i * GOLDEN + 0.6), up, around * Math.sin(i * GOLDEN + 0.6));
            florets.add(trumpets ? new Floret(out.plus(-0.8, out), out, R * 0.8, 0, Cut.BELL)
                    : new Floret(new Vector(0, -1.5, 0).plus(R * 0.62, out), out, R * (flowers > 9 ? 0.42 : 0.5), seed.share(i, 53), Cut.STAR));
        }
        florets.sort(REAR_FIRST);
        return new FlowerHead(florets, List.of(), true);
    }

    private static FlowerHead cluster(int flowers, Cut cut, Seed seed) {
        List<Floret> florets = new ArrayList<>();
        double size = R / Math.sqrt(Math.max(1, flowers * 0.7));
        for (int i = 0; i < flowers; i++) {
            double far = (R - size * 0.8) * Math.sqrt((i + 0.35) / flowers);
            Vector out = new Vector(far * Math.cos(i * GOLDEN), far * Math.sin(i * GOLDEN) * 0.8, 0.4 * (seed.share(i, 54) - 0.5));
            florets.add(new Floret(out, new Vector(out.x() / R * 0.5, 0.55, 0.8).unit(), size, seed.share(i, 55), cut));
        }
        florets.sort(REAR_FIRST);
        return new FlowerHead(florets, List.of(), true);
    }

    /** One flower that hangs from the end of an arch. */
    private static FlowerHead nodding() {
        Vector end = new Vector(1.2, 4.6, 0);
        return new FlowerHead(List.of(new Floret(end, new Vector(0.22, -1, 0.12).unit(), R * 0.92, 0.3, Cut.HANGING)),
                List.of(new Vector(-2.4, -4, 0), new Vector(-1.8, 6.8, 0), end), false);
    }

    /** Bells along one side of an arch. */
    private static FlowerHead arched(int flowers, boolean long_) {
        List<Floret> florets = new ArrayList<>();
        int bells = Math.min(flowers, 7);
        double size = (long_ ? 12 : 9.5) / Math.sqrt(bells + 2);
        for (int i = 0; i < bells; i++) {
            double along = (i + 0.5) / bells;
            Vector at = new Vector(-2.6 + 6.4 * along, 1.2 + 8.6 * along - 7.2 * along * along, i % 2 == 0 ? 0.8 : -0.6);
            florets.add(new Floret(at, new Vector(i % 2 == 0 ? 0.35 : -0.75 + along, -1, 0.15).unit(), size * (1.1 - 0.25 * along), 0, Cut.BELL));
        }
        florets.sort(REAR_FIRST);
        return new FlowerHead(florets, List.of(new Vector(-2.6, -5, 0), new Vector(-2.8, 5.6, 0), new Vector(0.6, 5, 0),
                new Vector(2.8, 4.6, 0), new Vector(3.9, 2.6, 0)), false);
    }

    /** Flowers round an upright, smaller towards its tip. */
    private static FlowerHead spike(int flowers, FieldGuide.Form second, Seed seed) {
        boolean bells = second == FieldGuide.Form.TUBE || second == FieldGuide.Form.BELL || second == FieldGuide.Form.LIPPED;
        Cut cut = second == FieldGuide.Form.LIPPED ? Cut.LIP : bells ? Cut.BELL : Cut.CROSS;
        List<Floret> florets = new ArrayList<>();
        double size = (bells ? 9 : 6.2) / Math.sqrt(flowers + 1.0);
        for (int i = 0; i < flowers; i++) {
            double along = (i + 0.3) / flowers;
            double turn = i * GOLDEN;
            double small = 1.15 - 0.65 * along;
            Vector out = new Vector(Math.cos(turn), bells ? -0.45 : 0.1, 0.35 + 0.65 * Math.sin(turn)).unit();
            florets.add(new Floret(new Vector(0, -6.5 + 14.5 * along, 0).plus(bells ? 0.3 : size * small * 0.9, out), out, size * small,
                    seed.share(i, 56), cut));
        }
        florets.sort(REAR_FIRST);
        return new FlowerHead(florets, List.of(new Vector(0, -7, 0), new Vector(0, 2, 0), new Vector(0.2, 9, 0)), false);
    }

    /** Two petals up, two aside and a broad one below. */
    private static FlowerHead violet() {
        List<Floret> florets = new ArrayList<>();
        Vector front = new Vector(0.1, 0.15, 1).unit();
        florets.add(new Floret(new Vector(0, 0, 0), front, R * 0.95, 0.35, Cut.CUP));
        return new FlowerHead(florets, List.of(new Vector(-1, -5, -1), new Vector(-1.4, 1.5, -1), new Vector(0, 0.6, 0)), false);
    }
}
