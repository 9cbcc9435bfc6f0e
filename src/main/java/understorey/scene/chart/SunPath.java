package understorey.scene.chart;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.light.LightAt;
import understorey.scene.Drawing;
import understorey.scene.Drawing.Anchor;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Lettering;
import understorey.sky.Skyline;

/** The sun's path over a day, each part drawn as the sun is seen there, with a dot at every full hour. */
final class SunPath {

    /** A path that turns further than this between two rows has left one edge of the sheet and come back at the other. */
    private static final double JUMP_DEG = 90;
    private static final int HALVINGS = 12;
    /** A part of the way between two rows too small to see. */
    private static final double NO_WAY = 1e-3;
    private static final double RAISED = 9;
    private static final double STEEPEST = 5;
    /** Half the width of two digits, and nearly their height. */
    private static final int FIGURE = 10;
    private static final double RUNS_UP = 2.5;

    /** What stands before the sun. */
    enum Sight {
        CLEAR("sun", "hour", "figure"), TREES("sun-in-trees", "hour-in-trees", "figure-in-trees"),
        LAND("sun-hidden", "hour-hidden", "figure-on-land");

        private final String line;
        private final String dot;
        private final String figure;

        Sight(String line, String dot, String figure) {
            this.line = line;
            this.dot = dot;
            this.figure = figure;
        }

        String line() {
            return line;
        }
    }

    private final List<LightAt> up;
    private final Skyline skyline;
    private final @Nullable Double treeTopDeg;
    private final Panorama panorama;

    SunPath(List<LightAt> up, Skyline skyline, @Nullable Double treeTopDeg, Panorama panorama) {
        this.up = up;
        this.skyline = skyline;
        this.treeTopDeg = treeTopDeg;
        this.panorama = panorama;
    }

    Sight sight(LightAt row) {
        return sight(row.sun().azimuthDeg(), row.sun().apparentAltitudeDeg());
    }

    private Sight sight(double bearingDeg, double altitudeDeg) {
        if (altitudeDeg <= Math.max(0, skyline.angleDeg(bearingDeg))) {
            return Sight.LAND;
        }
        return treeTopDeg != null && altitudeDeg <= treeTopDeg ? Sight.TREES : Sight.CLEAR;
    }

    void strokes(List<Mark> marks) {
        if (up.isEmpty()) {
            return;
        }
        LightAt before = up.get(0);
        Sight sight = sight(before);
        List<Point> run = new ArrayList<>(List.of(at(before)));
        for (LightAt row : up.subList(1, up.size())) {
            if (Math.abs(turn(before, row)) > JUMP_DEG) {
                stroke(sight, run, marks);
                run = new ArrayList<>();
            } else {
                double share = 0;
                while (sight != sight(row) && share < 1) {
                    share = change(before, row, share, sight);
                    run.add(between(before, row, share));
                    stroke(sight, run, marks);
                    run = new ArrayList<>(List.of(between(before, row, share)));
                    share = Math.min(1, share + NO_WAY);
                    sight = sight(before, row, share);
                }
            }
            sight = sight(row);
            run.add(at(row));
            before = row;
        }
        stroke(sight, run, marks);
    }

    private Point at(LightAt row) {
        return panorama.at(panorama.offset(row.sun().azimuthDeg()), row.sun().apparentAltitudeDeg());
    }

    private static void stroke(Sight sight, List<Point> run, List<Mark> marks) {
        if (run.size() > 1 && !(run.size() == 2 && run.get(0).equals(run.get(1)))) {
            marks.add(new Drawing.Line(sight.line, List.copyOf(run)));
        }
    }

    private double turn(LightAt before, LightAt row) {
        return panorama.offset(row.sun().azimuthDeg()) - panorama.offset(before.sun().azimuthDeg());
    }

    /** The share of the way between two rows, straight on the sheet, at which the sun is no longer seen as it was. */
    private double change(LightAt before, LightAt row, double from, Sight sight) {
        double as = from;
        double other = 1;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (as + other) / 2;
            if (sight(before, row, middle) == sight) {
                as = middle;
            } else {
                other = middle;
            }
        }
        return other;
    }

    private Sight sight(LightAt before, LightAt row, double share) {
        return sight(panorama.bearing(panorama.offset(before.sun().azimuthDeg()) + share * turn(before, row)),
                altitude(before, row, share));
    }

    private Point between(LightAt before, LightAt row, double share) {
        return panorama.at(panorama.offset(before.sun().azimuthDeg()) + share * turn(before, row),
                altitude(before, row, share));
    }

    private static double altitude(LightAt before, LightAt row, double share) {
        double from = before.sun().apparentAltitudeDeg();
        return from + share * (row.sun().apparentAltitudeDeg() - from);
    }

    /** A dot at every full hour of sun, and its figure where there is room. */
    void hours(List<Mark> marks) {
        Lettering lettering = Lettering.of(marks);
        for (int i = 0; i < up.size(); i++) {
            LightAt row = up.get(i);
            if (row.sun().time().getMinute() == 0 && row.sun().apparentAltitudeDeg() > 0) {
                Point point = at(row);
                Sight sight = sight(row);
                marks.add(new Drawing.Dot(sight.dot, point, 4));
                Drawing.Label label = figure(i, point, sight);
                if (lettering.place(label)) {
                    marks.add(label);
                }
            }
        }
    }

    /** The hour over its dot, the higher the steeper the path; beside it where the path runs up. */
    private Drawing.Label figure(int i, Point dot, Sight sight) {
        String hour = String.valueOf(up.get(i).sun().time().getHour());
        double slope = slope(i);
        if (slope > RUNS_UP) {
            boolean left = dot.x() < (Panorama.LEFT + Panorama.RIGHT) / 2;
            return new Drawing.Label(sight.figure, left ? Anchor.START : Anchor.END,
                    new Point(dot.x() + (left ? RAISED : -RAISED), dot.y() + 5), hour);
        }
        double x = Math.max(Panorama.LEFT + 10, Math.min(Panorama.RIGHT - 10, dot.x()));
        Point foot = new Point(x, dot.y() - RAISED - STEEPEST * Math.min(1, slope));
        return new Drawing.Label(withinLand(foot) ? "figure-in-land" : sight.figure, Anchor.MIDDLE, foot, hour);
    }

    /** True when no part of a figure looks over the land. */
    private boolean withinLand(Point foot) {
        for (int aside = -FIGURE; aside <= FIGURE; aside += FIGURE) {
            if (panorama.y(skyline.angleDeg(panorama.bearing(panorama.offsetAt(foot.x() + aside)))) > foot.y() - FIGURE - 4) {
                return false;
            }
        }
        return true;
    }

    /** Degrees up or down per degree across. */
    private double slope(int i) {
        LightAt before = up.get(Math.max(0, i - 1));
        LightAt after = up.get(Math.min(up.size() - 1, i + 1));
        double across = Math.abs(turn(before, after));
        double rise = Math.abs(after.sun().apparentAltitudeDeg() - before.sun().apparentAltitudeDeg());
        return across > JUMP_DEG ? 0 : rise / Math.max(NO_WAY, across);
    }

    /** The first and the last row in which the sun is seen, and the one in which it is highest. */
    record Seen(LightAt first, LightAt last, LightAt highest) {
    }

    /** When nothing hides the sun, or nothing but leaves; null where it is never seen. */
    @Nullable Seen seen(boolean throughLeaves) {
        List<LightAt> rows = up.stream().filter(row -> sight(row) == Sight.CLEAR || throughLeaves && sight(row) == Sight.TREES).toList();
        return rows.isEmpty() ? null : new Seen(rows.get(0), rows.get(rows.size() - 1),
                Collections.max(rows, Comparator.comparingDouble(row -> row.sun().apparentAltitudeDeg())));
    }
}
