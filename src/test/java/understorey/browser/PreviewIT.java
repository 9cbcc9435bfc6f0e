package understorey.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The preview as an author uses it: a process of its own, a browser, and a file that is saved. */
@Tag("browser")
@DisabledOnOs(OS.WINDOWS)
class PreviewIT {

    private static final String TRIP = """
            trip: A quick look at the ramsons
            site: {site: Gorsewell Dingle, latitude: 52.337, longitude: -3.548, time_zone: Europe/London}
            date: 2027-05-08
            gear: phone
            shots:
              - {name: The carpet, subject: ramsons}
              - {name: One head, subject: ramsons, role: closing}
            """;
    private static final String FAULTS = "#understorey-faults";
    private static final int SCROLLED = 700;
    /** How a shell reports the end by Ctrl-C: 128 and the number of the signal, 2. */
    private static final int INTERRUPTED = 130;

    @TempDir
    private Path home;
    private Path plan;
    private Path temporary;
    private Process preview;
    private String address;

    @BeforeEach
    void startThePreview() throws IOException {
        plan = Files.createDirectory(home.resolve("plans")).resolve("first-look.yaml");
        temporary = Files.createDirectory(home.resolve("temporary"));
        Files.writeString(plan, TRIP);
        ProcessBuilder process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.io.tmpdir=" + temporary, "-XX:TieredStopAtLevel=1", "-jar", System.getProperty("understorey.jar"),
                "preview", home.resolve("plans").toString(), "--port", "0");
        process.environment().remove("JAVA_TOOL_OPTIONS");
        preview = process.redirectError(home.resolve("said").toFile()).start();
        BufferedReader out = preview.inputReader(StandardCharsets.UTF_8);
        address = out.readLine();
    }

    @AfterEach
    void endIt() {
        preview.destroyForcibly();
    }

    @Test
    void loadsAChangedPageAgainWhereItWas() throws IOException {
        try (Chromium chromium = Chromium.start()) {
            Page page = chromium.page(1000, 700);
            page.navigate(address + "first-look/");
            page.evaluate("scrollTo(0, " + SCROLLED + ")");
            page.evaluate("window.before = true");
            Files.writeString(plan, TRIP.replace("A quick look", "A longer look"));
            page.waitForCondition(() -> page.title().contains("A longer look"));
            page.waitForLoadState();
            assertEquals(null, page.evaluate("window.before"), "the page was loaded again");
            page.waitForCondition(() -> page.evaluate("scrollY").equals(SCROLLED));
        }
    }

    @Test
    void showsFaultsOverTheLastGoodPageUntilTheyAreMended() throws IOException {
        try (Chromium chromium = Chromium.start()) {
            Page page = chromium.page(1000, 700);
            page.navigate(address + "first-look/");
            page.evaluate("window.before = true");
            Files.writeString(plan, TRIP.replace("2027-05-08", "8 May"));
            Locator faults = page.locator(FAULTS + " span");
            faults.waitFor();
            assertEquals("plans/first-look.yaml:3:7: error: 'date' must be a date, not the text \"8 May\"\n    date: 8 May\n"
                    + "          ^^^^^\n    fix: year, month and day, for example 2027-05-08", faults.textContent());
            assertEquals(true, page.evaluate("window.before"), "the good page is still there");
            assertTrue(page.title().contains("A quick look"), page.title());
            page.reload();
            faults.waitFor();
            page.locator(FAULTS + " button").click();
            assertEquals(0, faults.count());
            Files.writeString(plan, TRIP.replace("2027-05-08", "9 May"));
            faults.waitFor();
            Files.writeString(plan, TRIP.replace("A quick look", "A longer look"));
            page.waitForCondition(() -> page.title().contains("A longer look"));
            assertEquals(0, faults.count());
        }
    }

    @Test
    void endsByCtrlCAndLeavesNothingBehind() throws Exception {
        Process signal = new ProcessBuilder("kill", "-INT", String.valueOf(preview.pid())).start();
        assertEquals(0, signal.waitFor());
        assertTrue(preview.waitFor(20, TimeUnit.SECONDS), "still running");
        assertEquals(INTERRUPTED, preview.exitValue());
        try (Stream<Path> left = Files.list(temporary)) {
            assertEquals(List.of(), left.toList());
        }
        try (Stream<Path> written = Files.walk(home)) {
            assertEquals(List.of("first-look.yaml", "said"),
                    written.filter(Files::isRegularFile).map(file -> file.getFileName().toString()).sorted().toList());
        }
        assertFalse(Files.readString(home.resolve("said")).contains("xception"));
    }
}
