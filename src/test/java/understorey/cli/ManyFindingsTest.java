package understorey.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** However many faults a file has, what is printed stays short, the counts are right, and so is the exit status. */
class ManyFindingsTest {

    @TempDir
    private Path plans;

    @Test
    void showsTheFirstTenOfFortyThousandAliases() throws IOException {
        Files.writeString(plans.resolve("aliases.yaml"), "trip: &t T\nshots: [" + "*t, ".repeat(40_000) + "*t]\n");
        Run run = Run.of("check", plans);
        assertEquals(1, run.exit());
        assertEquals(10, run.err().lines().filter(line -> line.contains("anchors (&) and aliases (*)")).count());
        assertTrue(run.err().length() < 20_000, run.err().length() + " characters");
        assertTrue(run.err().contains("/aliases.yaml: note: and 39992 more in this file\n"), run.err());
        assertTrue(run.err().endsWith("\n1 trip: 40006 errors, 0 warnings, 1 note, the first 14 shown\n"), run.err());
    }

    @Test
    void showsAHundredOfTwoThousandDifferentFaultsOfEachFile() throws IOException {
        StringBuilder keys = new StringBuilder("trip: T\n");
        for (int i = 0; i < 2000; i++) {
            keys.append("unheard-of-").append(i).append(": x\n");
        }
        Files.writeString(plans.resolve("one.yaml"), keys);
        Files.writeString(plans.resolve("other.yaml"), keys);
        Run run = Run.of("check", plans, "--json");
        assertEquals(1, run.exit());
        JsonNode findings = new ObjectMapper().readTree(run.out());
        assertEquals(202, findings.size());
        JsonNode rest = findings.get(100);
        assertEquals("note", rest.get("level").textValue());
        assertEquals("and 1904 more in this file", rest.get("text").textValue());
        assertTrue(rest.get("file").textValue().endsWith("/one.yaml"));
        assertTrue(Run.of("check", plans).err().endsWith("\n2 trips: 4008 errors, 0 warnings, 2 notes, the first 200 shown\n"));
    }

    @Test
    void failsForAnErrorThatIsNotShown() throws IOException {
        StringBuilder rows = new StringBuilder();
        for (int i = 0; i < 1500; i++) {
            rows.append("  - {time: \"05:00\", date: 2027-06-").append(i % 20 + 10).append("}\n");
        }
        Files.writeString(plans.resolve("warned.yaml"), "trip: T\nsite: {site: S, latitude: 52.3, longitude: -3.5, "
                + "time_zone: Europe/London}\ndate: 2027-05-08\ngear: phone\nforecast:\n" + rows
                + "shots: [{name: A, subject: ramsons}, {name: A, subject: ramsons}]\n");
        Run run = Run.of("check", plans);
        assertEquals(1, run.exit());
        assertTrue(run.err().endsWith("\n1 trip: 1 error, 1500 warnings, 1 note, the first 11 shown\n"), run.err());
    }
}
