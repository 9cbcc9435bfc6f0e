package understorey.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.deque.html.axecore.args.AxeRunOptions;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ForcedColors;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every page of the committed site, opened from its file as a phone or a desk shows it. */
@Tag("browser")
class ScreenIT {

    /** The width at which WCAG 2.2 asks for reflow (1.4.10). */
    private static final int NARROW = 320;
    private static final int PHONE = 390;
    private static final int PHONE_HEIGHT = 844;
    private static final int DESK = 1280;
    private static Chromium chromium;
    private static Page page;

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

    @ParameterizedTest
    @MethodSource("understorey.browser.Chromium#pages")
    void asksForNothingAndComplainsOfNothing(String name) {
        List<String> requests = new ArrayList<>();
        List<String> complaints = new ArrayList<>();
        try (Page fresh = chromium.page(DESK, 900)) {
            fresh.onRequest(request -> requests.add(request.url()));
            fresh.onConsoleMessage(message -> complaints.add(message.type() + ": " + message.text()));
            fresh.onPageError(complaints::add);
            fresh.navigate(Chromium.address(name));
        }
        assertEquals(List.of(Chromium.address(name)), requests);
        assertEquals(List.of(), complaints);
    }

    @ParameterizedTest
    @MethodSource("understorey.browser.Chromium#pages")
    void fitsTheWidthOfAPhoneAndOfADesk(String name) {
        for (int width : List.of(NARROW, PHONE, DESK)) {
            open(name, width);
            assertEquals(0, page.evaluate("() => Math.max(document.documentElement.scrollWidth, document.body.scrollWidth)"
                    + " - document.documentElement.clientWidth"), "px too wide for " + width);
        }
    }

    @ParameterizedTest
    @MethodSource("understorey.browser.Chromium#pages")
    void isOpenToEveryoneInLightAndInDark(String name) {
        open(name, DESK);
        assertEquals(List.of(), violations(page, List.of()), "light");
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
        assertEquals(List.of(), violations(page, List.of("color-contrast", "link-in-text-block")), "dark");
    }

    /** Forced colours take away what is drawn by a background alone (CSS Color Adjustment 1, 3.1), unless a mark opts out. */
    @ParameterizedTest
    @MethodSource("understorey.browser.Chromium#pages")
    void keepsItsMarksInForcedColours(String name) {
        open(name, DESK);
        page.emulateMedia(new Page.EmulateMediaOptions().setForcedColors(ForcedColors.ACTIVE));
        assertEquals(List.of(), page.evaluate("""
                () => [...document.querySelectorAll('i')].filter(mark => {
                  const style = getComputedStyle(mark);
                  const border = ['Top', 'Left', 'Bottom', 'Right'].some(side => parseFloat(style['border' + side + 'Width']) > 0);
                  return style.forcedColorAdjust !== 'none' && !border && !mark.textContent.trim();
                }).map(mark => mark.className + ' in ' + mark.parentElement.className)"""));
        assertEquals(List.of(), violations(page, List.of("color-contrast")));
        page.emulateMedia(new Page.EmulateMediaOptions().setForcedColors(ForcedColors.NONE));
    }

    /** What breaks a rule; all rules where none is named. Only colours change from light to dark. */
    static List<String> violations(Page page, List<String> rules) {
        AxeRunOptions options = new AxeRunOptions();
        options.setResultTypes(List.of("violations"));
        AxeBuilder axe = new AxeBuilder(page).options(options).setLegacyMode(true);
        return (rules.isEmpty() ? axe : axe.withRules(rules)).analyze().getViolations().stream()
                .map(rule -> rule.getId() + ": " + rule.getHelp() + " "
                        + rule.getNodes().stream().map(node -> String.valueOf(node.getTarget())).toList()).toList();
    }

    @ParameterizedTest
    @MethodSource("understorey.browser.Chromium#pages")
    void canBeReadOnAPhoneWithoutZooming(String name) {
        open(name, PHONE);
        assertTrue(Texts.count(page) > 5);
        assertEquals(List.of(), Texts.below(16, page));
    }

    @ParameterizedTest
    @MethodSource("understorey.browser.Chromium#pages")
    void keepsTheLabelsOfADrawingApartAndWithinIt(String name) {
        for (int width : List.of(PHONE, DESK)) {
            open(name, width);
            assertEquals(List.of(), Texts.meeting(page), "at " + width + " px");
            assertEquals(List.of(), Texts.cutOff(page), "at " + width + " px");
        }
    }

    /**
     * When, where, why, what to carry and what may spoil it; the first picture with its time, lens and settings: on the first
     * screen of a desk, within the first two of a phone.
     */
    @ParameterizedTest
    @MethodSource("plans")
    void answersOnTheFirstScreen(String name) {
        for (int width : List.of(DESK, PHONE)) {
            open(name, width);
            assertEquals(List.of(), page.evaluate("""
                    lowest => [...document.querySelectorAll('.five dd, .strip li:first-child .t, .strip li:first-child .set, .strip li:first-child .l')]
                        .filter(answer => answer.getBoundingClientRect().bottom > lowest).map(answer => answer.textContent)""",
                    width == DESK ? 900 : 2 * PHONE_HEIGHT), "at " + width + " px");
            assertEquals(5, ((Number) page.evaluate("() => document.querySelectorAll('.five dd').length")).intValue());
        }
    }

    static List<String> plans() {
        return Chromium.pages().stream().filter(name -> name.endsWith("/index.html")).toList();
    }

    @ParameterizedTest
    @MethodSource("understorey.browser.Chromium#pages")
    void leadsTheFirstTabToTheSkipLink(String name) {
        open(name, DESK);
        page.keyboard().press("Tab");
        assertEquals("a to main, shown", page.evaluate("""
                () => {
                  const link = document.activeElement, box = link.getBoundingClientRect();
                  const target = document.getElementById((link.getAttribute('href') || '#').slice(1));
                  return link.tagName.toLowerCase() + ' to ' + (target && target.closest('main') ? 'main' : 'nothing')
                      + (box.width > 10 && box.height > 10 && box.top >= 0 && box.left >= 0 ? ', shown' : ', hidden');
                }"""));
    }

    private void open(String name, int width) {
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.LIGHT));
        page.setViewportSize(width, 900);
        page.navigate(Chromium.address(name));
    }
}
