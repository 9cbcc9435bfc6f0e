package understorey.preview;

import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;

/** A save between two waits ends the next wait, so no test has to sleep. */
class FolderWatchTest {

    private static final Duration SOON = Duration.ofSeconds(20);

    @TempDir
    private Path home;

    private void tells(Executable save) throws Throwable {
        try (FolderWatch watch = new FolderWatch(List.of(home, home.resolve("sites")))) {
            save.execute();
            assertTimeoutPreemptively(SOON, watch::await);
        }
    }

    @Test
    void tellsOfNewChangedAndDeletedFiles() throws Throwable {
        Path trip = home.resolve("trip.yaml");
        tells(() -> Files.writeString(trip, "a"));
        tells(() -> Files.writeString(trip, "b"));
        tells(() -> Files.delete(trip));
    }

    @Test
    void tellsOfAFileThatAnEditorPutsInThePlaceOfAnother() throws Throwable {
        Path trip = Files.writeString(home.resolve("trip.yaml"), "a");
        tells(() -> Files.move(Files.writeString(home.resolve(".trip.yaml.new"), "b"), trip, StandardCopyOption.REPLACE_EXISTING));
    }

    @Test
    void tellsOfAFolderThatComesLaterAndOfTheFilesInIt() throws IOException {
        Path sites = home.resolve("sites");
        try (FolderWatch watch = new FolderWatch(List.of(home, sites))) {
            Files.createDirectory(sites);
            assertTimeoutPreemptively(SOON, watch::await);
            Files.writeString(sites.resolve("wood.yaml"), "site: Wood");
            assertTimeoutPreemptively(SOON, watch::await);
            Files.delete(sites.resolve("wood.yaml"));
            Files.delete(sites);
            assertTimeoutPreemptively(SOON, watch::await);
            Files.createDirectory(sites);
            Files.writeString(sites.resolve("wood.yaml"), "site: Wood");
            assertTimeoutPreemptively(SOON, watch::await);
        }
    }

    /** The system tells of the folder of the link, not of the one with the file: the look at all files is left. */
    @Test
    void findsWhatTheSystemDoesNotTell(@TempDir Path elsewhere) throws Throwable {
        Path linked = Files.writeString(elsewhere.resolve("trip.yaml"), "a");
        Files.createSymbolicLink(home.resolve("trip.yaml"), linked);
        tells(() -> Files.writeString(linked, "longer"));
    }
}
