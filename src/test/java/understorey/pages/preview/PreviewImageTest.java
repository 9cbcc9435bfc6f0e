package understorey.pages.preview;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class PreviewImageTest {

    private static final String CSS = ":root { --paper: #fbf9f3; --ink: #1c1e19; --leaf: #3c6627; }\n"
            + "@media (prefers-color-scheme: dark) { :root { --paper: #000000; --leaf: #000000; } }\n"
            + "/* a .b { fill: red } */ svg .ground:hover { fill: red } svg .ground, .other { fill: var(--leaf); } .k * { fill: #ff0000; }";
    private static final String SKETCH = "<svg viewBox=\"0 0 300 200\" width=\"300\" height=\"200\" class=\"k\">"
            + "<rect class=\"ground\" width=\"150\" height=\"200\"/><rect x=\"150\" width=\"150\" height=\"200\"/></svg>";

    private static BufferedImage image(String sketch, String title) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(new PreviewImage(CSS).png(sketch, title, "Saturday 8 May 2027")));
    }

    private static String colour(BufferedImage image, int x, int y) {
        return String.format("#%06x", image.getRGB(x, y) & 0xffffff);
    }

    @Test
    void showsTheSketchInTheLooksOfTheStyleSheet() throws IOException {
        BufferedImage image = image(SKETCH, "First light");
        assertEquals("1200 630", image.getWidth() + " " + image.getHeight());
        assertEquals("#3c6627", colour(image, 300, 200));
        assertEquals("#ff0000", colour(image, 900, 200), "a rule for everything within the sketch");
        assertEquals("#fbf9f3", colour(image, 1190, 620));
    }

    @Test
    void showsTheTitleHoweverLong() throws IOException {
        assertTrue(inked(image("", "First light")) > 300);
        BufferedImage image = image("", "A very long title about wild garlic ".repeat(9));
        assertTrue(inked(image) > 300);
        assertTrue(IntStream.range(472, 630).allMatch(y -> colour(image, 1165, y).equals("#fbf9f3")), "within the margin");
    }

    /** As pages have it: with a size, a palette, and the subject’s own colour behind two variables. */
    @Test
    void paintsASketchByItsPaletteOverTheWholeWidth() throws IOException {
        String css = CSS + " svg.sketch { width: auto; } svg .airy { --petal: var(--own); --ground: #111111; }"
                + " svg .deep { --petal: var(--own); --ground: #304622; } svg .petal { fill: var(--petal); } svg .floor { fill: var(--ground); }";
        String sketch = "<svg viewBox=\"0 0 480 320\" id=\"sketch\" class=\"sketch\" width=\"480\" height=\"320\" role=\"img\">"
                + "<g class=\"deep\" style=\"--own:#a6a1d3;--dim:#8f8ab5\"><rect class=\"petal\" width=\"240\" height=\"320\"/>"
                + "<rect class=\"floor\" x=\"240\" width=\"240\" height=\"320\"/>"
                + "<marker id=\"sketch-head\" viewBox=\"-5 -5 10 10\" markerWidth=\"1\" markerHeight=\"1\" overflow=\"visible\"><rect class=\"petal\" x=\"-5\" y=\"-5\" width=\"10\" height=\"10\"/></marker>"
                + "<g class=\"stamps\" style=\"marker:url(#sketch-head)\">\n<path stroke-width=\"20\" d=\"M360 100l40 0\"/>\n</g></g></svg>";
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(new PreviewImage(css).png(sketch, "Bluebells", "")));
        assertEquals("#a6a1d3", colour(image, 3, 3));
        assertEquals("#304622", colour(image, 1196, 468));
        assertEquals("#a6a1d3", colour(image, 900, 250 - 98), "a head that is stamped, where the top is cut off");
    }

    @Test
    void isTheSameTwice() {
        assertArrayEquals(new PreviewImage(CSS).png(SKETCH, "One", "two"), new PreviewImage(CSS).png(SKETCH, "One", "two"));
    }

    private static long inked(BufferedImage image) {
        return IntStream.range(0, 1200 * 158).filter(i -> colour(image, i % 1200, 472 + i / 1200).equals("#1c1e19")).count();
    }
}
