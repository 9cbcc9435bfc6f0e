package understorey.scene;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Predicate;
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
    private static final int LOWEST_EV = -4;
    /** Brighter than any light in the open, with room for a word above it. */
    private static final int HIGHEST_EV = 18;
    static final String DOES_NOT_RISE = "the sun does not rise on this day";
    static final String DOES_NOT_SET = "the sun does not set on this day";

    private final List<LightAt> light;
    private final SunDay sun;
    private final List<Interval> sunlit;
    private final ToDoubleFunction<LightAt> expected;
    private final List<Mark> marks = new ArrayList<>();
    private final ZonedDateTime from;
    private final ZonedDateTime to;
    private List<List<LightAt>> flecks = List.of();
    private double top;
    private double bottom;

    private DayLightChart(List<LightAt> light, SunDay sun, List<Interval> sunlit,
                          ToDoubleFunction<LightAt> expected, Outing outing) {
        this.light = light;
        this.sun = sun;
        this.sunlit = sunlit;
        this.expected = expected;
        ZonedDateTime first = light.get(0).sun().time();
        ZonedDateTime last = light.get(light.size() - 1).sun().time();
        boolean whole = sun.civilDawn() == null || sun.civilDusk() == null
                || sun.civilDusk().isBefore(sun.civilDawn());
        this.from = whole ? first : later(first, earlier(sun.civilDawn().minusMinutes(45), outing.arrive())
                .truncatedTo(ChronoUnit.HOURS));
        this.to = whole ? last : earlier(last, later(sun.civilDusk().plusMinutes(105),
                outing.leave().plusMinutes(59)).truncatedTo(ChronoUnit.HOURS));
    }

    /**
     * The chart.
     *
     * @param expected EV on the floor under the sky that is expected then
     * @param order    names of the pictures in the order of their numbers
     */
    public static Drawing of(List<LightAt> light, SunDay sun, List<Interval> sunlit, ToDoubleFunction<LightAt> expected,
                             Outing outing, List<String> order) {
        return new DayLightChart(light, sun, sunlit, expected, outing).draw(outing, order);
    }

    private Drawing draw(Outing outing, List<String> order) {
        Signs signs = events();
        top = signs.bottom() + 6;
        bottom = top + PLOT;
        twilight();
        grid();
        curves();
        marks.addAll(signs.marks(bottom));
        words();
        int lanes = pictures(outing, order);
        double axis = bottom + lanes * 24 + 24;
        hours(axis);
        return new Drawing(WIDTH, axis + 10, "The day’s light on the forest floor", says(), List.copyOf(marks));
    }

    /** Sunrise, sunset and the sun's times over the skyline. */
    private Signs events() {
        Signs signs = new Signs(LEFT - 40, RIGHT + 14);
        if (sun.sunrise() != null && inside(sun.sunrise())) {
            signs.add(x(sun.sunrise()), "sunrise " + clock(sun.sunrise()));
        }
        if (sun.sunset() != null && inside(sun.sunset())) {
            signs.add(x(sun.sunset()), "sunset " + clock(sun.sunset()));
        }
        for (Interval interval : sunlit) {
            if (inside(interval.from()) && apart(interval.from(), sun.sunrise()) && !atAnEnd(interval.from())) {
                signs.add(x(interval.from()), "sun clears the land " + clock(interval.from()));
            }
            if (inside(interval.to()) && apart(interval.to(), sun.sunset()) && !atAnEnd(interval.to())) {
                signs.add(x(interval.to()), "behind the land " + clock(interval.to()));
            }
        }
        return signs;
    }

    /** Where the date ends, stretches of sun end with it, though nothing hides it. */
    private boolean atAnEnd(ZonedDateTime time) {
        return !time.isAfter(light.get(0).sun().time()) || !time.isBefore(light.get(light.size() - 1).sun().time()
                .plusMinutes(15));
    }

    private void twilight() {
        for (Darkness.Stretch dark : Darkness.of(light, sun, from, to)) {
            marks.add(new Drawing.Box(dark.night() ? "night" : "dusk", tenth(x(dark.from())), top,
                    tenth(x(dark.to()) - x(dark.from())), PLOT));
        }
    }

    private void grid() {
        for (int ev = LOWEST_EV; ev <= HIGHEST_EV; ev += 4) {
            marks.add(new Drawing.Line("hair", List.of(new Point(LEFT, y(ev)), new Point(RIGHT, y(ev)))));
            marks.add(new Drawing.Label("figure", Anchor.END, new Point(LEFT - 8, y(ev) + 5), minus(ev)));
        }
    }

    private void curves() {
        List<LightAt> seen = light.stream().filter(row -> inside(row.sun().time())).toList();
        List<Point> band = new ArrayList<>(points(seen, DayLightChart::brightest));
        List<Point> under = new ArrayList<>(points(seen, DayLightChart::darkest));
        Collections.reverse(under);
        band.addAll(under);
        marks.add(new Drawing.Area("band", band));
        for (List<LightAt> run : runs(seen, row -> expected.applyAsDouble(row) >= LOWEST_EV)) {
            marks.add(new Drawing.Line("light", points(run, expected)));
        }
        flecks = runs(seen, row -> row.floor().fleck() != null);
        flecks.forEach(run -> marks.add(new Drawing.Line("fleck", points(run, row -> row.floor().fleck()))));
    }

    /** Stretches of two rows and more that pass. */
    private static List<List<LightAt>> runs(List<LightAt> rows, Predicate<LightAt> passes) {
        List<List<LightAt>> runs = new ArrayList<>();
        List<LightAt> run = new ArrayList<>();
        for (LightAt row : rows) {
            if (passes.test(row)) {
                run.add(row);
            } else {
                runs.add(run);
                run = new ArrayList<>();
            }
        }
        runs.add(run);
        return runs.stream().filter(rowsOfRun -> rowsOfRun.size() > 1).toList();
    }

    /** Words within the chart, where there is room: each fleck line's name, and what the sun does not do. */
    private void words() {
        Lettering lettering = Lettering.of(marks);
        if (sun.downAllDay() || sun.upAllDay()) {
            add(new Drawing.Label("words", Anchor.MIDDLE, new Point((LEFT + RIGHT) / 2, top + (sun.upAllDay()
                    ? PLOT - 12 : 24)), sun.upAllDay() ? DOES_NOT_SET : DOES_NOT_RISE), lettering);
        }
        String words = "in a fleck of sun";
        double half = Lanes.textWidth(words) / 2;
        for (List<LightAt> run : flecks) {
            LightAt middle = run.get(run.size() / 2);
            double x = Math.max(LEFT + half, Math.min(RIGHT - half, x(middle.sun().time())));
            double lowest = flecks.stream().flatMap(List::stream)
                    .filter(row -> Math.abs(x(row.sun().time()) - x) < half + 10)
                    .mapToDouble(row -> y(row.floor().fleck())).max().orElse(top);
            double y = lowest + 17;
            add(new Drawing.Label("fleck-words", Anchor.MIDDLE, new Point(x, y), words), lettering);
        }
    }

    private void add(Drawing.Label label, Lettering lettering) {
        if (lettering.place(label)) {
            marks.add(label);
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
        return (sun.downAllDay() ? "The sun does not rise on this day. " : sun.upAllDay()
                ? "The sun does not set on this day. " : "") + "Light on the forest floor from " + clock(from)
                + " to " + clock(to) + ", EV at ISO 100. Brightest under the "
                + "sky expected at " + clock(best.sun().time()) + " with EV " + oneDecimal(expected.applyAsDouble(best))
                + "; between the darkest and the brightest sky there EV " + oneDecimal(darkest(best)) + " to "
                + oneDecimal(brightest(best)) + ".";
    }

    private static String oneDecimal(double value) {
        return minus(tenth(value));
    }

    private static String minus(Number value) {
        return value.toString().replace('-', '−');
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
