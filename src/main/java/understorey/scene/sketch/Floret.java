package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.List;
import understorey.scene.Drawing.Point;

/**
 * One flower of a head, in space: to the right, up, and towards the camera along the level, in parts of the head.
 *
 * @param at   its middle; of a bell, where it hangs
 * @param axis direction in which it opens, of length 1
 * @param size radius of an open flower, length of a bell
 * @param turn of its petals round the axis, radians
 */
record Floret(Vector at, Vector axis, double size, double turn, Cut cut) {

    /** How the petals of a flower are cut: their number, half their width as an angle, how far they cup, round or pointed. */
    enum Cut {
        STAR(6, 0.5, 0.3, false), OVAL(6, 0.6, 0.22, true), CUP(5, 0.82, 0.5, true), RAY(13, 0.26, 0.18, false),
        CROSS(4, 0.7, 0.2, true), HANGING(6, 0.75, 1.5, false), BELL(0, 0.46, 0, true), LIP(0, 0.3, 0, true);

        final int petals;
        final double width;
        final double lift;
        final boolean round;

        Cut(int petals, double width, double lift, boolean round) {
            this.petals = petals;
            this.width = width;
            this.lift = lift;
            this.round = round;
        }
    }

    record Vector(double x, double y, double z) {

        Vector plus(double times, Vector other) {
            return new Vector(x + times * other.x, y + times * other.y, z + times * other.z);
        }

        Vector unit() {
            double length = Math.sqrt(x * x + y * y + z * z);
            return new Vector(x / length, y / length, z / length);
        }

        Vector cross(Vector other) {
            return new Vector(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
        }
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

    /** Closed outlines of its petals. */
    List<List<Point>> petals(View view) {
        if (cut.petals == 0) {
            return bell(view);
        }
        List<List<Point>> petals = new ArrayList<>();
        for (int i = 0; i < cut.petals; i++) {
            double angle = turn + 2 * Math.PI * i / cut.petals;
            List<Point> petal = new ArrayList<>(List.of(view.point(at)));
            if (cut.round) {
                petal.add(on(view, 0.5, angle - 1.1 * cut.width, 0.3));
                petal.add(on(view, 0.88, angle - 0.5 * cut.width, 0.8));
                petal.add(on(view, 1.12, angle, 1));
                petal.add(on(view, 0.88, angle + 0.5 * cut.width, 0.8));
                petal.add(on(view, 0.5, angle + 1.1 * cut.width, 0.3));
            } else {
                petal.add(on(view, 0.66, angle - cut.width, 0.6));
                petal.add(on(view, 1, angle, 1));
                petal.add(on(view, 0.66, angle + cut.width, 0.6));
            }
            petal.add(petal.get(0));
            petals.add(petal);
        }
        return petals;
    }

    /** Lines along the middle of its petals. */
    List<List<Point>> folds(View view) {
        List<List<Point>> folds = new ArrayList<>();
        for (int i = 0; i < cut.petals; i++) {
            double angle = turn + 2 * Math.PI * i / cut.petals;
            folds.add(List.of(on(view, 0.25, angle, 0.25), on(view, 0.55, angle, 0.5), on(view, 0.8, angle, 0.8)));
        }
        if (cut.petals == 0) {
            Vector end = at.plus(0.85 * size, axis);
            folds.add(List.of(view.point(at.plus(0.15 * size, axis)), view.point(at.plus(0.5 * size, axis)), view.point(end)));
        }
        return folds;
    }

    private Point on(View view, double share, double angle, double lifted) {
        Vector right = (Math.abs(axis.y()) < 0.9 ? new Vector(0, 1, 0) : new Vector(1, 0, 0)).cross(axis).unit();
        Vector up = axis.cross(right);
        return view.point(at.plus(share * size * Math.cos(angle), right).plus(share * size * Math.sin(angle), up)
                .plus(lifted * cut.lift * size, axis));
    }

    /** A bell or a lipped tube from the side: its body, and the lobes that turn out at its mouth. */
    private List<List<Point>> bell(View view) {
        Point foot = view.point(at);
        Point mouth = view.point(at.plus(size, axis));
        double dx = mouth.x() - foot.x();
        double dy = mouth.y() - foot.y();
        double length = Math.max(1e-6, Math.hypot(dx, dy));
        double wide = cut.width * size * view.scale() / length;
        List<Point> body = List.of(foot, side(foot, dx, dy, 0.18, wide * 1.25), side(foot, dx, dy, 0.62, wide * 0.8),
                side(foot, dx, dy, 0.85, wide * 0.72), side(foot, dx, dy, 1, wide * 1.3), side(foot, dx, dy, 0.98, wide * 0.5),
                side(foot, dx, dy, 1.1, 0), side(foot, dx, dy, 0.98, -wide * 0.5), side(foot, dx, dy, 1, -wide * 1.3),
                side(foot, dx, dy, 0.85, -wide * 0.72), side(foot, dx, dy, 0.62, -wide * 0.8), side(foot, dx, dy, 0.18, -wide * 1.25),
                foot);
        if (cut == Cut.BELL) {
            return List.of(body);
        }
        double down = wide * (dx < 0 ? -1 : 1);
        return List.of(body, List.of(side(foot, dx, dy, 0.85, 0), side(foot, dx, dy, 1.35, down * 0.4), side(foot, dx, dy, 1.3, down * 2.6),
                side(foot, dx, dy, 0.9, down * 2.2), side(foot, dx, dy, 0.85, 0)));
    }

    private static Point side(Point foot, double dx, double dy, double along, double aside) {
        return new Point(foot.x() + along * dx - aside * dy, foot.y() + along * dy + aside * dx);
    }
}
