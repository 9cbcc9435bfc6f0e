package understorey.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import understorey.Tree;

/** A folder of many trips, built by whole processes. */
class LargeBuildIT {

    private static final Path JAR = Path.of(System.getProperty("understorey.jar")).toAbsolutePath();
    private static final String JAVA = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    private static final Path CORPUS = Path.of("src/bench/java/understorey/Corpus.java").toAbsolutePath();

    @TempDir
    private Path home;

    /** The pages of 100 trips with their drawings take 150 MB of memory, where all are kept. */
    @Test
    void needsTheMemoryOfAFewTripsAndIsTheSameOnAnyNumberOfCores() throws Exception {
        assertEquals(0, java("corpus", CORPUS.toString(), "100", "plans"));
        for (int cores : new int[] {1, 4}) {
            assertEquals(0, java("cores-" + cores, "-Xmx64m", "-XX:ActiveProcessorCount=" + cores, "-XX:TieredStopAtLevel=1",
                    "-XX:+UseSerialGC", "-jar", JAR.toString(), "build", "plans", "--out", "site-" + cores), said("cores-" + cores));
        }
        assertTrue(said("cores-1").contains("\n100 trips: 640 files written, "), said("cores-1"));
        assertEquals(said("cores-1"), said("cores-4").replace("site-4", "site-1"));
        assertEquals("", Tree.firstDifference(Tree.of(home.resolve("site-1")), Tree.of(home.resolve("site-4"))));
    }

    private int java(String name, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(JAVA));
        command.addAll(List.of(arguments));
        ProcessBuilder process = new ProcessBuilder(command).directory(home.toFile()).redirectErrorStream(true)
                .redirectOutput(home.resolve(name).toFile());
        process.environment().remove("JAVA_TOOL_OPTIONS");
        Process started = process.start();
        boolean ended = started.waitFor(2, TimeUnit.MINUTES);
        started.destroyForcibly();
        return ended ? started.exitValue() : -1;
    }

    private String said(String name) throws IOException {
        return Files.readString(home.resolve(name));
    }
}
