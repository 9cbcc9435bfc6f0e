package understorey.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import understorey.brief.Brief;
import understorey.brief.Planner;
import understorey.pages.Page;
import understorey.plan.Share;
import understorey.plan.Trip;
import understorey.reading.PlansReader;
import understorey.yaml.finding.Finding;

/** Trips made by several threads: what comes of them is as if one thread made them in their order. */
class SiteBuildTest {

    private static final String QUICK = """
            trip: Trip %s
            site: {site: Wood %s, latitude: 52.337, longitude: -3.548, time_zone: Europe/London}
            date: 2027-05-08
            gear: phone
            shots:
              - {name: The floor, subject: ramsons}
            """;

    @TempDir
    private Path home;
    private Path templates;
    private final Terminal terminal = new Terminal(System.out, new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8), false);
    /** The first trip is planned last of the first four. */
    private final CountDownLatch fourth = new CountDownLatch(1);

    private record Built(SiteBuild.Made made, List<Finding> findings, SortedMap<Integer, List<Page>> pages) {
    }

    @BeforeEach
    void writeTrips() throws IOException {
        templates = Files.createDirectory(home.resolve("templates"));
        for (char trip = 'a'; trip <= 'k'; trip++) {
            Files.writeString(home.resolve(trip + ".yaml"), QUICK.formatted(trip, trip > 'h' ? "h" : trip));
        }
    }

    @Test
    void isTheSameWithOneThreadAndWithFour() throws IOException {
        Files.writeString(templates.resolve("plan.ftl"), "<#if page.title == \"Trip e\">${page.nothing}</#if>");
        Built one = build(1, (turn, pages) -> true);
        Built four = build(4, (turn, pages) -> true);
        assertEquals(one, four);
        assertEquals(List.of("a", "c", "d", "f", "g", "h", "i", "j", "k"),
                one.made().trips().stream().map(trip -> trip.card().slug()).toList());
        assertEquals(List.of("b", "e"), one.made().failed().stream().map(Trip::slug).toList());
        assertEquals(2, one.findings().size());
        assertTrue(one.findings().get(0).file().endsWith("b.yaml") && one.findings().get(1).file().endsWith("plan.ftl"));
    }

    @Test
    void namesTheSameEndlessTemplateWithOneThreadAndWithFour() throws IOException {
        Files.writeString(templates.resolve("plan.ftl"),
                "<#if page.title == \"Trip c\">\n<#list 1.. as x></#list><#elseif page.title == \"Trip d\"><#list 1.. as x></#list></#if>");
        Built one = build(1, (turn, pages) -> true);
        assertEquals(2, one.findings().get(1).line());
        assertFalse(one.made().whole());
        Built four = build(4, (turn, pages) -> true);
        assertEquals(one.made(), four.made());
        assertEquals(one.findings(), four.findings());
    }

    @Test
    void stopsAtTheFirstTripThatCannotBeStored() {
        for (int threads : new int[] {1, 4}) {
            Built built = build(threads, (turn, pages) -> turn < 3);
            assertEquals(List.of("a", "c", "d"), built.made().trips().stream().map(trip -> trip.card().slug()).toList());
            assertTrue(built.made().whole(), "what stopped it is for the publisher to say");
            assertFalse(built.pages().containsKey(10));
        }
    }

    /** Trips of one day are in the order of their names. */
    @Test
    void leadsFromEachPlanToItsNeighboursAlsoWhenItIsBuiltAlone() throws IOException {
        Files.writeString(templates.resolve("plan.ftl"), "${(page.previous.name)!\"none\"} | ${(page.next.text)!\"none\"}");
        List<Page> whole = build(2, (turn, pages) -> true).pages().get(2);
        assertEquals("8 May, Trip b | ../d/index.html", whole.get(0).content());
        assertEquals(whole, build(home.resolve("c.yaml"), 2, (turn, pages) -> true).pages().get(0));
        assertEquals("none | ../b/index.html", build(home.resolve("a.yaml"), 1, (turn, pages) -> true).pages().get(0).get(0).content());
    }

    private Built build(int threads, SiteBuild.Sink sink) {
        return build(home, threads, sink);
    }

    private Built build(Path plans, int threads, SiteBuild.Sink sink) {
        SortedMap<Integer, List<Page>> pages = new ConcurrentSkipListMap<>(Map.of());
        SiteBuild.Made made = new SiteBuild(Progress.none(terminal), trip -> plan(trip, threads), Recall.NOTHING, threads)
                .make(PlansReader.read(plans), Share.Audience.PRIVATE, templates, null, null, (turn, these) -> {
                    pages.put(turn, these);
                    return sink.stage(turn, these);
                });
        return new Built(made, new ArrayList<>(made.findings()), pages);
    }

    private Brief plan(Trip trip, int threads) {
        if (trip.slug().equals("a") && threads > 1) {
            try {
                fourth.await();
            } catch (InterruptedException stop) {
                throw new IllegalStateException(stop);
            }
        }
        if (trip.slug().equals("b")) {
            throw new ArithmeticException("/ by zero");
        }
        Brief brief = Planner.brief(trip);
        if (trip.slug().equals("d")) {
            fourth.countDown();
        }
        return brief;
    }
}
