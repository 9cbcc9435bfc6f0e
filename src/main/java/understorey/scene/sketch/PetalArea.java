package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.List;
import understorey.scene.Drawing.Point;

/** Area that outlines cover together, counted on a grid of points: within 4 % for a head of flowers. */
final class PetalArea {

    private static final int GRID = 30;
    private static final int CHORDS = 3;

    /** An outline as straight edges, within a box. */
    private record Polygon(double[] x, double[] y, double left, double right, double top, double bottom) {

        static Polygon of(List<Point> run) {
            int edges = run.size() / 2 * CHORDS;
            double[] x = new double[edges];
            double[] y = new double[edges];
            double left = Double.MAX_VALUE;
            double right = -Double.MAX_VALUE;
            double top = Double.MAX_VALUE;
            double bottom = -Double.MAX_VALUE;
            for (int i = 0; i < edges; i++) {
                int at = i / CHORDS * 2;
                double share = i % CHORDS / (double) CHORDS;
                x[i] = bent(run.get(at).x(), run.get(at + 1).x(), run.get(at + 2).x(), share);
                y[i] = bent(run.get(at).y(), run.get(at + 1).y(), run.get(at + 2).y(), share);
                left = Math.min(left, x[i]);
                right = Math.max(right, x[i]);
                top = Math.min(top, y[i]);
                bottom = Math.max(bottom, y[i]);
            }
            return new Polygon(x, y, left, right, top, bottom);
        }

        private static double bent(double from, double by, double to, double share) {
            return (1 - share) * (1 - share) * from + 2 * share * (1 - share) * by + share * share * to;
        }

        boolean holds(double px, double py) {
            if (px < left || px > right || py < top || py > bottom) {
                return false;
            }
            boolean inside = false;
            for (int i = 0, j = x.length - 1; i < x.length; j = i++) {
                if (y[i] > py != y[j] > py && px < (x[j] - x[i]) * (py - y[i]) / (y[j] - y[i]) + x[i]) {
                    inside = !inside;
                }
            }
            return inside;
        }
    }

    private PetalArea() {
    }

    static double of(List<List<Point>> outlines) {
        List<Polygon> polygons = new ArrayList<>();
        outlines.forEach(outline -> polygons.add(Polygon.of(outline)));
        double left = polygons.stream().mapToDouble(Polygon::left).min().orElse(0);
        double wide = polygons.stream().mapToDouble(Polygon::right).max().orElse(0) - left;
        double top = polygons.stream().mapToDouble(Polygon::top).min().orElse(0);
        double high = polygons.stream().mapToDouble(Polygon::bottom).max().orElse(0) - top;
        int inside = 0;
        for (int i = 0; i < GRID * GRID; i++) {
            double x = left + (i % GRID + 0.5) / GRID * wide;
            double y = top + (i / GRID + 0.5) / GRID * high;
            for (Polygon polygon : polygons) {
                if (polygon.holds(x, y)) {
                    inside++;
                    break;
                }
            }
        }
        return wide * high * inside / (GRID * GRID);
    }
}
