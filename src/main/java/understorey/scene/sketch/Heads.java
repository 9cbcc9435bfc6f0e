package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.List;
import understorey.plan.Subject;
import understorey.scene.Drawing.Hatch;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Drawing.Spots;
import understorey.scene.Drawing.Stamps;

/**
 * Flower heads to scale, in steps of size of {@value #STEP} so that one outline serves many: spots where a head is a
 * few pixels wide, then rings, then a ring of petals; a large head of several flowers shows each of them, on its stalk.
 */
final class Heads {

    static final double STEP = 1.15;
    private static final double STEPS_PER_E = 1 / Math.log(STEP);
    private static final double LEAST_PX = 1.3;
    private static final double RING_PX = 2.6;
    private static final double PETALS_PX = 8.5;
    private static final double EYE_PX = 15;
    /** From here on the flowers of a head are told apart. */
    private static final double FLOWERS_PX = 40;
    /** How near to the middle the notches reach, share of the petals' length; half as far in a small head. */
    private static final double NOTCH = 0.34;
    private static final double STALKS_PX = 100;
    /** Of one size; among more of them flowers are not told apart, which keeps a drawing small. */
    private static final int MOST_HEADS = 9;
    private static final int MOST_FLOWERS = 16;
    private static final int OUTER_FLOWERS = 9;

    private final Setup setup;
    private final Perspective perspective;
    private final Clip clip;
    private final Focus focus;
    private final int flowers;

    Heads(Setup setup, Perspective perspective) {
        this.setup = setup;
        this.perspective = perspective;
        clip = new Clip(perspective.width, perspective.height);
        focus = setup.focus();
        Integer open = setup.subject().flowersOpen();
        flowers = open == null ? 1 : Math.min(MOST_FLOWERS, open);
    }

    /** The step of a size, px; what is smaller than a spot can be counts as a spot. */
    static int step(double px) {
        return (int) Math.round(Math.log(Math.max(LEAST_PX, px)) * STEPS_PER_E);
    }

    static double size(int step) {
        return Math.pow(STEP, step);
    }

    /** Heads of one size at one depth, as far as they reach into the frame. */
    void draw(double px, double depthM, List<Point> heads, List<Mark> marks) {
        Tone tone = Tone.of(focus, depthM);
        double blur = tone == Tone.SHARP ? 0 : focus.blurShare(depthM) * perspective.width;
        double wide = tone == Tone.FAINT ? px + blur : px;
        List<Point> at = heads.stream().filter(head -> perspective.inFrame(head.x(), head.y(), wide / 2)).toList();
        if (at.isEmpty()) {
            return;
        }
        if (tone == Tone.FAINT) {
            marks.add(new Spots("disc" + petals(), wide, at));
        } else if (px < RING_PX) {
            marks.add(new Spots("spot" + tone.suffix, Math.max(LEAST_PX, px), at));
        } else if (px < PETALS_PX) {
            marks.add(new Stamps("head" + petals() + tone.suffix, ring(px), at));
        } else if (flowers > 1 && px >= FLOWERS_PX && at.size() <= MOST_HEADS) {
            umbel(px, at, tone, marks);
        } else {
            marks.add(new Stamps("head" + petals() + tone.suffix, rosette(px, flowers > 1 && px >= EYE_PX ? 8 : 6), at));
            if (px >= EYE_PX) {
                marks.add(new Spots("eye" + tone.suffix, 0.18 * px, at));
            }
        }
    }

    /** Dark petals are told from pale ones. */
    private String petals() {
        Subject.Reflectance petals = setup.subject().reflectance();
        return petals == Subject.Reflectance.BLUE_VIOLET || petals == Subject.Reflectance.RED
                || petals == Subject.Reflectance.GREEN ? "-dark" : "";
    }

    private static List<Point> ring(double px) {
        List<Point> ring = new ArrayList<>(8);
        for (int i = 0; i < 8; i++) {
            polar(px / 2, (i + 0.5) * Math.PI / 4, ring);
        }
        return ring;
    }

    /** Rounded petals with a notch between each two; a large one has more corners. */
    static List<Point> rosette(double px, int petals) {
        int corners = px >= 2 * FLOWERS_PX ? 14 : px >= FLOWERS_PX ? 8 : px >= EYE_PX ? 5 : 4;
        double notch = px >= EYE_PX ? NOTCH : 2 * NOTCH;
        List<Point> outline = new ArrayList<>(corners * petals);
        for (int i = 0; i < corners * petals; i++) {
            double swell = Math.pow(Math.abs(Math.cos(Math.PI * (i % corners - corners / 2) / corners)), 0.6);
            polar(px / 2 * (notch + (1 - notch) * swell), 2 * Math.PI * i / (corners * petals) + 0.3, outline);
        }
        return outline;
    }

    private static void polar(double radius, double angle, List<Point> points) {
        points.add(new Point(radius * Math.cos(angle), radius * Math.sin(angle)));
    }

    /** Flowers in a ring, what is over in a smaller one within. */
    private void umbel(double px, List<Point> at, Tone tone, List<Mark> marks) {
        double flower = px / Math.sqrt(flowers);
        List<Point> stalks = new ArrayList<>();
        List<Point> places = new ArrayList<>();
        int outer = flowers < 4 ? flowers : Math.min(OUTER_FLOWERS, flowers - 1);
        for (Point head : at) {
            for (int i = 0; i < flowers; i++) {
                int number = i < outer ? outer : flowers - outer;
                double radius = (px - flower) / 2 * (i < outer ? 1 : number == 1 ? 0 : 0.45);
                double angle = 2 * Math.PI * i / number + 0.4;
                Point place = new Point(head.x() + radius * Math.cos(angle), head.y() + radius * Math.sin(angle));
                if (px >= STALKS_PX) {
                    clip.stroke(head.x(), head.y(), place.x(), place.y(), stalks);
                }
                if (perspective.inFrame(place.x(), place.y(), flower / 2)) {
                    places.add(place);
                }
            }
        }
        if (!stalks.isEmpty()) {
            marks.add(new Hatch("stems" + tone.suffix, stalks));
        }
        if (places.isEmpty()) {
            return;
        }
        marks.add(new Stamps("head" + petals() + tone.suffix, rosette(flower, 6), places));
        marks.add(new Spots("eye" + tone.suffix, 0.2 * flower, places));
    }
}
