package understorey.scene;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import understorey.scene.Drawing.Anchor;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;

/**
 * Words over lines that hang down into a chart, in as many rows as they need: no two words touch, and no line
 * runs through words that hang lower, as long as there is any such arrangement near at hand.
 */
public final class Signs {

    private static final double TOP = 8;
    private static final double ROW = 20;
    /** Between a line and its words. */
    private static final double ASIDE = 3;
    private static final double GAP = 8;

    private record Sign(double x, String words) {
    }

    private record Hung(Sign sign, int row, boolean right) {

        double from() {
            return right ? sign.x() + ASIDE : sign.x() - ASIDE - Lettering.width(sign.words());
        }

        double to() {
            return from() + Lettering.width(sign.words());
        }

        boolean touches(Hung other) {
            return row == other.row && from() < other.to() + GAP && to() > other.from() - GAP;
        }

        /** The line of the other one, from a row above, runs through these words. */
        boolean crossedBy(Hung other) {
            return other.row < row && other.sign.x() > from() - ASIDE && other.sign.x() < to() + ASIDE;
        }
    }

    private final double left;
    private final double right;
    private final List<Sign> signs = new ArrayList<>();

    /** Signs between two edges of the sheet, px. */
    public Signs(double left, double right) {
        this.left = left;
        this.right = right;
    }

    public void add(double x, String words) {
        signs.add(new Sign(x, words));
    }

    /** In the order that lets the fewest lines run through words: from the edges to the middle, or from one edge to the other. */
    private List<Hung> hung() {
        double middle = (left + right) / 2;
        Comparator<Sign> fromTheLeft = Comparator.comparingDouble(Sign::x);
        return Stream.of(Comparator.<Sign>comparingDouble(sign -> sign.x() <= middle ? sign.x() : 2 * right - sign.x()), fromTheLeft,
                fromTheLeft.reversed())
                .map(this::inOrder).min(Comparator.comparingLong(Signs::crossings)).orElseThrow();
    }

    private List<Hung> inOrder(Comparator<Sign> order) {
        List<Hung> hung = new ArrayList<>();
        signs.stream().sorted(order).forEach(sign -> hung.add(placed(sign, sign.x() <= (left + right) / 2, hung)));
        return hung;
    }

    private static long crossings(List<Hung> hung) {
        return hung.stream().mapToLong(one -> hung.stream().filter(one::crossedBy).count()).sum();
    }

    private Hung placed(Sign sign, boolean toTheRight, List<Hung> others) {
        for (boolean strict : new boolean[] {true, false}) {
            for (int row = 0; row <= others.size(); row++) {
                for (boolean side : new boolean[] {toTheRight, !toTheRight}) {
                    Hung hung = new Hung(sign, row, side);
                    if (fits(hung, others, strict)) {
                        return hung;
                    }
                }
            }
        }
        return new Hung(sign, others.size(), toTheRight);
    }

    private boolean fits(Hung hung, List<Hung> others, boolean strict) {
        return hung.from() >= left && hung.to() <= right && others.stream().noneMatch(other -> hung.touches(other)
                || strict && (hung.crossedBy(other) || other.crossedBy(hung)));
    }

    /** The lower edge of the last row, px. */
    public double bottom() {
        return TOP + hung().stream().mapToInt(hung -> hung.row() + 1).max().orElse(0) * ROW;
    }

    /** Lines down to there, and their words. */
    public List<Mark> marks(double lineEnd) {
        List<Mark> marks = new ArrayList<>();
        List<Point> ends = new ArrayList<>();
        marks.add(new Drawing.Hatch("event", ends));
        for (Hung hung : hung()) {
            double x = hung.sign().x();
            double y = TOP + (hung.row() + 1) * ROW - 4;
            ends.add(new Point(x, y + 4));
            ends.add(new Point(x, lineEnd));
            marks.add(new Drawing.Label("words", hung.right() ? Anchor.START : Anchor.END,
                    new Point(hung.right() ? x + ASIDE : x - ASIDE, y), hung.sign().words()));
        }
        return ends.isEmpty() ? List.of() : marks;
    }
}
