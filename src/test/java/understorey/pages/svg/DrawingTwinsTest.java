package understorey.pages.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The title and description of each drawing of the demo give its figures to a reader who cannot see it. */
class DrawingTwinsTest {

    private static final Pattern DRAWING = Pattern.compile("<svg\\b[^>]*role=\"img\" aria-labelledby=\"([\\w-]+)-t \\1-d\"[^>]*>(.*?)</svg>", Pattern.DOTALL);
    private static final Pattern TWIN = Pattern.compile("^\\n<title id=\"[\\w-]+-t\">([^<]+)</title>\\n<desc id=\"[\\w-]+-d\">([^<]+)</desc>\\n");
    /** Words of a drawing but for those of its scales, whose class begins with "figure". */
    private static final Pattern WORDS = Pattern.compile("<text(?! class=\"figure)[^>]*>([^<]*)</text>");
    private static final Pattern FIGURE = Pattern.compile("\\d+(?:[.:]\\d+)?");

    @Test
    void everyFigureInADrawingIsInItsTitleOrDescription() throws IOException {
        List<String> missing = new ArrayList<>();
        Set<String> kinds = new TreeSet<>();
        int figures = 0;
        for (Path file : pages()) {
            Matcher drawing = DRAWING.matcher(Files.readString(file));
            while (drawing.find()) {
                Matcher twin = TWIN.matcher(drawing.group(2));
                assertTrue(twin.find(), drawing.group(1) + " of " + file);
                kinds.add(drawing.group(1).replaceAll("[\\d-].*", ""));
                Set<String> said = figures(twin.group(1) + " " + twin.group(2));
                for (String words : WORDS.matcher(drawing.group(2)).results().map(found -> found.group(1)).toList()) {
                    figures += figures(words).size();
                    figures(words).stream().filter(figure -> !said.contains(figure))
                            .forEach(figure -> missing.add(file + ", " + twin.group(1) + ": " + words));
                }
                assertTrue(!said.isEmpty(), twin.group(1) + " of " + file + " gives no figure");
            }
        }
        assertEquals(List.of(), missing);
        assertEquals(Set.of("cover", "season", "side", "skyline", "sketch", "spot"), kinds);
        assertTrue(figures > 100, figures + " figures");
    }

    /** A drawing without a twin is part of a figure that has one, or repeats a drawing. */
    @Test
    void everyDrawingHasATwinOrIsHidden() throws IOException {
        for (Path file : pages()) {
            String text = Files.readString(file);
            for (String figure : List.of("<div role=\"img\" aria-label=\"", "<div class=\"rib lead\" aria-hidden=\"true\">")) {
                text = text.replaceAll("(?s)" + figure + ".*?</section>", "");
            }
            assertEquals(List.of(), Pattern.compile("<svg\\b[^>]*>").matcher(text).results().map(MatchResult::group)
                    .filter(svg -> !svg.contains("role=\"img\"") && !svg.contains("aria-hidden=\"true\"")).toList(), file.toString());
        }
    }

    private static Set<String> figures(String text) {
        return FIGURE.matcher(text).results().map(MatchResult::group).collect(Collectors.toSet());
    }

    private static List<Path> pages() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("site-out"))) {
            return files.filter(file -> file.toString().endsWith(".html")).sorted().toList();
        }
    }
}
