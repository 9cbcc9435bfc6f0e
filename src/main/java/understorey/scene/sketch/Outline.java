package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import understorey.scene.Drawing.Point;

/** Closed smooth outlines from the corners that pull at them. */
final class Outline {

    private Outline() {
    }

    /**
     * From the first corner round and back to it; the others are control points, and the curve passes half-way between them.
     *
     * @param tip index of one more corner that the curve reaches; −1 for none
     */
    static List<Point> smooth(List<Point> corners, int tip) {
        List<Point> run = run(corners, tip);
        if (area(run) < 0) {
            Collections.reverse(run);
        }
        return run;
    }

    /** Twice the area, positive for a run that goes round one way: all do, so that they fill what they cover together. */
    private static double area(List<Point> run) {
        double area = 0;
        for (int i = 1; i < run.size(); i++) {
            area += run.get(i - 1).x() * run.get(i).y() - run.get(i).x() * run.get(i - 1).y();
        }
        return area;
    }

    private static List<Point> run(List<Point> corners, int tip) {
        List<Point> run = new ArrayList<>(List.of(corners.get(0)));
        for (int i = 1; i < corners.size(); i++) {
            Point control = corners.get(i);
            Point next = corners.get((i + 1) % corners.size());
            if (i == tip) {
                continue;
            }
            run.add(control);
            run.add(i + 1 == corners.size() || i + 1 == tip ? next : new Point((control.x() + next.x()) / 2, (control.y() + next.y()) / 2));
        }
        return run;
    }
}
