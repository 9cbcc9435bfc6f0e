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
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import understorey.Pipe;
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

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        ";<#macro a>;<@a/></#macro><@a/>                                    | 2:1: error: this template uses itself without end",
        ";<#function f x>;<#return f(x + 1)></#function>;${f(1)}             | 2:1: error: this template uses itself without end",
        "<h1>;<#list 1.. as x></#list>                                      | 2:1: error: this template goes on without end",
        "<#list 1..9999 as x>;<#list 1..9999 as y></#list></#list>          | 2:1: error: this template goes on without end",
        "<#list 1.. as x>;${x?left_pad(100000)}</#list>                     | 2:1: error: this template makes a page of more than 20 million characters",
        "<#include \"index.ftlh\">                                          | 1:1: error: this template uses itself without end"})
    void thatGoOnWithoutEndAreToldByTheirPlaceAndNothingIsTouched(String template, String says) throws IOException {
        own("index.ftlh", template.replace(";", "\n"));
        Run run = build();
        assertEquals(1, run.exit());
        assertTrue(run.err().startsWith("templates/index.ftlh:" + says + "\n"), run.err());
        assertEquals(1, run.err().lines().filter(line -> line.contains(": error: ")).count());
        assertFalse(run.showsItsInside(), run.err());
        assertFalse(Files.exists(site));
    }

    @Test
    void thatGoOnWithoutEndInAPartTheyImportAreToldOnceForAllTrips() throws IOException {
        own("part.ftlh", "<#macro a>\n<#list 1.. as x></#list></#macro>");
        own("plan.ftl", "<#import \"part.ftlh\" as part><@part.a/>");
        Run run = build();
        assertEquals(1, run.exit());
        assertTrue(run.err().startsWith("templates/part.ftlh:2:1: error: this template goes on without end\n"), run.err());
        assertEquals(1, run.err().lines().filter(line -> line.contains("without end")).count(), run.err());
    }

    @Test
    void thatFailAtOneTripLeaveTheOthersTheirPages() throws IOException {
        assertEquals(0, build().exit());
        own("plan.ftl", "${page.slug!}<#if page.title?contains(\"red sand\")>${page.nothing}</#if>");
        Run run = build();
        assertEquals(1, run.exit());
        assertTrue(run.err().startsWith("templates/plan.ftl:1:"), run.err());
        assertTrue(run.err().contains("\nnot built: " + Path.of("plans", "paper-stars-on-red-sand.yaml") + "\n3 trips: "), run.err());
        assertTrue(Files.readString(site.resolve("paper-stars-on-red-sand/plan.md")).length() > 1000, "the earlier page");
        assertTrue(Files.readString(site.resolve("first-light-in-the-ramsons/plan.md")).length() < 1000);
    }

    @ParameterizedTest
    @ValueSource(strings = {"style.css", "index.ftlh", "sentences-day.txt", "part.ftl"})
    void thatAreLinksOutOfTheirFolderAreRefused(String name) throws IOException {
        Path secret = Files.writeString(home.resolve("secret"), "my secret");
        Files.createSymbolicLink(templates.resolve(name), secret);
        Run run = build();
        assertEquals(1, run.exit());
        assertEquals("templates/" + name + ": error: this is a link out of the folder of templates: put a copy in its place\n"
                + "1 error, 0 warnings\n", run.err());
        assertFalse(Files.exists(site));
    }

    @Test
    void inAFolderOfTheirsMayBeNoLinkOutEither() throws IOException {
        Files.writeString(home.resolve("secret.ftlh"), "my secret");
        Files.createDirectory(templates.resolve("parts"));
        Files.createSymbolicLink(templates.resolve("parts/secret.ftlh"), home.resolve("secret.ftlh"));
        own("index.ftlh", "<#include \"parts/secret.ftlh\">");
        Run run = build();
        assertEquals(1, run.exit());
        assertTrue(run.err().startsWith("templates/index.ftlh:1:1: error: "), run.err());
        assertFalse(run.showsItsInside() || Files.exists(site), run.err());
    }

    @Test
    void mayBeALinkWithinTheirFolder() throws IOException {
        own("mine.css", "p { color: teal }");
        Files.createSymbolicLink(templates.resolve("style.css"), Path.of("mine.css"));
        assertEquals(0, build().exit());
        assertTrue(Files.readString(site.resolve("index.html")).contains("teal"));
    }

    @Test
    void thatAreNoTextOrNoFileAreTold() throws Exception {
        Files.write(templates.resolve("style.css"), new byte[] {(byte) 0xff});
        assertTrue(build().err().startsWith("templates/style.css: error: this file is not UTF-8 text"));
        Files.write(templates.resolve("style.css"), new byte[1_000_001]);
        assertTrue(build().err().startsWith("templates/style.css: error: this file is larger than 1 MB"));
        Files.delete(templates.resolve("style.css"));
        Pipe.at(templates.resolve("style.css"));
        assertTrue(build().err().startsWith("templates/style.css: error: this is not an ordinary file"));
    }

    @Test
    void withALinkThatLeadsNowhereAreToldSo() throws IOException {
        own("index.ftlh", "<a href=\"nowhere.html\">x</a>");
        Run run = build();
        assertEquals(1, run.exit());
        assertTrue(run.err().startsWith("index.html: error: broken link 'nowhere.html'\n"), run.err());
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
