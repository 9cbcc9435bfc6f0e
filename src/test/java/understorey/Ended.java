package understorey;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

/** A process that has ended: its exit status and what it printed, with {@code \n} at the end of each line. */
record Ended(int exit, String out, String err) {

    /** Runs a process for at most a minute. */
    static Ended of(ProcessBuilder process) throws IOException, InterruptedException {
        Path out = Files.createTempFile("out", null);
        Path err = Files.createTempFile("err", null);
        process.redirectOutput(out.toFile()).redirectError(err.toFile()).environment().remove("JAVA_TOOL_OPTIONS");
        Process started = process.start();
        try {
            assertTrue(started.waitFor(60, TimeUnit.SECONDS), "still running after a minute");
            return new Ended(started.exitValue(), text(out), text(err));
        } finally {
            started.destroyForcibly();
            Files.delete(out);
            Files.delete(err);
        }
    }

    private static String text(Path file) throws IOException {
        return new String(Files.readAllBytes(file), StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
    }
}
