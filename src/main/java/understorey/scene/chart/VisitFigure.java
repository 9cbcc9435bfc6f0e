package understorey.scene.chart;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import understorey.light.LightAt;
import understorey.order.Leg;
import understorey.order.RunningOrder;
import understorey.scene.Drawing.Anchor;
import understorey.scene.Fact;
import understorey.scene.Wording;
import understorey.sky.Interval;
import understorey.visit.Day;
import understorey.visit.Place;

/**
 * The visit as one figure: a row for each shot taken, with its walk, set-up, wait and shooting before the hours of the
 * light it wishes for; below them the light on the ground and what happens when. Positions across are shares of the
 * figure's width, 0 to 1, so that a page can stretch its shapes and keep its words.
 *
 * @param from   of the half hour before the visit
 * @param to     of the half hour in which it ends
 * @param back   the walk back at the end; null if there is none
 * @param events in order of time
 * @param lanes  rows of event names on each medium
 * @param says   the same in sentences
 */
public record VisitFigure(ZonedDateTime from, ZonedDateTime to, List<Row> rows, @Nullable Stretch back, VisitLight light,
                          List<Named> events, Lanes lanes, String says) {

    private static final int HALF_HOUR = 30;

    /** From one share of the width on, over another. */
    public record Stretch(double left, double width) {
    }

    /** One stretch of the running order. */
    public record Task(Leg.What what, Stretch when) {
    }

    /**
     * A shot in the order taken; the first has the wait for a gate as well.
     *
     * @param windows hours of the light that it wishes for; none when it wishes for nothing
     */
    public record Row(int number, List<Stretch> windows, List<Task> tasks) {
    }

    /** Something that happens during the visit. */
    public record Event(ZonedDateTime time, Fact what) {
    }

    /** An event's name, and where it stands on each medium. */
    public record Named(double at, String name, Lane screen, Lane phone, Lane paper) {
    }

    /** A row of names, and which part of the name is at its event. */
    public record Lane(int row, Anchor anchor) {
    }

    /** How many rows of names each medium needs. */
    public record Lanes(int screen, int phone, int paper) {
    }

    /** The figure before it has its words. */
    @FunctionalInterface
    public interface Wordless {
        VisitFigure figure(Wording wording);
    }

    /** A shot with the hours of the light it wishes for, and the EV on the ground at its time. */
    public record Taken(int number, String name, List<Interval> windows, Place place, ZonedDateTime middle, double ev) {
    }

    /**
     * The figure.
     *
     * @param taken    in the order taken; not empty
     * @param events   in order of time
     * @param expected EV on the ground at a place under the sky expected; not a number where the sky is unknown
     */
    public static Wordless of(Day day, RunningOrder order, List<Taken> taken, List<Event> events, ToDoubleFunction<LightAt> expected) {
        ZonedDateTime from = before(order.arrive());
        ZonedDateTime to = after(order.leave().isAfter(order.back()) ? order.leave() : order.back());
        Scale scale = new Scale(from, to);
        List<Row> rows = taken.stream().map(shot -> scale.row(shot, order)).toList();
        Leg last = order.legs().get(order.legs().size() - 1);
        Stretch back = last.shot() == null ? scale.stretch(last.from(), last.to()) : null;
        VisitLight light = VisitLight.of(day, taken, scale, expected);
        return words -> {
            EventNames names = new EventNames(words);
            events.stream().filter(event -> scale.holds(event.time())).forEach(event -> names.add(scale.at(event.time()),
                    new Fact.Timed(event.what(), event.time())));
            return new VisitFigure(from, to, rows, back, light, names.events(), names.lanes(), words.of(says(order, taken)));
        };
    }

    private static Fact says(RunningOrder order, List<Taken> taken) {
        List<Fact> says = new ArrayList<>();
        for (Taken shot : taken) {
            Interval time = Objects.requireNonNull(order.timeOf(shot.name()));
            Fact at = new Fact.Taken(new Fact.NumberedPicture(shot.number(), shot.name()), new Fact.Hours(time.from(), time.to()));
            says.add(shot.windows().stream().<Fact>map(window -> new Fact.Hours(window.from(), window.to())).reduce(Fact.Both::new)
                    .<Fact>map(windows -> new Fact.Item(at, new Fact.LightNeeded(windows))).orElse(at));
        }
        if (order.legs().get(order.legs().size() - 1).shot() == null) {
            says.add(new Fact.BackAt(order.back()));
        }
        return new Fact.Ended(says.stream().reduce(Fact.Then::new).orElseThrow());
    }

    private static ZonedDateTime before(ZonedDateTime time) {
        ZonedDateTime half = time.truncatedTo(ChronoUnit.HOURS).plusMinutes(time.getMinute() >= HALF_HOUR ? HALF_HOUR : 0);
        return half.isBefore(time) ? half : half.minusMinutes(HALF_HOUR);
    }

    private static ZonedDateTime after(ZonedDateTime time) {
        return before(time).plusMinutes(HALF_HOUR);
    }

    /** Share of the figure's width at a time. */
    public double at(ZonedDateTime time) {
        return new Scale(from, to).at(time);
    }

    /** From the left edge to the right one. */
    record Scale(ZonedDateTime from, ZonedDateTime to) {

        double at(ZonedDateTime time) {
            return (double) Duration.between(from, time).toSeconds() / Duration.between(from, to).toSeconds();
        }

        boolean holds(ZonedDateTime time) {
            return !time.isBefore(from) && !time.isAfter(to);
        }

        Stretch stretch(ZonedDateTime begin, ZonedDateTime end) {
            return new Stretch(at(begin), at(end) - at(begin));
        }

        private Row row(Taken shot, RunningOrder order) {
            List<Stretch> windows = shot.windows().stream()
                    .filter(window -> window.from().isBefore(to) && window.to().isAfter(from))
                    .map(window -> stretch(window.from().isBefore(from) ? from : window.from(),
                            window.to().isAfter(to) ? to : window.to())).toList();
            boolean first = shot.name().equals(order.shooting().get(0).shot());
            List<Task> tasks = order.legs().stream().filter(leg -> shot.name().equals(leg.shot())
                            || first && leg.shot() == null && leg.what() == Leg.What.WAIT)
                    .map(leg -> new Task(leg.what(), stretch(leg.from(), leg.to()))).toList();
            return new Row(shot.number(), windows, tasks);
        }
    }
}
