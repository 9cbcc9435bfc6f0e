package understorey.scene.chart;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.light.LightAt;
import understorey.scene.Drawing;
import understorey.scene.Drawing.Anchor;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Fact;
import understorey.scene.Lettering;
import understorey.scene.Scene;
import understorey.scene.Wording;
import understorey.sky.Skyline;
import understorey.sky.SunAt;

/**
 * The sun over the skyline: a panorama by bearing, degrees of height on the same scale as far as the sheet
 * allows, land and tree tops as silhouettes, the sun's path with its hours, the field of each picture as a bracket.
 */
public final class SkylineChart {

    private static final double LANE = 39;
    /** The line of words above the plot. */
    private static final double KEY = 17;
    private static final double KEY_ROW = 20;
    private static final double PLOT_TOP = 80;
    private static final double SAMPLE = 30;
    /** Seen altitude of the sun's centre when its upper edge touches a level horizon: half its width below. */
    private static final double EDGE_UP_DEG = -16 / 60.0;
    private static final double LEFT = Panorama.LEFT;
    private static final double RIGHT = Panorama.RIGHT;

    /**
     * What a picture looks at.
     *
     * @param name      of the picture
     * @param facingDeg null when it faces nowhere in particular
     * @param widthDeg  horizontal angle of view
     */
    public record Field(int number, String name, @Nullable Double facingDeg, double widthDeg) {
    }

    private final List<LightAt> up;
    private final Skyline skyline;
    private final Wording words;
    private final @Nullable Double treeTopDeg;
    private final Panorama panorama;
    private final SunPath path;
    private final List<Mark> marks = new ArrayList<>();

    private SkylineChart(List<LightAt> light, Skyline skyline, @Nullable Double treeTopDeg, double latitude, Wording words) {
        this.words = words;
        this.up = light.stream().filter(row -> row.sun().apparentAltitudeDeg() > -1).toList();
        this.skyline = skyline;
        this.treeTopDeg = treeTopDeg;
        this.panorama = new Panorama(up, skyline, latitude,
                treeTopDeg == null ? 0 : TreeTops.highestDeg(treeTopDeg), PLOT_TOP);
        this.path = new SunPath(up, skyline, treeTopDeg, panorama);
    }

    /**
     * The chart.
     *
     * @param treeTopDeg mean angle of the tree tops round a clearing above the level horizon, 0 to 90; null where
     *                   no trees stand around, or the trees stand overhead
     * @param place      name of the place
     */
    public static Scene of(List<LightAt> light, Skyline skyline, @Nullable Double treeTopDeg, double latitude,
                           List<Field> fields, String place) {
        return words -> new SkylineChart(light, skyline, treeTopDeg, latitude, words).draw(fields, place);
    }

    private Drawing draw(List<Field> fields, String place) {
        String title = words.of(new Fact.SunOver(horizon(), place));
        grid();
        trees(title.hashCode());
        boolean rises = land();
        key(rises);
        path.strokes(marks);
        doesNotRise();
        path.hours(marks);
        double below = bearings();
        double height = below + brackets(fields, below) * LANE + 4;
        return new Drawing(Panorama.WIDTH, height, title, words.of(says(fields)), List.copyOf(marks));
    }

    private void grid() {
        double highest = panorama.highestDeg();
        List<Point> ends = new ArrayList<>();
        for (int degrees = 0; degrees < highest; degrees += highest > 80 ? 20 : 10) {
            double y = panorama.y(degrees);
            ends.add(new Point(LEFT, y));
            ends.add(new Point(RIGHT, y));
            marks.add(new Drawing.Label("figure", Anchor.END, new Point(LEFT - 5, y + 5), words.of(new Fact.Angle(degrees))));
        }
        marks.add(new Drawing.Hatch("hair", ends));
    }

    private void trees(int seed) {
        if (treeTopDeg != null) {
            TreeTops trees = new TreeTops(treeTopDeg, seed, panorama);
            marks.add(new Drawing.Area("trees", trees.outline()));
            marks.add(new Drawing.Hatch("trunks", trees.trunks(skyline)));
        }
    }

    /** The land's silhouette; true when it rises over the level horizon anywhere on the sheet. */
    private boolean land() {
        List<Point> outline = new ArrayList<>();
        double half = panorama.halfDeg();
        boolean rises = false;
        outline.add(new Point(LEFT, panorama.bottom()));
        for (double offset = -half; offset <= half; offset += Panorama.STEP_DEG) {
            double angle = skyline.angleDeg(panorama.bearing(offset));
            rises |= angle > 0;
            Point point = panorama.at(offset, Math.max(0, angle));
            int last = outline.size() - 1;
            if (last > 1 && straight(outline.get(last - 1), outline.get(last), point)) {
                outline.remove(last);
            }
            outline.add(point);
        }
        outline.add(panorama.at(half, Math.max(0, skyline.angleDeg(panorama.bearing(half)))));
        outline.add(new Point(RIGHT, panorama.bottom()));
        marks.add(rises ? new Drawing.Area("land", outline) : new Drawing.Line("axis",
                List.of(new Point(LEFT, panorama.bottom()), new Point(RIGHT, panorama.bottom()))));
        return rises;
    }

    /** True when a point on the way from one to another is not to be told from the straight line, a tenth of a pixel. */
    private static boolean straight(Point from, Point between, Point to) {
        double share = (between.x() - from.x()) / (to.x() - from.x());
        return Math.abs(from.y() + share * (to.y() - from.y()) - between.y()) < 0.11;
    }

    /** What each look of the path says, above the plot. */
    private void key(boolean landRises) {
        double y = PLOT_TOP - KEY - KEY_ROW / 2;
        if (landRises) {
            y = sample(y, "land", SunPath.Sight.LAND, Fact.Word.BEHIND_SKYLINE);
        }
        if (treeTopDeg != null) {
            y = sample(y, "trees", SunPath.Sight.TREES, new Fact.BehindTrees(treeTopDeg));
        }
        if (path.seen(false) != null) {
            sample(y, null, SunPath.Sight.CLEAR, Fact.Word.SUN_VISIBLE);
        }
    }

    /** One look and its name; returns where the one above it has its base line. */
    private double sample(double y, @Nullable String ground, SunPath.Sight sight, Fact fact) {
        if (ground != null) {
            marks.add(new Drawing.Box(ground, LEFT, y - 12, SAMPLE, 13));
        }
        marks.add(new Drawing.Line(sight.line(), List.of(new Point(LEFT, y - 5.5), new Point(LEFT + SAMPLE, y - 5.5))));
        marks.add(new Drawing.Label("words", Anchor.START, new Point(LEFT + SAMPLE + 7, y), words.of(fact)));
        return y - KEY_ROW;
    }

    private void doesNotRise() {
        if (up.stream().anyMatch(row -> row.sun().apparentAltitudeDeg() > EDGE_UP_DEG)) {
            return;
        }
        marks.add(new Drawing.Label(treeTopDeg == null ? "words" : "figure-in-trees", Anchor.MIDDLE, new Point((LEFT + RIGHT) / 2,
                (panorama.top() + panorama.bottom()) / 2), words.of(Fact.Word.NO_SUNRISE)));
    }

    private double bearings() {
        double bottom = panorama.bottom();
        List<Point> ticks = new ArrayList<>();
        for (int i = 0; i < 16; i++) {
            double offset = panorama.offset(i * 22.5);
            if (Math.abs(offset) <= panorama.halfDeg()) {
                double x = panorama.x(offset);
                ticks.add(new Point(x, bottom));
                ticks.add(new Point(x, bottom + 5));
                if (i % 2 == 0) {
                    marks.add(new Drawing.Label("figure", Anchor.MIDDLE,
                            new Point(Math.min(RIGHT - 8, Math.max(LEFT + 8, x)), bottom + 22), words.of(new Fact.CompassPoint(i * 22.5))));
                }
            }
        }
        marks.add(new Drawing.Hatch("hair", ticks));
        return bottom + 32;
    }

    private int brackets(List<Field> fields, double below) {
        Lanes lanes = new Lanes();
        List<Point> ends = new ArrayList<>();
        for (Field field : fields) {
            Double facingDeg = field.facingDeg();
            if (facingDeg == null) {
                continue;
            }
            double offset = panorama.offset(facingDeg);
            Fact picture = new Fact.NumberedPicture(field.number(), field.name());
            double from = Math.max(LEFT, panorama.x(offset - field.widthDeg() / 2));
            double to = Math.min(RIGHT, panorama.x(offset + field.widthDeg() / 2));
            if (from >= to) {
                aside(picture, offset < 0, lanes, below);
                continue;
            }
            String text = Lettering.shortened(words.of(picture), RIGHT - LEFT);
            double width = Lettering.width(text);
            double textFrom = Math.max(LEFT, Math.min(RIGHT - width, (from + to) / 2 - width / 2));
            int lane = lanes.place(Math.min(from, textFrom), Math.max(to, textFrom + width));
            double y = below + lane * LANE;
            ends.addAll(List.of(new Point(from, y), new Point(from, y + 6), new Point(from, y + 6), new Point(to, y + 6),
                    new Point(to, y + 6), new Point(to, y)));
            marks.add(new Drawing.Label("words", Anchor.START, new Point(textFrom, y + 26), text));
        }
        if (!ends.isEmpty()) {
            marks.add(new Drawing.Hatch("bracket", ends));
        }
        return lanes.count();
    }

    /** A picture that looks past the edge of the sheet. */
    private void aside(Fact picture, boolean left, Lanes lanes, double below) {
        String text = Lettering.shortened(words.of(left ? new Fact.LooksLeft(picture) : new Fact.LooksRight(picture)), RIGHT - LEFT);
        double width = Lettering.width(text);
        double from = left ? LEFT : RIGHT - width;
        marks.add(new Drawing.Label("words", Anchor.START,
                new Point(from, below + lanes.place(from, from + width) * LANE + 26), text));
    }

    private Fact horizon() {
        return skyline.isLevel() ? Fact.Word.LEVEL_HORIZON : Fact.Word.SKYLINE;
    }

    /** Where the sun is seen, then what each picture looks at. */
    private Fact says(List<Field> fields) {
        Fact says = sunlit();
        for (Field field : fields) {
            Double facingDeg = field.facingDeg();
            if (facingDeg != null) {
                says = new Fact.Next(says, new Fact.LooksTowards(new Fact.NumberedPicture(field.number(), field.name()), facingDeg,
                        field.widthDeg()));
            }
        }
        return says;
    }

    private Fact sunlit() {
        SunPath.Seen land = path.seen(true);
        if (land == null) {
            return skyline.isLevel() ? Fact.Word.BELOW_LEVEL_HORIZON_ALL_DAY : Fact.Word.BEHIND_SKYLINE_ALL_DAY;
        }
        SunAt highest = land.highest().sun();
        Fact overLand = new Fact.AboveBetween(horizon(), bearings(land), highest.time(), highest.apparentAltitudeDeg());
        if (treeTopDeg == null) {
            return overLand;
        }
        SunPath.Seen trees = path.seen(false);
        return new Fact.Next(overLand, trees == null ? new Fact.NeverAboveTrees(treeTopDeg)
                : new Fact.AboveTreesBetween(treeTopDeg, bearings(trees)));
    }

    private static Fact bearings(SunPath.Seen seen) {
        return new Fact.Bearings(seen.first().sun().azimuthDeg(), seen.last().sun().azimuthDeg());
    }
}
