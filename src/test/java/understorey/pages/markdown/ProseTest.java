package understorey.pages.markdown;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import understorey.advice.ProseLimit;

class ProseTest {

    private final Prose prose = new Prose();

    @Test
    void rendersCommonMarkAndTables() {
        assertEquals("<p>From <strong>one</strong> to <em>all</em>.</p>\n", prose.html("From **one** to *all*."));
        assertEquals("""
                <table>
                <thead>
                <tr><th>If</th><th align="center">Then</th></tr>
                </thead>
                <tbody>
                <tr><td>wet</td><td align="center"><em>wait</em></td></tr>
                </tbody>
                </table>
                """, prose.html("| If | Then |\n|---|:-:|\n| wet | *wait* |\n"));
        assertTrue(prose.html("- a\n- b\n").contains("<li>a</li>"));
    }

    @Test
    void showsATextAsItIsThatWouldGrowBeyondAllBounds() {
        String references = "[a]: /" + "u".repeat(9000) + "\n\n" + "[a] ".repeat(2500);
        String table = "|a".repeat(700) + "|\n" + "|-".repeat(700) + "|\n" + "|x|\n".repeat(700);
        String wider = "|a".repeat(2000) + "|\n" + "|-".repeat(2000) + "|\n" + "|x|\n".repeat(2000);
        for (String text : List.of(references, table, wider)) {
            String html = prose.html(text);
            assertTrue(html.length() < 30_000, html.length() + " characters");
            assertTrue(html.startsWith("<p>[a]: ") || html.startsWith("<p>|a|a"), html.substring(0, 20));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"> ", "- ", "1. ", "[", "![", "*a **b ", "_a __b ", "[a](b ", "`", "<", "&"})
    void takesMarksInMarksHoweverDeep(String mark) {
        String html = prose.html(mark.repeat(6000) + "end");
        assertTrue(html.contains("end") && html.length() < 500_000, html.length() + " characters");
    }

    /** The worst texts within the limits, each on a stack of half the usual size. */
    @ParameterizedTest
    @ValueSource(strings = {"*a ~b* ", "**a~**", "[~](b)", "![~](b)", "[~]", "(~)", "<a ~b>", "_a __b ~b__ a_ ", "`a ~ a`"})
    void followsEveryTextWithinTheLimits(String pair) throws InterruptedException {
        String[] halves = pair.split("~");
        String text = "";
        for (int times = 1; times < 1000; times += 9) {
            String next = halves[0].repeat(times) + "a" + halves[1].repeat(times);
            text = ProseLimit.passed(next).isEmpty() ? next : text;
        }
        String deepest = text;
        List<String> html = new ArrayList<>();
        Thread small = new Thread(null, () -> html.add(prose.html(deepest) + new MarkdownProse().of(deepest)), "small", 512 * 1024);
        small.start();
        small.join();
        assertEquals(1, html.size(), pair + " of " + deepest.length() + " characters");
    }

    @Test
    void saysNothingForNoText() {
        assertNull(prose.html(null));
        assertNull(prose.html(" \n "));
    }

    @Test
    void showsRawHtmlAsText() {
        String html = prose.html("a <script>alert(1)</script> b\n\n<div onclick=\"x()\">c</div>\n\n<!-- d -->\n");
        assertFalse(html.contains("<script") || html.contains("<div") || html.contains("<!--"), html);
        assertTrue(html.contains("&lt;script&gt;") && html.contains("&lt;div onclick="), html);
    }

    @Test
    void putsTheAuthorsHeadingsBelowThoseOfThePage() {
        String html = prose.html("# The way in\n\ntext\n\n###### Small\n\n> ## Quoted\n");
        assertTrue(html.contains("<h4>The way in</h4>") && html.contains("<h6>Small</h6>")
                && html.contains("<h5>Quoted</h5>"), html);
    }

    @ParameterizedTest
    @ValueSource(strings = {"javascript:alert(1)", "JavaScript:alert(1)", "data:text/html,x", "vbscript:x",
        "&#106;avascript:alert(1)", "&#x6A;avascript:alert(1)", "javascript&colon;alert(1)", "java&#10;script:alert(1)",
        "java&Tab;script:x", "&#1;javascript:x", "//example.org/x", "&#32;//example.org", "/\\\\example.org", "\\\\\\\\example.org",
        "file:///etc/passwd", "blob:x", "feed:javascript:x", "&#10;//example.org"})
    void takesTheTargetOffADoubtfulLink(String target) {
        for (String markdown : List.of("[go](" + target + ")", "[go](<" + target + ">)", "[go][r]\n\n[r]: " + target)) {
            String html = prose.html(markdown);
            assertFalse(html.contains("href"), html);
            assertTrue(html.contains("go"), html);
        }
    }

    @Test
    void takesTheTargetOffADoubtfulAutomaticLink() {
        assertFalse(prose.html("see <javascript:alert(1)> or <data:x>").contains("href"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"http://example.org/a?b=c", "https://example.org/", "HTTPS://example.org", "mailto:a@example.org",
        "tel:+441234", "plan.md", "../index.html", "#light", "?q=a:b", "a/b:c", "/rooted"})
    void keepsTheTargetOfAPlainLink(String target) {
        String html = prose.html("[go](" + target + ")");
        assertTrue(html.contains("<a href=\"" + target + "\">go</a>"), html);
    }

    @Test
    void fetchesNoPicture() {
        for (String markdown : List.of("![moss](https://example.org/a.png)", "![moss](a.png \"t\")",
                "![moss][r]\n\n[r]: https://example.org/a.png", "![r]\n\n[r]: a.png", "![moss](data:image/png;base64,x)")) {
            String html = prose.html(markdown);
            assertFalse(html.contains("src"), html);
            assertTrue(html.contains("alt="), html);
        }
    }

    @Property(tries = 400)
    void readsPlainTextAsAnotherReaderDoes(@ForAll("texts") String text) {
        assertEquals(parsed(text), String.valueOf(prose.html(text)), text);
    }

    @Test
    void readsMarksAsAnotherReaderDoes() {
        for (String text : List.of("    indented", "a\n===", "1. one", "- one", "> said", "a & b", "a  \nb", "&amp;",
                "x\ty", "Ünï \"quoted\" 'so'", "é", "a\u000bb", "a\u2028b", "a\u00a0", "two\nlines", "a\n\nb",
                "a\n---", "To whom: her!\nand me@wood", "a\n 1. b", "a\n    b")) {
            assertEquals(parsed(text), prose.html(text), text);
        }
    }

    @Provide
    Arbitrary<String> texts() {
        Arbitrary<String> word = Arbitraries.strings().withChars("abzÄé木🌿019.,;-+=()'\"/?%$^…–“”").ofMinLength(1).ofMaxLength(6);
        Arbitrary<String> gap = Arbitraries.of(" ", "  ", " ", "\u00a0", "\u2003", "\n", "\t", " ");
        return Arbitraries.lazyOf(() -> word.list().ofMinSize(1).ofMaxSize(5).flatMap(words -> gap.list().ofSize(words.size())
                .map(gaps -> {
                    StringBuilder text = new StringBuilder();
                    for (int i = 0; i < words.size(); i++) {
                        text.append(words.get(i)).append(gaps.get(i));
                    }
                    return text.toString();
                })));
    }

    private static String parsed(String text) {
        List<Extension> tables = List.of(TablesExtension.create());
        String html = HtmlRenderer.builder().extensions(tables).escapeHtml(true).build()
                .render(Parser.builder().extensions(tables).build().parse(text));
        return html.replace("<h1>", "<h4>").replace("</h1>", "</h4>").replace("<h2>", "<h5>").replace("</h2>", "</h5>");
    }
}
