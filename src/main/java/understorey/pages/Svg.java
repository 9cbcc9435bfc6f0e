package understorey.pages;

import java.util.List;
import java.util.Locale;
import understorey.scene.Drawing;

/** A drawing as inline SVG 1.1: marks in order, looks by class, and the same in words for whoever does not see it. */
final class Svg {

    private static final String PLAIN = "words";

    private Svg() {
    }

    /**
     * The element.
     *
     * @param id unique on its page
     */
    static String of(Drawing drawing, String id) {
        StringBuilder svg = new StringBuilder(4096);
        svg.append("<svg viewBox=\"0 0 ").append(px(drawing.width())).append(' ').append(px(drawing.height()))
                .append("\" role=\"img\" aria-labelledby=\"").append(id).append("-t ").append(id).append("-d\">\n");
        svg.append("<title id=\"").append(id).append("-t\">").append(escape(drawing.title())).append("</title>\n");
        svg.append("<desc id=\"").append(id).append("-d\">").append(escape(drawing.says())).append("</desc>\n");
        for (Drawing.Mark mark : drawing.marks()) {
            mark(mark, svg);
        }
        return svg.append("</svg>").toString();
    }

    private static void mark(Drawing.Mark mark, StringBuilder svg) {
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
            svg.append('M').append(px(from.x())).append(' ').append(px(from.y()));
            if (from.y() == to.y()) {
                svg.append('H').append(px(to.x()));
            } else if (from.x() == to.x()) {
                svg.append('V').append(px(to.y()));
            } else {
                svg.append('L').append(px(to.x())).append(' ').append(px(to.y()));
            }
        }
    }

    private static void path(List<Drawing.Point> points, StringBuilder svg) {
        char command = 'M';
        for (Drawing.Point point : points) {
            svg.append(command).append(px(point.x())).append(' ').append(px(point.y()));
            command = 'L';
        }
    }

    private static String px(double value) {
        return Words.plain(Words.number(value, 1)).replace('−', '-');
    }

    static String escape(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }
}
