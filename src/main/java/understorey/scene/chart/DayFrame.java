package understorey.scene.chart;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import understorey.order.RunningOrder;
import understorey.scene.Drawing;
import understorey.scene.Drawing.Anchor;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Fact;
import understorey.scene.Lettering.Stretch;
import understorey.scene.Wording;
import understorey.sky.Interval;
import understorey.sky.SunDay;

/**
 * The scales of the day's light: hours from night to night across, EV upwards, and below the EV a foot for what
 * the sun does.
 */
final class DayFrame {

    static final double WIDTH = 720;
    static final double LEFT = 44;
    static final double RIGHT = 704;
    static final int LOWEST_EV = -4;
    /** Brighter than any light in the open, with room for a word above it. */
    private static final int HIGHEST_EV = 18;
    private static final double EV = 8;
    private static final double SCALE = (HIGHEST_EV - LOWEST_EV) * EV;
    /** From the upper edge to the base line of the unit, which clears the first figure beneath. */
    static final double EV_RAISED = 3;
    private static final double LEAST_WIDTH = 3;
    private static final double BESIDE_WORDS = 3;

    private final Wording words;
    private final ZonedDateTime from;
    private final ZonedDateTime to;
    private double top;
    private double foot;

    /** The hours between the first and the last row of the date that are worth drawing. */
    DayFrame(ZonedDateTime first, ZonedDateTime last, SunDay sun, RunningOrder order, Wording words) {
        this.words = words;
        ZonedDateTime dawn = sun.civilDawn();
        ZonedDateTime dusk = sun.civilDusk();
        if (dawn == null || dusk == null || dusk.isBefore(dawn)) {
            from = first;
            to = last;
        } else {
            from = later(first, earlier(dawn.minusMinutes(45), order.arrive()).truncatedTo(ChronoUnit.HOURS));
            to = earlier(last, later(dusk.plusMinutes(105), order.leave().plusMinutes(59)).truncatedTo(ChronoUnit.HOURS));
        }
    }

    /** Puts the frame on the sheet: the upper edge and the height of the foot, px. */
    void lay(double upperEdge, double footHeight) {
        this.top = upperEdge;
        this.foot = footHeight;
    }

    ZonedDateTime from() {
        return from;
    }

    ZonedDateTime to() {
        return to;
    }

    double top() {
        return top;
    }

    /** Where the scale of EV ends and the foot begins. */
    double floor() {
        return top + SCALE;
    }

    double bottom() {
        return floor() + foot;
    }

    boolean inside(ZonedDateTime time) {
        return !time.isBefore(from) && !time.isAfter(to);
    }

    double x(ZonedDateTime time) {
        double share = (double) Duration.between(from, time).toSeconds() / Duration.between(from, to).toSeconds();
        return LEFT + share * (RIGHT - LEFT);
    }

    double y(double ev) {
        double within = Math.max(LOWEST_EV, Math.min(HIGHEST_EV, ev));
        return top + EV * (HIGHEST_EV - within);
    }

    /** True where enough of a stretch of time falls within the frame to be seen. */
    boolean shows(Interval time) {
        return column(time).width() >= LEAST_WIDTH;
    }

    /** The part of a stretch of time that is drawn, from edge to edge of the frame. */
    Stretch column(Interval time) {
        return new Stretch(new Point(x(later(time.from(), from)), 0).x(), top, new Point(x(earlier(time.to(), to)), 0).x(), bottom());
    }

    /** A hairline every 4 EV, none behind the words within the frame, which stand from left to right. */
    void grid(List<Stretch> words, List<Mark> marks) {
        List<Point> ends = new ArrayList<>();
        for (int ev = LOWEST_EV; ev <= HIGHEST_EV; ev += 4) {
            double left = LEFT;
            for (Stretch word : words) {
                if (y(ev) > word.top() - BESIDE_WORDS && y(ev) < word.bottom() + BESIDE_WORDS) {
                    ends.add(new Point(left, y(ev)));
                    ends.add(new Point(word.left() - BESIDE_WORDS, y(ev)));
                    left = word.right() + BESIDE_WORDS;
                }
            }
            ends.add(new Point(left, y(ev)));
            ends.add(new Point(RIGHT, y(ev)));
        }
        marks.add(new Drawing.Hatch("hair", ends));
    }

    /** The figures of the scale. */
    void figures(List<Mark> marks) {
        marks.add(new Drawing.Label("figure", Anchor.END, new Point(LEFT - 8, top + EV_RAISED), words.of(Fact.Word.EV)));
        for (int ev = LOWEST_EV; ev <= HIGHEST_EV; ev += 4) {
            marks.add(new Drawing.Label("figure", Anchor.END, new Point(LEFT - 8, y(ev) + 5),
                    words.of(new Fact.Figure(ev))));
        }
    }

    /** Full hours along the line at y, with ticks from the frame down to them. */
    void hours(double y, List<Mark> marks) {
        marks.add(new Drawing.Line("axis", List.of(new Point(LEFT, bottom()), new Point(RIGHT, bottom()))));
        int step = Duration.between(from, to).toHours() > 12 ? 3 : 2;
        ZonedDateTime hour = from.truncatedTo(ChronoUnit.HOURS);
        List<Point> ticks = new ArrayList<>();
        while (!hour.isAfter(to)) {
            if (hour.getHour() % step == 0 && !hour.isBefore(from)) {
                ticks.add(new Point(x(hour), bottom()));
                ticks.add(new Point(x(hour), y - 16));
                double centre = Math.min(RIGHT - 18, Math.max(LEFT + 4, x(hour)));
                marks.add(new Drawing.Label("figure", Anchor.MIDDLE, new Point(centre, y), words.of(new Fact.Clock(hour))));
            }
            hour = hour.plusHours(1);
        }
        marks.add(new Drawing.Hatch("hair", ticks));
    }

    private static ZonedDateTime later(ZonedDateTime a, ZonedDateTime b) {
        return a.isAfter(b) ? a : b;
    }

    private static ZonedDateTime earlier(ZonedDateTime a, ZonedDateTime b) {
        return a.isBefore(b) ? a : b;
    }
}
