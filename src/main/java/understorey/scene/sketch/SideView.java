package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.List;
import understorey.advice.Measure;
import understorey.scene.Drawing;
import understorey.scene.Drawing.Anchor;
import understorey.scene.Drawing.Area;
import understorey.scene.Drawing.Box;
import understorey.scene.Drawing.Dot;
import understorey.scene.Drawing.Hatch;
import understorey.scene.Drawing.Label;
import understorey.scene.Drawing.Line;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Fact;
import understorey.scene.Lettering;
import understorey.scene.Scene;
import understorey.scene.Signs;
import understorey.scene.Wording;

/**
 * A picture from the side, one scale for both axes: the lens over the ground with its axis and field, the plant that
 * it is framed for, and the stretch of ground that is sharp. What is sharp beyond one and a half times the distance
 * framed, or so, runs out of the drawing: two strokes break the scale before a limit that lies farther off, an arrow leads to the
 * horizon. Close up the ground is drawn level.
 */
public final class SideView {

    private static final double WIDTH = 340;
    private static final double FOOT_X = 118;
    private static final double RIGHT_X = 322;
    private static final double HIGHEST_PX = 58;
    /** For two lines of words beside the camera. */
    private static final double LEAST_PX = 44;
    private static final double BEYOND = 1.6;
    /** A sharp stretch narrower than this is told by its depth. */
    private static final double NARROW_PX = 14;
    private static final double BAR_PX = 5;
    private static final double BELOW_PX = 34;
    /** From the end of the ground to the break of its scale. */
    private static final double BREAK_PX = 24;

    private final Setup setup;
    private final Wording words;
    private final double heightM;
    private final double tilt;
    private final double rise;
    private final double plantM;
    private final double plantAtM;
    private final double nearM;
    private final double farM;
    private final double reachM;
    private final double scale;
    private final double groundToM;
    private final List<Mark> marks = new ArrayList<>();
    private double topY;
    private double levelY;

    private SideView(Setup setup, Wording words) {
        this.setup = setup;
        this.words = words;
        heightM = setup.fit().heightM();
        tilt = Math.toRadians(Math.max(-90, Math.min(90, setup.fit().tiltDeg())));
        rise = setup.close() ? 0 : Math.tan(Math.toRadians(setup.riseDeg()));
        plantM = (setup.lowM() + setup.highM()) / 2;
        plantAtM = groundM(setup.fit().distanceM());
        nearM = groundM(setup.sharpFromM());
        farM = groundM(setup.sharpToM());
        double least = Math.max(plantAtM, 0.4 * Math.max(heightM, plantM));
        reachM = Math.max(1.1 * least, Math.min(1.04 * farM, BEYOND * least));
        double highest = Math.max(Math.max(heightM, plantM), rise * plantAtM + plantM) + Math.max(0, -rise * reachM);
        scale = Math.min((RIGHT_X - FOOT_X) / reachM, HIGHEST_PX / Math.max(highest, rise * reachM));
        groundToM = rise == 0 ? (RIGHT_X - FOOT_X) / scale : Math.min(reachM, (RIGHT_X - FOOT_X) / scale);
    }

    public static Scene of(Setup setup) {
        return words -> new SideView(setup, words).drawing();
    }

    /** Ahead along the level to the ground that lies so deep along the lens axis; on the axis where it looks steeply down. */
    private double groundM(double depthM) {
        double forward = Math.cos(tilt) - rise * Math.sin(tilt);
        return setup.close() || forward < 0.3 ? depthM * Math.cos(tilt)
                : Math.max(0, (depthM - heightM * Math.sin(tilt)) / forward);
    }

    private double x(double aheadM) {
        return Math.min(RIGHT_X, FOOT_X + scale * aheadM);
    }

    private double y(double aheadM, double aboveM) {
        return levelY - scale * (rise * aheadM + aboveM);
    }

    private Drawing drawing() {
        Signs signs = signs();
        topY = signs.bottom();
        double up = scale * Math.max(Math.max(heightM, rise * plantAtM + plantM), rise * reachM);
        levelY = topY + 12 + Math.max(up, LEAST_PX);
        double height = levelY + scale * Math.max(0, -rise * reachM) + BELOW_PX;
        double farthest = (RIGHT_X - FOOT_X) / scale;
        hang(signs);
        marks.add(new Line("ground-line", List.of(new Point(8, levelY),
                new Point(FOOT_X, levelY), new Point(FOOT_X + scale * groundToM, y(groundToM, 0)))));
        field(farthest, height);
        sharp();
        plant();
        camera();
        return new Drawing(WIDTH, Math.ceil(height), words.of(new Fact.SideViewOf(setup.fit().intent().shot().name())),
                words.of(says()), List.copyOf(marks));
    }

    /** Each line of the signs down to the ground. */
    private void hang(Signs signs) {
        for (Mark mark : signs.marks(levelY)) {
            if (mark instanceof Hatch lines) {
                List<Point> ends = new ArrayList<>();
                for (int i = 1; i < lines.ends().size(); i += 2) {
                    Point top = lines.ends().get(i - 1);
                    ends.add(top);
                    ends.add(new Point(top.x(), y((top.x() - FOOT_X) / scale, 0)));
                }
                marks.add(new Hatch(lines.style(), ends));
            } else {
                marks.add(mark);
            }
        }
    }

    private boolean narrow() {
        return (farM - nearM) * scale < NARROW_PX
                || words.of(new Fact.FocusLimit(setup.sharpFromM())).equals(words.of(new Fact.FocusLimit(setup.sharpToM())));
    }

    private Signs signs() {
        Signs signs = new Signs(8, RIGHT_X + 8);
        if (narrow()) {
            signs.add(x(plantAtM), words.of(new Fact.SubjectAt(setup.fit().distanceM())));
            signs.add(x(plantAtM), words.of(new Fact.SharpOver(setup.sharpToM() - setup.sharpFromM())));
            return signs;
        }
        signs.add(x(nearM), words.of(new Fact.SharpFrom(setup.sharpFromM())));
        signs.add(x(plantAtM), words.of(new Fact.SubjectAt(setup.fit().distanceM())));
        signs.add(x(Math.min(farM, groundToM)), words.of(new Fact.SharpTo(setup.sharpToM())));
        return signs;
    }

    /** The lens axis and the edges of the field, each as far as it meets the ground or the drawing ends. */
    private void field(double farthestM, double height) {
        double half = Math.toRadians(setup.fit().view().verticalDeg() / 2);
        List<Point> edges = new ArrayList<>();
        ray(tilt - half, farthestM, height, edges);
        ray(tilt + half, farthestM, height, edges);
        marks.add(new Hatch("field-edge", edges));
        List<Point> axis = new ArrayList<>();
        ray(tilt, farthestM, height, axis);
        marks.add(new Hatch("lens-axis", axis));
    }

    private void ray(double down, double farthestM, double height, List<Point> ends) {
        double fallPerM = Math.sin(down) + rise * Math.cos(down);
        double longest = fallPerM > 1e-6 ? heightM / fallPerM : Double.POSITIVE_INFINITY;
        double wide = Math.cos(down) > 1e-6 ? farthestM / Math.cos(down) : Double.POSITIVE_INFINITY;
        double lengthM = Math.min(Math.min(longest, wide), 4 * farthestM);
        double lensY = y(0, heightM);
        double endX = FOOT_X + scale * lengthM * Math.cos(down);
        double endY = lensY + scale * lengthM * Math.sin(down);
        double share = 1;
        if (endY < topY) {
            share = (lensY - topY) / (lensY - endY);
        } else if (endY > height) {
            share = (height - lensY) / (endY - lensY);
        }
        if (endX < 0) {
            share = Math.min(share, FOOT_X / (FOOT_X - endX));
        }
        ends.add(new Point(FOOT_X, lensY));
        ends.add(new Point(FOOT_X + share * (endX - FOOT_X), lensY + share * (endY - lensY)));
    }

    private void sharp() {
        double to = Math.min(farM, groundToM);
        double from = Math.min(nearM, to);
        double left = x(from);
        double right = Math.max(left + 2, x(to));
        double leftY = y(from, 0);
        double rightY = y(to, 0);
        marks.add(new Area("sharp-ground", List.of(new Point(left, leftY), new Point(left, leftY + BAR_PX),
                new Point(right, rightY + BAR_PX), new Point(right, rightY))));
        if (farM > groundToM && setup.sharpToM() > Measure.FAR_M) {
            marks.add(new Area("sharp-ground", List.of(new Point(right - 1, rightY - 4), new Point(right + 11, rightY + BAR_PX / 2),
                    new Point(right - 1, rightY + BAR_PX + 4))));
        } else if (farM > groundToM) {
            scaleBreak(right - BREAK_PX, y((right - BREAK_PX - FOOT_X) / scale, 0) + BAR_PX / 2);
        }
    }

    /** The ground and its sharp stretch are cut, and each end has a stroke. */
    private void scaleBreak(double x, double y) {
        List<Point> cut = List.of(new Point(x - 1, y + 8), new Point(x + 3, y - 8), new Point(x + 9, y - 8), new Point(x + 5, y + 8));
        marks.add(new Area("scale-break", cut));
        marks.add(new Hatch("ground-line", List.of(cut.get(0), cut.get(1), cut.get(3), cut.get(2))));
    }

    private void plant() {
        double x = x(plantAtM);
        double headY = y(plantAtM, plantM);
        marks.add(new Line("plant", List.of(new Point(x, y(plantAtM, 0)), new Point(x, headY))));
        marks.add(new Dot("plant-head", new Point(x, headY), Math.max(3.5, Math.min(40, setup.headM() / 2 * scale))));
        String high = words.of(new Fact.PlantHeight(Lettering.shortened(setup.subject().name(), 210), plantM));
        double half = Lettering.width(high) / 2;
        double at = Math.max(half + 4, Math.min(WIDTH - half - 4, x));
        marks.add(new Label("words", Anchor.MIDDLE, new Point(at, Math.max(levelY, y(plantAtM, 0)) + 26), high));
    }

    private void camera() {
        double lensY = y(0, heightM);
        marks.add(new Hatch("camera-height", List.of(new Point(FOOT_X, levelY), new Point(FOOT_X, lensY))));
        marks.add(new Box("camera", FOOT_X - 14, lensY - 7, 14, 14));
        double high = Math.min(levelY - 7, Math.max(lensY + 32, (lensY + levelY) / 2 + 5));
        double tilted = Math.min(high - 20, lensY + 5);
        marks.add(new Label("words", Anchor.END, new Point(FOOT_X - 20, high), words.of(new Fact.LensHeight(heightM))));
        marks.add(new Label("words", Anchor.END, new Point(FOOT_X - 20, tilted), words.of(tilted())));
    }

    private Fact tilted() {
        double degrees = Math.toDegrees(tilt);
        return Math.round(Math.abs(degrees)) == 0 ? Fact.Word.LEVEL
                : tilt > 0 ? new Fact.TiltedDown(degrees) : new Fact.TiltedUp(-degrees);
    }

    private Fact says() {
        double depthM = setup.sharpToM() - setup.sharpFromM();
        return new Fact.FromTheSide(heightM, tilted(), setup.fit().distanceM(), new Fact.PlantHeight(setup.subject().name(), plantM),
                depthM < setup.fit().focusM() / 10 ? new Fact.Distance(depthM)
                        : new Fact.SharpRange(setup.sharpFromM(), setup.sharpToM()));
    }
}
