package understorey.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import understorey.pages.templates.Templates;
import understorey.pages.words.BuiltInTemplates;
import understorey.pages.words.Sentences;
import understorey.plan.Display;
import understorey.reading.Plans;
import understorey.reading.PlansReader;
import understorey.yaml.finding.Finding;

/** The documents of the project, which are the manual of every site. */
class ManualTest {

    private static final Path DOCS = Path.of("src", "docs");
    private static final String MODEL = "\n## What a template sees\n";
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#\\\\\\s]*)(?:\\\\?#([^)\\s]+))?\\)");
    private static final String SITE = "site: Long Copse\nlatitude: 51.482\nlongitude: -1.204\ntime_zone: Europe/London\n";
    private static final String TRIP = """
            trip: A trip
            site: long-copse
            gear: phone
            shots: [{name: The carpet, subject: bluebell}]
            """;

    @TempDir
    private Path folder;

    @Test
    void hasEveryDocumentAsAChapter() throws IOException {
        Set<String> files = new TreeSet<>();
        for (Path file : documents()) {
            files.add(file.getFileName().toString().replace(".md", ""));
        }
        Set<String> chapters = Chapter.all().stream().map(Chapter::name).collect(Collectors.toCollection(TreeSet::new));
        chapters.addAll(List.of("format", "methods"));
        assertEquals(files, chapters);
    }

    @Test
    void everyLinkAmongTheDocumentsLeadsToAFileAndAHeading() throws IOException {
        List<Path> files = new ArrayList<>(documents());
        files.add(Path.of("README.md"));
        int links = 0;
        for (Path file : files) {
            Matcher link = LINK.matcher(Files.readString(file));
            while (link.find()) {
                Path to = link.group(1).isEmpty() ? file : file.resolveSibling(link.group(1));
                assertTrue(Files.exists(to), file + " links to " + link.group());
                assertTrue(link.group(2) == null || headings(to).contains(link.group(2)), file + " links to " + link.group());
                links++;
            }
        }
        assertTrue(links > 100, "only " + links);
    }

    /** As common Markdown readers name headings: small letters, hyphens for blanks, other signs left out. */
    private static Set<String> headings(Path file) throws IOException {
        return Pattern.compile("(?m)^#+ (.*)$").matcher(Files.readString(file)).results()
                .map(heading -> heading.group(1).toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\d -]", "").replace(' ', '-'))
                .collect(Collectors.toSet());
    }

    @Test
    void turnsLinksAmongChaptersIntoLinksAmongPages() {
        Chapter order = Chapter.all().stream().filter(chapter -> chapter.name().equals("when-to-go")).findFirst().orElseThrow();
        assertTrue(order.html().contains("href=\"methods.html#flowers\""), order.html());
        assertTrue(order.html().contains("<h2 id=\"the-days-you-have\">"), order.html());
        assertFalse(order.html().contains(".md"), order.html());
    }

    @Test
    void everyExampleReadsWithoutAFinding() throws IOException {
        int examples = 0;
        for (Path file : documents()) {
            Matcher block = Pattern.compile("(?ms)^```yaml\\n(.*?)^```$").matcher(Files.readString(file));
            while (block.find()) {
                assertEquals(List.of(), findings(block.group(1)).stream().map(Finding::plain).toList(), file.toString());
                examples++;
            }
        }
        assertEquals(4, examples);
    }

    private List<Finding> findings(String example) throws IOException {
        Path plans = Files.createTempDirectory(folder, "plans");
        Files.createDirectories(plans.resolve("sites"));
        Files.copy(Path.of("plans", "sites", "gorsewell-daily-means.csv"), plans.resolve("sites/gorsewell-daily-means.csv"));
        boolean site = example.startsWith("site:");
        boolean trip = example.startsWith("trip:");
        String spots = trip ? "spots: [{name: Old beech}]\n" : "";
        Files.writeString(plans.resolve("sites/long-copse.yaml"), site ? example : SITE + spots + (example.startsWith("season:") ? example : ""));
        Files.writeString(plans.resolve("trip.yaml"), trip ? example : TRIP + (example.startsWith("dates:") ? example : "date: 2027-05-02\n"));
        Plans read = PlansReader.read(plans);
        assertEquals(1, read.trips().size(), read.findings().toString());
        return read.findings();
    }

    @Test
    void everyTermOfTheGlossaryIsOnAPage() throws IOException {
        StringBuilder pages = new StringBuilder(Files.readString(Path.of("templates", "sentences-pictures.txt")));
        try (Stream<Path> files = Files.walk(Path.of("site-out"))) {
            for (Path file : files.filter(file -> file.toString().matches(".*/(index|field-sheet|day-bag|gorsewell-dingle|methods)\\.html|.*plan\\.md")).toList()) {
                pages.append(Files.readString(file).replaceAll("<[^>]*>", " ").replace('\u00a0', ' '));
            }
        }
        List<String> terms = Pattern.compile("(?m)^- \\*\\*(.*?):\\*\\*").matcher(Files.readString(DOCS.resolve("glossary.md"))).results()
                .flatMap(found -> Stream.of(found.group(1).toLowerCase(Locale.ROOT).split(", "))).toList();
        String read = pages.toString().toLowerCase(Locale.ROOT);
        assertEquals(List.of(), terms.stream().filter(term -> !read.contains(term)).toList());
        assertTrue(terms.size() > 50, "only " + terms.size());
    }

    @Test
    void methodsInTheDocumentsAreThoseOfThePage() throws IOException {
        expect(DOCS.resolve("methods.md"), new Templates(null).markdown("methods.md.ftl",
                MethodsPage.of(Templates.html(""), Sentences.of(BuiltInTemplates::text, Display.USUAL))));
    }

    @Test
    void valuesOfTheTemplatesAreThoseOfTheRecords() throws IOException {
        Path file = DOCS.resolve("templates.md");
        String before = Files.readString(file).split("(?m)^### ", 2)[0].stripTrailing();
        assertTrue(before.contains(MODEL));
        expect(file, before + "\n" + TemplateModel.markdown());
    }

    /** Every template that is a page has its values listed; the others are macros. */
    @Test
    void valuesOfEveryTemplateAreListed() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("templates"))) {
            Set<String> pages = files.map(file -> file.getFileName().toString()).filter(name -> name.matches(".*\\.ftlh?")).collect(Collectors.toSet());
            pages.removeAll(Set.of("layout.ftlh", "html.ftlh", "markdown.ftl"));
            assertEquals(TemplateModel.PAGES.keySet(), pages);
        }
    }

    private static void expect(Path file, String made) throws IOException {
        if ("write".equals(System.getProperty("expectations"))) {
            Files.writeString(file, made);
        }
        assertEquals(Files.readString(file), made, "after a look, -Dexpectations=write accepts it");
    }

    private static List<Path> documents() throws IOException {
        try (Stream<Path> files = Files.list(DOCS)) {
            return files.filter(file -> file.toString().endsWith(".md")).sorted().toList();
        }
    }
}
