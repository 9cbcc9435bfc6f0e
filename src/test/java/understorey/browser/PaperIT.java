package understorey.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Media;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import understorey.Places;
import understorey.pages.Briefs;
import understorey.pages.Trips;
import understorey.plan.Compose;
import understorey.plan.Display;
import understorey.plan.Shot;
import understorey.plan.Trip;

/** The pages that are carried into the wood, on the two papers of the world. */
@Tag("browser")
class PaperIT {

    /** A page object of a PDF; the tree of pages is of the type Pages (ISO 32000-1:2008, 7.7.3). */
    private static final Pattern PDF_PAGE = Pattern.compile("/Type\\s*/Page(?![A-Za-z])");
    private static final double PX_PER_PT = 96.0 / 72.0;
    private static final double PX_PER_MM = 96.0 / 25.4;
    private static Chromium chromium;
    private static Page page;

    /** Sizes of paper, ISO 216 and ANSI/ASME Y14.1. */
    private enum Paper {
        A4(210), LETTER(215.9);

        private final double widthMm;

        Paper(double widthMm) {
            this.widthMm = widthMm;
        }
    }

    private static final Display OTHER = new Display(Display.UnitSystem.IMPERIAL, Display.Clock.HOURS_12);

    @BeforeAll
    static void startTheBrowser() {
        chromium = Chromium.start();
        page = chromium.page(1280, 900);
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

    static List<String> plans() {
        return Chromium.pages().stream().filter(name -> name.endsWith("/index.html")).toList();
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void putsAFieldSheetOnOneSide(String name) {
        open(name);
        for (Paper paper : Paper.values()) {
            assertEquals(1, sides(paper), paper.name());
        }
    }

    @ParameterizedTest
    @CsvSource({"1, 1", "2, 1", "3, 1", "4, 1", "5, 1", "6, 1", "7, 2", "9, 2", "12, 2"})
    void putsSixPicturesOnOneSideAndTwelveOnTwo(int pictures, int sides) {
        for (Display display : List.of(Display.USUAL, OTHER)) {
            putsOnSides(sheet(pictures, display), pictures, sides);
        }
    }

    private void putsOnSides(String sheet, int pictures, int sides) {
        assertEquals(pictures, sheet.split("<h3>", -1).length - 1, "pictures taken");
        page.setContent(sheet);
        for (Paper paper : Paper.values()) {
            assertEquals(sides, sides(paper), paper.name());
        }
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
        double narrowest = ((Number) page.evaluate("() => Math.min(...[...document.querySelectorAll('.frame svg.sketch')].map(s => s.getBoundingClientRect().width))")).doubleValue();
        assertTrue(narrowest / PX_PER_MM > 39, narrowest / PX_PER_MM + " mm");
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(null));
        for (String shot : sheet.split("<li>\n<p class=\"when\">")) {
            if (shot.contains("class=\"when\"") || shot.contains("<h3>")) {
                boolean whole = shot.contains("Keep the fallen ash out of the frame.") && shot.contains("go tighter.");
                assertEquals(!whole, shot.contains("More in the plan."), shot);
            }
        }
    }

    /** The sheet of a full trip with so many pictures, each with notes, a composition and another plan. */
    private static String sheet(int pictures, Display display) {
        List<Shot> shots = new ArrayList<>();
        for (int i = 0; i < pictures; i++) {
            Shot like = Trips.pictures().get(i % Trips.pictures().size());
            shots.add(new Shot("Number " + (i + 1) + " of the carpet", like.role(), like.subject(), like.spot(), like.viewpoint(), like.orientation(),
                    like.sharp(), like.focalEquivalentMm(), like.frame(), like.facingDeg(), i % 3 == 0 ? like.light() : List.of(), like.polariser(),
                    Duration.ofMinutes(15), 2, "From the far rail, with the trunks large. Keep the fallen ash out of the frame.",
                    "Without sun, wait for mist and go tighter.", null, null, null, null,
                    new Compose("the stream", null, "grey trunks", null, List.of("bright gaps"))));
        }
        Trip trip = Trips.trip(Places.MID_LATITUDE, Trips.EXACT, Trips.dayBag(), shots, LocalTime.of(5, 0), LocalTime.of(11, 0), Trips.forecast())
                .shown(display);
        return Briefs.pages(List.of(trip), List.of()).stream().filter(made -> made.path().equals("first-light/field-sheet.html")).findFirst()
                .orElseThrow().content();
    }

    /** The answer, two pictures a side, and three sides for the rest; the appendix apart. */
    @ParameterizedTest
    @MethodSource("plans")
    void printsAPlanOnAFewSides(String name) {
        open(name);
        for (Paper paper : Paper.values()) {
            int sides = sides(paper);
            assertTrue(sides > 1 && sides <= 14, sides + " sides of " + paper);
        }
        int pictures = ((Number) page.evaluate("() => document.querySelectorAll('section.shot').length")).intValue();
        page.evaluate("() => document.querySelector('.appendix').remove()");
        for (Paper paper : Paper.values()) {
            int sides = sides(paper);
            assertTrue(sides <= 4 + (pictures + 1) / 2, sides + " sides of " + paper + " for " + pictures);
        }
    }

    @ParameterizedTest
    @MethodSource("plans")
    void printsNothingOfAPlanBelowTenPoint(String name) {
        for (Paper paper : Paper.values()) {
            open(name);
            page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
            double marginsPx = ((Number) page.evaluate("""
                    () => {
                      const rule = [...document.styleSheets].flatMap(s => [...s.cssRules])
                          .flatMap(r => r.cssRules && r.media ? [...r.cssRules] : [r]).filter(r => r instanceof CSSPageRule)[0];
                      const box = document.createElement('div');
                      box.style.marginLeft = rule.style.marginLeft;
                      box.style.marginRight = rule.style.marginRight;
                      document.body.append(box);
                      const style = getComputedStyle(box);
                      const margins = parseFloat(style.marginLeft) + parseFloat(style.marginRight);
                      box.remove();
                      return margins;
                    }""")).doubleValue();
            page.setViewportSize((int) (paper.widthMm * PX_PER_MM - marginsPx), 1000);
            assertTrue(Texts.count(page) > 50);
            assertEquals(List.of(), Texts.below(10 * PX_PER_PT, page), paper.name());
            assertEquals(List.of(), Texts.meeting(page), paper.name());
        }
    }

    private int sides(Paper paper) {
        byte[] pdf = page.pdf(new Page.PdfOptions().setFormat(paper == Paper.A4 ? "A4" : "Letter").setPrintBackground(true));
        return (int) PDF_PAGE.matcher(new String(pdf, StandardCharsets.ISO_8859_1)).results().count();
    }

    private void open(String name) {
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(null));
        page.setViewportSize(1280, 900);
        page.navigate(Chromium.address(name));
    }
}
