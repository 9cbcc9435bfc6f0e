package understorey.scene;

import java.util.ArrayList;
import java.util.List;
import understorey.scene.Drawing.Label;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;

/** The words of a drawing, of 16 px: finds out whether there is room for one more. */
final class Lettering {

    private static final double ABOVE = 13;
    private static final double BELOW = 4;
    /** Between a line and a word beside it. */
    private static final double CLEAR = 2;

    /** Where a label's letters stand, by its estimated width. */
    record Stretch(double left, double top, double right, double bottom) {

        static Stretch of(Label label) {
            double width = Lanes.textWidth(label.text());
            double left = label.at().x() - switch (label.anchor()) {
                case START -> 0;
                case MIDDLE -> width / 2;
                case END -> width;
            };
            return new Stretch(left, label.at().y() - ABOVE, left + width, label.at().y() + BELOW);
        }

        static Stretch of(Drawing.Upright label) {
            return new Stretch(label.at().x() - ABOVE, label.at().y(), label.at().x() + BELOW,
                    label.at().y() + Lanes.textWidth(label.text()));
        }

        boolean touches(Stretch other) {
            return left < other.right && right > other.left && top < other.bottom && bottom > other.top;
        }

        /** True when a straight stroke between two points runs through. */
        boolean crossedBy(Point a, Point b) {
            double from = Math.max(left - CLEAR, Math.min(a.x(), b.x()));
            double to = Math.min(right + CLEAR, Math.max(a.x(), b.x()));
            if (from > to) {
                return false;
            }
            double yFrom = a.x() == b.x() ? a.y() : a.y() + (from - a.x()) / (b.x() - a.x()) * (b.y() - a.y());
            double yTo = a.x() == b.x() ? b.y() : a.y() + (to - a.x()) / (b.x() - a.x()) * (b.y() - a.y());
            return Math.min(yFrom, yTo) < bottom && Math.max(yFrom, yTo) > top;
        }
    }

    private final List<Stretch> taken = new ArrayList<>();
    private final List<List<Point>> lines = new ArrayList<>();

    /** Lettering with the labels among these marks. */
    static Lettering of(List<Mark> marks) {
        Lettering lettering = new Lettering();
        for (Mark mark : marks) {
            if (mark instanceof Label label) {
                lettering.taken.add(Stretch.of(label));
            } else if (mark instanceof Drawing.Upright label) {
                lettering.taken.add(Stretch.of(label));
            }
        }
        return lettering;
    }

    /** Keeps words off a line from then on. */
    void avoid(List<Point> line) {
        lines.add(line);
    }

    /** Keeps words off strokes from then on. */
    void avoid(Drawing.Hatch strokes) {
        for (int i = 1; i < strokes.ends().size(); i += 2) {
            lines.add(strokes.ends().subList(i - 1, i + 1));
        }
    }

    /** True when the label touches no other and no line to be avoided; it is taken from then on. */
    boolean place(Label label) {
        return place(Stretch.of(label));
    }

    boolean place(Drawing.Upright label) {
        return place(Stretch.of(label));
    }

    /** The same with a line to its words from something farther off; the line runs through no words. */
    boolean place(Label label, List<Point> leader) {
        for (Stretch other : taken) {
            if (other.crossedBy(leader.get(0), leader.get(1))) {
                return false;
            }
        }
        boolean placed = place(label);
        if (placed) {
            avoid(leader);
        }
        return placed;
    }

    private boolean place(Stretch stretch) {
        for (Stretch other : taken) {
            if (stretch.touches(other)) {
                return false;
            }
        }
        for (List<Point> line : lines) {
            for (int i = 1; i < line.size(); i++) {
                if (stretch.crossedBy(line.get(i - 1), line.get(i))) {
                    return false;
                }
            }
        }
        taken.add(stretch);
        return true;
    }
}
