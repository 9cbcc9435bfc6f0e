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

    /** One outline round the origin, laid down at many places, in their order. */
    public record Stamps(String style, List<Point> outline, List<Point> at) implements Mark {
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
