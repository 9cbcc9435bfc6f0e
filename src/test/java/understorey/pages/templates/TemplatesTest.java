package understorey.pages.templates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import understorey.pages.Briefs;
import understorey.pages.Page;
import understorey.pages.SitePages;
import understorey.pages.words.TemplateFault;
import understorey.plan.Display;

class TemplatesTest {

    record Leaf(String name, List<String> veins) {
    }

    record Holder(Object thing) {
    }

    private static final Leaf LEAF = new Leaf("a <b> & \"c\"", List.of("one", "two"));

    @TempDir
    Path folder;

    @Test
    void showsComponentsEscaped() throws IOException {
        assertEquals("a &lt;b&gt; &amp; &quot;c&quot;: one, two",
                filled("${page.name}: <#list page.veins as v>${v}<#sep>, </#list>"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"${\"freemarker.template.utility.Execute\"?new()(\"id\")}", "${page?api.name()}",
        "${page?api.class}", "${page.class}", "${page.getClass()}", "${page.getClass().getName()}", "${page.name()}",
        "${page.hashCode()}", "${page.toString()}", "${page.veins?api.size()}", "${page.veins.size()}",
        "${page.veins.class}", "${page.name.class}", "${page.name.getBytes()}", "${.data_model.page.class}"})
    void refusesToCallOrReachAnythingElse(String expression) {
        assertThrows(TemplateFault.class, () -> filled("x\n" + expression));
    }

    @ParameterizedTest
    @ValueSource(strings = {"<#include \"../secret.ftlh\">", "<#include \"/../secret.ftlh\">", "<#include \"SECRET\">",
        "<#import \"../secret.ftlh\" as s>", "<@.get_optional_template(\"SECRET\").include />"})
    void readsNoFileOutsideItsFolder(String line) throws IOException {
        Path secret = folder.resolve("secret.ftlh");
        Files.writeString(secret, "hidden words");
        Path own = Files.createDirectory(folder.resolve("own"));
        Files.writeString(own.resolve("own.ftlh"), line.replace("SECRET", secret.toString()));
        assertThrows(TemplateFault.class, () -> new Templates(own).fill("own.ftlh", LEAF));
    }

    /** What is evaluated is an expression of the template: it reaches no more than the template does. */
    @ParameterizedTest
    @ValueSource(strings = {"${\"page.getClass()\"?eval}", "${\"page?api.class\"?eval}",
        "<@\"<#assign x = 'freemarker.template.utility.Execute'?new()>\"?interpret />",
        "${\"'freemarker.template.utility.ObjectConstructor'?new()('java.io.File', 'x')\"?eval}"})
    void runsNoCodeInTextThatItEvaluates(String line) {
        assertThrows(TemplateFault.class, () -> filled(line));
    }

    @Test
    void blamesTheUsersMacrosForTheirOwnFault() throws IOException {
        write("own.ftlh", "\n<#import \"piece.ftlh\" as piece>\n<@piece.name of=page />");
        write("piece.ftlh", "<#macro name of>\n<b>${of.nmae}</b>\n</#macro>");
        TemplateFault fault = assertThrows(TemplateFault.class, () -> new Templates(folder).fill("own.ftlh", LEAF));
        assertEquals("templates/piece.ftlh:2:6: error: cannot fill in of.nmae", fault.plain());
    }

    @Test
    void refusesWhateverIsNoRecord() throws IOException {
        write("own.ftlh", "${page.thing.path}");
        Templates templates = new Templates(folder);
        for (Object thing : List.of(folder, Thread.currentThread(), String.class, Thread.State.NEW)) {
            assertThrows(TemplateFault.class, () -> templates.fill("own.ftlh", new Holder(thing)));
        }
    }

    @Test
    void stopsThePageAtAMissingValueAndSaysWhere() throws IOException {
        write("own.ftlh", "<p>\n  ${page.nmae}</p>");
        TemplateFault fault = assertThrows(TemplateFault.class, () -> new Templates(folder).fill("own.ftlh", LEAF));
        assertEquals("templates/own.ftlh:2:5: error: cannot fill in page.nmae", fault.plain());
    }

    @Test
    void saysWhereASyntaxErrorStands() throws IOException {
        write("own.ftlh", "<p>\n<#if page.name>open\n");
        TemplateFault fault = assertThrows(TemplateFault.class, () -> new Templates(folder).open("own.ftlh"));
        assertTrue(fault.plain().matches("(?s)templates/own\\.ftlh:\\d+:\\d+: error: .+"), fault.plain());
    }

    @Test
    void blamesTheImportedTemplateForItsOwnSyntaxError() throws IOException {
        write("own.ftlh", "\n\n<#import \"piece.ftlh\" as piece>");
        write("piece.ftlh", "${");
        TemplateFault fault = assertThrows(TemplateFault.class, () -> new Templates(folder).fill("own.ftlh", LEAF));
        assertTrue(fault.plain().startsWith("templates/piece.ftlh:1:"), fault.plain());
    }

    @Test
    void saysWhatAFaultWithoutAnExpressionIs() throws IOException {
        write("own.ftlh", "\n<#import \"absent.ftlh\" as piece>");
        TemplateFault absent = assertThrows(TemplateFault.class, () -> new Templates(folder).fill("own.ftlh", LEAF));
        assertTrue(absent.plain().startsWith("templates/own.ftlh:2:1: error: "), absent.plain());
        assertFalse(absent.plain().contains("null"), absent.plain());
        write("stop.ftlh", "a<#stop \"enough\">");
        TemplateFault stop = assertThrows(TemplateFault.class, () -> new Templates(folder).fill("stop.ftlh", LEAF));
        assertTrue(stop.plain().startsWith("templates/stop.ftlh:1:2: error: "), stop.plain());
        assertFalse(stop.plain().contains("null"), stop.plain());
    }

    @Test
    void setsTheUsersFilesInFrontOfItsOwn() throws IOException {
        write("index.ftlh", "<title>mine</title>");
        write("style.css", "p { color: teal }");
        List<Page> pages = Briefs.pages(SitePages.open(folder, null, Display.USUAL), Briefs.all().subList(0, 1), List.of(), List.of(), List.of());
        assertEquals("<title>mine</title>", content(pages, "index.html"));
        assertTrue(content(pages, "first-light/index.html").contains("color:teal"));
        assertTrue(content(pages, "first-light/index.html").contains("Light and weather"));
    }

    @Test
    void nothingInTheTemplatesStepsRoundEscaping() throws IOException {
        for (Path path : templates()) {
            String text = Files.readString(path);
            for (String banned : List.of("?no_esc", "noautoesc", "<#attempt", "<#include", "?new", "?api", "?eval",
                    "?interpret", "<#noescape", "output_format=\"XML\"")) {
                assertFalse(text.contains(banned), banned + " in " + path);
            }
            if (text.contains("plainText")) {
                assertTrue(path.toString().endsWith(".md.ftl"), path.toString());
            }
        }
    }

    @Test
    void noTemplateReckons() throws IOException {
        Pattern shown = Pattern.compile("\\$\\{([^}]*)}|<#(?:assign|local|global|return)\\s+([^>]*)>");
        Pattern sum = Pattern.compile("[+*/%]|(?<=[\\s\\w)])-(?=[\\s\\w(])|\\?(?:round|floor|ceiling|abs|number)\\b");
        int seen = 0;
        for (Path path : templates()) {
            Matcher matcher = shown.matcher(Files.readString(path));
            while (matcher.find()) {
                String expression = matcher.group(1) == null ? matcher.group(2) : matcher.group(1);
                String bare = expression.replaceAll("\"(?:\\\\.|[^\"\\\\])*\"", "\"\"");
                assertFalse(sum.matcher(bare).find(), matcher.group() + " in " + path);
                seen++;
            }
        }
        assertTrue(seen > 150, "only " + seen);
    }

    static List<Path> templates() throws IOException {
        try (Stream<Path> paths = Files.list(Path.of("templates"))) {
            return paths.filter(path -> path.toString().matches(".*\\.ftlh?$")).sorted().toList();
        }
    }

    private String filled(String template) throws IOException {
        write("own.ftlh", template);
        return new Templates(folder).fill("own.ftlh", LEAF);
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }

    private static String content(List<Page> pages, String path) {
        return pages.stream().filter(page -> page.path().equals(path)).findFirst().orElseThrow().content();
    }
}
