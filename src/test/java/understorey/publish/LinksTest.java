package understorey.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import understorey.pages.Page;

class LinksTest {

    @ParameterizedTest
    @ValueSource(strings = {"", "#", "#top", "#stones", "index.html", "./index.html", "field-sheet.html#shot-1", "../index.html",
        "../sites/the-wood.html", "plan.json", "plan%2Ejson", "https://example.org/", "http://example.org/a#b",
        "mailto:a@example.org", "tel:+441234", "//example.org/", "data:image/png;base64,AA=="})
    void followsALinkThatLeadsSomewhere(String link) {
        assertEquals(List.of(), Links.broken(site("<a href=\"" + link + "\">x</a>")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"nowhere.html", "#nowhere", "field-sheet.html#nowhere", "../../index.html", "../",
        "/index.html", "sites/the-wood.html", "plan.json#part", "a/b:c", "%zz", "index.htm"})
    void saysWhichLinkLeadsNowhereAndWhereItStands(String link) {
        assertEquals(List.of("trip/index.html: broken link '" + link + "'"),
                Links.broken(site("<a href=\"" + link + "\">x</a>")));
    }

    @Test
    void readsQuotesOfEitherKindAcrossLinesAndOnAnyElement() {
        assertEquals(List.of("trip/index.html: broken link 'a.png'",
                "trip/index.html: broken link 'b.html'",
                "trip/index.html: broken link 'c&d.html'"),
                Links.broken(site("<img src=\"a.png\"><a\nhref='b.html'>x</a><a class=x href=\"c&amp;d.html\">x</a>")));
    }

    @Test
    void passesOverWhatOnlyLooksLikeALink() {
        assertEquals(List.of(), Links.broken(site("<p data-href=\"x\">href= \"y\" href=z</p>")));
    }

    @Test
    void survivesAQuoteThatIsNeverClosed() {
        assertEquals(List.of(), Links.broken(List.of(new Page("index.html", "<a href=\"never closed>"),
                new Page("b.html", "<a href="))));
    }

    @Test
    void saysALinkOnceAPage() {
        String twice = "<a href=\"x.html\">x</a><a href=\"x.html\">x</a>";
        assertEquals(2, Links.broken(List.of(new Page("a.html", twice), new Page("b.html", twice))).size());
    }

    @Test
    void followsNoLinkOfAFileThatIsNoPage() {
        assertEquals(List.of(), Links.broken(List.of(new Page("plan.md", "<a href=\"x.html\">"))));
    }

    private static List<Page> site(String body) {
        return List.of(new Page("index.html", ""), new Page("trip/index.html", "<h2 id=\"stones\">s</h2>" + body),
                new Page("trip/field-sheet.html", "<h2 class=\"a\" id='shot-1'>s</h2>"), new Page("trip/plan.json", "{}"),
                new Page("sites/the-wood.html", ""));
    }
}
