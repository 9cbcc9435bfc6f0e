package understorey.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentSkipListSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import understorey.Tree;
import understorey.brief.Brief;
import understorey.brief.Planner;
import understorey.plan.Display;
import understorey.plan.Share;
import understorey.plan.Trip;
import understorey.preview.Shelf;

/** After every save the shelf holds what a build of the folder writes, and only what the saved file changes was planned again. */
class RebuildTest {

    private static final String SITE = "site: %s\nlatitude: 52.337\nlongitude: -3.548\ntime_zone: Europe/London\n";
    private static final String TRIP = """
            trip: Trip %s
            site: %s
            date: 2027-05-0%d
            gear: phone
            shots:
              - {name: The carpet, subject: ramsons}
            """;

    @TempDir
    private Path home;
    private Path plans;
    private Path templates;
    private final ByteArrayOutputStream said = new ByteArrayOutputStream();
    private final Terminal terminal = new Terminal(System.out, new PrintStream(said, true, StandardCharsets.UTF_8), false);
    private final Shelf shelf = new Shelf();
    private final Set<String> planned = new ConcurrentSkipListSet<>();
    private Rebuild rebuild;

    @BeforeEach
    void buildOnce() throws IOException {
        plans = home.resolve("plans");
        templates = Files.createDirectories(home.resolve("templates"));
        write("sites/oak.yaml", SITE.formatted("Oak"));
        write("sites/ash.yaml", SITE.formatted("Ash"));
        write("a.yaml", TRIP.formatted("a", "oak", 1));
        write("b.yaml", TRIP.formatted("b", "ash", 2));
        write("c.yaml", TRIP.formatted("c", "{site: Own, latitude: 52, longitude: -3, time_zone: Europe/London}", 3));
        write("d.yaml", TRIP.formatted("d", "oak", 4));
        rebuild = new Rebuild(this::plan, plans, Share.Audience.PRIVATE, templates, null, shelf, terminal);
        run();
        assertEquals(Set.of("a", "b", "c", "d"), planned);
        planned.clear();
    }

    private Brief plan(Trip trip) {
        planned.add(trip.slug());
        return Planner.brief(trip);
    }

    private void write(String name, String text) throws IOException {
        Files.createDirectories(plans.resolve(name).getParent());
        Files.writeString(plans.resolve(name), text);
    }

    private void run() {
        rebuild.run(Progress.none(terminal));
    }

    /** Runs and compares with a build into a fresh folder; which trips were planned again. */
    private Set<String> again() throws IOException {
        planned.clear();
        run();
        Path out = Files.createTempDirectory(home, "site");
        assertEquals(0, Run.of("build", plans, "--templates", templates, "--out", out).exit());
        shows(shelf, out);
        return new TreeSet<>(planned);
    }

    private static void shows(Shelf shelf, Path out) {
        Tree.of(out).forEach((name, text) -> {
            if (!text.equals("folder") && !name.startsWith(".")) {
                assertEquals(text, new String(shelf.page(name), StandardCharsets.UTF_8), name);
            }
        });
    }

    private String faults() throws InterruptedException {
        return shelf.await("", new Shelf.Shown("any", ""), 1).faults();
    }

    private String page(String name) {
        byte[] page = shelf.page(name);
        return page == null ? null : new String(page, StandardCharsets.UTF_8);
    }

    @Test
    void plansNothingWhereNothingChanged() throws IOException {
        write("a.yaml", TRIP.formatted("a", "oak", 1) + "# a comment\n");
        assertEquals(Set.of(), again());
    }

    @Test
    void plansOneTripAgainAndLeadsFromItsNeighboursToIt() throws IOException {
        write("b.yaml", TRIP.formatted("renamed", "ash", 2));
        assertEquals(Set.of("b"), again());
        assertTrue(page("a/index.html").contains("Trip renamed") && page("index.html").contains("Trip renamed"));
    }

    @Test
    void plansTheTripsToASiteAgain() throws IOException {
        write("sites/oak.yaml", SITE.formatted("Old Oak"));
        assertEquals(Set.of("a", "d"), again());
        assertTrue(page("sites/oak.html").contains("Old Oak"));
    }

    @Test
    void plansTheTripsWithABagAgain() throws IOException {
        String bag = Files.readString(Path.of("plans/gear/pocket-phone.yaml"));
        write("gear/bag.yaml", bag);
        write("a.yaml", TRIP.formatted("a", "oak", 1).replace("gear: phone", "gear: bag"));
        assertEquals(Set.of("a"), again());
        write("gear/bag.yaml", bag.replaceFirst("gear: .*", "gear: Other bag"));
        assertEquals(Set.of("a"), again());
        assertTrue(page("gear/bag.html").contains("Other bag"));
    }

    @Test
    void plansTheTripsWithATableAgain() throws IOException {
        write("hours.csv", "time,wind\n06:00,1 m/s\n09:00,2 m/s\n");
        write("a.yaml", TRIP.formatted("a", "oak", 1) + "forecast: hours.csv\n");
        assertEquals(Set.of("a"), again());
        write("hours.csv", "time,wind\n06:00,9 m/s\n09:00,2 m/s\n");
        assertEquals(Set.of("a"), again());
    }

    @Test
    void makesEveryPageAgainForATemplateAndPlansNothing() throws IOException {
        Files.writeString(templates.resolve("plan.ftl"), "A new look: ${page.title}");
        assertEquals(Set.of(), again());
        assertTrue(page("c/index.html").contains("A new look: Trip c"), page("c/index.html"));
        Files.delete(templates.resolve("plan.ftl"));
        again();
    }

    /** Pages that trips share are in the units that all of them have, so one trip decides whether they are made again. */
    @Test
    void makesSharedPagesAgainWhenTheLastTripHasTheOtherClock() throws IOException {
        for (String name : List.of("a", "b", "c")) {
            write(name + ".yaml", Files.readString(plans.resolve(name + ".yaml")) + "clock: 12\nunits: imperial\n");
        }
        assertEquals(Set.of("a", "b", "c"), again());
        assertTrue(page("a/index.html").contains("mph") && !page("index.html").contains("\u00a0am"));
        write("d.yaml", Files.readString(plans.resolve("d.yaml")) + "clock: 12\nunits: imperial\n");
        assertEquals(Set.of("d"), again());
        assertTrue(page("d/index.html").contains("mph") && page("index.html").contains("\u00a0am"));
    }

    @Test
    void showsAllTripsInTheUnitsOfTheCommandLine() {
        Shelf feet = new Shelf();
        new Rebuild(Planner::brief, plans, Share.Audience.PRIVATE, null, Display.UnitSystem.IMPERIAL, feet, terminal).run(Progress.none(terminal));
        assertTrue(new String(feet.page("a/index.html"), StandardCharsets.UTF_8).contains("mph"));
    }

    @Test
    void followsFilesThatComeAndGo() throws IOException {
        write("e.yaml", TRIP.formatted("e", "oak", 5));
        assertEquals(Set.of("e"), again());
        Files.delete(plans.resolve("b.yaml"));
        assertEquals(Set.of(), again());
        assertNull(page("b/index.html"));
        write("b.yaml", TRIP.formatted("b", "ash", 2));
        assertEquals(Set.of("b"), again());
    }

    @Test
    void leavesTheLastGoodPageOfAPlanWithFaultsAndShowsThem() throws Exception {
        String good = page("a/index.html");
        write("a.yaml", TRIP.formatted("a", "oak", 1).replace("2027-05-01", "8 May"));
        run();
        assertEquals(good, page("a/index.html"));
        String expected = "plans/a.yaml:3:7: error: 'date' must be a date, not the text \"8 May\"\n    date: 8 May\n          ^^^^^\n"
                + "    fix: year, month and day, for example 2027-05-08";
        assertTrue(said.toString(StandardCharsets.UTF_8).startsWith(expected), said.toString(StandardCharsets.UTF_8));
        assertEquals(expected, faults());
        run();
        assertEquals(1, said.toString(StandardCharsets.UTF_8).split("must be a date", -1).length - 1, "the same fault is said once");
        write("a.yaml", TRIP.formatted("a", "oak", 1));
        assertEquals(Set.of("a"), again());
        assertEquals("", faults());
    }

    @Test
    void showsAFaultInATemplateOverTheLastGoodPages() throws Exception {
        String good = page("a/index.html");
        Files.writeString(templates.resolve("plan.ftl"), "<#if>");
        run();
        assertTrue(faults().contains("plan.ftl:1:"), faults());
        assertEquals(good, page("a/index.html"));
        Files.delete(templates.resolve("plan.ftl"));
        assertEquals(Set.of(), again());
        assertEquals("", faults());
    }

    /** A trip that a public page may not show loses its page, and gets it back with the text that it had. */
    @Test
    void takesAwayAPageThatWouldGiveAPlaceAway() throws Exception {
        String open = TRIP.formatted("a", "oak", 1) + "share: {audience: public}\nstory: Quiet\n";
        write("sites/oak.yaml", SITE.formatted("Oak") + "sensitive: true\npublic_name: A wood\n");
        write("d.yaml", TRIP.formatted("d", "ash", 4));
        write("a.yaml", open);
        again();
        write("a.yaml", open.replace("Quiet", "At 52.337, -3.548"));
        run();
        assertNull(page("a/index.html"), faults());
        write("a.yaml", open);
        again();
        assertTrue(page("a/index.html").contains("Quiet"));
    }

    @Test
    void isTheDemoAsCommitted() {
        Shelf demo = new Shelf();
        new Rebuild(Planner::brief, Path.of("plans"), Share.Audience.PRIVATE, null, null, demo, terminal).run(Progress.none(terminal));
        shows(demo, Path.of("site-out"));
    }
}
