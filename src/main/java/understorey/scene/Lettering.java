package understorey.scene;

import java.util.ArrayList;
import java.util.List;
import understorey.scene.Drawing.Label;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Drawing.Text;

/** The words of a drawing, of 16 px: how wide they are, and whether there is room for more. */
public final class Lettering {

    private static final double ABOVE = 13;
    private static final double BELOW = 4;
    /** Between a line and a word beside it. */
    private static final double CLEAR = 2;

    /** Where the letters of a text stand, by their estimated width. */
    public record Stretch(double left, double top, double right, double bottom) {

        public static Stretch of(Text text) {
            double x = text.at().x();
            double y = text.at().y();
            double width = Lettering.width(text.text());
            if (!(text instanceof Label label)) {
                return new Stretch(x - ABOVE, y, x + BELOW, y + width);
            }
            double left = x - switch (label.anchor()) {
                case START -> 0;
                case MIDDLE -> width / 2;
                case END -> width;
            };
            return new Stretch(left, y - ABOVE, left + width, y + BELOW);
        }

        public double width() {
            return right - left;
        }

        public double middle() {
            return (left + right) / 2;
        }

        public boolean touches(Stretch other) {
            return left < other.right && right > other.left && top < other.bottom && bottom > other.top;
        }

        /** True when a straight stroke between two points runs through. */
        public boolean crossedBy(Point a, Point b) {
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

    /** Lettering with the words among these marks. */
    public static Lettering of(List<? extends Mark> marks) {
        Lettering lettering = new Lettering();
        for (Mark mark : marks) {
            if (mark instanceof Text text) {
                lettering.taken.add(Stretch.of(text));
            }
        }
        return lettering;
    }

    /**
     * Width of a text of 16 px, px: wider than any system face sets it, on the average letter. A letter of the wide
     * scripts and a pictograph take more than a square.
     */
    public static double width(String text) {
        return text.codePoints().mapToDouble(Lettering::width).sum();
    }

    private static double width(int point) {
        return point < 0x1100 || point >= 0x2000 && point < 0x2600 ? 9.2 : 19;
    }

    /** The text, cut off with an ellipsis where it is wider than that, px. */
    public static String shortened(String text, double width) {
        double before = 0;
        int fits = 0;
        for (int i = 0; i < text.length(); i = text.offsetByCodePoints(i, 1)) {
            if (before + width('…') <= width) {
                fits = i;
            }
            before += width(text.codePointAt(i));
            if (before > width) {
                return text.substring(0, fits).stripTrailing() + "…";
            }
        }
        return text;
    }

    /** Keeps words off a line from then on. */
    public void avoid(List<Point> line) {
        lines.add(line);
    }

    /** True when the words touch no other and no line to be avoided; they are placed from then on. */
    public boolean place(Text text) {
        Stretch stretch = Stretch.of(text);
        boolean free = taken.stream().noneMatch(stretch::touches) && lines.stream().noneMatch(line -> crosses(line, stretch));
        if (free) {
            taken.add(stretch);
        }
        return free;
    }

    private static boolean crosses(List<Point> line, Stretch stretch) {
        for (int i = 1; i < line.size(); i++) {
            if (stretch.crossedBy(line.get(i - 1), line.get(i))) {
                return true;
            }
        }
        return false;
    }

    /** True when words are placed with a line to them from something farther off; the line runs through no words. */
    public boolean place(Text text, List<Point> leader) {
        boolean placed = taken.stream().noneMatch(other -> other.crossedBy(leader.get(0), leader.get(1))) && place(text);
        if (placed) {
            avoid(leader);
        }
        return placed;
    }
}
