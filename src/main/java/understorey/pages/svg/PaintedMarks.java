package understorey.pages.svg;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import understorey.scene.Drawing;
import understorey.scene.Drawing.Point;

/** The marks that paint a sketch, as SVG: gradients and markers carry ids that begin with that of the drawing. */
final class PaintedMarks {

    private final double width;
    private final String id;
    private final Glyphs page;
    private final StringBuilder svg;
    private final Map<String, String> glyphs = new HashMap<>();
    private Drawing.@Nullable Palette palette;
    private int defined;
    private String stamped = "";

    PaintedMarks(double width, String id, Glyphs page, StringBuilder svg) {
        this.width = width;
        this.id = id;
        this.page = page;
        this.svg = svg;
    }

    void mark(Drawing.Mark mark) {
        if (!(mark instanceof Drawing.Stamps)) {
            end();
        }
        if (mark instanceof Drawing.Palette painted) {
            palette = painted;
            svg.append("<g class=\"").append(painted.style()).append("\" style=\"--own:").append(painted.own()).append(";--dim:")
                    .append(painted.dim()).append("\">\n");
            painted.marks().forEach(this::mark);
            end();
            palette = null;
            svg.append("</g>\n");
        } else if (mark instanceof Drawing.Glyph glyph) {
            glyph(glyph);
        } else if (mark instanceof Drawing.Stamps stamps) {
            stamps(stamps);
        } else if (mark instanceof Drawing.Spots spots) {
            spots(spots);
        } else if (mark instanceof Drawing.Curves curves) {
            stroke(curves.style(), curves.width());
            svg.append(" d=\"");
            runs(curves.runs());
            svg.append("\"/>\n");
        } else if (mark instanceof Drawing.Wash wash) {
            wash(wash);
        } else if (mark instanceof Drawing.Glow glow) {
            glow(glow);
        } else {
            Svg.mark(mark, svg);
        }
    }

    private void stroke(String style, double strokeWidth) {
        svg.append("<path class=\"").append(style).append('"');
        if (strokeWidth > 0) {
            svg.append(" stroke-width=\"").append(Svg.px(strokeWidth)).append('"');
        }
    }

    /** Those of one glyph that follow each other are a group. */
    private void stamps(Drawing.Stamps stamps) {
        if (!stamps.style().equals(stamped)) {
            end();
            stamped = stamps.style();
            svg.append("<g class=\"stamps\" style=\"marker:url(#").append(glyphs.get(stamped)).append(")\">\n");
        }
        svg.append("<path stroke-width=\"").append(Svg.px(stamps.width()));
        if (stamps.strength() < 1) {
            svg.append("\" opacity=\"").append(hundredths(stamps.strength()));
        }
        svg.append("\" d=\"");
        Svg.steps(stamps.at(), svg);
        svg.append("\"/>\n");
    }

    /** After the last mark. */
    void end() {
        if (!stamped.isEmpty()) {
            svg.append("</g>\n");
            stamped = "";
        }
    }

    private void spots(Drawing.Spots spots) {
        stroke(spots.style(), spots.diameter());
        svg.append(" d=\"");
        Svg.steps('m', "h0", spots.at(), svg);
        svg.append("\"/>\n");
    }

    /** A marker one stroke wide, so that one serves all sizes; nothing where the page has it. */
    private void glyph(Drawing.Glyph glyph) {
        String own = id + '-' + glyph.name();
        String there = page.defined(palette, glyph, own);
        glyphs.put(glyph.name(), there == null ? own : there);
        if (there != null) {
            return;
        }
        svg.append("<marker id=\"").append(own)
                .append("\" viewBox=\"-5 -5 10 10\" markerWidth=\"1\" markerHeight=\"1\" overflow=\"visible\">\n");
        glyph.marks().forEach(this::mark);
        end();
        svg.append("</marker>\n");
    }

    private void wash(Drawing.Wash wash) {
        String name = id + "-g" + ++defined;
        svg.append("<linearGradient id=\"").append(name).append("\" x2=\"0\" y2=\"1\">");
        wash.stops().forEach(stop -> stop(stop.at(), wash.style(), stop.strength()));
        svg.append("</linearGradient>\n<rect fill=\"url(#").append(name).append(")\" y=\"").append(Svg.px(wash.top()))
                .append("\" width=\"").append(Svg.px(width)).append("\" height=\"").append(Svg.px(wash.bottom() - wash.top()))
                .append("\"/>\n");
    }

    private void glow(Drawing.Glow glow) {
        String name = id + "-g" + ++defined;
        svg.append("<radialGradient id=\"").append(name).append("\">");
        stop(0, glow.style(), 1);
        stop(1, glow.style(), 0);
        svg.append("</radialGradient>\n<circle fill=\"url(#").append(name).append(")\" cx=\"").append(Svg.px(glow.at().x()))
                .append("\" cy=\"").append(Svg.px(glow.at().y())).append("\" r=\"").append(Svg.px(glow.radius())).append("\"/>\n");
    }

    private void stop(double at, String style, double strength) {
        svg.append("<stop offset=\"").append(hundredths(at)).append("\" class=\"").append(style).append("\" stop-opacity=\"")
                .append(hundredths(strength)).append("\"/>");
    }

    /** Steps from the point before; a control point and the end after it go from the same one. */
    private void runs(List<List<Point>> runs) {
        long x = 0;
        long y = 0;
        for (List<Point> run : runs) {
            for (int i = 0; i < run.size(); i++) {
                long right = Math.round(run.get(i).x() * 10) - x;
                long down = Math.round(run.get(i).y() * 10) - y;
                if (i < 2) {
                    svg.append(i == 1 ? 'q' : svg.charAt(svg.length() - 1) == '"' ? 'M' : 'm');
                } else if (right >= 0) {
                    svg.append(' ');
                }
                Svg.step(right, down, svg);
                if (i % 2 == 0) {
                    x += right;
                    y += down;
                }
            }
        }
    }

    private static String hundredths(double share) {
        long hundredths = Math.round(share * 100);
        return hundredths >= 100 ? "1" : hundredths <= 0 ? "0" : hundredths < 10 ? ".0" + hundredths
                : hundredths % 10 == 0 ? "." + hundredths / 10 : "." + hundredths;
    }
}
