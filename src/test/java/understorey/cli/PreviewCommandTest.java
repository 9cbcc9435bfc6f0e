package understorey.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(60)
class PreviewCommandTest {

    @TempDir
    private Path home;
    private final ByteArrayOutputStream said = new ByteArrayOutputStream();
    private int exit = -1;

    private static Set<String> threads() {
        return Thread.getAllStackTraces().keySet().stream().filter(Thread::isAlive).map(Thread::getName)
                .filter(name -> name.startsWith("preview") || name.startsWith("HTTP-") || name.startsWith("FileSystemWatch"))
                .collect(Collectors.toSet());
    }

    private Thread start(PipedInputStream results, String... words) throws IOException {
        PrintStream out = new PrintStream(new PipedOutputStream(results), true, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(said, true, StandardCharsets.UTF_8);
        Thread thread = new Thread(() -> exit = Understorey.run(words, out, err, new Terminal(out, err, false)));
        thread.start();
        return thread;
    }

    private static String read(String address) throws IOException {
        URL url = URI.create(address).toURL();
        try (var in = url.openStream()) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void showsTheDemoOnTheNextPortAndEndsWithoutAThread() throws Exception {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress()); PipedInputStream results = new PipedInputStream()) {
            Thread preview = start(results, "preview", "plans", "--port", String.valueOf(taken.getLocalPort()));
            String address = new BufferedReader(new InputStreamReader(results, StandardCharsets.UTF_8)).readLine();
            int port = URI.create(address).getPort();
            assertTrue(port > taken.getLocalPort(), address);
            assertTrue(said.toString(StandardCharsets.UTF_8).contains("port " + taken.getLocalPort() + " is taken, so this is port " + port + "\n"));
            String shown = read(address);
            assertTrue(shown.contains("first-light-in-the-ramsons") && shown.contains("EventSource"), shown);
            assertFalse(threads().isEmpty());
            preview.interrupt();
            preview.join();
            assertEquals(0, exit);
            assertEquals(Set.of(), threads());
        }
    }

    @Test
    void followsATripThatIsSaved() throws Exception {
        Path plan = home.resolve("first-look.yaml");
        String text = """
                trip: %s
                site: {site: Gorsewell Dingle, latitude: 52.337, longitude: -3.548, time_zone: Europe/London}
                date: 2027-05-08
                gear: phone
                shots: [{name: The carpet, subject: ramsons}]
                """;
        Files.writeString(plan, text.formatted("One title"));
        try (PipedInputStream results = new PipedInputStream()) {
            Thread preview = start(results, "preview", plan.toString(), "--port", "0");
            String address = new BufferedReader(new InputStreamReader(results, StandardCharsets.UTF_8)).readLine();
            assertTrue(read(address + "first-look/").contains("One title"));
            try (BufferedReader changes = new BufferedReader(new InputStreamReader(URI.create(address + ".understorey/changes?page=/first-look/")
                    .toURL().openStream(), StandardCharsets.UTF_8))) {
                until(changes, "event: page");
                Files.writeString(plan, text.formatted("Another title"));
                until(changes, "event: page");
            }
            assertTrue(read(address + "first-look/").contains("Another title"));
            preview.interrupt();
            preview.join();
        }
    }

    private static void until(BufferedReader lines, String wanted) throws IOException {
        String line = lines.readLine();
        while (line != null && !line.equals(wanted)) {
            line = lines.readLine();
        }
        assertEquals(wanted, line);
    }

    @Test
    void needsAFolderAndAPort() {
        assertEquals(new Run(1, "", "there is no folder or file '" + home.resolve("none") + "'\n"), Run.of("preview", home.resolve("none")));
        assertEquals(2, Run.of("preview", home, "--port", "99999").exit());
        assertEquals(2, Run.of("preview", home, "--port", "any").exit());
    }
}
