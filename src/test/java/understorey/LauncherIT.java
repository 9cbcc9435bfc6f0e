package understorey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The POSIX launcher, copied with its jar to a folder whose name has a space. */
@DisabledOnOs(OS.WINDOWS)
class LauncherIT {

    private static final Path BUILT = Path.of(System.getProperty("understorey.jar")).resolveSibling("understorey");
    private static final Map<String, String> OWN_JAVA = Map.of("JAVA_HOME", System.getProperty("java.home"));

    @TempDir
    private Path home;
    private Path lib;
    private Path launcher;

    @BeforeEach
    void copyTheLauncher() throws IOException {
        lib = Files.createDirectories(home.resolve("my tools/lib"));
        launcher = Files.createDirectories(home.resolve("my tools/bin")).resolve("understorey");
        Files.copy(BUILT.resolve("lib/understorey.jar"), lib.resolve("understorey.jar"));
        Files.copy(BUILT.resolve("bin/understorey"), launcher);
        assertTrue(launcher.toFile().setExecutable(true));
    }

    @Test
    void storesOneArchiveAndBuildsTheDemoAsCommittedWithAndWithoutIt() throws Exception {
        for (String site : List.of("first", "second")) {
            Ended ended = run(OWN_JAVA, launcher, "build", "plans", "--out", home.resolve(site).toString());
            assertEquals(new Ended(0, home.resolve(site).resolve("index.html") + "\n", ended.err()), ended);
            assertTrue(ended.err().matches("4 trips: [^\n]+\n"), ended.err());
            assertEquals(1, archives().size());
            assertEquals("", Tree.firstDifference(Tree.of(Path.of("site-out")), Tree.of(home.resolve(site))));
        }
    }

    @Test
    void saysNothingOfAnArchiveThatDoesNotFit() throws Exception {
        run(OWN_JAVA, launcher, "build", "plans", "--out", home.resolve("site").toString());
        Path archive = archives().get(0);
        assertTrue(archive.toFile().setWritable(true));
        Files.writeString(archive, "no archive");
        Ended ended = run(OWN_JAVA, launcher, "--version");
        assertEquals(new Ended(0, ended.out(), ""), ended);
        assertTrue(ended.out().startsWith("understorey "), ended.out());
    }

    @Test
    void storesNoArchiveOfAStartThatLoadsLittle() throws Exception {
        run(OWN_JAVA, launcher, "--version");
        assertEquals(List.of(), archives());
    }

    @Test
    void passesTheExitStatusOnAndStartsThroughALink() throws Exception {
        Path link = Files.createSymbolicLink(home.resolve("understorey"), launcher);
        assertEquals(2, run(OWN_JAVA, link, "check", "--no-such-option").exit());
        assertEquals(1, run(OWN_JAVA, link, "build", home.resolve("no-such-folder").toString()).exit());
    }

    @Test
    void saysThatThereIsNoJava() throws Exception {
        Ended ended = run(Map.of("JAVA_HOME", home.toString()), launcher, "check");
        assertEquals(new Ended(2, "", "understorey: no Java found: install Java 17 or later, or set JAVA_HOME\n"), ended);
    }

    /** The completion as bash asks for it, by the function that the file names. */
    @Test
    void completesCommandsAndOptionsInBash() throws Exception {
        Path completion = BUILT.resolve("share/bash-completion/completions/understorey");
        String asks = "compopt() { :; }; source '" + completion + "'; complete -p understorey > /dev/null;"
                + " COMP_WORDS=(understorey %s); COMP_CWORD=$((${#COMP_WORDS[@]} - 1)); _complete_understorey; echo \"${COMPREPLY[@]}\"";
        assertEquals("preview\n", run(Map.of(), Path.of("bash"), "-c", asks.replace("%s", "prev")).out());
        assertEquals("--port\n", run(Map.of(), Path.of("bash"), "-c", asks.replace("%s", "preview --po")).out());
    }

    @Test
    void comesWithAManualPageThatGroffReadsWithoutAWarning() throws Exception {
        Path page = BUILT.resolve("share/man/man1/understorey.1");
        assertTrue(Files.readString(page).contains(".SS \"preview\""));
        Assumptions.assumeTrue(Files.isExecutable(Path.of("/usr/bin/groff")), "no groff");
        Ended ended = run(Map.of(), Path.of("groff"), "-man", "-ww", "-Tascii", page.toString());
        assertEquals("", ended.err());
        assertTrue(ended.out().replaceAll("\\s+", " ").contains("Show the pages in a browser"), ended.out());
    }

    private List<Path> archives() throws IOException {
        try (Stream<Path> files = Files.list(lib)) {
            return files.filter(file -> file.getFileName().toString().startsWith("classes-")).toList();
        }
    }

    private static Ended run(Map<String, String> environment, Path command, String... arguments) throws Exception {
        List<String> words = new ArrayList<>(List.of(command.toString()));
        words.addAll(List.of(arguments));
        ProcessBuilder process = new ProcessBuilder(words);
        process.environment().putAll(environment);
        return Ended.of(process);
    }
}
