package understorey.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProgressTest {

    private final ByteArrayOutputStream shown = new ByteArrayOutputStream();
    private long nowNs;

    private String work(boolean watched, boolean quiet, boolean verbose) {
        PrintStream stream = new PrintStream(shown, true, StandardCharsets.UTF_8);
        Progress progress = new Progress(new Terminal(stream, stream, false, watched), quiet, verbose, () -> nowNs);
        progress.stage("reading");
        later(300);
        progress.stage("trips");
        for (int trip = 1; trip <= 4; trip++) {
            later(60);
            progress.done(trip, 4);
        }
        progress.end();
        progress.say("4 trips");
        progress.result("index.html");
        return shown.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
    }

    private void later(int ms) {
        nowNs += ms * 1_000_000L;
    }

    /** The first line after 0.4 s, the next one 0.1 s later at the earliest; the last one is wiped out. */
    @Test
    void showsOneLiveLineOnATerminalWhenItTakesLong() {
        assertEquals("\rtrips: 2 of 4\rtrips: 4 of 4\r" + " ".repeat("trips: 4 of 4".length()) + "\r4 trips\nindex.html\n", work(true, false, false));
    }

    @Test
    void isStillInAPipe() {
        assertEquals("4 trips\nindex.html\n", work(false, false, false));
    }

    @Test
    void saysHowLongEachStageTook() {
        assertEquals("reading: 0.300 s\ntrips: 0.240 s\n4 trips\nindex.html\n", work(false, false, true));
    }

    @Test
    void saysNothingWhereOnlyFaultsAreWanted() {
        assertEquals("", work(true, true, false));
    }

    @Test
    void namesTheStagesOfABuildAndOfACheck(@TempDir Path home) {
        String build = Run.of("build", "plans", "--out", home.resolve("site"), "--verbose").err();
        assertTrue(build.matches("(?s)reading: \\d+\\.\\d{3} s\ntrips: .*\nshared pages: .*\nlinks: .*\nwriting: .*\n4 trips: .*"), build);
        String check = Run.of("check", "plans", "-v").err();
        assertTrue(check.matches("(?s)reading: \\d+\\.\\d{3} s\n.*links: .*\n4 trips: .*"), check);
    }

    @Test
    void buildsAndChecksQuietly(@TempDir Path home) {
        assertEquals(new Run(0, "", ""), Run.of("build", "plans", "--out", home.resolve("site"), "--quiet"));
        assertEquals(1, Run.of("check", home.resolve("none"), "-q").exit());
        assertTrue(Run.of("check", home.resolve("none"), "-q").err().contains("there is no such file or folder"));
        assertTrue(Run.of("check", "plans", "-q", "-v").err().startsWith("give --quiet or --verbose, not both\n"));
    }
}
