package understorey.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import understorey.brief.Brief;
import understorey.pages.words.Units;
import understorey.reading.Plans;

/** Every figure that readers see goes through the units, so that another set of them is one class. */
class OtherUnitsTest {

    private static final Plans DEMO = Briefs.demo();
    private static final Pattern METRIC = Pattern.compile(".{0,8}(?:\\d[\u00a0 ](?:m|cm|km|g|kg|°C|m/s|mm)\\b|\\bm²|°C|m/s).{0,4}");
    /** Focal lengths and filter threads, which stay as they are. */
    private static final Pattern MILLIMETRES = Pattern.compile("[\\d.]+[\u00a0 ]mm\\b");
    private static final Pattern LABEL = Pattern.compile("<[^>]*?aria-label=\"([^\"]*)\"[^>]*>");

    @Test
    void anotherSetOfUnitsLeavesNoMetricFigureForReaders() throws IOException {
        String written = written();
        List<String> metric = new ArrayList<>();
        int feet = 0;
        for (Page page : pages(new FootPoundUnits())) {
            String text = text(page);
            feet += (int) Pattern.compile("\u00a0(?:ft|in|lb|mph|°F|miles)\\b").matcher(text).results().count();
            METRIC.matcher(text).results().map(MatchResult::group).filter(found -> !MILLIMETRES.matcher(found).find() && !written.contains(found))
                    .forEach(found -> metric.add(page.path() + ": " + found));
        }
        assertEquals(List.of(), List.copyOf(new TreeSet<>(metric)));
        assertTrue(feet > 500, feet + " figures");
    }

    private static List<Page> pages(Units units) {
        List<Brief> briefs = DEMO.trips().stream().map(Trips::brief).toList();
        return Briefs.pages(SitePages.open(null, null, units), briefs, DEMO.sites(), DEMO.bags(), DEMO.subjects()).stream()
                .filter(page -> !page.path().equals("format.html")).filter(page -> page.path().endsWith(".html") || page.path().endsWith(".md") || page.path().endsWith(".ics")).toList();
    }

    /** What the authors of the plans and of the catalogue wrote. */
    private static String written() throws IOException {
        StringBuilder text = new StringBuilder(Files.readString(Path.of("src/main/resources/understorey/reading/subjects.csv")));
        try (Stream<Path> files = Files.walk(Path.of("plans"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                text.append(Files.readString(file).replaceAll("\\s+", " "));
            }
        }
        return text.toString();
    }

    /** What is read of a page: its text, and the titles and labels of its drawings. */
    private static String text(Page page) {
        return !page.path().endsWith(".html") ? page.content()
                : LABEL.matcher(page.content().replaceAll("(?s)<style>.*?</style>", "")).replaceAll("\n$1\n").replaceAll("<[^>]*>", "\n");
    }
}
