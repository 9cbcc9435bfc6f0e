package understorey.scene;

import java.util.ArrayList;
import java.util.List;
import understorey.light.LightAt;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.scene.Drawing.Anchor;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.sky.Skyline;

/**
 * The sun over the skyline: a panorama by bearing, degrees of height on the same scale as far as the sheet
 * allows, the land as a silhouette, the sun's path with its hours, the field of each picture as a bracket.
 */
public final class SkylineChart {

    private static final double WIDTH = 720;
    private static final double LEFT = 36;
    private static final double RIGHT = 704;
    private static final double PLOT = 240;
    private static final double TOP = 26;
    private static final double LANE = 35;
    /** Seen altitude of the sun's centre when its upper edge touches a level horizon: half its width below. */
    private static final double EDGE_UP_DEG = -16 / 60.0;
    private static final String[] POINTS = {"N", "NE", "E", "SE", "S", "SW", "W", "NW"};

    /**
     * What a picture looks at.
     *
     * @param facingDeg null when it faces nowhere in particular
     * @param widthDeg  horizontal angle of view
     */
    public record Field(int number, Double facingDeg, double widthDeg) {
    }

    private final List<LightAt> up;
    private final Skyline skyline;
    private final double centreDeg;
    private final double halfDeg;
    private final double highestDeg;
    private final double bottom = TOP + PLOT;
    private final List<Mark> marks = new ArrayList<>();

    private SkylineChart(List<LightAt> light, Skyline skyline, Site site) {
        this.up = light.stream().filter(row -> row.sun().apparentAltitudeDeg() > -1).toList();
        this.skyline = skyline;
        this.centreDeg = centre(site.position().latitude());
        double widest = 90;
        double highest = 30;
        for (LightAt row : up) {
            widest = Math.max(widest, Math.abs(offset(row.sun().azimuthDeg())) + 15);
            highest = Math.max(highest, row.sun().apparentAltitudeDeg() + 6);
        }
        this.halfDeg = Math.min(180, widest);
        for (double offset = -halfDeg; offset <= halfDeg; offset += 2) {
            highest = Math.max(highest, skyline.angleDeg(bearing(offset)) + 3);
        }
        this.highestDeg = highest;
    }

    public static Drawing of(List<LightAt> light, Skyline skyline, Site site, List<Shot> shots, List<Field> fields) {
        return new SkylineChart(light, skyline, site).draw(shots, fields);
    }

    /** Where the sun is highest that day; without sun, the pole-ward or equator-ward side by hemisphere. */
    private double centre(double latitude) {
        LightAt highest = null;
        for (LightAt row : up) {
            if (highest == null || row.sun().apparentAltitudeDeg() > highest.sun().apparentAltitudeDeg()) {
                highest = row;
            }
        }
        double azimuth = highest == null ? latitude < 0 ? 0 : 180 : highest.sun().azimuthDeg();
        return azimuth > 90 && azimuth < 270 ? 180 : 0;
    }

    private Drawing draw(List<Shot> shots, List<Field> fields) {
        grid();
        land();
        path();
        double below = bearings();
        int lanes = brackets(fields, shots, below);
        double height = below + lanes * LANE + 4;
        return new Drawing(WIDTH, height, "The sun over the skyline", says(), List.copyOf(marks));
    }

    private void grid() {
        for (int degrees = 0; degrees < highestDeg; degrees += highestDeg > 60 ? 20 : 10) {
            marks.add(new Drawing.Line("hair", List.of(new Point(LEFT, y(degrees)), new Point(RIGHT, y(degrees)))));
            marks.add(new Drawing.Label("figure", Anchor.END, new Point(LEFT - 5, y(degrees) + 5), degrees + "°"));
        }
    }

    private void land() {
        List<Point> outline = new ArrayList<>();
        outline.add(new Point(LEFT, bottom));
        for (double offset = -halfDeg; offset <= halfDeg; offset += 2) {
            outline.add(new Point(xOffset(offset), y(Math.max(0, skyline.angleDeg(bearing(offset))))));
        }
        outline.add(new Point(RIGHT, y(Math.max(0, skyline.angleDeg(bearing(halfDeg))))));
        outline.add(new Point(RIGHT, bottom));
        marks.add(new Drawing.Area("land", outline));
    }

    private void path() {
        List<Point> run = new ArrayList<>();
        Boolean clear = null;
        LightAt before = null;
        for (LightAt row : up) {
            boolean jumps = before != null
                    && Math.abs(offset(row.sun().azimuthDeg()) - offset(before.sun().azimuthDeg())) > 90;
            if (clear != null && (clear != row.aboveSkyline() || jumps)) {
                if (!jumps) {
                    run.add(at(row));
                }
                stroke(clear, run);
                run = new ArrayList<>();
            }
            run.add(at(row));
            clear = row.aboveSkyline();
            before = row;
        }
        if (clear != null) {
            stroke(clear, run);
        }
        if (up.stream().noneMatch(row -> row.sun().apparentAltitudeDeg() > EDGE_UP_DEG)) {
            marks.add(new Drawing.Label("words", Anchor.MIDDLE, new Point((LEFT + RIGHT) / 2, TOP + PLOT / 2),
                    DayLightChart.DOES_NOT_RISE));
        }
        Lettering lettering = Lettering.of(marks);
        for (LightAt row : up) {
            if (row.sun().time().getMinute() == 0 && row.sun().apparentAltitudeDeg() > 0) {
                Point point = at(row);
                marks.add(new Drawing.Dot(row.aboveSkyline() ? "hour" : "hour-hidden", point, 4));
                Drawing.Label label = new Drawing.Label(row.aboveSkyline() ? "figure" : "figure-on-land", Anchor.MIDDLE,
                        new Point(Math.max(LEFT + 10, Math.min(RIGHT - 10, point.x())), point.y() - 9),
                        String.valueOf(row.sun().time().getHour()));
                if (lettering.place(label)) {
                    marks.add(label);
                }
            }
        }
    }

    private void stroke(boolean clear, List<Point> run) {
        if (run.size() > 1) {
            marks.add(new Drawing.Line(clear ? "sun" : "sun-hidden", List.copyOf(run)));
        }
    }

    private double bearings() {
        for (int i = 0; i < 16; i++) {
            double offset = offset(i * 22.5);
            if (Math.abs(offset) <= halfDeg) {
                double x = xOffset(offset);
                marks.add(new Drawing.Line("hair", List.of(new Point(x, bottom), new Point(x, bottom + 5))));
                if (i % 2 == 0) {
                    marks.add(new Drawing.Label("figure", Anchor.MIDDLE,
                            new Point(Math.min(RIGHT - 8, Math.max(LEFT + 8, x)), bottom + 22), POINTS[i / 2]));
                }
            }
        }
        return bottom + 32;
    }

    private int brackets(List<Field> fields, List<Shot> shots, double below) {
        Lanes lanes = new Lanes();
        for (Field field : fields) {
            if (field.facingDeg() == null) {
                continue;
            }
            double offset = offset(field.facingDeg());
            String words = Lanes.shortened(field.number() + " " + shots.get(field.number() - 1).name(), RIGHT - LEFT);
            double from = Math.max(LEFT, xOffset(offset - field.widthDeg() / 2));
            double to = Math.min(RIGHT, xOffset(offset + field.widthDeg() / 2));
            if (from >= to) {
                aside(words, offset < 0, lanes, below);
                continue;
            }
            double textFrom = Math.max(LEFT, Math.min(RIGHT - Lanes.textWidth(words), (from + to) / 2
                    - Lanes.textWidth(words) / 2));
            int lane = lanes.place(Math.min(from, textFrom), Math.max(to, textFrom + Lanes.textWidth(words)));
            double y = below + lane * LANE;
            marks.add(new Drawing.Line("bracket", List.of(new Point(from, y), new Point(from, y + 6),
                    new Point(to, y + 6), new Point(to, y))));
            marks.add(new Drawing.Label("words", Anchor.START, new Point(textFrom, y + 22), words));
        }
        return lanes.count();
    }

    /** A picture that looks past the edge of the sheet. */
    private void aside(String name, boolean left, Lanes lanes, double below) {
        String words = Lanes.shortened(left ? "← " + name : name + " →", RIGHT - LEFT);
        double width = Lanes.textWidth(words);
        double from = left ? LEFT : RIGHT - width;
        marks.add(new Drawing.Label("words", Anchor.START,
                new Point(from, below + lanes.place(from, from + width) * LANE + 22), words));
    }

    private String says() {
        LightAt first = null;
        LightAt last = null;
        LightAt highest = null;
        for (LightAt row : up) {
            if (row.aboveSkyline()) {
                first = first == null ? row : first;
                last = row;
                highest = highest == null || row.sun().apparentAltitudeDeg() > highest.sun().apparentAltitudeDeg()
                        ? row : highest;
            }
        }
        return first == null
                ? "The sun does not stand clear of the land on this day."
                : "The sun stands clear of the land from about " + DayLightChart.clock(first.sun().time())
                + " at bearing " + bearingOf(first) + "° to about "
                + DayLightChart.clock(last.sun().time()) + " at bearing " + bearingOf(last)
                + "°, highest at about " + DayLightChart.clock(highest.sun().time()) + " with "
                + Math.round(highest.sun().apparentAltitudeDeg()) + "° above the horizon.";
    }

    private static long bearingOf(LightAt row) {
        return Math.round(row.sun().azimuthDeg()) % 360;
    }

    private Point at(LightAt row) {
        return new Point(xOffset(offset(row.sun().azimuthDeg())), y(row.sun().apparentAltitudeDeg()));
    }

    /** Degrees right of the middle of the sheet, −180 to 180. */
    private double offset(double bearingDeg) {
        double offset = (bearingDeg - centreDeg) % 360;
        return offset > 180 ? offset - 360 : offset < -180 ? offset + 360 : offset;
    }

    private double bearing(double offset) {
        return ((centreDeg + offset) % 360 + 360) % 360;
    }

    private double xOffset(double offset) {
        return LEFT + (offset + halfDeg) / (2 * halfDeg) * (RIGHT - LEFT);
    }

    private double y(double degrees) {
        return bottom - PLOT * Math.max(-1, degrees) / highestDeg;
    }
}
