package understorey.scene.sketch;

import java.util.List;
import understorey.scene.Drawing.Point;

/** Cuts strokes at the edges of a frame (Liang and Barsky 1984, from memory). */
record Clip(double width, double height) {

    /** Adds the two ends of what lies within the frame; nothing where the stroke misses it. */
    void stroke(double x1, double y1, double x2, double y2, List<Point> ends) {
        double dx = x2 - x1;
        double dy = y2 - y1;
        double from = Math.max(0, Math.max(enters(dx, x1, width), enters(dy, y1, height)));
        double to = Math.min(1, Math.min(leaves(dx, x1, width), leaves(dy, y1, height)));
        if (from < to) {
            ends.add(new Point(x1 + from * dx, y1 + from * dy));
            ends.add(new Point(x1 + to * dx, y1 + to * dy));
        }
    }

    private static double enters(double d, double at, double edge) {
        return d == 0 ? at >= 0 && at <= edge ? 0 : 2 : ((d > 0 ? 0 : edge) - at) / d;
    }

    private static double leaves(double d, double at, double edge) {
        return d == 0 ? 1 : ((d > 0 ? edge : 0) - at) / d;
    }

    double x(double x) {
        return Math.max(0, Math.min(width, x));
    }

    double y(double y) {
        return Math.max(0, Math.min(height, y));
    }
}
