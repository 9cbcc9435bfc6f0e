package understorey.scene.chart;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.order.Leg;
import understorey.order.RunningOrder;
import understorey.scene.Drawing;
import understorey.scene.Drawing.Anchor;
import understorey.scene.Drawing.Label;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Fact;
import understorey.scene.Lettering;
import understorey.scene.Scene;
import understorey.scene.Wording;
import understorey.sky.Interval;

/**
 * The running order as a time line: a row a picture in the order taken, with its walk, its setting up, its wait and its
 * shooting, and behind them the hours of the light it wishes for; last the way back.
 */
public final class OrderChart {

    private static final double WIDTH = 720;
    private static final double LEFT = 10;
    private static final double RIGHT = 710;
    private static final double ROW = 46;
    private static final double TEXT = 16;
    private static final double TRACK_TOP = 22;
    private static final double TRACK = 18;
    private static final double LEAST_NUMBERED = 24;

    private final RunningOrder order;
    private final Wording words;
    private final ZonedDateTime from;
    private final ZonedDateTime to;
    private final List<Mark> marks = new ArrayList<>();
    private final List<Point> hours = new ArrayList<>();

    /**
     * What is known of a picture beside its time.
     *
     * @param windows hours of the light it wishes for; none when it wishes for nothing
     */
    public record Picture(int number, String name, List<Interval> windows) {

        private Fact fact() {
            return new Fact.NumberedPicture(number, name);
        }
    }

    private OrderChart(RunningOrder order, Wording words) {
        this.order = order;
        this.words = words;
        this.from = order.arrive().truncatedTo(ChronoUnit.HOURS);
        ZonedDateTime end = order.legs().isEmpty() || last().isBefore(order.leave()) ? order.leave() : last();
        this.to = end.plusMinutes(59).truncatedTo(ChronoUnit.HOURS);
    }

    /** A picture, and when it is taken. */
    private record Taken(Picture picture, Leg shoot) {
    }

    /** The time line; null when no picture is taken. */
    public static @Nullable Scene of(RunningOrder order, List<Picture> pictures) {
        List<Taken> taken = order.shooting().stream().flatMap(leg -> pictures.stream()
                .filter(picture -> picture.name().equals(leg.shot())).map(picture -> new Taken(picture, leg))).toList();
        return taken.isEmpty() ? null : words -> new OrderChart(order, words).draw(taken);
    }

    private ZonedDateTime last() {
        return order.legs().get(order.legs().size() - 1).to();
    }

    private Drawing draw(List<Taken> taken) {
        double y = 0;
        List<Fact> says = new ArrayList<>();
        for (Taken one : taken) {
            row(one.picture(), y);
            says.add(says(one));
            y += ROW;
        }
        if (order.legs().get(order.legs().size() - 1).shot() == null) {
            back(y);
            says.add(new Fact.BackAt(last()));
            y += ROW;
        }
        marks.add(0, new Drawing.Hatch("hair", hours));
        axis(y);
        return new Drawing(WIDTH, y + 30, words.of(Fact.Word.RUNNING_ORDER),
                words.of(new Fact.Ended(says.stream().reduce(Fact.Then::new).orElseThrow())), List.copyOf(marks));
    }

    /** The first row has the wait for a gate as well. */
    private void row(Picture picture, double top) {
        marks.add(label("words", Anchor.START, LEFT, top + TEXT,
                Lettering.shortened(words.of(picture.fact()), RIGHT - LEFT)));
        track(top);
        for (Interval window : picture.windows()) {
            box("window", window.from(), window.to(), top + TRACK_TOP, TRACK);
        }
        for (Leg leg : order.legs()) {
            if (picture.name().equals(leg.shot()) || top == 0 && leg.shot() == null && leg.what() == Leg.What.WAIT) {
                leg(leg, picture, top + TRACK_TOP);
            }
        }
    }

    /** The hours, where a row has no words. */
    private void track(double top) {
        for (ZonedDateTime hour = from; !hour.isAfter(to); hour = hour.plusHours(1)) {
            hours.add(new Point(x(hour), top + TRACK_TOP));
            hours.add(new Point(x(hour), top + ROW));
        }
    }

    private void leg(Leg leg, Picture picture, double top) {
        switch (leg.what()) {
            case WALK -> line("walk", leg, top + TRACK / 2);
            case WAIT -> line("wait", leg, top + TRACK / 2);
            case SET_UP -> box("set-up", leg.from(), leg.to(), top + 4, TRACK - 8);
            case SHOOT -> {
                box("picture", leg.from(), leg.to(), top, TRACK);
                if (x(leg.to()) - x(leg.from()) >= LEAST_NUMBERED) {
                    marks.add(label("picture-number", Anchor.MIDDLE, (x(leg.from()) + x(leg.to())) / 2, top + 14.5,
                            String.valueOf(picture.number())));
                }
            }
        }
    }

    private void back(double top) {
        marks.add(label("words", Anchor.START, LEFT, top + TEXT, words.of(Fact.Word.WALK_BACK)));
        track(top);
        line("walk", order.legs().get(order.legs().size() - 1), top + TRACK_TOP + TRACK / 2);
    }

    private void line(String style, Leg leg, double y) {
        marks.add(new Drawing.Line(style, List.of(new Point(x(leg.from()), y), new Point(x(leg.to()), y))));
    }

    /** As much of a stretch as the chart has hours for. */
    private void box(String style, ZonedDateTime begin, ZonedDateTime end, double top, double height) {
        double left = Math.max(LEFT, x(begin));
        double right = Math.min(RIGHT, x(end));
        if (right > left) {
            marks.add(new Drawing.Box(style, left, top, right - left, height));
        }
    }

    private void axis(double y) {
        marks.add(new Drawing.Line("axis", List.of(new Point(LEFT, y), new Point(RIGHT, y))));
        long step = 1 + Duration.between(from, to).toHours() / 10;
        for (ZonedDateTime hour = from; !hour.isAfter(to); hour = hour.plusHours(step)) {
            double centre = Math.min(RIGHT - 24, Math.max(LEFT + 24, x(hour)));
            marks.add(label("figure", Anchor.MIDDLE, centre, y + 20, words.of(new Fact.Clock(hour))));
        }
    }

    private static Fact says(Taken one) {
        Fact taken = new Fact.Taken(one.picture().fact(), new Fact.Hours(one.shoot().from(), one.shoot().to()));
        return one.picture().windows().stream().<Fact>map(window -> new Fact.Hours(window.from(), window.to())).reduce(Fact.Both::new)
                .<Fact>map(windows -> new Fact.Item(taken, new Fact.LightNeeded(windows))).orElse(taken);
    }

    private double x(ZonedDateTime time) {
        double share = (double) Duration.between(from, time).toSeconds() / Duration.between(from, to).toSeconds();
        return LEFT + share * (RIGHT - LEFT);
    }

    private static Label label(String style, Anchor anchor, double x, double y, String text) {
        return new Label(style, anchor, new Point(x, y), text);
    }
}
