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

    @Test
    void isTheSameTwice() {
        assertArrayEquals(new PreviewImage(CSS).png(SKETCH, "One", "two"), new PreviewImage(CSS).png(SKETCH, "One", "two"));
    }

    private static long inked(BufferedImage image) {
        return IntStream.range(0, 1200 * 158).filter(i -> colour(image, i % 1200, 472 + i / 1200).equals("#1c1e19")).count();
    }
}
