package understorey;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;

/** A named pipe: a reader blocks until something is written. */
public final class Pipe {

    private Pipe() {
    }

    /** Makes one; skips the test where the system has none. */
    public static void at(Path place) throws InterruptedException {
        try {
            assumeTrue(new ProcessBuilder("mkfifo", place.toString()).start().waitFor() == 0, "no named pipes here");
        } catch (IOException none) {
            assumeTrue(false, "no named pipes here");
        }
    }
}
