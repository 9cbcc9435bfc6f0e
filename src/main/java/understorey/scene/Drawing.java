package understorey.scene;

import java.util.List;

/**
 * A drawing as plain marks, in the order in which they are laid down.
 *
 * @param title what it is
 * @param says  what it shows in sentences, for those who cannot see it
 */
public record Drawing(double width, double height, String title, String says, List<Mark> marks) {

    /** One stroke, surface or word; {@code style} names how it looks, never what it is worth. */
    public sealed interface Mark {
        String style();
    }

    /** A run of points, joined by straight lines. */
    public record Line(String style, List<Point> points) implements Mark {
    }

    /** A surface within a run of points. */
    public record Area(String style, List<Point> points) implements Mark {
    }

    /** Many strokes of one look laid down as one: each pair of points is a stroke. */
    public record Hatch(String style, List<Point> ends) implements Mark {
    }

    /** Rounded as a point is. */
    public record Box(String style, double x, double y, double width, double height) implements Mark {
        public Box {
            x = tenth(x);
            y = tenth(y);
            width = tenth(width);
            height = tenth(height);
        }
    }

    public record Dot(String style, Point at, double radius) implements Mark {
    }

    /** Many round spots of one look and one diameter, laid down as one. */
    public record Spots(String style, double diameter, List<Point> at) implements Mark {
    }

    /**
     * Many smooth runs of one look, laid down as one. A run starts at a point and goes on by a control point and an end,
     * again and again (quadratic curves).
     *
     * @param width of the stroke; 0 where the look decides
     */
    public record Curves(String style, double width, List<List<Point>> runs) implements Mark {
    }

    /** One look over the whole width from one height to another, in strengths that change evenly between the stops. */
    public record Wash(String style, double top, double bottom, List<Stop> stops) implements Mark {
    }

    /** Strength from 0 to 1 at a share of the way down. */
    public record Stop(double at, double strength) {
    }

    /** A round glow that fades to its edge. */
    public record Glow(String style, Point at, double radius) implements Mark {
    }

    /** Marks around the origin, 10 units wide, that {@link Stamps} of that name lay down. */
    public record Glyph(String name, List<Mark> marks) implements Mark {
        @Override
        public String style() {
            return name;
        }
    }

    /** A glyph laid down at many places, in their order, each so wide, all together of one strength from 0 to 1. */
    public record Stamps(String style, double width, double strength, List<Point> at) implements Mark {
    }

    /**
     * Marks that share a palette.
     *
     * @param own colour of the subject, {@code #rrggbb}
     * @param dim the same away from the light
     */
    public record Palette(String style, String own, String dim, List<Mark> marks) implements Mark {
    }

    /** Words, placed. */
    public sealed interface Text extends Mark {
        Point at();

        String text();
    }

    /** Words across; x and y are their anchor on the base line. */
    public record Label(String style, Anchor anchor, Point at, String text) implements Text {
    }

    /** Words that read upwards; x is their base line, y the upper end of their last letter. */
    public record Upright(String style, Point at, String text) implements Text {
    }

    public enum Anchor { START, MIDDLE, END }

    /** Rounded to a tenth of a pixel. */
    public record Point(double x, double y) {
        public Point {
            x = tenth(x);
            y = tenth(y);
        }
    }

    private static double tenth(double px) {
        return Math.round(px * 10) / 10.0;
    }
}
