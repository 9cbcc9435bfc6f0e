package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import understorey.plan.Compose;
import understorey.plan.FramePlace;
import understorey.scene.Drawing.Curves;
import understorey.scene.Drawing.Hatch;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Fact;

/**
 * What the author wants where in the frame: an arrow from where a line leads in to the subject, and corners or edges that
 * something is to be kept out of, struck out. Words that name no place are not drawn.
 */
final class ComposeMarks {

    private static final double INSET = 8;
    private static final double ARROW = 14;
    private static final double STRIP = 30;
    private static final double APART = 15;
    private static final double CASE = 3;
    private static final double LINE = 2;

    private final Perspective perspective;
    private final @Nullable FramePlace leadIn;
    private final List<FramePlace> keepOut;
    private final Point subject;

    ComposeMarks(Setup setup, Perspective perspective) {
        this.perspective = perspective;
        Compose compose = setup.fit().intent().shot().compose();
        leadIn = compose == null || compose.leadIn() == null ? null : FramePlace.in(compose.leadIn());
        keepOut = compose == null ? List.of() : compose.keepOut().stream().map(FramePlace::in).filter(Objects::nonNull).distinct().toList();
        double row = setup.close() ? perspective.height / 2 : perspective.groundY(setup.fit().focusM());
        subject = new Point(perspective.width / 2, Math.max(0.3, Math.min(0.62, row / perspective.height)) * perspective.height);
    }

    /** Each line twice: a dark one, and a light one on it. */
    List<Mark> marks() {
        List<Mark> marks = new ArrayList<>();
        List<Point> strokes = new ArrayList<>();
        keepOut.forEach(place -> struck(place, strokes));
        if (!strokes.isEmpty()) {
            marks.add(new Hatch("keep-out-case", strokes));
            marks.add(new Hatch("keep-out", strokes));
        }
        if (leadIn != null) {
            List<List<Point>> arrow = arrow(leadIn);
            marks.add(new Curves("lead-in-case", LINE + CASE, arrow));
            marks.add(new Curves("lead-in", LINE, arrow));
        }
        return marks;
    }

    private List<List<Point>> arrow(FramePlace place) {
        Point from = new Point(at(place.right(), perspective.width), at(place.down(), perspective.height));
        Point bend = new Point((from.x() + subject.x()) / 2, from.y() + 0.2 * (subject.y() - from.y()));
        double far = Math.hypot(subject.x() - bend.x(), subject.y() - bend.y());
        double dx = (subject.x() - bend.x()) / far;
        double dy = (subject.y() - bend.y()) / far;
        Point tip = new Point(subject.x() - 2 * ARROW * dx, subject.y() - 2 * ARROW * dy);
        return List.of(List.of(from, bend, tip), barb(tip, dx, dy, 0.5), barb(tip, dx, dy, -0.5));
    }

    private static List<Point> barb(Point tip, double dx, double dy, double aside) {
        Point end = new Point(tip.x() - ARROW * (dx - aside * dy), tip.y() - ARROW * (dy + aside * dx));
        return List.of(tip, new Point((tip.x() + end.x()) / 2, (tip.y() + end.y()) / 2), end);
    }

    private static double at(int side, double size) {
        return side == 0 ? size / 2 : side < 0 ? INSET : size - INSET;
    }

    /** Strokes at 45° across a corner, or along the middle half of an edge. */
    private void struck(FramePlace place, List<Point> strokes) {
        double width = perspective.width;
        double height = perspective.height;
        if (place.right() != 0 && place.down() != 0) {
            for (double far = APART; far <= 2.4 * STRIP; far += APART) {
                double x = place.right() < 0 ? far : width - far;
                double y = place.down() < 0 ? far : height - far;
                strokes.add(new Point(x, place.down() < 0 ? 0 : height));
                strokes.add(new Point(place.right() < 0 ? 0 : width, y));
            }
        } else if (place.right() != 0) {
            double edge = place.right() < 0 ? 0 : width;
            for (double y = height / 4; y <= height * 3 / 4; y += APART) {
                strokes.add(new Point(edge, y + STRIP / 2));
                strokes.add(new Point(edge - place.right() * STRIP, y - STRIP / 2));
            }
        } else {
            double edge = place.down() < 0 ? 0 : height;
            for (double x = width / 4; x <= width * 3 / 4; x += APART) {
                strokes.add(new Point(x + STRIP / 2, edge));
                strokes.add(new Point(x - STRIP / 2, edge - place.down() * STRIP));
            }
        }
    }

    void says(List<Fact> says) {
        if (leadIn != null) {
            says.add(new Fact.LeadsInFrom(where(leadIn)));
        }
        keepOut.forEach(place -> says.add(new Fact.StruckOut(where(place))));
    }

    private static Fact where(FramePlace place) {
        Fact.Word[] row = switch (place.down()) {
            case -1 -> new Fact.Word[] {Fact.Word.UPPER_LEFT, Fact.Word.TOP_EDGE, Fact.Word.UPPER_RIGHT};
            case 1 -> new Fact.Word[] {Fact.Word.LOWER_LEFT, Fact.Word.BOTTOM_EDGE, Fact.Word.LOWER_RIGHT};
            default -> new Fact.Word[] {Fact.Word.LEFT_EDGE, Fact.Word.TOP_EDGE, Fact.Word.RIGHT_EDGE};
        };
        return row[place.right() + 1];
    }
}
