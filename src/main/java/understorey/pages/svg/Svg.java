package understorey.pages.svg;

import static understorey.pages.words.Xml.escape;

import java.util.List;
import java.util.Locale;
import understorey.scene.Drawing;

/** A drawing as inline SVG 1.1: marks in order, looks by class, and the same in words for those who cannot see it. */
public final class Svg {

    private static final String PLAIN = "words";

    private Svg() {
    }

    /**
     * The element.
     *
     * @param id unique on its page
     */
    public static String of(Drawing drawing, String id) {
        StringBuilder svg = new StringBuilder(4096);
        head(drawing, id, "", svg);
        marks(drawing, id, new Glyphs(), svg);
        return svg.append("</svg>").toString();
    }

    /** The element of a sketch, with its id, so that the page can show it {@link #again}; glyphs that the page has are left out. */
    public static String shared(Drawing drawing, String id, Glyphs page) {
        StringBuilder svg = new StringBuilder(16_384);
        head(drawing, id, " id=\"" + id + '"' + size(drawing), svg);
        marks(drawing, id, page, svg);
        return svg.append("</svg>").toString();
    }

    /** What {@link #shared} drew under that id on the same page, once more. */
    public static String again(Drawing drawing, String id) {
        StringBuilder svg = new StringBuilder(256);
        svg.append("<svg viewBox=\"0 0 ").append(px(drawing.width())).append(' ').append(px(drawing.height()))
                .append('"').append(size(drawing)).append(" aria-hidden=\"true\"><use href=\"#").append(id)
                .append("\"/></svg>");
        return svg.toString();
    }

    private static String size(Drawing drawing) {
        return " class=\"sketch\" width=\"" + px(drawing.width()) + "\" height=\"" + px(drawing.height()) + '"';
    }

    private static void head(Drawing drawing, String id, String more, StringBuilder svg) {
        svg.append("<svg viewBox=\"0 0 ").append(px(drawing.width())).append(' ').append(px(drawing.height()))
                .append('"').append(more).append(" role=\"img\" aria-labelledby=\"").append(id).append("-t ").append(id)
                .append("-d\">\n");
        svg.append("<title id=\"").append(id).append("-t\">").append(escape(drawing.title())).append("</title>\n");
        svg.append("<desc id=\"").append(id).append("-d\">").append(escape(drawing.says())).append("</desc>\n");
    }

    private static void marks(Drawing drawing, String id, Glyphs page, StringBuilder svg) {
        PaintedMarks painted = new PaintedMarks(drawing.width(), id, page, svg);
        drawing.marks().forEach(painted::mark);
        painted.end();
    }

    static void mark(Drawing.Mark mark, StringBuilder svg) {
        if (mark instanceof Drawing.Line line) {
            svg.append("<path class=\"").append(line.style()).append("\" d=\"");
            path(line.points(), svg);
            svg.append("\"/>\n");
        } else if (mark instanceof Drawing.Area area) {
            svg.append("<path class=\"").append(area.style()).append("\" d=\"");
            path(area.points(), svg);
            svg.append("Z\"/>\n");
        } else if (mark instanceof Drawing.Hatch hatch) {
            svg.append("<path class=\"").append(hatch.style()).append("\" d=\"");
            strokes(hatch.ends(), svg);
            svg.append("\"/>\n");
        } else if (mark instanceof Drawing.Box box) {
            svg.append("<rect class=\"").append(box.style()).append("\" x=\"").append(px(box.x())).append("\" y=\"")
                    .append(px(box.y())).append("\" width=\"").append(px(box.width())).append("\" height=\"")
                    .append(px(box.height())).append("\"/>\n");
        } else if (mark instanceof Drawing.Dot dot) {
            svg.append("<circle class=\"").append(dot.style()).append("\" cx=\"").append(px(dot.at().x()))
                    .append("\" cy=\"").append(px(dot.at().y())).append("\" r=\"").append(px(dot.radius()))
                    .append("\"/>\n");
        } else if (mark instanceof Drawing.Label label) {
            text(label.style(), svg).append(" x=\"").append(px(label.at().x()))
                    .append("\" y=\"").append(px(label.at().y()));
            text(label.anchor(), label.text(), svg.append('"'));
        } else if (mark instanceof Drawing.Upright label) {
            text(label.style(), svg).append(" transform=\"translate(").append(px(label.at().x())).append(' ')
                    .append(px(label.at().y())).append(")rotate(-90)\"");
            text(Drawing.Anchor.END, label.text(), svg);
        }
    }

    /** The plain look of words has no name in the style. */
    private static StringBuilder text(String style, StringBuilder svg) {
        svg.append("<text");
        return style.equals(PLAIN) ? svg : svg.append(" class=\"").append(style).append('"');
    }

    /** Text starts at its point unless something else is said. */
    private static void text(Drawing.Anchor anchor, String text, StringBuilder svg) {
        if (anchor != Drawing.Anchor.START) {
            svg.append(" text-anchor=\"").append(anchor.name().toLowerCase(Locale.ROOT)).append('"');
        }
        svg.append('>').append(escape(text)).append("</text>\n");
    }

    private static void strokes(List<Drawing.Point> ends, StringBuilder svg) {
        for (int i = 1; i < ends.size(); i += 2) {
            Drawing.Point from = ends.get(i - 1);
            Drawing.Point to = ends.get(i);
            px(from.y(), px(from.x(), svg.append('M')).append(' '));
            if (from.y() == to.y()) {
                px(to.x(), svg.append('H'));
            } else if (from.x() == to.x()) {
                px(to.y(), svg.append('V'));
            } else {
                svg.append('l');
                step(from, to, svg);
            }
        }
    }

    private static void path(List<Drawing.Point> points, StringBuilder svg) {
        char command = 'M';
        for (Drawing.Point point : points) {
            px(point.y(), px(point.x(), svg.append(command)).append(' '));
            command = 'L';
        }
    }

    /** From place to place, the command written once. */
    static void steps(List<Drawing.Point> at, StringBuilder svg) {
        long x = 0;
        long y = 0;
        for (int i = 0; i < at.size(); i++) {
            long right = Math.round(at.get(i).x() * 10) - x;
            svg.append(i == 0 ? "M" : i == 1 ? "l" : right < 0 ? "" : " ");
            long down = Math.round(at.get(i).y() * 10) - y;
            step(right, down, svg);
            x += right;
            y += down;
        }
    }

    /** From place to place by steps, each a command and what is done there. */
    static void steps(char command, String there, List<Drawing.Point> at, StringBuilder svg) {
        long x = 0;
        long y = 0;
        for (Drawing.Point point : at) {
            long toX = Math.round(point.x() * 10);
            long toY = Math.round(point.y() * 10);
            svg.append(svg.charAt(svg.length() - 1) == '"' ? 'M' : command);
            step(toX - x, toY - y, svg);
            svg.append(there);
            x = toX;
            y = toY;
        }
    }

    private static void step(Drawing.Point from, Drawing.Point to, StringBuilder svg) {
        step(Math.round(to.x() * 10) - Math.round(from.x() * 10), Math.round(to.y() * 10) - Math.round(from.y() * 10), svg);
    }

    static void step(long right, long down, StringBuilder svg) {
        tenths(right, svg);
        if (down >= 0) {
            svg.append(' ');
        }
        tenths(down, svg);
    }

    private static void tenths(long tenths, StringBuilder svg) {
        if (tenths < 0) {
            svg.append('-');
        }
        long size = Math.abs(tenths);
        if (size >= 10 || size == 0) {
            svg.append(size / 10);
        }
        if (size % 10 != 0) {
            svg.append('.').append((char) ('0' + size % 10));
        }
    }

    static String px(double value) {
        return px(value, new StringBuilder(7)).toString();
    }

    private static StringBuilder px(double value, StringBuilder svg) {
        tenths(Math.round(value * 10), svg);
        return svg;
    }
}
