package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import understorey.scene.Drawing.Point;

/**
 * One flower of a head, in space, in parts of the head.
 *
 * @param at     its base
 * @param axis   direction in which it opens, of length 1
 * @param size   its radius
 * @param turn   of its petals round the axis, radians
 * @param from   where its stalk leaves the stem
 * @param faded  whether it is over, brown and with gaps
 */
record Floret(Blossom blossom, Vector at, Vector axis, double size, double turn, Vector from, boolean faded) {

    /** A tube whose mouth is turned farther away shows no inside. */
    private static final double MOUTH = 0.3;

    /** A petal as a camera sees it: its tone, its outline, the line along its middle, how near it is, and whether its inside is seen. */
    record Petal(String tone, List<Point> outline, List<Point> vein, double near, boolean inside) {
    }

    /** Where a head is on the page, how large a part of it is, and from how far above the level the camera looks at it. */
    record View(double x, double y, double scale, double sine, double cosine) {

        static View of(double x, double y, double scale, double aboveDeg) {
            return new View(x, y, scale, Math.sin(Math.toRadians(aboveDeg)), Math.cos(Math.toRadians(aboveDeg)));
        }

        Point point(Vector at) {
            return new Point(x + scale * at.x(), y + scale * (at.z() * sine - at.y() * cosine));
        }

        /** Towards the camera. */
        double near(Vector at) {
            return at.y() * sine + at.z() * cosine;
        }
    }

    /** Rear ones first; with fewer points where it is coarse. */
    List<Petal> petals(View view, boolean coarse) {
        List<Petal> petals = new ArrayList<>();
        for (Blossom.Ring ring : blossom.rings()) {
            for (int i = 0; i < ring.count(); i++) {
                if (!faded || ring.green() || i % 3 != 1) {
                    petals.add(petal(coarse ? ring.coarse() : ring.rows(), ring.green(), ring.turn() + turn + 2 * Math.PI * i / ring.count(), view));
                }
            }
        }
        petals.removeIf(petal -> blossom.tube() && petal.inside() && view.near(axis) <= MOUTH);
        petals.sort(Comparator.comparingDouble(Petal::near));
        return petals;
    }

    List<Point> stalk(View view) {
        Vector bend = from.plus(0.7, at.plus(-1, from)).plus(0.25 * size, new Vector(0, 1, 0));
        return List.of(view.point(from), view.point(bend), view.point(at));
    }

    private Petal petal(double[][] rows, boolean green, double angle, View view) {
        Vector up = upwards();
        Vector right = up.cross(axis);
        Vector out = up.times(Math.cos(angle)).plus(Math.sin(angle), right);
        Vector aside = up.times(-Math.sin(angle)).plus(Math.cos(angle), right);
        List<Point> left = new ArrayList<>();
        List<Point> back = new ArrayList<>();
        for (double[] row : rows) {
            Vector middle = on(out, row);
            left.add(view.point(middle.plus(row[2] * size, aside)));
            if (row[2] > 0) {
                back.add(0, view.point(middle.plus(-row[2] * size, aside)));
            }
        }
        left.addAll(back);
        double[] first = rows[0];
        double[] half = rows[rows.length / 2];
        double bend = faded ? -1 : 1;
        boolean inside = view.near(out.times((first[1] - half[1]) * bend).plus(half[0] - first[0], axis)) > 0;
        String tone = green ? "leaf-light" : faded ? "withered" : inside == blossom.tube() ? "petal-dim" : "petal";
        double near = view.near(on(out, half));
        return new Petal(tone, Outline.smooth(left, rows[rows.length - 1][2] > 0 ? -1 : rows.length - 1),
                List.of(view.point(on(out, first)), view.point(on(out, half)), view.point(on(out, rows[rows.length - 1]))), near, inside && !green);
    }

    /** Faded petals hang back and shrink. */
    private Vector on(Vector out, double[] row) {
        double wide = faded ? 0.75 * row[0] : row[0];
        double along = faded && !blossom.tube() ? -0.5 * row[1] - 0.35 * row[0] : row[1];
        return at.plus(wide * size, out).plus(along * size, axis);
    }

    /** Across the axis, as far upwards as that goes. */
    private Vector upwards() {
        Vector towards = Math.abs(axis.y()) < 0.95 ? new Vector(0, 1, 0) : new Vector(0, 0, 1);
        return towards.plus(-towards.dot(axis), axis).unit();
    }

    /** Points about the axis, as many, so far from it and so far along. */
    List<Point> about(double[] ring, View view) {
        Vector up = upwards();
        Vector right = up.cross(axis);
        List<Point> points = new ArrayList<>();
        for (int i = 0; ring.length > 0 && i < ring[0]; i++) {
            double angle = turn + 0.3 + 2 * Math.PI * i / ring[0];
            double far = ring[1] * (ring[0] > 9 && i % 2 == 0 ? 0.6 : 1) * size;
            points.add(view.point(at.plus(far * Math.cos(angle), up).plus(far * Math.sin(angle), right).plus(ring[2] * size, axis)));
        }
        return points;
    }
}
