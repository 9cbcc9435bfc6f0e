package understorey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The recipes of {@code checking.md}, run as they stand there. */
@DisabledOnOs(OS.WINDOWS)
class RecipesIT {

    private static final Path BIN = Path.of(System.getProperty("understorey.jar")).resolveSibling("understorey").resolve("bin").toAbsolutePath();
    private static final Pattern SHELL = Pattern.compile("(?s)```sh\n(.*?)```");
    private static final String GOOD = """
            trip: A test
            site: {site: Wood, latitude: 52.3, longitude: -3.5, time_zone: Europe/London, canopy: none}
            date: 2027-05-15
            gear: phone
            sky: broken
            shots: [{name: One, subject: ramsons}]
            """;

    @TempDir
    private Path home;
    private Path trip;
    private List<String> recipes;

    @BeforeEach
    void writePlans() throws IOException {
        trip = Files.createDirectories(home.resolve("plans")).resolve("trip.yaml");
        Files.writeString(trip, GOOD);
        recipes = SHELL.matcher(Files.readString(Path.of("src", "docs", "checking.md"))).results().map(found -> found.group(1)).toList();
    }

    @Test
    void letACommitPassOnlyIfWhatIsCommittedReadsWell() throws Exception {
        assumeTrue(has("git"), "no git here");
        run("git", "init", "--quiet");
        Path hook = Files.writeString(Files.createDirectories(home.resolve(".git/hooks")).resolve("pre-commit"), recipes.get(0));
        assertTrue(hook.toFile().setExecutable(true));
        run("git", "add", ".");
        assertEquals(0, commit().exit());
        Files.writeString(trip, GOOD.replace("ramsons", "ramsnos"));
        run("git", "add", ".");
        Files.writeString(trip, GOOD);
        Ended refused = commit();
        assertEquals(1, refused.exit());
        assertTrue(refused.err().startsWith("plans/trip.yaml:6:30: error: there is no subject \"ramsnos\"\n"), refused.err());
        run("git", "add", ".");
        Files.writeString(trip, GOOD.replace("ramsons", "ramsnos"));
        Files.writeString(home.resolve("other.txt"), "x");
        run("git", "add", "other.txt");
        assertEquals(0, commit().exit());
    }

    @Test
    void failInCiOnErrorsAndOnWarnings() throws Exception {
        assumeTrue(has("jq"), "no jq here");
        assertEquals(0, run("sh", "-c", recipes.get(1)).exit());
        Files.writeString(trip, GOOD.replace("2027-05-15", "2027-08-20"));
        assertEquals(1, run("sh", "-c", recipes.get(1)).exit());
        Ended lines = run("sh", "-c", recipes.get(2));
        assertTrue(lines.out().startsWith("plans/trip.yaml:3:7: warning: Ramsons"), lines.out());
        Files.writeString(trip, GOOD.replace("gear", "geer"));
        Ended faulty = run("sh", "-c", recipes.get(1));
        assertEquals(1, faulty.exit());
        assertFalse(faulty.err().contains("\u001b"));
    }

    private Ended commit() throws Exception {
        return run("git", "-c", "user.name=Tester", "-c", "user.email=tester@example.org", "commit", "--quiet", "-m", "Test");
    }

    private static boolean has(String command) {
        return Stream.of(System.getenv("PATH").split(File.pathSeparator)).anyMatch(folder -> Files.isExecutable(Path.of(folder, command)));
    }

    private Ended run(String... words) throws Exception {
        ProcessBuilder process = new ProcessBuilder(words).directory(home.toFile());
        process.environment().putAll(Map.of("JAVA_HOME", System.getProperty("java.home"),
                "PATH", BIN + File.pathSeparator + System.getenv("PATH")));
        return Ended.of(process);
    }
}
