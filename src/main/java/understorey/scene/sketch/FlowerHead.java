package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import understorey.plan.FieldGuide;
import understorey.plan.Subject;
import understorey.scene.Seed;
import understorey.scene.sketch.Parts.Word;

/**
 * How the flowers of a head are arranged, {@value #WIDTH} parts wide about its middle, after {@code plants.txt}.
 *
 * @param florets in the order in which they open
 * @param stem    from below: point, control point, end and so on
 * @param leaves  rings of leaves on the stem
 */
record FlowerHead(List<Floret> florets, List<Vector> stem, List<Floret> leaves) {

    static final double WIDTH = 10;
    /** Golden angle, radians: turned by it, one after the other, things never line up. */
    static final double GOLDEN = 2.39996;
    private static final Vector UP = new Vector(0, 1, 0);
    /** Buds and faded flowers are smaller. */
    private static final double BUD = 0.62;
    /** The same in each sketch, so that a page defines a head once. */
    private static final Seed SEED = new Seed(7);

    /** The head of a subject at a stage, with so much of its flowers drawn, and larger. */
    static FlowerHead of(Subject subject, double part, Stage stage) {
        FieldGuide guide = subject.guide();
        Integer open = subject.flowersOpen();
        FieldGuide.Form form = guide != null ? guide.form() : open != null && open > 1 ? FieldGuide.Form.UMBEL : FieldGuide.Form.STAR;
        Parts own = Flora.BUILT_IN.head(subject.key());
        return new Builder(own != null ? own : Objects.requireNonNull(Flora.BUILT_IN.head(form.name())), part, stage).head();
    }

    /** Rear ones first, for a camera. */
    List<Floret> rearFirst(Floret.View view) {
        return florets.stream().sorted(Comparator.comparingDouble(floret -> view.near(floret.at()
                .plus(0.5 * floret.size(), floret.axis())))).toList();
    }

    /** With its flowers so many times as wide. */
    FlowerHead with(double times) {
        return times == 1 ? this : new FlowerHead(florets.stream().map(floret -> new Floret(floret.blossom(), floret.at(), floret.axis(),
                times * floret.size(), floret.turn(), floret.from(), floret.faded())).toList(), stem, leaves);
    }

    private record Builder(Parts parts, double part, Stage stage) {

        FlowerHead head() {
            boolean dome = parts.has(Word.DOME);
            List<String> words = parts.all(dome ? Word.DOME : parts.has(Word.ALONG) ? Word.ALONG : Word.ONE).get(0);
            double[] runs = parts.figures(Word.STEM, 0.4, -9, 0.2, -5, 0, 0);
            List<Vector> stem = new ArrayList<>();
            for (int i = 0; i < runs.length; i += 2) {
                stem.add(new Vector(runs[i], runs[i + 1], 0));
            }
            int written = words.size() > 1 ? Integer.parseInt(words.get(1)) : 1;
            int number = Math.max(1, (int) Math.round(part * written));
            double larger = Math.pow((double) written / number, 0.3);
            List<Floret> florets = new ArrayList<>();
            Blossom blossom = Flora.BUILT_IN.blossom(words.get(0));
            for (int i = 0; i < number; i++) {
                florets.add(dome ? domed(blossom, i, number, larger) : along(blossom, stem, i, number, larger));
            }
            if (dome) {
                stem = List.of(new Vector(0.4, -9, 0), new Vector(0.2, -5, 0), new Vector(0, -2.4, 0));
            }
            return new FlowerHead(List.copyOf(florets), stem, parts.all(Word.LEAF).stream().map(Builder::leaf).toList());
        }

        private static Floret leaf(List<String> part) {
            Vector at = new Vector(0.3, Double.parseDouble(part.get(1)), 0);
            return new Floret(Flora.BUILT_IN.blossom(part.get(0)), at, new Vector(0.05, 1, 0.1).unit(), Double.parseDouble(part.get(2)),
                    0.4, at, false);
        }

        private Floret domed(Blossom blossom, int i, int number, double larger) {
            double up = 1 - (i + 0.5) / number * 1.15;
            double around = Math.sqrt(1 - up * up);
            Vector out = new Vector(around * Math.cos(i * GOLDEN + 0.6), up, around * Math.sin(i * GOLDEN + 0.6));
            Vector from = new Vector(0, -2.4, 0);
            Vector at = new Vector(0, -1.4, 0).plus(parts.figures(Word.STALK, 3)[0], out);
            return at(blossom, at, out, parts.figures(Word.SIZE, 2)[0] * larger, i, number, from);
        }

        private Floret along(Blossom blossom, List<Vector> stem, int i, int number, double larger) {
            double share = number == 1 ? 1 : (double) i / (number - 1);
            double[] at = parts.figures(Word.AT, 1, 1);
            double[] pitch = ends(Word.PITCH, 50);
            double[] size = ends(Word.SIZE, 5);
            double[] stalk = ends(Word.STALK, 0);
            Word spread = parts.all(Word.SPREAD).stream().map(words -> Word.of(words.get(0))).findFirst().orElse(Word.ONE);
            double turn = switch (spread) {
                case ROUND -> i * GOLDEN + 0.4;
                case SIDE -> Math.toRadians(32 + 96 * (i % 2) + 40 * (SEED.share(i, 52) - 0.5));
                case SPIRE -> Math.toRadians(new double[] {20, 158, 84}[i % 3] + 24 * (SEED.share(i, 52) - 0.5));
                case TWO -> i % 2 == 0 ? 0.5 : Math.PI - 0.5;
                default -> 1.25;
            };
            Vector from = on(stem, at[0] + share * (at[1] - at[0]));
            Vector axis = Vector.towards(turn, Math.toRadians(pitch[0] + share * (pitch[1] - pitch[0])));
            Vector out = Vector.towards(turn, 0.35).times(0.8).plus(0.2, axis).unit();
            Vector base = from.plus(stalk[0] + share * (stalk[1] - stalk[0]), out);
            return at(blossom, base, axis, (size[0] + share * (size[1] - size[0])) * larger, i, number, from);
        }

        private double[] ends(Word name, double otherwise) {
            double[] ends = parts.figures(name, otherwise);
            return ends.length > 1 ? ends : new double[] {ends[0], ends[0]};
        }

        /** As far as it is: the first to open are the first to fade, the last ones are always buds. */
        private Floret at(Blossom blossom, Vector at, Vector axis, double size, int i, int number, Vector from) {
            double turn = number == 1 || blossom.tube() ? 0 : SEED.share(i, 53);
            double buds = number == 1 ? stage.buds() : Math.max(stage.buds(), part * parts.figures(Word.BUDS, 0)[0] / number * (1 - stage.faded()));
            double order = (i + 0.5) / number;
            if (order > 1 - buds) {
                return new Floret(Flora.BUILT_IN.blossom(Motif.BUD.id), at, axis, BUD * size, 0, from, false);
            }
            return new Floret(blossom, at, order < stage.faded() ? axis.plus(-0.5, UP).unit() : axis, size, turn, from, order < stage.faded());
        }

        /** At a share of a run of curves. */
        private static Vector on(List<Vector> run, double share) {
            int curves = run.size() / 2;
            int curve = Math.min(curves - 1, (int) (share * curves));
            double t = share * curves - curve;
            return run.get(2 * curve).times((1 - t) * (1 - t)).plus(2 * t * (1 - t), run.get(2 * curve + 1)).plus(t * t, run.get(2 * curve + 2));
        }
    }
}
