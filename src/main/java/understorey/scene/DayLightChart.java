package understorey.scene;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import understorey.light.LightAt;
import understorey.outing.Outing;
import understorey.scene.Drawing.Anchor;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.sky.Interval;
import understorey.sky.SunDay;

/**
 * The day's light: EV on the forest floor from night to night, the expected sky as a line and the others as
 * a band, twilight hatched, and each picture at its time.
 */
public final class DayLightChart {

    private static final double WIDTH = 720;
    private static final double LEFT = 44;
    private static final double RIGHT = 704;
    private static final double PLOT = 200;
    private static final double ROW = 20;
    private static final int LOWEST_EV = -4;
    private static final int HIGHEST_EV = 16;

    private final List<LightAt> light;
    private final SunDay sun;
    private final List<Interval> sunlit;
    private final ToDoubleFunction<LightAt> expected;
    private final List<Mark> marks = new ArrayList<>();
    private final ZonedDateTime from;
    private final ZonedDateTime to;
    private double top;
    private double bottom;

    private DayLightChart(List<LightAt> light, SunDay sun, List<Interval> sunlit,
                          ToDoubleFunction<LightAt> expected) {
        this.light = light;
        this.sun = sun;
        this.sunlit = sunlit;
        this.expected = expected;
        ZonedDateTime first = light.get(0).sun().time();
        ZonedDateTime last = light.get(light.size() - 1).sun().time();
        this.from = sun.civilDawn() == null ? first
                : later(first, sun.civilDawn().minusMinutes(45).truncatedTo(ChronoUnit.HOURS));
        this.to = sun.civilDusk() == null ? last
                : earlier(last, sun.civilDusk().plusMinutes(105).truncatedTo(ChronoUnit.HOURS));
    }

    /**
     * The chart.
     *
     * @param expected EV on the floor under the sky that is expected then
     * @param order    names of the pictures in the order of their numbers
     */
    public static Drawing of(List<LightAt> light, SunDay sun, List<Interval> sunlit, ToDoubleFunction<LightAt> expected,
                             Outing outing, List<String> order) {
        return new DayLightChart(light, sun, sunlit, expected).draw(outing, order);
    }

    private Drawing draw(Outing outing, List<String> order) {
        List<Mark> signs = events();
        bottom = top + PLOT;
        twilight();
        grid();
        curves();
        marks.addAll(signs);
        int lanes = pictures(outing, order);
        double axis = bottom + lanes * 24 + 24;
        hours(axis);
        return new Drawing(WIDTH, axis + 10, "The day’s light on the forest floor", says(), List.copyOf(marks));
    }

    /** Sunrise, sunset and the sun's times over the skyline, as words over hanging lines, in as many rows as needed. */
    private List<Mark> events() {
        record Event(ZonedDateTime at, String words) {
        }
        List<Event> events = new ArrayList<>();
        if (sun.sunrise() != null) {
            events.add(new Event(sun.sunrise(), "sunrise " + clock(sun.sunrise())));
        }
        if (sun.sunset() != null) {
            events.add(new Event(sun.sunset(), "sunset " + clock(sun.sunset())));
        }
        for (Interval interval : sunlit) {
            if (inside(interval.from()) && apart(interval.from(), sun.sunrise())) {
                events.add(new Event(interval.from(), "sun clears the land " + clock(interval.from())));
            }
            if (inside(interval.to()) && apart(interval.to(), sun.sunset())) {
                events.add(new Event(interval.to(), "behind the land " + clock(interval.to())));
            }
        }
        Lanes lanes = new Lanes();
        List<Integer> rows = new ArrayList<>();
        List<Double> starts = new ArrayList<>();
        for (Event event : events) {
            double width = Lanes.textWidth(event.words());
            double x = x(event.at());
            double start = x > (LEFT + RIGHT) / 2 ? Math.max(LEFT, x - width) : x;
            starts.add(start);
            rows.add(lanes.place(start, start + width));
        }
        top = 8 + lanes.count() * ROW + 6;
        List<Mark> signs = new ArrayList<>();
        for (int i = 0; i < events.size(); i++) {
            double x = x(events.get(i).at());
            double y = 8 + (rows.get(i) + 1) * ROW - 4;
            signs.add(new Drawing.Line("event", List.of(new Point(x, y + 4), new Point(x, top + PLOT))));
            boolean left = starts.get(i) >= x;
            signs.add(new Drawing.Label("words", left ? Anchor.START : Anchor.END, new Point(left ? x + 3 : x - 3, y),
                    events.get(i).words()));
        }
        return signs;
    }

    private void twilight() {
        if (sun.civilDawn() != null) {
            shade("night", from, sun.civilDawn());
            shade("dusk", sun.civilDawn(), sun.sunrise() == null ? sun.civilDawn() : sun.sunrise());
        }
        if (sun.civilDusk() != null) {
            shade("dusk", sun.sunset() == null ? sun.civilDusk() : sun.sunset(), sun.civilDusk());
            shade("night", sun.civilDusk(), to);
        }
    }

    private void shade(String style, ZonedDateTime a, ZonedDateTime b) {
        ZonedDateTime start = later(a, from);
        ZonedDateTime end = earlier(b, to);
        if (start.isBefore(end)) {
            marks.add(new Drawing.Box(style, tenth(x(start)), top, tenth(x(end) - x(start)), PLOT));
        }
    }

    private void grid() {
        for (int ev = LOWEST_EV; ev <= HIGHEST_EV; ev += 4) {
            marks.add(new Drawing.Line("hair", List.of(new Point(LEFT, y(ev)), new Point(RIGHT, y(ev)))));
            marks.add(new Drawing.Label("figure", Anchor.END, new Point(LEFT - 8, y(ev) + 5), String.valueOf(ev)));
        }
    }

    private void curves() {
        List<LightAt> seen = light.stream().filter(row -> inside(row.sun().time())).toList();
        List<Point> band = new ArrayList<>(points(seen, DayLightChart::brightest));
        List<Point> under = new ArrayList<>(points(seen, DayLightChart::darkest));
        java.util.Collections.reverse(under);
        band.addAll(under);
        marks.add(new Drawing.Area("band", band));
        marks.add(new Drawing.Line("light", points(seen.stream()
                .filter(row -> expected.applyAsDouble(row) >= LOWEST_EV).toList(), expected)));
        List<LightAt> run = new ArrayList<>();
        for (LightAt row : seen) {
            if (row.floor().fleck() == null) {
                fleck(run);
                run = new ArrayList<>();
            } else {
                run.add(row);
            }
        }
        fleck(run);
    }

    private void fleck(List<LightAt> run) {
        if (run.size() > 1) {
            marks.add(new Drawing.Line("fleck", points(run, row -> row.floor().fleck())));
            LightAt middle = run.get(run.size() / 2);
            marks.add(new Drawing.Label("fleck-words", Anchor.MIDDLE,
                    new Point(x(middle.sun().time()), y(middle.floor().fleck()) - 9), "in a fleck of sun"));
        }
    }

    private List<Point> points(List<LightAt> rows, ToDoubleFunction<LightAt> ev) {
        return rows.stream().map(row -> new Point(x(row.sun().time()), y(ev.applyAsDouble(row)))).toList();
    }

    private static double brightest(LightAt row) {
        return Math.max(row.floor().shade(), Math.max(row.floor().broken(), row.floor().overcast()));
    }

    private static double darkest(LightAt row) {
        return Math.min(row.floor().shade(), Math.min(row.floor().broken(), row.floor().overcast()));
    }

    private int pictures(Outing outing, List<String> order) {
        Lanes lanes = new Lanes();
        for (int i = 0; i < order.size(); i++) {
            Interval time = outing.timeOf(order.get(i));
            if (time == null || !inside(time.from())) {
                continue;
            }
            double width = Math.max(24, x(time.to()) - x(time.from()));
            double x = Math.min(x(time.from()), RIGHT - width);
            double y = bottom + 6 + lanes.place(x, x + width) * 24;
            marks.add(new Drawing.Box("picture", tenth(x), tenth(y), tenth(width), 20));
            marks.add(new Drawing.Label("picture-number", Anchor.MIDDLE, new Point(x + width / 2, y + 16),
                    String.valueOf(i + 1)));
        }
        return lanes.count();
    }

    private void hours(double y) {
        long length = Duration.between(from, to).toHours();
        int step = length > 12 ? 3 : 2;
        ZonedDateTime hour = from.truncatedTo(ChronoUnit.HOURS);
        while (!hour.isAfter(to)) {
            if (hour.getHour() % step == 0 && !hour.isBefore(from)) {
                marks.add(new Drawing.Line("hair", List.of(new Point(x(hour), bottom), new Point(x(hour), bottom + 5))));
                double centre = Math.min(RIGHT - 18, Math.max(LEFT + 4, x(hour)));
                marks.add(new Drawing.Label("figure", Anchor.MIDDLE, new Point(centre, y), clock(hour)));
            }
            hour = hour.plusHours(1);
        }
    }

    private String says() {
        LightAt best = light.get(0);
        for (LightAt row : light) {
            if (expected.applyAsDouble(row) > expected.applyAsDouble(best)) {
                best = row;
            }
        }
        return "Light on the forest floor from " + clock(from) + " to " + clock(to) + ", EV at ISO 100. Brightest under the "
                + "sky expected at " + clock(best.sun().time()) + " with EV " + oneDecimal(expected.applyAsDouble(best))
                + "; between the darkest and the brightest sky there EV " + oneDecimal(darkest(best)) + " to "
                + oneDecimal(brightest(best)) + ".";
    }

    private static double oneDecimal(double value) {
        return Math.round(value * 10) / 10.0;
    }

    private boolean inside(ZonedDateTime time) {
        return !time.isBefore(from) && !time.isAfter(to);
    }

    /** Two marks nearer than three minutes would tell the same. */
    private static boolean apart(ZonedDateTime a, ZonedDateTime b) {
        return b == null || Math.abs(Duration.between(a, b).toSeconds()) > 180;
    }

    private double x(ZonedDateTime time) {
        double share = (double) Duration.between(from, time).toSeconds() / Duration.between(from, to).toSeconds();
        return LEFT + share * (RIGHT - LEFT);
    }

    private double y(double ev) {
        double within = Math.max(LOWEST_EV, Math.min(HIGHEST_EV, ev));
        return top + PLOT * (HIGHEST_EV - within) / (HIGHEST_EV - LOWEST_EV);
    }

    private static ZonedDateTime later(ZonedDateTime a, ZonedDateTime b) {
        return a.isAfter(b) ? a : b;
    }

    private static ZonedDateTime earlier(ZonedDateTime a, ZonedDateTime b) {
        return a.isBefore(b) ? a : b;
    }

    private static double tenth(double value) {
        return Math.round(value * 10) / 10.0;
    }

    static String clock(ZonedDateTime time) {
        ZonedDateTime minute = time.plusSeconds(30).truncatedTo(ChronoUnit.MINUTES);
        return minute.toLocalTime().toString();
    }
}
