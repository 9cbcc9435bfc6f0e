package understorey.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import understorey.Places;
import understorey.brief.Brief;
import understorey.plan.Bag;
import understorey.plan.Body;
import understorey.plan.Canopy;
import understorey.plan.Companion;
import understorey.plan.Contact;
import understorey.plan.Display;
import understorey.plan.Filter;
import understorey.plan.Lens;
import understorey.plan.Parking;
import understorey.plan.Sensor;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.Spot;
import understorey.plan.Subject;
import understorey.plan.Support;
import understorey.plan.Trip;
import understorey.plan.Walk;
import understorey.plan.When;

public class SitePagesTest {

    private static final String EVIL = "<script>alert('x')</script><img src=x onerror=y> \"&'";

    @Test
    void everyPageIsOneFileThatFetchesNothing() {
        for (Page page : html()) {
            String text = page.content();
            assertFalse(text.toLowerCase(java.util.Locale.ROOT).contains("<script"), page.path());
            assertFalse(Pattern.compile("<(?:link|iframe|object|embed|base|meta http-equiv=\"(?!Content-Security-Policy))",
                    Pattern.CASE_INSENSITIVE).matcher(text)
                    .find(), page.path());
            assertEquals(1, count("default-src 'none'; img-src 'self' data:; style-src 'unsafe-inline'", text), page.path());
            assertFalse(Pattern.compile("\\bsrc(?:set)?=|\\bposter=|xlink:href|<image").matcher(text).find(), page.path());
            assertFalse(text.contains("@import") || Pattern.compile("url\\((?!#)").matcher(text).find(), page.path());
            assertFalse(Pattern.compile("<[^>]*\\son\\w+=").matcher(text).find(), page.path());
        }
    }

    @Test
    void everyPageSaysItsLanguageTitleAndMainPart() {
        for (Page page : html()) {
            String text = page.content().strip();
            assertTrue(text.matches("(?s)<!DOCTYPE html>\n<html lang=\"en\"( id=\"red\")?>.*"), page.path());
            assertEquals(1, count("<title>[^<]+</title>\n<style>", text), page.path());
            assertEquals(1, count("<h1[ >]", text), page.path());
            assertEquals(1, count("<main id=\"main\">", text), page.path());
            assertEquals(1, count("<a class=\"skip\" href=\"#main\">", text), page.path());
            assertTrue(text.indexOf("class=\"skip\"") < text.indexOf("<main"), page.path());
            assertTrue(text.endsWith("</html>"), page.path());
        }
    }

    @Test
    void everyIdIsUniqueAndEveryReferenceLeadsToOne() {
        for (Page page : html()) {
            Set<String> ids = new HashSet<>();
            for (String id : all("\\sid=\"([^\"]*)\"", page.content())) {
                assertTrue(ids.add(id), id + " twice in " + page.path());
            }
            for (String named : all("aria-labelledby=\"([^\"]*)\"", page.content())) {
                assertTrue(ids.containsAll(List.of(named.split(" "))), named + " in " + page.path());
            }
            for (String target : all("href=\"#([^\"]*)\"", page.content())) {
                assertTrue(target.isEmpty() || ids.contains(target), target + " in " + page.path());
            }
        }
    }

    @Test
    void headingsNeverSkipALevel() {
        for (Page page : html()) {
            int level = 0;
            for (String heading : all("<h([1-6])", page.content())) {
                int next = Integer.parseInt(heading);
                assertTrue(next <= level + 1 || next == 4, "h" + next + " after h" + level + " in " + page.path());
                level = next;
            }
        }
    }

    @Test
    void everyTableRowIsAsWideAsItsHead() {
        int tables = 0;
        for (Page page : html()) {
            for (String table : all("(?s)<table[^>]*>(.*?)</table>", page.content())) {
                Set<Integer> widths = new HashSet<>();
                for (String row : all("(?s)<tr[^>]*>(.*?)</tr>", table)) {
                    if (row.contains("rowspan") || row.contains("<th class=\"num\" scope=\"col\">clear")
                            || row.contains("scope=\"col\">bearing")) {
                        continue;
                    }
                    int width = 0;
                    for (String cell : all("<(t[hd][^>]*)>", row)) {
                        Matcher span = Pattern.compile("colspan=\"(\\d+)\"").matcher(cell);
                        width += span.find() ? Integer.parseInt(span.group(1)) : 1;
                    }
                    widths.add(width);
                }
                assertEquals(1, widths.size(), page.path() + " " + widths);
                tables++;
            }
        }
        assertTrue(tables > 100, "only " + tables);
    }

    @Test
    void thePlanPageKeepsItsOrder() {
        String page = page(Briefs.pages(List.of(Trips.full(Places.MID_LATITUDE, Trips.EXACT)), List.of()), "first-light/index.html");
        int at = page.indexOf("class=\"five\"");
        assertTrue(at > 0);
        for (String section : List.of("h-day", "shot-1", "order", "carry", "place", "cautions", "appendix", "light", "notes", "captions")) {
            int next = page.indexOf("id=\"" + section + "\"");
            assertTrue(next > at, section);
            at = next;
        }
        assertEquals(List.of("Go", "Where", "Why today", "Carry", "Spoils it"),
                all("<dt>([^<]*)</dt>", page).subList(0, 5));
    }

    @Test
    void everyDefaultOfATenLinePlanIsShownAsOne() {
        Trip bare = Trips.bare(Places.MID_LATITUDE, Trips.dayBag());
        Trip trip = on(bare, without(bare.site()), bare.shots().stream().map(SitePagesTest::open).toList());
        List<Page> pages = Briefs.pages(List.of(trip), List.of());
        for (String path : List.of("a-quick-look/index.html", "a-quick-look/plan.md")) {
            String text = page(pages, path).replaceAll("<[^>]*>", "").replace('\u00a0', ' ').replaceAll("\\s+", " ");
            for (String said : List.of("(default: civil dawn)", "(default: four hours later)",
                    "private, exact position (default)", "open ground (default)")) {
                assertTrue(text.contains(said), said + " in " + path);
            }
            List<String> defaults = all("Defaults: (.*?\\.)(?=\\*| )", text);
            assertEquals(2, defaults.size(), path);
            assertTrue(defaults.get(0).matches("role opening; spot the site itself; viewpoint standing, 1\\.5 m; "
                    + "orientation landscape; tilt \\d+° down; focal length 50 mm \\(equivalent\\); depth of field 3\\.7 m to 40 m; "
                    + "polariser no; duration 15 min; priority 2\\."), defaults.get(0));
            assertTrue(defaults.get(1).matches("spot the site itself; viewpoint \\d+ cm; orientation landscape; "
                    + "tilt level; frame \\d+ cm wide; depth of field \\d+ [cm]m; polariser no; duration 15 min; priority 2\\."),
                    defaults.get(1));
        }
        assertTrue(page(pages, "a-quick-look/index.html").contains("any sky (default)"));
    }

    @Test
    void whatTheAuthorWroteIsNoDefault() {
        Trip full = Trips.full(Places.MID_LATITUDE, Trips.EXACT);
        String page = page(Briefs.pages(List.of(full), List.of()), "first-light/index.html");
        assertFalse(page.contains("(default: ") || page.contains("(default)"));
        assertTrue(page.contains("for the group, exact position"));
    }

    @Test
    void whateverAnAuthorNamesIsEscapedOnEveryPage() {
        Trip trip = evil();
        List<Page> pages = Briefs.pages(List.of(trip), List.of(trip.gear()));
        int seen = 0;
        for (Page page : pages) {
            if (page.path().endsWith(".html") && !Briefs.manual(page)) {
                String text = page.content();
                assertFalse(text.contains("<script"), page.path());
                assertFalse(text.contains("<img"), page.path());
                assertTrue(text.contains("&lt;script&gt;") || List.of("subjects.html", "methods.html").contains(page.path()), page.path());
                assertFalse(text.contains("&amp;lt;"), page.path());
                seen++;
            }
        }
        assertEquals(7, seen);
        String plan = page(pages, trip.slug() + "/index.html");
        assertTrue(count("&lt;script&gt;alert", plan) > 25, "only " + count("&lt;script&gt;alert", plan));
    }

    @Test
    void theAuthorsHeadingsLeaveThePageOneTitle() {
        Trip full = Trips.full(Places.MID_LATITUDE, Trips.EXACT);
        Trip trip = new Trip(full.title(), full.slug(), full.series(), full.site(), full.when(), full.arrive(),
                full.leave(), full.gear(), full.companions(), full.contact(), full.sky(), full.forecast(),
                "# A title\n\n## And a section", full.shots(), full.share());
        assertEquals(1, count("<h1", page(Briefs.pages(List.of(trip), List.of()), "first-light/index.html")));
    }

    @Test
    void pagesAreTheSameWheneverTheyAreMade() {
        List<Page> once = Briefs.pages(Briefs.demo().trips(), Briefs.demo().bags());
        assertEquals(once, Briefs.pages(Briefs.demo().trips(), Briefs.demo().bags()));
        assertTrue(once.size() > 20, "only " + once.size());
    }

    @Test
    void noPageShowsAnUnwordedFigure() {
        for (Page page : html()) {
            String text = page.content().replaceAll("(?s)<style>.*?</style>", "").replaceAll("(?s)<code[ >].*?</code>", "").replaceAll("<[^>]*>", " ");
            assertFalse(Pattern.compile("\\b(?:NaN|Infinity|null)\\b|\\d\\.\\d{5,}|[{}]|\\b[A-Z]+_[A-Z]+\\b").matcher(text).find(),
                    page.path());
            assertFalse(text.contains("360°"), page.path());
        }
    }

    private static List<Page> html() {
        return pages().stream().filter(page -> page.path().endsWith(".html")).toList();
    }

    private static List<Page> pages;

    public static synchronized List<Page> pages() {
        if (pages == null) {
            List<Page> all = new ArrayList<>();
            for (Brief brief : Briefs.all()) {
                all.addAll(Briefs.pages(SitePages.open(null, null, Display.USUAL), List.of(brief), List.of(), List.of(), List.of()));
            }
            all.addAll(Briefs.pages(SitePages.open(null, null, Display.USUAL), List.of(),
                    Briefs.demo().sites(), Briefs.demo().bags(), Briefs.demo().subjects()));
            pages = List.copyOf(all);
        }
        return pages;
    }

    public static String page(List<Page> pages, String path) {
        return pages.stream().filter(page -> page.path().equals(path)).findFirst().orElseThrow().content();
    }

    private static int count(String pattern, String text) {
        return (int) Pattern.compile(pattern).matcher(text).results().count();
    }

    public static List<String> all(String pattern, String text) {
        return Pattern.compile(pattern).matcher(text).results().map(found -> found.group(1)).toList();
    }

    /** The picture with everything open that may be. */
    private static Shot open(Shot shot) {
        return new Shot(shot.name(), shot.role(), shot.subject(), null, null, null, null, null, null, null, List.of(), null,
                null, null, null, null, null, null, null, null, null);
    }

    private static Site without(Site site) {
        return new Site(site.name(), site.slug(), null, site.position(), null, site.zone(), List.of(), null, List.of(),
                List.of(), null, null, List.of(), List.of(), null, null, false, List.of(), null, List.of(), null);
    }

    private static Trip on(Trip trip, Site site, List<Shot> shots) {
        return new Trip(trip.title(), trip.slug(), trip.series(), site, trip.when(), trip.arrive(), trip.leave(),
                trip.gear(), trip.companions(), trip.contact(), trip.sky(), trip.forecast(), trip.story(), shots, trip.share());
    }

    /** The same troublesome words wherever an author may write any. */
    public static Trip evil() {
        Places place = Places.MID_LATITUDE;
        Subject ramsons = new Subject("ramsons", EVIL + " subject", EVIL, EVIL, false, 4, 6, EVIL, null, 0.2, 0.45, 16.0, null,
                null, Subject.Reflectance.WHITE, EVIL, EVIL, EVIL, null, EVIL);
        Site site = new Site(EVIL + " site", "site", EVIL, place.position(), 180.0, place.zone(), List.of(),
                new Canopy(Canopy.Trees.MIXED, null, null),
                List.of(new Spot(EVIL + " spot", place.position(), null, null, null, null, null, EVIL, null),
                        new Spot(EVIL + " other", null, null, null, null, null, null, null, null)),
                List.of(new Walk(EVIL + " spot", EVIL + " other", Duration.ofMinutes(5))), null,
                new Parking(EVIL + " spot", LocalTime.of(9, 0), EVIL), List.of(), List.of(), EVIL, "https://example.org/\"" + EVIL,
                false, List.of(EVIL, "| a | b |"), EVIL, List.of(), null);
        Bag bag = new Bag(EVIL + " bag", "bag", List.of(new Body(EVIL + " body", Sensor.FULL_FRAME, 24, "A", 100, 3200, 0,
                28.0, 400, 600.0, List.of())), List.of(new Lens(EVIL + " lens", "A", null, 24, 70, 4, 4, null, 0.38, 0.3,
                72.0, 0, 430.0), new Lens(EVIL + " long", "A", null, 90, 90, 4, 4, null, 0.38, 0.3, 62.0, 0, 430.0)),
                List.of(new Support(EVIL + " legs", Support.Kind.TRIPOD, 0.12, 1.5, 6.0, 1350.0)),
                List.of(new Filter(EVIL + " filter", Filter.Kind.POLARISER, 72.0, 1.5, null, null, null, null, 25.0)),
                false, List.of(64.0), 2, List.of(new Bag.Extra(EVIL + " mat", 200.0)));
        List<Shot> shots = new ArrayList<>();
        for (String name : List.of(" one", " two")) {
            shots.add(new Shot(EVIL + name, null, ramsons, EVIL + (name.equals(" one") ? " spot" : " other"), null, null, null,
                    null, null, 80.0, List.of(), true, null, null, EVIL, EVIL, null, null, null, 0.6, null));
        }
        return new Trip(EVIL + " title", "evil", EVIL + " series", site, new When.On(place.date()), null, null, bag,
                List.of(new Companion(EVIL + " friend", Trips.phone())), new Contact(EVIL + " contact", LocalTime.of(12, 0)),
                null, List.of(), EVIL, shots, null);
    }
}
