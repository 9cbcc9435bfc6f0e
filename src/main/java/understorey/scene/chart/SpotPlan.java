package understorey.scene.chart;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.scene.Drawing;
import understorey.scene.Drawing.Anchor;
import understorey.scene.Drawing.Label;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Fact;
import understorey.scene.Lettering;
import understorey.scene.Scene;
import understorey.scene.Wording;
import understorey.visit.GroundPlan;

/** The spots of a wood as a small plan to scale, north up, with the walks of the day and their lengths as the crow flies. */
public final class SpotPlan {

    private static final double WIDTH = 352;
    private static final double HIGHEST = 330;
    private static final double MARGIN = 44;
    private static final double FOOT = 44;
    private static final double DOT = 5;
    /** Nothing is drawn larger than this, px a metre. */
    private static final double LARGEST = 2;
    private static final double LONGEST_BAR = 120;
    private static final double CROWDED = 34;
    private static final double FARTHEST = 160;
    private static final int DIRECTIONS = 24;

    private final GroundPlan plan;
    private final Wording words;
    private final double west;
    private final double north;
    private final double scale;
    private final double height;
    private final double indent;
    private final List<Mark> marks = new ArrayList<>();

    private SpotPlan(GroundPlan plan, Wording words) {
        this.plan = plan;
        this.words = words;
        DoubleSummaryStatistics eastings = plan.places().stream().mapToDouble(GroundPlan.Place::eastM).summaryStatistics();
        DoubleSummaryStatistics northings = plan.places().stream().mapToDouble(GroundPlan.Place::northM).summaryStatistics();
        double across = eastings.getMax() - eastings.getMin();
        double up = northings.getMax() - northings.getMin();
        this.west = eastings.getMin();
        this.north = northings.getMax();
        this.scale = Math.min(LARGEST, Math.min((WIDTH - 2 * MARGIN) / Math.max(1, across), (HIGHEST - 2 * MARGIN) / Math.max(1, up)));
        this.height = 2 * MARGIN + up * scale + FOOT;
        this.indent = (WIDTH - across * scale) / 2;
    }

    public static Scene of(GroundPlan plan) {
        return words -> new SpotPlan(plan, words).draw();
    }

    private Drawing draw() {
        double barM = barM();
        for (GroundPlan.Way way : plan.ways()) {
            marks.add(new Drawing.Line("walk", List.of(at(way.from()), at(way.to()))));
        }
        marks.addAll(frame(barM));
        Lettering lettering = Lettering.of(marks);
        for (GroundPlan.Place place : plan.places()) {
            marks.add(new Drawing.Dot("ground-spot", at(place), DOT));
            lettering.avoid(List.of(new Point(at(place).x() - DOT, at(place).y()), new Point(at(place).x() + DOT, at(place).y())));
        }
        for (GroundPlan.Way way : plan.ways()) {
            lettering.avoid(List.of(at(way.from()), at(way.to())));
        }
        for (GroundPlan.Place place : plan.places()) {
            name(place, lettering);
        }
        for (GroundPlan.Way way : plan.ways()) {
            length(way, lettering);
        }
        return new Drawing(WIDTH, height, words.of(Fact.Word.SPOTS_NORTH_UP), words.of(says()), List.copyOf(marks));
    }

    /** A bar of a round length, and an arrow to the north. */
    private List<Mark> frame(double barM) {
        double y = height - 14;
        double end = 10 + barM * scale;
        return List.of(new Drawing.Hatch("ground-line", List.of(new Point(10, y), new Point(end, y), new Point(10, y - 5), new Point(10, y + 5),
                        new Point(end, y - 5), new Point(end, y + 5))),
                new Label("figure", Anchor.START, new Point(end + 8, y + 5), words.of(new Fact.BarLength(barM))),
                new Drawing.Line("ground-line", List.of(new Point(WIDTH - 20, height - 8), new Point(WIDTH - 20, height - 46))),
                new Drawing.Line("ground-line", List.of(new Point(WIDTH - 26, height - 36), new Point(WIDTH - 20, height - 46), new Point(WIDTH - 14, height - 36))),
                new Label("figure", Anchor.END, new Point(WIDTH - 30, height - 24), words.of(Fact.Word.NORTH)));
    }

    /** One, two or five times a power of ten of the reader's unit, the longest that fits. */
    private double barM() {
        double unitM = words.scaleUnitM(LONGEST_BAR / scale);
        double longest = LONGEST_BAR / scale / unitM;
        double power = Math.pow(10, Math.floor(Math.log10(longest)));
        double times = longest / power;
        return unitM * power * (times >= 5 ? 5 : times >= 2 ? 2 : 1);
    }

    /** Beside, above or below its dot; in a crowd, and where there is no room, farther off at the end of a line. */
    private void name(GroundPlan.Place place, Lettering lettering) {
        Point at = at(place);
        String name = Lettering.shortened(place.name(), WIDTH * 0.45);
        Point crowd = crowd(at);
        if (crowd != null && fartherOff(at, crowd, name, lettering)) {
            return;
        }
        for (Label label : List.of(new Label("words", Anchor.START, new Point(at.x() + 10, at.y() + 5), name),
                new Label("words", Anchor.END, new Point(at.x() - 10, at.y() + 5), name),
                new Label("words", Anchor.MIDDLE, new Point(at.x(), at.y() - 11), name),
                new Label("words", Anchor.MIDDLE, new Point(at.x(), at.y() + 22), name),
                new Label("words", Anchor.START, new Point(at.x() + 7, at.y() - 9), name),
                new Label("words", Anchor.START, new Point(at.x() + 7, at.y() + 19), name),
                new Label("words", Anchor.END, new Point(at.x() - 7, at.y() - 9), name),
                new Label("words", Anchor.END, new Point(at.x() - 7, at.y() + 19), name))) {
            if (onSheet(label) && lettering.place(label)) {
                marks.add(label);
                return;
            }
        }
        fartherOff(at, at, name, lettering);
    }

    /** The middle of dots so near that their names would stand in each other's way; null when there is none. */
    private @Nullable Point crowd(Point at) {
        int count = 0;
        double x = 0;
        double y = 0;
        for (GroundPlan.Place place : plan.places()) {
            Point other = at(place);
            if (Math.hypot(other.x() - at.x(), other.y() - at.y()) < CROWDED) {
                count++;
                x += other.x();
                y += other.y();
            }
        }
        return count < 2 ? null : new Point(x / count, y / count);
    }

    /** The nearest place with room, best away from the crowd; false where there is none, for the text says it. */
    private boolean fartherOff(Point at, Point crowd, String name, Lettering lettering) {
        double outward = Math.atan2(at.x() - crowd.x(), crowd.y() - at.y());
        for (double away = 30; away < FARTHEST; away += 10) {
            for (int i = 0; i < DIRECTIONS; i++) {
                double angle = outward + 2 * Math.PI / DIRECTIONS * (i % 2 == 0 ? -i / 2 : (i + 1) / 2);
                double aside = Math.sin(angle);
                Point end = new Point(at.x() + away * aside, at.y() - away * Math.cos(angle));
                Label label = new Label("words", aside > 0 ? Anchor.START : Anchor.END, new Point(end.x() + (aside > 0 ? 4 : -4), end.y() + 5), name);
                List<Point> leader = List.of(new Point(at.x() + DOT * aside, at.y() - DOT * Math.cos(angle)), end);
                if (onSheet(label) && lettering.place(label, leader)) {
                    marks.add(new Drawing.Line("leader", leader));
                    marks.add(label);
                    return true;
                }
            }
        }
        return false;
    }

    private void length(GroundPlan.Way way, Lettering lettering) {
        Point middle = new Point((at(way.from()).x() + at(way.to()).x()) / 2, (at(way.from()).y() + at(way.to()).y()) / 2);
        String length = words.of(new Fact.WalkLength(way.metres()));
        for (double away = 14; away <= 34; away += 10) {
            for (Label label : List.of(new Label("figure", Anchor.START, new Point(middle.x() + away, middle.y() + 5), length),
                    new Label("figure", Anchor.END, new Point(middle.x() - away, middle.y() + 5), length),
                    new Label("figure", Anchor.MIDDLE, new Point(middle.x(), middle.y() - away), length),
                    new Label("figure", Anchor.MIDDLE, new Point(middle.x(), middle.y() + away + 11), length))) {
                if (onSheet(label) && lettering.place(label)) {
                    marks.add(label);
                    return;
                }
            }
        }
    }

    private boolean onSheet(Label label) {
        Lettering.Stretch stretch = Lettering.Stretch.of(label);
        return stretch.left() >= 0 && stretch.right() <= WIDTH && stretch.top() >= 0 && stretch.bottom() <= height;
    }

    private Point at(GroundPlan.Place place) {
        return new Point(indent + (place.eastM() - west) * scale, MARGIN + (north - place.northM()) * scale);
    }

    private Fact says() {
        return plan.ways().stream().<Fact>map(way -> new Fact.StraightWalk(way.from().name(), way.to().name(), way.metres(), way.minutes()))
                .reduce(Fact.Then::new).<Fact>map(Fact.Ended::new).orElse(Fact.Word.NO_WALK);
    }
}
