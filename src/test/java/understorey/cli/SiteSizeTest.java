package understorey.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A trip of five pictures is small enough for a phone in a lane. */
class SiteSizeTest {

    private static final Path FIVE_PICTURES = Path.of("site-out", "first-light-in-the-ramsons");

    private static long bytes(Path file) {
        try {
            return Files.size(file);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    @Test
    void aPlanOfFivePicturesIsSmall() {
        long page = bytes(FIVE_PICTURES.resolve("index.html"));
        assertTrue(page <= 180_000, page + " bytes");
    }

    @Test
    void theFilesOfATripOfFivePicturesAreSmall() throws IOException {
        try (Stream<Path> files = Files.list(FIVE_PICTURES)) {
            long all = files.mapToLong(SiteSizeTest::bytes).sum();
            assertTrue(all <= 450_000, all + " bytes");
        }
    }
}
