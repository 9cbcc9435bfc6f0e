package understorey.pages.markdown;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.vladsch.flexmark.ext.tables.TablesExtension;
import com.vladsch.flexmark.html.HtmlRenderer;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.data.MutableDataSet;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import understorey.Places;
import understorey.pages.Briefs;
import understorey.pages.SitePagesTest;
import understorey.pages.Trips;
import understorey.plan.Bag;
import understorey.plan.Companion;
import understorey.plan.Contact;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.Spot;
import understorey.plan.Trip;

/** The Markdown twin read by two readers that let raw HTML through: whatever an author writes, none comes out. */
class MarkdownSafetyTest {

    private static final List<String> PAYLOADS = List.of("<script>alert(1)</script>", "<img src=x onerror=alert(1)>",
            "<b onmouseover=alert(1)>x</b>", "<svg/onload=alert(1)>", "<a href=javascript:alert(1)>x</a>", "<!-- x --><script>",
            "<?php x ?>", "<![CDATA[<script>]]>", "<!DOCTYPE x><script>", "[x](javascript:alert(1))", "[x](JaVaScRiPt:alert(1))",
            "[x](&#106;avascript:alert(1))", "[x](java&Tab;script:alert(1))", "[x](<javascript:alert(1)>)", "![x](javascript:alert(1))",
            "<javascript:alert(1)>", "[x]\n\n[x]: javascript:alert(1)", "[x][y]\n\n[y]: <javascript:alert(1)> 'z'", "[x](data:text/html,<script>)",
            "[x](vbscript:x)", "[x](//evil.example)", "![x](http://evil.example/x.png)", "&lt;script&gt;alert(1)&lt;/script&gt;",
            "\\<script>alert(1)</script>", "\\\\<script>alert(1)</script>", "`<script>`<script>", "``` <script>\n```\n<script>alert(1)</script>",
            "*<script>*alert(1)", "<scr\nipt>alert(1)</scr\nipt>", "x\n===\ny", "x\n---\ny", "# x", "x\n# y", "x\n\n# y", "> # x", "- # x",
            "<!doctype x>", "x <!doctype x> y", "\\\\<!doctype x>", "x <!-- a -- <script>alert(1)</script> -->");
    private static final List<String> WRAPS = List.of("%s", "a %s b", "a\n\n%s", "a | %s | b\n|---|\n%s");
    private static final Pattern BAD = Pattern.compile("(?i)<(?:script|svg|iframe|b |!|\\?)|<[a-z][^>]*\\s(?:on\\w+=|src=\"[^\"]"
            + "|(?:href|src)=\"?\\s*(?:javascript|vbscript|data|//))");
    private static final int AT_ONCE = 6;

    static List<List<String>> texts() {
        List<String> texts = new ArrayList<>();
        for (String payload : PAYLOADS) {
            for (String wrap : WRAPS) {
                texts.add(wrap.replace("%s", payload));
            }
        }
        assertTrue(texts.size() >= 120);
        List<List<String>> groups = new ArrayList<>();
        for (int i = 0; i < texts.size(); i += AT_ONCE) {
            groups.add(texts.subList(i, Math.min(i + AT_ONCE, texts.size())));
        }
        return groups;
    }

    /** Every text of a trip that an author may choose, chosen badly: each of some texts stands as a name and as prose. */
    private static Trip trip(List<String> texts) {
        int[] next = new int[2];
        Supplier<String> name = () -> texts.get(next[0]++ % texts.size());
        Supplier<String> prose = () -> texts.get(next[1]++ % texts.size());
        Trip t = Trips.full(Places.MID_LATITUDE, Trips.EXACT);
        Site s = t.site();
        List<Spot> spots = new ArrayList<>();
        for (Spot spot : s.spots()) {
            spots.add(new Spot(name.get() + spots.size(), spot.at(), spot.elevationM(), spot.canopy(), spot.skyline(), spot.slope(),
                    spot.clearingRadiusM(), prose.get(), null));
        }
        Site site = new Site(name.get(), s.slug(), null, s.position(), s.elevationM(), s.zone(), s.skyline(), s.canopy(), spots,
                List.of(), s.opening(), null, List.of(), List.of(), prose.get(), name.get(), false, List.of(prose.get()), prose.get(),
                        List.of(), null);
        List<Shot> shots = new ArrayList<>();
        for (Shot shot : t.shots()) {
            shots.add(new Shot(name.get() + " " + shots.size(), shot.role(), shot.subject(), spots.get(0).name(), shot.viewpoint(),
                    shot.orientation(), shot.sharp(), shot.focalEquivalentMm(), shot.frame(), shot.facingDeg(), shot.light(),
                    shot.polariser(), shot.duration(), shot.priority(), prose.get(), prose.get(), shot.tiltDeg(), null, null, null,
                            null));
        }
        Bag bag = Trips.dayBag();
        Bag odd = new Bag(name.get(), null, bag.bodies(), bag.lenses(), bag.supports(), bag.filters(), true, bag.cardsGb(), 2,
                List.of(new Bag.Extra(name.get(), 200.0)));
        return new Trip(name.get(), t.slug(), name.get(), site, t.when(), t.arrive(), t.leave(), odd,
                List.of(new Companion(name.get(), odd)), new Contact(name.get(), null), null, List.of(), prose.get(), shots,
                t.share());
    }

    private static final List<String> USUAL = readings(twin(List.of("plain words")));

    private static String twin(List<String> texts) {
        return SitePagesTest.page(Briefs.pages(List.of(trip(texts)), List.of()), "first-light/plan.md");
    }

    private static List<String> readings(String markdown) {
        MutableDataSet options = new MutableDataSet();
        options.set(Parser.EXTENSIONS, List.of(TablesExtension.create()));
        options.set(HtmlRenderer.SUPPRESSED_LINKS, "");
        var tables = List.of(org.commonmark.ext.gfm.tables.TablesExtension.create());
        return List.of(HtmlRenderer.builder(options).build().render(Parser.builder(options).build().parse(markdown)),
                org.commonmark.renderer.html.HtmlRenderer.builder().extensions(tables).build()
                        .render(org.commonmark.parser.Parser.builder().extensions(tables).build().parse(markdown)));
    }

    private static long headings(String html, int level) {
        return Pattern.compile("<h" + level + "[ >]").matcher(html).results().count();
    }

    @ParameterizedTest
    @MethodSource("texts")
    void holdsNoHtmlNoScriptAndNoHeadingOfAnAuthors(List<String> texts) {
        List<String> html = readings(twin(texts));
        for (int i = 0; i < html.size(); i++) {
            var bad = BAD.matcher(html.get(i));
            assertFalse(bad.find(), () -> texts + "\n" + bad.group());
            for (int level = 1; level <= 3; level++) {
                assertEquals(headings(USUAL.get(i), level), headings(html.get(i), level), "h" + level + " of " + texts);
            }
            assertTrue(html.get(i).length() > USUAL.get(i).length() / 2);
        }
    }

    /** Else the test above could pass for want of a reader that lets anything through. */
    @Test
    void readersLetRawHtmlThrough() {
        for (String html : readings("<script>x</script>\n\n[x](javascript:x)\n\n# y")) {
            assertTrue(html.contains("<script>") && html.contains("href=\"javascript:x\"") && headings(html, 1) == 1, html);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '@', value = {"a_b*c ~ a\\_b\\*c", "3 & 4 ~ 3 & 4",
        "&amp; ~ \\&amp;", "1. one ~ 1\\. one", "12 May 05:30 ~ 12 May 05:30", "- x ~ \\- x", "a - b ~ a - b", "[x](y) ~ \\[x\\](y)",
        "f/8, 1/60 s; ISO 100 ~ f/8, 1/60 s; ISO 100", "#1 ~ \\#1", "no. #1 ~ no. #1"})
    void marksOnlyWhatWouldMarkSomething(String text, String escaped) {
        assertEquals(escaped, MarkdownFormat.escape(text));
    }

    @Test
    void keepsTheAuthorsOwnMarkdown() {
        MarkdownProse prose = new MarkdownProse();
        assertEquals("From the **whole** floor [there](https://example.org/x_y).",
                prose.of("From the **whole** floor [there](https://example.org/x_y)."));
        assertEquals("- one\n- two", prose.of("- one\n- two"));
        assertEquals("Wait: 2 < 3, & then.", org.commonmark.renderer.text.TextContentRenderer.builder().build().render(
                org.commonmark.parser.Parser.builder().build().parse(prose.of("Wait: 2 < 3, & then."))));
        String table = "| If | Then |\n|---|---|\n| sun | stay |";
        assertEquals(table, prose.of(table));
        assertEquals("#### Head", prose.of("# Head"));
    }
}
