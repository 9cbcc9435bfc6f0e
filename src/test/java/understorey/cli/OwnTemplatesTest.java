package understorey.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import understorey.Tree;

class OwnTemplatesTest {

    @TempDir
    private Path home;
    private Path templates;
    private Path site;

    @BeforeEach
    void makeAFolder() throws IOException {
        templates = Files.createDirectory(home.resolve("templates"));
        site = home.resolve("site");
    }

    @Test
    void standInFrontOfTheBuiltInOnes() throws IOException {
        own("index.ftlh", "<h1>Mine, with ${page.bags?size} bags</h1>");
        Run run = build();
        assertEquals(0, run.exit(), run.err());
        assertEquals("<h1>Mine, with 4 bags</h1>", Files.readString(site.resolve("index.html")));
        assertTrue(Files.size(site.resolve("first-light-in-the-ramsons/index.html")) > 10_000);
    }

    @ParameterizedTest
    @ValueSource(strings = {"${page.nothing}", "<#if page>", "${page.bags", "<#list page.bags as b>", "${1/0}",
        "<#import \"nowhere.ftlh\" as n>", "<#include \"nowhere.ftlh\">", "<#nosuch>", "${page.groups.x.y}",
        "${page.getClass()}", "${\"x\"?api.length()}", "${\"freemarker.template.utility.Execute\"?new()}",
        "<#stop \"here\">"})
    void thatAreBrokenAreToldByFileLineAndColumnAndNothingIsTouched(String fault) throws IOException {
        assertEquals(0, build().exit());
        SortedMap<String, String> before = Tree.withTimes(site);
        own("index.ftlh", "<h1>\n  " + fault + "\n</h1>\n");
        Run run = build();
        assertEquals(1, run.exit());
        assertEquals("", run.out());
        assertTrue(run.err().matches("(?s)templates/index.ftlh:[1-4]:\\d+: error: \\S.*"), run.err());
        assertFalse(run.showsItsInside(), run.err());
        assertEquals(before, Tree.withTimes(site));
    }

    @Test
    void thatUseThemselvesWithoutEndAreToldToo() throws IOException {
        own("index.ftlh", "<#macro a><@a/></#macro><@a/>");
        Run run = build();
        assertEquals(1, run.exit());
        assertFalse(run.err().isBlank() || run.showsItsInside(), run.err());
        assertFalse(Files.exists(site));
    }

    @Test
    void withALinkThatLeadsNowhereAreToldSo() throws IOException {
        own("index.ftlh", "<a href=\"nowhere.html\">x</a>");
        Run run = build();
        assertEquals(1, run.exit());
        assertTrue(run.err().startsWith("index.html: broken link 'nowhere.html'\n"), run.err());
    }

    @Test
    void thatAreNowhereAreWrongUse() {
        Run run = Run.of("build", "plans", "--out", site, "--templates", home.resolve("nowhere"));
        assertEquals(2, run.exit());
        assertTrue(run.err().contains("is not a folder of templates"), run.err());
        assertFalse(Files.exists(site));
    }

    private void own(String name, String text) throws IOException {
        Files.writeString(templates.resolve(name), text);
    }

    private Run build() {
        return Run.of("build", "plans", "--out", site, "--templates", templates);
    }
}
