package understorey.scene.chart;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import understorey.light.LightAt;
import understorey.order.RunningOrder;
import understorey.scene.Drawing;
import understorey.scene.Drawing.Anchor;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Fact;
import understorey.scene.Lettering;
import understorey.scene.Lettering.Stretch;
import understorey.scene.Scene;
import understorey.scene.Signs;
import understorey.scene.Wording;
import understorey.sky.Interval;
import understorey.sky.SunDay;

/**
 * The day's light: EV on the forest floor as one ribbon from night to night, what the sun does in textures and
 * words around it, and each picture at its time.
 */
public final class DayLightChart {

    private static final double LANE = 24;

    private final List<LightAt> light;
    private final SunDay sun;
    private final List<Interval> sunlit;
    private final boolean level;
    private final DayFrame frame;
    private final DayRibbon ribbon;
    private final Wording words;
    private final List<Mark> marks = new ArrayList<>();

    private DayLightChart(List<LightAt> light, SunDay sun, List<Interval> sunlit, ToDoubleFunction<LightAt> expected,
                          RunningOrder order, boolean level, Wording words) {
        this.level = level;
        this.light = light;
        this.sun = sun;
        this.sunlit = sunlit;
        this.words = words;
        this.frame = new DayFrame(first(), last(), sun, order, words);
        this.ribbon = new DayRibbon(frame, light, expected, words);
    }

    /**
     * The chart.
     *
     * @param expected EV on the floor under the sky that is expected then; NaN without a forecast
     * @param names    names of the pictures in the order of their numbers; null for one at another place
     * @param level    no skyline is known
     * @param place    name of the place
     */
    public static Scene of(List<LightAt> light, SunDay sun, List<Interval> sunlit, ToDoubleFunction<LightAt> expected,
                           RunningOrder order, List<@Nullable String> names, boolean level, String place) {
        return words -> new DayLightChart(light, sun, sunlit, expected, order, level, words).draw(order, names, place);
    }

    private Drawing draw(RunningOrder order, List<@Nullable String> names, String place) {
        Signs signs = events();
        DayHatching hatching = new DayHatching(frame, sun, sunlit, level, words);
        frame.lay(signs.bottom() + 10, hatching.foot());
        frame.figures(marks);
        List<Mark> events = signs.marks(frame.bottom());
        List<Drawing.Label> inWords = inWords();
        Lettering lettering = lettering(events, inWords);
        List<Darkness.Hours> dark = Darkness.of(light, sun, frame.from(), frame.to());
        frame.grid(hatching.dark(dark, inWords.stream().map(Stretch::of).toList(), lettering, marks), marks);
        ribbon.curves(marks);
        marks.addAll(events);
        marks.addAll(inWords);
        hatching.sun(lettering, marks);
        ribbon.names(lettering, marks);
        List<Mark> pictures = new ArrayList<>();
        double axis = frame.bottom() + pictures(order, names, pictures) * LANE + 23;
        frame.hours(axis, marks);
        marks.addAll(pictures);
        return new Drawing(DayFrame.WIDTH, axis + 7, words.of(new Fact.DayLightAt(place)), words.of(says()), List.copyOf(marks));
    }

    /** Sunrise, sunset and the sun's times over the skyline. */
    private Signs events() {
        Signs signs = new Signs(DayFrame.LEFT - 40, DayFrame.RIGHT + 14);
        event(sun.sunrise(), Fact.Sunrise::new, signs);
        event(sun.sunset(), Fact.Sunset::new, signs);
        for (Interval interval : sunlit) {
            if (apart(interval.from(), sun.sunrise()) && !atAnEnd(interval.from())) {
                event(interval.from(), Fact.ClearsSkyline::new, signs);
            }
            if (apart(interval.to(), sun.sunset()) && !atAnEnd(interval.to())) {
                event(interval.to(), Fact.GoesBehindSkyline::new, signs);
            }
        }
        return signs;
    }

    private void event(@Nullable ZonedDateTime time, Function<ZonedDateTime, Fact> fact, Signs signs) {
        if (time != null && frame.inside(time)) {
            signs.add(frame.x(time), words.of(fact.apply(time)));
        }
    }

    /** Where the date ends, stretches of sun end with it, though nothing hides it. */
    private boolean atAnEnd(ZonedDateTime time) {
        return !time.isAfter(first()) || !time.isBefore(last().plusMinutes(15));
    }

    /** Two marks nearer than three minutes would tell the same. */
    private static boolean apart(ZonedDateTime a, @Nullable ZonedDateTime b) {
        return b == null || Math.abs(Duration.between(a, b).toSeconds()) > 180;
    }

    /** What the sun does not do. */
    private List<Drawing.Label> inWords() {
        if (!sun.downAllDay() && !sun.upAllDay()) {
            return List.of();
        }
        return List.of(new Drawing.Label("words", Anchor.MIDDLE, new Point((DayFrame.LEFT + DayFrame.RIGHT) / 2,
                sun.upAllDay() ? frame.floor() - 11 : frame.top() + 37), words.of(sun.upAllDay() ? Fact.Word.NO_SUNSET : Fact.Word.NO_SUNRISE)));
    }

    /** The words so far, and the lines that hang between them. */
    private Lettering lettering(List<Mark> events, List<Drawing.Label> inWords) {
        List<Mark> words = new ArrayList<>(marks);
        words.addAll(events);
        words.addAll(inWords);
        Lettering lettering = Lettering.of(words);
        for (Mark event : events) {
            if (event instanceof Drawing.Hatch hanging) {
                lettering.avoid(hanging);
            }
        }
        return lettering;
    }

    /** The pictures under the frame; returns how many rows they take. */
    private int pictures(RunningOrder order, List<@Nullable String> names, List<Mark> pictures) {
        Lanes lanes = new Lanes();
        for (int i = 0; i < names.size(); i++) {
            String name = names.get(i);
            Interval time = name == null ? null : order.timeOf(name);
            if (time == null || !frame.inside(time.from())) {
                continue;
            }
            double width = Math.max(24, frame.x(time.to()) - frame.x(time.from()));
            double x = Math.min(frame.x(time.from()), DayFrame.RIGHT - width);
            double y = frame.bottom() + 6 + lanes.place(x, x + width) * LANE;
            pictures.add(new Drawing.Box("picture", x, y, width, 20));
            pictures.add(new Drawing.Label("picture-number", Anchor.MIDDLE, new Point(x + width / 2, y + 16),
                    String.valueOf(i + 1)));
        }
        return lanes.count();
    }

    private Fact says() {
        List<Fact> says = new ArrayList<>();
        if (sun.downAllDay() || sun.upAllDay()) {
            says.add(sun.downAllDay() ? Fact.Word.NO_SUNRISE_TODAY : Fact.Word.NO_SUNSET_TODAY);
        }
        LightAt best = ribbon.best();
        says.add(best.plantAreaIndex() > 0 ? new Fact.LightOnForestFloor(frame.from(), frame.to())
                : new Fact.LightOnOpenGround(frame.from(), frame.to()));
        ZonedDateTime at = best.sun().time();
        double darkest = DayRibbon.darkest(best);
        double brightest = DayRibbon.brightest(best);
        if (!ribbon.known()) {
            says.add(new Fact.BrightestUnforecast(at, darkest, brightest));
            return Fact.text(says);
        }
        says.add(new Fact.BrightestExpected(at, ribbon.expectedAt(best)));
        says.add(new Fact.InOtherSkies(darkest, brightest));
        Fact.ForecastHours known = ribbon.knownSpan();
        if (known != null) {
            says.add(known);
        }
        return Fact.text(says);
    }

    private ZonedDateTime first() {
        return light.get(0).sun().time();
    }

    private ZonedDateTime last() {
        return light.get(light.size() - 1).sun().time();
    }
}
