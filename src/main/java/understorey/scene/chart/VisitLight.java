package understorey.scene.chart;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import understorey.light.LightAt;
import understorey.scene.Drawing.Point;
import understorey.visit.Day;
import understorey.visit.Place;

/**
 * The light on the ground during a visit, where most of its shots are taken. Points and levels are shares of the
 * figure, 0 to 1 from its upper left corner.
 *
 * @param place    whose light it is
 * @param levels   every 5 EV
 * @param band     outline from the brightest to the darkest sky
 * @param expected under the sky expected; empty where that is unknown
 * @param flecks   in the sun, stretch by stretch
 * @param dots     the shots, each at the light of its own place
 * @param night    shares of the width that are night
 * @param twilight shares that are civil twilight
 */
public record VisitLight(Place place, List<Level> levels, List<Point> band, List<Point> expected, List<List<Point>> flecks,
                         List<Dot> dots, List<VisitFigure.Stretch> night, List<VisitFigure.Stretch> twilight) {

    private static final int STEP_EV = 5;
    /** Darker is drawn only where a picture is taken. */
    private static final double LOWEST_EV = -5;
    /** Outlines are laid on a field of this size, since a drawing rounds its points to a tenth. */
    public static final int WIDTH = 300;
    public static final int HEIGHT = 100;

    /** A line of equal EV. */
    public record Level(int ev, double top) {
    }

    /** A shot at its middle. */
    public record Dot(int number, double left, double top) {
    }

    static VisitLight of(Day day, List<VisitFigure.Taken> taken, VisitFigure.Scale scale, ToDoubleFunction<LightAt> expected) {
        Place place = commonest(taken);
        List<LightAt> rows = place.light().stream().filter(row -> scale.holds(row.time())).toList();
        Ladder ladder = Ladder.of(rows, taken);
        Function<Function<LightAt, @Nullable Double>, List<List<Point>>> runs = value -> runs(rows, scale, ladder, value);
        List<Point> band = new ArrayList<>(curve(rows, scale, ladder, VisitLight::brightest));
        List<Point> darkest = new ArrayList<>(curve(rows, scale, ladder, VisitLight::darkest));
        Collections.reverse(darkest);
        band.addAll(darkest);
        List<List<Point>> lines = runs.apply(row -> Double.isNaN(expected.applyAsDouble(row)) ? null : expected.applyAsDouble(row));
        return new VisitLight(place, ladder.levels(), List.copyOf(band), lines.isEmpty() ? List.of() : lines.get(0),
                runs.apply(row -> row.floor().fleck()),
                taken.stream().map(shot -> new Dot(shot.number(), scale.at(shot.middle()), ladder.top(shot.ev()))).toList(),
                dark(day, place, scale, true), dark(day, place, scale, false));
    }

    private static Place commonest(List<VisitFigure.Taken> taken) {
        return taken.stream().map(VisitFigure.Taken::place)
                .max(Comparator.comparingLong(place -> taken.stream().filter(shot -> shot.place() == place).count())).orElseThrow();
    }

    private static List<Point> curve(List<LightAt> rows, VisitFigure.Scale scale, Ladder ladder, Function<LightAt, Double> ev) {
        return rows.stream().map(row -> ladder.point(scale.at(row.time()), ev.apply(row))).toList();
    }

    private static List<List<Point>> runs(List<LightAt> rows, VisitFigure.Scale scale, Ladder ladder,
                                          Function<LightAt, @Nullable Double> value) {
        List<List<Point>> runs = new ArrayList<>();
        List<Point> run = new ArrayList<>();
        for (LightAt row : rows) {
            Double ev = value.apply(row);
            if (ev == null) {
                end(run, runs);
                run = new ArrayList<>();
            } else {
                run.add(ladder.point(scale.at(row.time()), ev));
            }
        }
        end(run, runs);
        return List.copyOf(runs);
    }

    /** A run of one point is no line. */
    private static void end(List<Point> run, List<List<Point>> runs) {
        if (run.size() > 1) {
            runs.add(List.copyOf(run));
        }
    }

    /** Under whichever sky the ground is brightest; a clear one between its flecks and its shade. */
    private static double brightest(LightAt row) {
        return Math.max(Math.max(row.floorEv(0), row.floor().shade()), Math.max(row.floor().broken(), row.floor().overcast()));
    }

    private static double darkest(LightAt row) {
        return Math.min(row.floor().shade(), Math.min(row.floor().broken(), row.floor().overcast()));
    }

    private static List<VisitFigure.Stretch> dark(Day day, Place place, VisitFigure.Scale scale, boolean night) {
        return Darkness.of(place.light(), day.sun(), scale.from(), scale.to()).stream().filter(hours -> hours.night() == night)
                .map(hours -> scale.stretch(hours.time().from(), hours.time().to())).toList();
    }

    /** EV from the foot of the figure to its top. */
    private record Ladder(int lowest, int highest) {

        static Ladder of(List<LightAt> rows, List<VisitFigure.Taken> taken) {
            double low = 100;
            double least = taken.stream().mapToDouble(VisitFigure.Taken::ev).reduce(LOWEST_EV, Math::min);
            double high = LOWEST_EV + STEP_EV;
            for (LightAt row : rows) {
                low = Math.min(low, darkest(row));
                Double fleck = row.floor().fleck();
                high = Math.max(high, Math.max(brightest(row), fleck == null ? LOWEST_EV : fleck));
            }
            for (VisitFigure.Taken shot : taken) {
                high = Math.max(high, shot.ev());
            }
            return new Ladder(STEP_EV * (int) Math.floor(Math.max(least, low) / STEP_EV), STEP_EV * (int) Math.ceil(high / STEP_EV));
        }

        double top(double ev) {
            return (highest - Math.max(lowest, ev)) / (highest - lowest);
        }

        Point point(double share, double ev) {
            return new Point(share * WIDTH, top(ev) * HEIGHT);
        }

        List<Level> levels() {
            List<Level> levels = new ArrayList<>();
            for (int ev = lowest; ev <= highest; ev += STEP_EV) {
                levels.add(new Level(ev, top(ev)));
            }
            return List.copyOf(levels);
        }
    }
}
