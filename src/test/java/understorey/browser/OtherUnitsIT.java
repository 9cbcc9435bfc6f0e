package understorey.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.Page;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import understorey.brief.Brief;
import understorey.pages.Briefs;
import understorey.pages.SitePages;
import understorey.pages.Trips;
import understorey.plan.Display;
import understorey.reading.Plans;

/** The pages of the demo in feet and pounds and on a clock of twelve hours, whose words are longer. */
@Tag("browser")
class OtherUnitsIT {

    private static final Display OTHER = new Display(Display.UnitSystem.IMPERIAL, Display.Clock.HOURS_12);
    private static Chromium chromium;
    private static Page page;

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

    static List<understorey.pages.Page> pages() {
        Plans demo = Briefs.demo();
        List<Brief> briefs = demo.trips().stream().map(trip -> Trips.brief(trip.shown(OTHER))).toList();
        return Briefs.pages(SitePages.open(null, null, OTHER), briefs, demo.sites(), demo.bags(), demo.subjects()).stream()
                .filter(made -> made.path().endsWith(".html")).toList();
    }

    @ParameterizedTest
    @MethodSource("pages")
    void fitsAPhoneAndADesk(understorey.pages.Page made) {
        page.setContent(made.content());
        for (int width : List.of(320, 390, 1280)) {
            page.setViewportSize(width, 900);
            String at = made.path() + " at " + width + " px";
            assertEquals(0, page.evaluate("() => document.documentElement.scrollWidth - document.documentElement.clientWidth"), at);
            assertEquals(List.of(), Texts.cutOff(page), at);
            assertEquals(List.of(), Texts.meeting(page), at);
            if (made.path().endsWith("field-sheet.html")) {
                assertEquals(List.of(), page.evaluate(SheetIT.RAIL_FAULTS), at);
            }
        }
    }
}
