package understorey.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Media;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The field sheet in its dresses: on a desk, on a phone, on paper, and red on black. */
@Tag("browser")
class SheetIT {

    private static final int DESK = 1280;
    private static final int PHONE = 390;
    private static final String RED = "#red";
    private static Chromium chromium;
    private static Page page;

    /** Relative luminance and contrast of two colours (WCAG 2.2, definitions). */
    private static final String CONTRAST = """
            name => {
              const colour = document.createElement('i');
              document.body.append(colour);
              const luminance = css => {
                colour.style.color = css;
                const [r, g, b] = getComputedStyle(colour).color.match(/[\\d.]+/g).map(v => v / 255)
                    .map(v => v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4));
                return 0.2126 * r + 0.7152 * g + 0.0722 * b;
              };
              const [a, b] = [luminance(`var(${name})`), luminance('var(--paper)')].sort((x, y) => y - x);
              colour.remove();
              return (a + 0.05) / (b + 0.05);
            }""";

    /** Pairs of labels below the time rail whose boxes meet, and labels that leave it. */
    static final String RAIL_FAULTS = """
            () => {
              const rail = document.querySelector('.rail').getBoundingClientRect();
              const boxes = [...document.querySelectorAll('.rail li, .rail .block, .rail .hour')]
                  .map(e => ({text: e.textContent.trim(), b: e.getBoundingClientRect(), kind: e.className || 'label'}));
              const found = boxes.filter(x => x.kind !== 'hour' && (x.b.left < rail.left - 1 || x.b.right > rail.right + 1)).map(x => x.text + ' leaves the rail');
              boxes.forEach((x, i) => boxes.slice(i + 1).forEach(y => {
                if (x.b.left < y.b.right - 0.5 && y.b.left < x.b.right - 0.5 && x.b.top < y.b.bottom - 2 && y.b.top < x.b.bottom - 2) {
                  found.push(x.text + ' meets ' + y.text);
                }
              }));
              return found;
            }""";

    @BeforeAll
    static void startTheBrowser() {
        chromium = Chromium.start();
        page = chromium.page(DESK, 900);
    }

    @AfterAll
    static void endTheBrowser() {
        if (chromium != null) {
            chromium.close();
        }
    }

    static List<String> sheets() {
        return Chromium.pages().stream().filter(name -> name.endsWith("/field-sheet.html")).toList();
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void isOpenToEveryoneInRedToo(String name) {
        open(name + RED, DESK);
        assertEquals(List.of(), ScreenIT.violations(page, List.of()));
        assertTrue(number(page.evaluate(CONTRAST, "--ink")) >= 5.1, "ink on black");
        assertTrue(number(page.evaluate(CONTRAST, "--soft")) >= 4.5, "soft ink on black");
    }

    /** Rods hardly see red; any other light takes away the adaptation to the dark. */
    @ParameterizedTest
    @MethodSource("sheets")
    void shinesInNothingButRed(String name) throws IOException {
        for (int width : List.of(PHONE, DESK)) {
            open(name + RED, width);
            BufferedImage image = ImageIO.read(new ByteArrayInputStream(page.screenshot(new Page.ScreenshotOptions().setFullPage(true))));
            int lit = 0;
            int others = 0;
            for (int y = 0; y < image.getHeight(); y++) {
                for (int x = 0; x < image.getWidth(); x++) {
                    int rgb = image.getRGB(x, y);
                    int red = rgb >> 16 & 255;
                    int strongest = Math.max(rgb >> 8 & 255, rgb & 255);
                    lit += red > 100 ? 1 : 0;
                    others += strongest > 0.45 * red + 4 ? 1 : 0;
                }
            }
            assertEquals(0, others, "pixels that are not red at " + width + " px");
            assertTrue(lit > 1000, lit + " lit pixels");
        }
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void changesItsDressByALinkAlone(String name) {
        open(name, DESK);
        assertEquals("rgb(251, 249, 243)", ground());
        page.click("text=Red on black");
        assertEquals("rgb(0, 0, 0)", ground());
        page.keyboard().press("Tab");
        assertEquals("rgb(0, 0, 0)", ground());
        page.click("text=Black on white");
        assertEquals("rgb(251, 249, 243)", ground());
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void printsBlackOnWhiteFromTheRedDress(String name) {
        open(name + RED, DESK);
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
        assertEquals("rgb(255, 255, 255)", ground());
        assertEquals("rgb(0, 0, 0)", page.evaluate("() => getComputedStyle(document.querySelector('.settings')).color"));
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void keepsTheLabelsOfTheTimeRailApart(String name) {
        for (int width : List.of(320, PHONE, DESK)) {
            open(name, width);
            assertEquals(List.of(), page.evaluate(RAIL_FAULTS), "at " + width + " px");
        }
        open(name, 725);
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
        assertEquals(List.of(), page.evaluate(RAIL_FAULTS), "on paper");
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void canBeUsedWithAThumb(String name) {
        open(name, PHONE);
        assertEquals(List.of(), page.evaluate("""
                () => [...document.querySelectorAll('nav a')].filter(a => getComputedStyle(a).display !== 'none')
                    .filter(a => a.getBoundingClientRect().height < 44).map(a => a.textContent)"""));
        open(name, 320);
        assertEquals(0, page.evaluate("() => document.documentElement.scrollWidth - document.documentElement.clientWidth"), "px too wide");
    }

    /** Paper is read at arm's length: 17 pt for what is set, 10 pt for the rest. */
    @ParameterizedTest
    @MethodSource("sheets")
    void printsSettingsLarge(String name) {
        open(name, 725);
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
        double settingsPx = number(page.evaluate("() => parseFloat(getComputedStyle(document.querySelector('.settings')).fontSize)"));
        assertTrue(settingsPx * 72 / 96 >= 16.99, settingsPx + " px");
        assertEquals(List.of(), Texts.below(10 * 96 / 72.0, page));
        double sketchMm = number(page.evaluate("() => Math.max(...[...document.querySelectorAll('.frame')].map(f => f.getBoundingClientRect().width)) * 25.4 / 96"));
        assertTrue(sketchMm >= 35 && sketchMm <= 53, sketchMm + " mm");
    }

    private static double number(Object value) {
        return ((Number) value).doubleValue();
    }

    private static Object ground() {
        return page.evaluate("() => getComputedStyle(document.documentElement).backgroundColor");
    }

    private static void open(String name, int width) {
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(null));
        page.setViewportSize(width, 900);
        page.navigate("about:blank");
        int hash = name.indexOf('#');
        page.navigate(Chromium.address(hash < 0 ? name : name.substring(0, hash)) + (hash < 0 ? "" : name.substring(hash)));
    }
}
