package understorey.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import picocli.CommandLine;
import understorey.Tree;
import understorey.brief.Brief;
import understorey.brief.Planner;
import understorey.plan.Trip;

/** A trip at which the tool itself fails: the others are built, and the pages of this one stay. */
class OddTripTest {

    private static final String QUICK = """
            trip: A quick look
            site: {site: %s, latitude: 52.337, longitude: -3.548, time_zone: Europe/London}
            date: 2027-05-08
            gear: phone
            shots:
              - {name: The floor, subject: ramsons}
            """;

    @TempDir
    private Path home;
    private Path plans;
    private Path site;

    /** What may go wrong in a plan that reads well. */
    enum Fault {
        NULL, SUM, STACK, MEMORY;

        private Brief raise() {
            switch (this) {
                case NULL -> throw new NullPointerException("no sky\nat all");
                case SUM -> throw new ArithmeticException("/ by zero");
                case STACK -> throw new StackOverflowError();
                default -> throw new OutOfMemoryError("Java heap space");
            }
        }
    }

    @BeforeEach
    void writeTwoTrips() throws IOException {
        plans = Files.createDirectory(home.resolve("plans"));
        site = home.resolve("site");
        Files.writeString(plans.resolve("glade.yaml"), QUICK.formatted("Glade Wood"));
        Files.writeString(plans.resolve("wood.yaml"), QUICK.formatted("Testing Wood"));
    }

    @ParameterizedTest
    @EnumSource(Fault.class)
    void isNamedWithItsFileAndCostsNoOtherTrip(Fault fault) throws IOException {
        assertEquals(0, build(Planner::brief).exit());
        SortedMap<String, String> glade = Tree.withTimes(site.resolve("glade"));
        Files.writeString(plans.resolve("wood.yaml"), QUICK.formatted("Other Wood"));
        Run run = build(failing(fault));
        assertEquals(1, run.exit());
        assertTrue(run.err().matches("(?s)plans/glade\\.yaml: error: [^\n]+\n1 error, 0 warnings\nnot built: [^\n]*glade.yaml\n"
                + "1 trip: .*"), run.err());
        assertFalse(run.showsItsInside(), run.err());
        assertEquals(glade, Tree.withTimes(site.resolve("glade")), "its earlier pages stay");
        assertTrue(Files.exists(site.resolve("sites/glade-wood.html")), "and the page of its site");
        assertTrue(Files.readString(site.resolve("wood/index.html")).contains("Other Wood"));
        assertEquals(0, build(Planner::brief).exit());
    }

    @ParameterizedTest
    @EnumSource(Fault.class)
    void failsACheckInEitherDress(Fault fault) throws IOException {
        Run run = check(failing(fault));
        assertEquals(1, run.exit());
        assertTrue(run.err().startsWith("plans/glade.yaml: error: "), run.err());
        Run json = check(failing(fault), "--json");
        assertEquals(1, json.exit());
        JsonNode findings = new ObjectMapper().readTree(json.out());
        assertEquals(1, findings.findValuesAsText("level").stream().filter("error"::equals).count());
        assertEquals("plans/glade.yaml", findings.get(0).get("file").textValue());
        assertEquals("error", findings.get(0).get("level").textValue());
        assertFalse(Files.exists(site));
    }

    @Test
    void isBuiltOnItsOwnWithTheOthersLeftAlone() throws IOException {
        build(Planner::brief);
        SortedMap<String, String> before = Tree.withTimes(site);
        Files.writeString(plans.resolve("glade.yaml"), "trip: Half a plan\n");
        Files.writeString(plans.resolve("wood.yaml"), QUICK.formatted("Testing Wood").replace("quick", "second"));
        Run run = run(new BuildCommand(terminal(), failing(Fault.NULL)), plans.resolve("wood.yaml"), "--out", site);
        assertEquals(0, run.exit(), run.err());
        assertEquals("1 trip: 6 files written, 0 unchanged, 0 deleted\n"
                + "pages shared by trips are unchanged: build the folder to update them\n", run.err());
        SortedMap<String, String> after = Tree.withTimes(site);
        before.keySet().removeIf(file -> file.startsWith("wood/"));
        after.keySet().removeIf(file -> file.startsWith("wood/"));
        assertEquals(before, after);
        assertTrue(Files.readString(site.resolve("wood/index.html")).contains("A second look"));
    }

    @Test
    void isAWholeSmallSiteWhereThereIsNone() {
        Run run = run(new BuildCommand(terminal(), Planner::brief), plans.resolve("wood.yaml"), "--out", site);
        assertEquals(0, run.exit(), run.err());
        assertTrue(Files.exists(site.resolve("index.html")) && Files.exists(site.resolve("sites/testing-wood.html")));
        assertFalse(Files.exists(site.resolve("glade")) || Files.exists(site.resolve("sites/glade-wood.html")));
        assertEquals(0, Run.of("check", plans.resolve("wood.yaml")).exit());
    }

    @Test
    void withAnotherEndingIsToldToBeRenamed() throws IOException {
        Files.move(plans.resolve("wood.yaml"), plans.resolve("wood.yml"));
        Run run = Run.of("build", plans.resolve("wood.yml"), "--out", site);
        assertEquals(1, run.exit());
        assertEquals("""
                plans/wood.yml: error: this file is not a trip
                    fix: rename it to end in .yaml
                1 error, 0 warnings
                no trip to build, nothing written
                """, run.err());
    }

    private static Function<Trip, Brief> failing(Fault fault) {
        return trip -> trip.slug().equals("glade") ? fault.raise() : Planner.brief(trip);
    }

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private Terminal terminal() {
        return new Terminal(new PrintStream(out, true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8), false);
    }

    private Run build(Function<Trip, Brief> planner) {
        return run(new BuildCommand(terminal(), planner), plans, "--out", site);
    }

    private Run check(Function<Trip, Brief> planner, String... options) {
        return run(new CheckCommand(terminal(), planner), options.length == 0 ? new Object[] {plans} : new Object[] {plans, options[0]});
    }

    private Run run(Callable<Integer> command, Object... arguments) {
        out.reset();
        err.reset();
        String[] words = new String[arguments.length];
        for (int i = 0; i < words.length; i++) {
            words[i] = arguments[i].toString();
        }
        int exit = new CommandLine(command).execute(words);
        return new Run(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
