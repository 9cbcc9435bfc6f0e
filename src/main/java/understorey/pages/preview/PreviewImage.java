package understorey.pages.preview;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Color;
import java.awt.Component;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Dimension2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;

/**
 * A preview as PNG, 1200 × 630 px as the Open Graph protocol's readers expect (common practice, no source): the sketch above, the
 * title and one line below. The letters are those of the machine, so that the bytes differ between machines.
 */
public final class PreviewImage {

    private static final int WIDTH = 1200;
    private static final int HEIGHT = 630;
    private static final int SKETCH = 472;
    private static final int MARGIN = 48;
    private static final int TITLE = 60;
    private static final int LEAST_TITLE = 36;
    private static final int LINE = 32;
    /** Share of what is cut off a sketch that is cut at its top: the horizon is above its middle. */
    private static final double TOP = 0.3;

    private static final Pattern STAMPS = Pattern.compile("(?s)<g class=\"stamps\" style=\"marker:(url\\(#[\\w-]+\\))\">(.*?)</g>");

    /** What the rasteriser makes of a rule that it does not know is of no use on a terminal. */
    private static final Logger RASTERISER = Logger.getLogger("com.github.weisj.jsvg");

    private final FlatStyle style;

    /** Previews in the colours and looks of a style sheet. */
    public PreviewImage(String css) {
        style = new FlatStyle(css);
        RASTERISER.setLevel(Level.OFF);
    }

    /**
     * The image.
     *
     * @param svg a sketch as inline element; empty for none
     */
    public byte[] png(String svg, String title, String line) {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D canvas = image.createGraphics();
        canvas.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        canvas.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        canvas.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        canvas.setColor(colour("--paper"));
        canvas.fillRect(0, 0, WIDTH, HEIGHT);
        SVGDocument sketch = svg.isEmpty() ? null : read(svg);
        if (sketch != null) {
            draw(sketch, canvas);
        }
        try {
            words(title, line, canvas);
        } catch (RuntimeException | LinkageError | InternalError noFonts) {
            // A machine without any font draws no letters: the page says the title beside the image anyway.
            canvas.setColor(colour("--paper"));
            canvas.fillRect(0, SKETCH, WIDTH, HEIGHT - SKETCH);
        }
        canvas.dispose();
        return bytes(image);
    }

    /** The size on a page, and the rules for it, do not hold here; the rasteriser hands no marker on from a group to its paths. */
    private @Nullable SVGDocument read(String svg) {
        String marked = STAMPS.matcher(svg).replaceAll(stamps -> Matcher.quoteReplacement(stamps.group(2).replace("<path ",
                "<path fill=\"none\" stroke=\"none\" marker-start=\"URL\" marker-mid=\"URL\" marker-end=\"URL\" ".replace("URL", stamps.group(1)))));
        String whole = marked.replaceFirst(" class=\"sketch\" width=\"\\d+\" height=\"\\d+\"", "")
                .replaceFirst("<svg ", "<svg xmlns=\"http://www.w3.org/2000/svg\" ")
                .replaceFirst(">", "><style>" + style.rules(svg).replace("\\", "\\\\").replace("$", "\\$") + "</style>");
        return new SVGLoader().load(new ByteArrayInputStream(whole.getBytes(StandardCharsets.UTF_8)), null, LoaderContext.createDefault());
    }

    /** Fills the width and the height above the words; what is too much is cut off. */
    private static void draw(SVGDocument sketch, Graphics2D canvas) {
        Dimension2D size = sketch.size();
        double scale = Math.max(WIDTH / size.getWidth(), SKETCH / size.getHeight());
        double width = size.getWidth() * scale;
        double height = size.getHeight() * scale;
        Graphics2D part = (Graphics2D) canvas.create(0, 0, WIDTH, SKETCH);
        sketch.render((Component) null, part, new ViewBox((float) (WIDTH - width) / 2, (float) ((SKETCH - height) * TOP),
                (float) width, (float) height));
        part.dispose();
    }

    private void words(String title, String line, Graphics2D canvas) {
        int size = TITLE;
        canvas.setFont(new Font(Font.SERIF, Font.PLAIN, size));
        while (size > LEAST_TITLE && canvas.getFontMetrics().stringWidth(title) > WIDTH - 2 * MARGIN) {
            size -= 2;
            canvas.setFont(new Font(Font.SERIF, Font.PLAIN, size));
        }
        canvas.setColor(colour("--ink"));
        canvas.drawString(fitted(title, canvas), MARGIN, SKETCH + 78);
        canvas.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, LINE));
        canvas.setColor(colour("--leaf"));
        canvas.drawString(fitted(line, canvas), MARGIN, SKETCH + 128);
    }

    private static String fitted(String text, Graphics2D canvas) {
        String fitted = text;
        while (canvas.getFontMetrics().stringWidth(fitted) > WIDTH - 2 * MARGIN) {
            fitted = fitted.substring(0, fitted.offsetByCodePoints(fitted.length(), fitted.endsWith("…") ? -2 : -1)).stripTrailing() + "…";
        }
        return fitted;
    }

    /** Black where the style sheet is a user's own and does not name the colour. */
    private Color colour(String variable) {
        String value = style.value(variable);
        return value.matches("#[0-9a-f]{6}") ? Color.decode(value) : variable.equals("--paper") ? Color.WHITE : Color.BLACK;
    }

    private static byte[] bytes(BufferedImage image) {
        try (ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 18)) {
            ImageIO.setUseCache(false);
            ImageIO.write(image, "png", out);
            return out.toByteArray();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
