package understorey.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import understorey.Tree;

class CheckCommandTest {

    private static final Path TEN_FAULTS = Path.of("src", "test", "resources", "broken", "ten-faults");

    @TempDir
    private Path home;
    private Path plans;

    @BeforeEach
    void copyTheDemo() throws IOException {
        plans = Tree.copy(Path.of("plans"), home.resolve("plans"));
    }

    @Test
    void showsTheNotesOfTheDemoAtTheirPlacesAndCountsThem() {
        assertEquals(new Run(0, "", """
                plans/a-weekend-for-the-anemones.yaml:3:8: note: You gave 14 possible days (Friday 9 April 2027 to Sunday 16 May 2027); this plan is for the best one, Friday 23 April 2027.
                    dates: {from: 2027-04-09, to: 2027-05-16}
                           ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
                plans/a-weekend-for-the-anemones.yaml: note: No forecast and no “sky” in the trip: light and settings are given for clear, broken and overcast.
                plans/a-weekend-for-the-anemones.yaml: note: No wind forecast: a light breeze of 2.0 m/s is assumed.
                plans/a-weekend-for-the-anemones.yaml:13:3: note: The story has no “detail” picture.
                    - name: Last sun along the ride
                    ^
                plans/a-weekend-for-the-anemones.yaml:13:3: note: 3 pictures are landscape, none is portrait.
                    - name: Last sun along the ride
                    ^
                plans/a-weekend-for-the-anemones.yaml:13:3: note: 3 pictures face the same way (about 293°): turn around for one.
                    - name: Last sun along the ride
                    ^
                plans/anemones-under-the-beeches.yaml: note: No wind forecast: a light breeze of 2.0 m/s is assumed.
                plans/anemones-under-the-beeches.yaml:17:3: note: The story has no “detail” picture.
                    - name: Stars to the far trunks
                    ^
                plans/anemones-under-the-beeches.yaml:17:3: note: 4 pictures are landscape, none is portrait.
                    - name: Stars to the far trunks
                    ^
                plans/paper-stars-on-red-sand.yaml:3:7: note: Pink-and-white everlasting: 24 % chance of full flower on this day. Better from 25 August to 5 September: up to 35 %.
                    date: 2027-09-11
                          ^^^^^^^^^^
                plans/paper-stars-on-red-sand.yaml:4:9: note: The first picture starts at 06:45: you can arrive up to 55 min later, at 06:40.
                    arrive: "05:45"
                            ^^^^^^^
                plans/paper-stars-on-red-sand.yaml: note: Positions are hidden here, so every untimed walk counts as five minutes; real times will differ.
                4 trips: 0 errors, 0 warnings, 12 notes
                """), Run.of("check", plans));
    }

    @Test
    void writesNothing() throws IOException {
        Tree.copy(TEN_FAULTS.resolve("plans"), plans.resolve("more"));
        Files.copy(TEN_FAULTS.resolve("plans/ten-faults.yaml"), plans.resolve("ten-faults.yaml"));
        SortedMap<String, String> before = Tree.withTimes(home);
        assertEquals(1, Run.of("check", plans).exit());
        assertEquals(1, Run.of("check", plans, "--json").exit());
        assertEquals(before, Tree.withTimes(home));
    }

    @Test
    void tellsTenFaultsInOneRunEachWithItsPlaceThenTheirCount() throws IOException {
        Run run = Run.of("check", TEN_FAULTS.resolve("plans"));
        assertEquals(1, run.exit());
        assertEquals("", run.out());
        List<String> faults = run.err().lines().filter(line -> line.matches("plans/ten-faults.yaml:\\d+:\\d+: error: .*"))
                .toList();
        assertEquals(10, faults.size(), run.err());
        assertTrue(run.err().endsWith("\n1 trip: 10 errors, 0 warnings, 0 notes\n"), run.err());
        String expected = Files.readString(TEN_FAULTS.resolve("expected.txt")).replaceAll("\n\n(?=\\S)", "\n");
        assertTrue(run.err().startsWith(expected.substring(0, expected.indexOf("not built:"))), run.err());
        assertFalse(run.showsItsInside());
    }

    @Test
    void givesTheFindingsAsJson() throws IOException {
        Run run = Run.of("check", TEN_FAULTS.resolve("plans"), "--json");
        assertEquals(1, run.exit());
        assertEquals("", run.err());
        JsonNode findings = new ObjectMapper().readTree(run.out());
        assertEquals(10, findings.size());
        for (JsonNode finding : findings) {
            assertEquals("error", finding.get("level").textValue());
            assertEquals("plans/ten-faults.yaml", finding.get("file").textValue());
            assertTrue(finding.get("line").isInt() && finding.get("line").intValue() > 0);
            assertTrue(finding.get("column").isInt() && finding.get("length").isInt());
            assertTrue(finding.get("text").isTextual() && finding.has("help"));
        }
    }

    @Test
    void givesAnEmptyJsonListWhereThereIsNothingToTell() throws IOException {
        Run run = Run.of("check", plans.resolve("first-light-in-the-ramsons.yaml"), "--json");
        assertEquals(0, run.exit());
        assertEquals("[]", new ObjectMapper().readTree(run.out()).toString());
    }

    @Test
    void saysThatAFolderIsMissing() {
        Run run = Run.of("check", home.resolve("nowhere"));
        assertEquals(1, run.exit());
        assertEquals(home.resolve("nowhere") + ": error: there is no such file or folder\n"
                + "    fix: give a trip file, or the folder that contains your plans\n0 trips: 1 error, 0 warnings, 0 notes\n", run.err());
    }

    @Test
    void warnsOfAFolderWithoutATripAndEndsWell() throws IOException {
        Run run = Run.of("check", Files.createDirectory(home.resolve("empty")));
        assertEquals(0, run.exit());
        assertTrue(run.err().startsWith("empty: warning: there is no trip in this folder\n"), run.err());
        assertTrue(run.err().endsWith("0 trips: 0 errors, 1 warning, 0 notes\n"), run.err());
    }

    @Test
    void findsNoProblemsOnlyWhereThereAreNone() throws IOException {
        for (String noted : List.of("a-weekend-for-the-anemones", "anemones-under-the-beeches", "paper-stars-on-red-sand")) {
            Files.delete(plans.resolve(noted + ".yaml"));
        }
        assertEquals(new Run(0, "", "1 trip: no problems found\n"), Run.of("check", plans));
        Files.writeString(plans.resolve("old.yml"), "trip: Old");
        Run warned = Run.of("check", plans);
        assertTrue(warned.err().endsWith("\n1 trip: 0 errors, 1 warning, 0 notes\n"), warned.err());
    }
}
