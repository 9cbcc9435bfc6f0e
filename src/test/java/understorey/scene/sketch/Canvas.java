package understorey.scene.sketch;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.LinearGradientPaint;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import understorey.scene.Drawing;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;

/**
 * A sketch as its petals alone, white on black, with the graphics of the JDK: what is no petal is left out, so that the mean of
 * a part is the share that petals cover there.
 */
final class Canvas {

    private static final int SCALE = 2;

    private final BufferedImage image;
    private final Graphics2D graphics;
    private final Map<String, Drawing.Glyph> glyphs = new HashMap<>();
    private final double width;

    private Canvas(Drawing drawing) {
        width = drawing.width();
        image = new BufferedImage((int) (SCALE * drawing.width()), (int) (SCALE * drawing.height()), BufferedImage.TYPE_BYTE_GRAY);
        graphics = image.createGraphics();
        graphics.scale(SCALE, SCALE);
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    static Canvas of(Drawing drawing) {
        Canvas canvas = new Canvas(drawing);
        drawing.marks().forEach(canvas::paint);
        return canvas;
    }

    private void paint(Mark mark) {
        if (mark instanceof Drawing.Palette palette) {
            palette.marks().forEach(this::paint);
        } else if (mark instanceof Drawing.Glyph glyph) {
            glyphs.put(glyph.name(), glyph);
        } else if (mark instanceof Drawing.Stamps stamps) {
            if (stamps.strength() < 1) {
                spots(stamps.width(), stamps.strength(), stamps.at());
            } else {
                stamps.at().forEach(at -> stamp(stamps, at));
            }
        } else if (mark instanceof Drawing.Wash wash && mark.style().equals("petal-wash")) {
            wash(wash);
        } else if (mark instanceof Drawing.Spots spots && mark.style().startsWith("petal")) {
            spots(spots.diameter(), 1, spots.at());
        } else if (mark instanceof Drawing.Curves curves && mark.style().startsWith("petal")) {
            graphics.setPaint(Color.WHITE);
            curves.runs().forEach(run -> graphics.fill(outline(run)));
        }
    }

    /** Faint stamps are dots. */
    private void spots(double diameter, double strength, List<Point> places) {
        graphics.setPaint(new Color(1f, 1f, 1f, (float) strength));
        Path2D path = new Path2D.Double();
        places.forEach(at -> path.append(new Line2D.Double(at.x(), at.y(), at.x() + 0.001, at.y()), false));
        graphics.fill(new BasicStroke((float) diameter, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND).createStrokedShape(path));
    }

    private void stamp(Drawing.Stamps stamps, Point at) {
        AffineTransform before = graphics.getTransform();
        graphics.translate(at.x(), at.y());
        graphics.scale(stamps.width() / 10, stamps.width() / 10);
        glyphs.get(stamps.style()).marks().forEach(this::paint);
        graphics.setTransform(before);
    }

    private void wash(Drawing.Wash wash) {
        float[] at = new float[wash.stops().size()];
        Color[] colours = new Color[at.length];
        for (int i = 0; i < at.length; i++) {
            at[i] = Math.max(i == 0 ? 0 : Math.nextUp(at[i - 1]), (float) wash.stops().get(i).at());
            colours[i] = new Color(1f, 1f, 1f, (float) wash.stops().get(i).strength());
        }
        graphics.setPaint(new LinearGradientPaint(0, (float) wash.top(), 0, (float) wash.bottom(), at, colours));
        graphics.fill(new Rectangle2D.Double(0, wash.top(), width, wash.bottom() - wash.top()));
    }

    private static Shape outline(List<Point> run) {
        Path2D path = new Path2D.Double();
        path.moveTo(run.get(0).x(), run.get(0).y());
        for (int i = 2; i < run.size(); i += 2) {
            path.quadTo(run.get(i - 1).x(), run.get(i - 1).y(), run.get(i).x(), run.get(i).y());
        }
        return path;
    }

    /** Mean of the rows from one to another, 0 to 1. */
    double mean(double from, double to) {
        double sum = 0;
        int seen = 0;
        for (int y = (int) Math.max(0, from * SCALE); y < Math.min(image.getHeight(), to * SCALE); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                sum += image.getRaster().getSample(x, y, 0) / 255.0;
                seen++;
            }
        }
        return sum / seen;
    }
}
