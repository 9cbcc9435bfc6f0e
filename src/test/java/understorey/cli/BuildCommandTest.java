package understorey.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import understorey.Tree;

class BuildCommandTest {

    private static final String QUICK = """
            trip: A quick look
            site: {site: Testing Wood, latitude: 52.337, longitude: -3.548, time_zone: Europe/London}
            date: 2027-05-08
            gear: phone
            shots:
              - {name: The floor, subject: ramsons}
            """;
    private static final String FAULTY = QUICK.replace("date:", "dat:");

    @TempDir
    private Path home;
    private Path plans;
    private Path site;

    @BeforeEach
    void writeTwoTrips() throws IOException {
        plans = Files.createDirectory(home.resolve("plans"));
        site = home.resolve("site");
        trip("glade", QUICK);
        trip("wood", QUICK + "share: {audience: public, position: coarse}\n");
    }

    @Test
    void buildsTheDemoAndGivesThePathOfItsIndexOnly() {
        Run run = Run.of("build", "plans", "--out", site);
        assertEquals(0, run.exit(), run.err());
        assertEquals(site.resolve("index.html") + "\n", run.out());
        assertTrue(run.err().matches("4 trips: \\d+ files written, 0 unchanged, 0 deleted\n"), run.err());
        assertTrue(Files.exists(site.resolve("index.html")));
    }

    @Test
    void leavesEveryFileAloneTheSecondTime() {
        build();
        SortedMap<String, String> before = Tree.withTimes(home);
        Run again = build();
        assertTrue(again.err().matches("2 trips: 0 files written, \\d+ unchanged, 0 deleted\n"), again.err());
        assertEquals(before, Tree.withTimes(home));
    }

    @Test
    void buildsTheGoodTripAndLeavesThePagesOfTheFaultyOne() throws IOException {
        build();
        SortedMap<String, String> glade = Tree.withTimes(site.resolve("glade"));
        String wood = Files.readString(site.resolve("wood/index.html"));
        trip("glade", FAULTY);
        trip("wood", QUICK.replace("The floor", "A floor of stars"));
        Run run = build();
        assertEquals(1, run.exit());
        assertEquals(site.resolve("index.html") + "\n", run.out());
        assertTrue(run.err().contains("plans/glade.yaml:3:1: error: "), run.err());
        assertTrue(run.err().contains("not built: " + plans.resolve("glade.yaml") + "\n"), run.err());
        assertEquals(glade, Tree.withTimes(site.resolve("glade")));
        assertNotEquals(wood, Files.readString(site.resolve("wood/index.html")));
        assertFalse(run.showsItsInside(), run.err());
        trip("glade", QUICK);
        assertTrue(build().err().endsWith(" 0 deleted\n"));
    }

    @Test
    void deletesWhatATripTakenAwayLeftEvenWhileAnotherIsFaulty() throws IOException {
        trip("heath", QUICK);
        build();
        Files.delete(plans.resolve("heath.yaml"));
        trip("glade", FAULTY);
        assertEquals(1, build().exit());
        assertFalse(Files.exists(site.resolve("heath")));
        assertTrue(Files.exists(site.resolve("glade/index.html")));
    }

    @Test
    void keepsThePageOfAFaultySiteAndBag() throws IOException {
        Path demo = Tree.copy(Path.of("plans"), home.resolve("demo"));
        Run.of("build", demo, "--out", site);
        Files.writeString(demo.resolve("sites/gorsewell-dingle.yaml"), "sit: wrong\n");
        Files.writeString(demo.resolve("gear/day-bag.yaml"), "bga: wrong\n");
        Run run = Run.of("build", demo, "--out", site);
        assertEquals(1, run.exit());
        assertTrue(Files.exists(site.resolve("sites/gorsewell-dingle.html")));
        assertTrue(Files.exists(site.resolve("gear/day-bag.html")));
        assertTrue(run.err().endsWith(" 0 deleted\n"), run.err());
    }

    @Test
    void writesNothingWhereEveryTripIsFaulty() throws IOException {
        build();
        SortedMap<String, String> before = Tree.withTimes(site);
        trip("glade", FAULTY);
        trip("wood", FAULTY);
        Run run = build();
        assertEquals(1, run.exit());
        assertEquals("", run.out());
        assertEquals(before, Tree.withTimes(site));
        assertEquals(1, Run.of("build", plans, "--out", home.resolve("other")).exit());
        assertFalse(Files.exists(home.resolve("other")));
    }

    @Test
    void writesNothingWhereThereIsNoTrip() throws IOException {
        build();
        SortedMap<String, String> before = Tree.withTimes(site);
        Run run = Run.of("build", Files.createDirectory(home.resolve("empty")), "--out", site);
        assertEquals(1, run.exit());
        assertTrue(run.err().contains("there is no trip in this folder"), run.err());
        assertTrue(run.err().endsWith("no trip to build, nothing written\n"), run.err());
        assertEquals("", run.out());
        Run missing = Run.of("build", home.resolve("nowhere"), "--out", site);
        assertEquals(1, missing.exit());
        assertTrue(missing.err().startsWith(home.resolve("nowhere") + ": error: there is no such file or folder\n"), missing.err());
        assertEquals(before, Tree.withTimes(site));
    }

    @Test
    void tellsTenFaultsInOneRun() {
        Run run = Run.of("build", Path.of("src", "test", "resources", "broken", "ten-faults", "plans"), "--out", site);
        assertEquals(1, run.exit());
        assertEquals(10, run.err().lines().filter(line -> line.startsWith("plans/ten-faults.yaml:")).count());
        assertTrue(run.err().contains("10 errors, 0 warnings\nnot built: "), run.err());
        assertFalse(Files.exists(site));
    }

    @Test
    void buildsOnlyTripsForAtLeastTheAudience() {
        Run run = Run.of("build", plans, "--out", site, "--audience", "public");
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.err().startsWith("1 trip: "), run.err());
        assertTrue(Files.exists(site.resolve("wood/index.html")));
        assertFalse(Files.exists(site.resolve("glade")));
        assertFalse(Tree.of(site).get("index.html").contains("glade"));
    }

    @Test
    void takesPrivatePagesAwayFromAPublicFolderEvenWhereTheirTripCannotBeReadToday() throws IOException {
        build();
        trip("glade", FAULTY);
        Run run = Run.of("build", plans, "--out", site, "--audience", "public");
        assertEquals(1, run.exit());
        assertFalse(Files.exists(site.resolve("glade")), "it was built for the author alone");
    }

    @Test
    void keepsPublicPagesOfAFaultyTripForThePublic() throws IOException {
        trip("marsh", QUICK + "share: {audience: public}\n");
        Run.of("build", plans, "--out", site, "--audience", "public");
        trip("wood", FAULTY);
        Run run = Run.of("build", plans, "--out", site, "--audience", "public");
        assertEquals(1, run.exit());
        assertTrue(Files.exists(site.resolve("wood/index.html")));
        assertTrue(Files.exists(site.resolve("marsh/index.html")));
    }

    @Test
    void refusesAFolderOfSomeoneElses() throws IOException {
        Files.createDirectory(site);
        Files.writeString(site.resolve("letter.txt"), "mine");
        Run run = build();
        assertEquals(1, run.exit());
        assertEquals("", run.out());
        assertTrue(run.err().startsWith("understorey: '" + site + "' is not empty and was not made by this tool"),
                run.err());
        assertEquals("[, letter.txt]", Tree.of(site).keySet().toString());
    }

    private void trip(String name, String text) throws IOException {
        Files.writeString(plans.resolve(name + ".yaml"), text);
    }

    private Run build() {
        return Run.of("build", plans, "--out", site);
    }
}
