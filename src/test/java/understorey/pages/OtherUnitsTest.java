package understorey.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import understorey.brief.Brief;
import understorey.plan.Display;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.Spot;
import understorey.plan.Trip;
import understorey.reading.Plans;

/** Every figure and every time that readers see is in the units and on the clock of the trip; programs see neither. */
class OtherUnitsTest {

    private static final Display OTHER = new Display(Display.UnitSystem.IMPERIAL, Display.Clock.HOURS_12);
    private static final Plans DEMO = Briefs.demo();
    private static final Pattern METRIC = Pattern.compile(".{0,8}(?:\\d[\u00a0 ]?(?:m|cm|km|g|kg|°C|m/s|mm|km/h)\\b|\\bm²|°C|m/s).{0,4}");
    private static final Pattern IMPERIAL = Pattern.compile("\\d\u00a0(?:ft|in|yd|lb|oz|mph|°F|miles?)\\b");
    /** Focal lengths and filter threads, which stay as they are. */
    private static final Pattern MILLIMETRES = Pattern.compile("[\\d.]+[\u00a0 ]mm\\b");
    /** On a clock of 24 hours, or one that lacks its half of the day. */
    private static final Pattern HOURS_24 = Pattern.compile(".{0,12}\\b(?:[01]\\d|2[0-3]|\\d):[0-5]\\d\\b(?!(?:[\u00a0 ]|–[\\d:]+[\u00a0 ])[ap]m\\b).{0,6}");
    private static final Pattern HOURS_12 = Pattern.compile("\\b1?\\d:[0-5]\\d[\u00a0 ][ap]m\\b");
    private static final Pattern LABEL = Pattern.compile("<[^>]*?(?:aria-label|content|title|alt)=\"([^\"]*)\"[^>]*>");

    @Test
    void imperialTripsLeaveNoMetricFigureForReaders() throws IOException {
        String written = written();
        List<String> metric = new ArrayList<>();
        long imperial = 0;
        for (Page page : forReaders(pages(OTHER, OTHER))) {
            String text = text(page);
            imperial += IMPERIAL.matcher(text).results().count();
            METRIC.matcher(text).results().map(MatchResult::group).filter(found -> !MILLIMETRES.matcher(found).find() && !written.contains(found))
                    .forEach(found -> metric.add(page.path() + ": " + found));
        }
        assertEquals(List.of(), List.copyOf(new TreeSet<>(metric)));
        assertTrue(imperial > 1000, imperial + " figures");
    }

    @Test
    void metricTripsHaveNoFigureInOtherUnits() {
        for (Page page : forReaders(pages(Display.USUAL, Display.USUAL))) {
            String text = text(page);
            assertEquals(List.of(), IMPERIAL.matcher(text).results().map(MatchResult::group).toList(), page.path());
            assertEquals(List.of(), HOURS_12.matcher(text).results().map(MatchResult::group).toList(), page.path());
        }
    }

    @Test
    void aClockOfTwelveHoursLeavesNoTimeOnTheOther() {
        String texts = DEMO.trips().stream().flatMap(OtherUnitsTest::texts).map(text -> text.replaceAll("\\s+", " ")).collect(Collectors.joining("\n"));
        List<String> others = new ArrayList<>();
        long twelve = 0;
        for (Page page : forReaders(pages(OTHER, OTHER))) {
            String text = text(page);
            twelve += HOURS_12.matcher(text).results().count();
            HOURS_24.matcher(text).results().map(MatchResult::group).filter(found -> !texts.contains(found.strip()))
                    .forEach(found -> others.add(page.path() + ": " + found));
        }
        assertEquals(List.of(), List.copyOf(new TreeSet<>(others)));
        assertTrue(twelve > 1000, twelve + " times");
    }

    @Test
    void filesForProgramsAreTheSame() {
        List<Page> usual = pages(Display.USUAL, Display.USUAL);
        List<Page> other = pages(OTHER, OTHER);
        for (int i = 0; i < usual.size(); i++) {
            String path = usual.get(i).path();
            assertEquals(path, other.get(i).path());
            if (path.endsWith(".json") || path.endsWith(".gpx")) {
                assertEquals(usual.get(i).content(), other.get(i).content(), path);
            } else if (path.endsWith(".ics")) {
                assertEquals(data(usual.get(i)), data(other.get(i)), path);
            }
        }
    }

    @Test
    void sharedPagesAreInTheirOwnUnitsWhateverThoseOfTheirTrips() {
        List<String> own = shared(pages(Display.USUAL, Display.USUAL));
        assertEquals(own, shared(pages(OTHER, Display.USUAL)));
        assertNotEquals(own, shared(pages(OTHER, OTHER)));
    }

    private static List<String> shared(List<Page> pages) {
        return pages.stream().filter(page -> page.path().matches("[^/]*\\.html|(?:sites|gear)/.*")).map(Page::content).toList();
    }

    private static List<Page> pages(Display trips, Display shared) {
        List<Brief> briefs = DEMO.trips().stream().map(trip -> Trips.brief(trip.shown(trips))).toList();
        return Briefs.pages(SitePages.open(null, Address.of("https://example.org/woods"), shared), briefs, DEMO.sites(), DEMO.bags(), DEMO.subjects());
    }

    private static List<Page> forReaders(List<Page> pages) {
        return pages.stream().filter(page -> !Briefs.manual(page) && page.path().endsWith(".html") || page.path().endsWith(".md") || page.path().endsWith(".ics")).toList();
    }

    /** The lines of a calendar that are no text. */
    private static List<String> data(Page calendar) {
        return calendar.content().replace("\r\n ", "").lines().filter(line -> !line.startsWith("DESCRIPTION")).toList();
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

    /** The free text of a trip and its site, without what the tool words itself. */
    private static Stream<String> texts(Trip trip) {
        Site site = trip.site();
        return Stream.of(Stream.of(trip.title(), trip.story(), site.access(), site.notes()), site.cautions().stream(), site.spots().stream().map(Spot::notes),
                trip.shots().stream().map(Shot::notes), trip.shots().stream().map(Shot::otherwise)).flatMap(texts -> texts).filter(Objects::nonNull);
    }

    /** What is read of a page: its text, and the titles and labels of its drawings. */
    private static String text(Page page) {
        return !page.path().endsWith(".html") ? page.content().replace("\r\n ", "")
                : LABEL.matcher(page.content().replaceAll("(?s)<style>.*?</style>|</?b>", "")).replaceAll("\n$1\n").replaceAll("<[^>]*>", "\n");
    }
}
