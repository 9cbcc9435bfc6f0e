package understorey.scene.chart;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import understorey.light.LightAt;
import understorey.scene.Drawing;
import understorey.scene.Drawing.Anchor;
import understorey.scene.Drawing.Label;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Fact;
import understorey.scene.Fact.Word;
import understorey.scene.Lettering;
import understorey.scene.Wording;

/**
 * Light on the floor as a ribbon: a band from the darkest to the brightest sky, a line for the sky that is
 * expected as far as anybody said, a broken line where the sun shines through, and the name of each beside it.
 */
final class DayRibbon {

    private static final double ABOVE = 7;
    private static final double UNDER = 17;
    private static final double BESIDE = 6;
    /** A band thinner than this shows one line, which no word can tell from its other edge. */
    private static final double THIN = 5;

    private final DayFrame frame;
    private final ToDoubleFunction<LightAt> sky;
    private final Wording words;
    /** The rows within the frame. */
    private final List<LightAt> rows;
    private final List<Point> brightest = new ArrayList<>();
    private final List<Point> darkest = new ArrayList<>();
    /** NaN without a forecast. */
    private final double[] expected;
    private final List<List<Point>> lines = new ArrayList<>();
    private final List<List<Point>> flecks = new ArrayList<>();

    DayRibbon(DayFrame frame, List<LightAt> light, ToDoubleFunction<LightAt> sky, Wording words) {
        this.words = words;
        this.frame = frame;
        this.sky = sky;
        rows = light.stream().filter(row -> frame.inside(row.sun().time())).toList();
        expected = rows.stream().mapToDouble(sky).toArray();
    }

    /** Once the frame is laid. */
    void curves(List<Mark> marks) {
        List<Point> line = new ArrayList<>();
        List<Point> fleck = new ArrayList<>();
        for (int i = 0; i < expected.length; i++) {
            LightAt row = rows.get(i);
            double x = frame.x(row.sun().time());
            brightest.add(new Point(x, frame.y(brightest(row))));
            darkest.add(new Point(x, frame.y(darkest(row))));
            line = grown(line, expected[i] >= DayFrame.LOWEST_EV ? expected[i] : null, x, lines);
            fleck = grown(fleck, row.floor().fleck(), x, flecks);
        }
        grown(line, null, 0, lines);
        grown(fleck, null, 0, flecks);
        List<Point> band = new ArrayList<>(darkest);
        Collections.reverse(band);
        band.addAll(0, brightest);
        marks.add(new Drawing.Area("band", band));
        lines.forEach(run -> marks.add(new Drawing.Line("light", run)));
        flecks.forEach(run -> marks.add(new Drawing.Line("fleck", run)));
    }

    /**
     * The run with one more point, or a new one where there is none; a run of one point is no line. Level parts
     * need no points between.
     */
    private List<Point> grown(List<Point> run, @Nullable Double ev, double x, List<List<Point>> runs) {
        if (ev != null) {
            Point point = new Point(x, frame.y(ev));
            int last = run.size() - 1;
            if (last > 0 && run.get(last).y() == point.y() && run.get(last - 1).y() == point.y()) {
                run.remove(last);
            }
            run.add(point);
            return run;
        }
        if (run.size() > 1) {
            runs.add(run);
        }
        return new ArrayList<>();
    }

    /** Names the longest fleck line and both edges of the band, where there is room for words beside them. */
    void names(Lettering lettering, List<Mark> marks) {
        lines.forEach(lettering::avoid);
        flecks.forEach(lettering::avoid);
        lettering.avoid(brightest);
        lettering.avoid(darkest);
        Word sun = rows.get(0).plantAreaIndex() > 0 ? Word.IN_SUN_PATCH : Word.IN_SUN;
        flecks.stream().max(Comparator.comparingDouble(DayRibbon::width)).ifPresent(longest -> {
            if (!named(sun, "fleck-words", longest, true, lettering, marks)) {
                named(sun, "fleck-words", longest, false, lettering, marks);
            }
        });
        edge(false, lettering, marks);
        edge(true, lettering, marks);
    }

    private static double width(List<Point> run) {
        return run.get(run.size() - 1).x() - run.get(0).x();
    }

    private void edge(boolean upper, Lettering lettering, List<Mark> marks) {
        for (Word sky : List.of(Word.CLEAR_IN_SHADE, Word.OVERCAST, Word.BROKEN_CLOUD)) {
            List<Point> own = new ArrayList<>();
            for (int i = 0; i < rows.size(); i++) {
                if (darkest.get(i).y() - brightest.get(i).y() > THIN && sky == name(rows.get(i), upper)) {
                    own.add((upper ? brightest : darkest).get(i));
                }
            }
            if (own.size() > 1 && named(sky, "edge-words", own, upper, lettering, marks)) {
                return;
            }
        }
    }

    /** Puts the words beside a line, as near to its middle as nothing stands in the way. */
    private boolean named(Word word, String style, List<Point> line, boolean above, Lettering lettering,
                                 List<Mark> marks) {
        String text = words.of(word);
        double half = Lettering.width(text) / 2;
        int middle = line.size() / 2;
        for (int step = 0; step <= 2 * middle; step++) {
            int i = middle + (step % 2 == 0 ? step / 2 : -(step + 1) / 2);
            if (i < 0 || i >= line.size()) {
                continue;
            }
            double x = Math.max(DayFrame.LEFT + half, Math.min(DayFrame.RIGHT - half, line.get(i).x()));
            double y = line.get(i).y();
            for (Point point : line) {
                if (Math.abs(point.x() - x) < half + BESIDE) {
                    y = above ? Math.min(y, point.y()) : Math.max(y, point.y());
                }
            }
            Label label = new Label(style, Anchor.MIDDLE, new Point(x, above ? y - ABOVE : y + UNDER), text);
            if (lettering.place(label)) {
                marks.add(label);
                return true;
            }
        }
        return false;
    }

    /** The row with the most light: under the sky expected as far as that is known, else under any. */
    LightAt best() {
        boolean known = known();
        return Collections.max(rows, Comparator.comparingDouble(row -> {
            double ev = known ? expectedAt(row) : brightest(row);
            return Double.isNaN(ev) ? Double.NEGATIVE_INFINITY : ev;
        }));
    }

    double expectedAt(LightAt row) {
        return sky.applyAsDouble(row);
    }

    /** True with a forecast for any time that is drawn. */
    boolean known() {
        return knownRows().length > 0;
    }

    /** The hours with a forecast; null where these are all. */
    Fact.@Nullable ForecastHours knownSpan() {
        int[] known = knownRows();
        int last = known[known.length - 1];
        return known[0] == 0 && last == expected.length - 1 ? null
                : new Fact.ForecastHours(rows.get(known[0]).sun().time(), rows.get(last).sun().time());
    }

    private int[] knownRows() {
        return IntStream.range(0, expected.length).filter(i -> !Double.isNaN(expected[i])).toArray();
    }

    static double brightest(LightAt row) {
        return Math.max(Math.max(clear(row), row.floor().shade()), Math.max(row.floor().broken(), row.floor().overcast()));
    }

    static double darkest(LightAt row) {
        return Math.min(row.floor().shade(), Math.min(row.floor().broken(), row.floor().overcast()));
    }

    /** As it is metered: the shade, or the floor as a whole where much of it is in sun. */
    private static double clear(LightAt row) {
        return row.floorEv(0);
    }

    /** The sky that makes an edge of the band; null for a clear one with the sun on the ground. */
    private static @Nullable Word name(LightAt row, boolean brightest) {
        double ev = brightest ? brightest(row) : darkest(row);
        return ev == row.floor().shade() ? Word.CLEAR_IN_SHADE : ev == clear(row) ? null
                : ev == row.floor().overcast() ? Word.OVERCAST : Word.BROKEN_CLOUD;
    }
}
