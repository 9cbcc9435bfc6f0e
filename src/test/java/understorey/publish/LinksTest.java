package understorey.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import understorey.pages.Page;

class LinksTest {

    @ParameterizedTest
    @ValueSource(strings = {"", "#", "#top", "#stones", "index.html", "./index.html", "field-sheet.html#shot-1", "../index.html",
        "../sites/the-wood.html", "plan.json", "plan%2Ejson", "index.html?print", "?a=1#stones", "plan.json?a=#top",
        "https://example.org/?a=1#b", "https://example.org/", "http://example.org/a#b",
        "mailto:a@example.org", "tel:+441234", "//example.org/", "data:image/png;base64,AA=="})
    void followsALinkThatLeadsSomewhere(String link) {
        assertEquals(List.of(), broken(site("<a href=\"" + link + "\">x</a>")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"nowhere.html", "#nowhere", "field-sheet.html#nowhere", "../../index.html", "../",
        "/index.html", "sites/the-wood.html", "plan.json#part", "nowhere.html?a", "?a#nowhere", "a/b:c", "%zz", "index.htm"})
    void saysWhichLinkLeadsNowhereAndWhereItStands(String link) {
        assertEquals(List.of(new Links.Broken("trip/index.html", link)),
                broken(site("<a href=\"" + link + "\">x</a>")));
    }

    @Test
    void readsQuotesOfEitherKindAcrossLinesAndOnAnyElement() {
        assertEquals(List.of(new Links.Broken("trip/index.html", "a.png"),
                new Links.Broken("trip/index.html", "b.html"), new Links.Broken("trip/index.html", "c&d.html")),
                broken(site("<img src=\"a.png\"><a\nhref='b.html'>x</a><a class=x href=\"c&amp;d.html\">x</a>")));
    }

    @Test
    void passesOverWhatOnlyLooksLikeALink() {
        assertEquals(List.of(), broken(site("<p data-href=\"x\">href= \"y\" href=z</p>")));
    }

    @Test
    void survivesAQuoteThatIsNeverClosed() {
        assertEquals(List.of(), broken(List.of(new Page("index.html", "<a href=\"never closed>"),
                new Page("b.html", "<a href="))));
    }

    @Test
    void saysALinkOnceAPage() {
        String twice = "<a href=\"x.html\">x</a><a href=\"x.html\">x</a>";
        assertEquals(2, broken(List.of(new Page("a.html", twice), new Page("b.html", twice))).size());
    }

    @Test
    void followsNoLinkOfAFileThatIsNoPage() {
        assertEquals(List.of(), broken(List.of(new Page("plan.md", "<a href=\"x.html\">"))));
    }

    @Test
    void leavesTheFoldersOfOtherBuildsAlone() {
        assertEquals(List.of(new Links.Broken("trip/index.html", "../wood/index.html")),
                broken(site("<a href=\"../glade/index.html#x\">x</a><a href=\"../wood/index.html\">x</a>"), "glade"));
    }

    private static List<Links.Broken> broken(List<Page> pages, String... elsewhere) {
        return Links.broken(pages.stream().map(Links.Seen::of).toList(), Set.of(elsewhere));
    }

    private static List<Page> site(String body) {
        return List.of(new Page("index.html", ""), new Page("trip/index.html", "<h2 id=\"stones\">s</h2>" + body),
                new Page("trip/field-sheet.html", "<h2 class=\"a\" id='shot-1'>s</h2>"), new Page("trip/plan.json", "{}"),
                new Page("sites/the-wood.html", ""));
    }
}
