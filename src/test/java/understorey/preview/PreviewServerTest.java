package understorey.preview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import understorey.pages.Page;

/** Requests are written byte by byte: a client of the library would mend what is wrong with them. */
@Timeout(30)
class PreviewServerTest {

    private static final String HTML = "<!DOCTYPE html>\n<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'\"><p>Oak – ash</p>\n";

    private final Shelf shelf = new Shelf();
    private PreviewServer server;

    @BeforeEach
    void open() throws IOException {
        shelf.put(List.of(new Page("index.html", HTML), new Page("a/index.html", HTML), new Page("a/plan.json", "{}"),
                new Page("a/plan.md", "# Ä"), new Page("a/trip.ics", "BEGIN"), new Page("a/spots.gpx", "<gpx/>"), new Page("a/preview.png", "png")));
        server = PreviewServer.open(shelf, 0);
    }

    @AfterEach
    void close() {
        server.close();
    }

    private String ask(String request) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
            socket.getOutputStream().write((request + "\r\nConnection: close\r\n\r\n").getBytes(StandardCharsets.UTF_8));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private String get(String path) throws IOException {
        return ask("GET " + path + " HTTP/1.1\r\nHost: localhost:" + server.port());
    }

    private static String status(String answer) {
        return answer.isEmpty() ? "" : answer.split(" ", 3)[1];
    }

    private static String body(String answer) {
        return answer.substring(answer.indexOf("\r\n\r\n") + 4);
    }

    @Test
    void showsAPageAsItWasMadeExceptForTheScriptAndItsPermit() throws IOException {
        String shown = body(get("/a/"));
        assertTrue(shown.contains("content=\"script-src 'sha256-") && shown.contains("EventSource"), shown);
        assertEquals(HTML, shown.replaceAll("script-src 'sha256-[^']+'; connect-src 'self'; ", "").replaceAll("(?s)<script.*</script>\n", ""));
    }

    @Test
    void showsOtherFilesByteByByteWithTheirTypes() throws IOException {
        Map.of("plan.json", "application/json", "plan.md", "text/markdown; charset=utf-8", "trip.ics", "text/calendar; charset=utf-8",
                "spots.gpx", "application/gpx+xml", "preview.png", "image/png").forEach((file, type) -> {
            try {
                String answer = get("/a/" + file);
                assertTrue(answer.contains("Content-type: " + type + "\r\n"), answer);
                assertEquals(new String(shelf.page("a/" + file), StandardCharsets.UTF_8), body(answer));
            } catch (IOException fault) {
                throw new AssertionError(fault);
            }
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"localhost", "127.0.0.1", "[::1]"})
    void answersUnderTheNamesOfThisComputer(String name) throws IOException {
        assertEquals("200", status(ask("GET / HTTP/1.1\r\nHost: " + name + ":" + server.port())));
        assertEquals("403", status(ask("GET / HTTP/1.1\r\nHost: " + name)));
        assertEquals("403", status(ask("GET / HTTP/1.1\r\nHost: " + name + ":" + (server.port() + 1))));
    }

    @Test
    void refusesOtherNamesForEveryAddress() throws IOException {
        for (String path : List.of("/", "/a/plan.json", Answers.CHANGES, "/none")) {
            for (String host : List.of("wood.example:" + server.port(), "localhost.wood.example:" + server.port(), "", "localhost")) {
                assertEquals("403", status(ask("GET " + path + " HTTP/1.1\r\nHost: " + host)), host + path);
            }
            assertEquals("403", status(ask("GET " + path + " HTTP/1.0")), "no name");
            String two = "localhost:" + server.port();
            assertEquals("403", status(ask("GET " + path + " HTTP/1.1\r\nHost: " + two + "\r\nHost: wood.example")), "two names");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"POST", "PUT", "DELETE", "OPTIONS", "PATCH", "TRACE"})
    void onlyShows(String method) throws IOException {
        String answer = ask(method + " /a/ HTTP/1.1\r\nHost: localhost:" + server.port());
        assertEquals("405", status(answer));
        assertTrue(answer.contains("Allow: GET, HEAD\r\n"), answer);
    }

    @Test
    void saysHowLongAPageIsWithoutShowingIt() throws IOException {
        String answer = ask("HEAD /a/ HTTP/1.1\r\nHost: localhost:" + server.port());
        assertEquals("", body(answer));
        int length = body(get("/a/")).getBytes(StandardCharsets.UTF_8).length;
        assertTrue(answer.contains("Content-length: " + length + "\r\n"), answer);
        assertEquals("200", status(ask("HEAD " + Answers.CHANGES + " HTTP/1.1\r\nHost: localhost:" + server.port())));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/../pom.xml", "/a/../../pom.xml", "/%2e%2e/pom.xml", "/a/..%2f..%2fpom.xml", "//etc/passwd", "/..%5cpom.xml",
        "/a/%00", "/pom.xml", "/.understorey-files", "/a", "/A/"})
    void findsNothingButPages(String path) throws IOException {
        assertEquals("404", status(get(path)));
    }

    @Test
    void takesTheNextPortWhereOneIsTaken() throws IOException {
        try (PreviewServer next = PreviewServer.open(new Shelf(), server.port())) {
            assertTrue(next.port() > server.port(), next.port() + " after " + server.port());
        }
    }

    @Test
    void isForThisComputerAlone() throws IOException {
        InetAddress other = InetAddress.getByAddress(new byte[] {127, 0, 0, 2});
        try (ServerSocket free = new ServerSocket(server.port(), 1, other)) {
            assertTrue(free.isBound(), "the port of another address is free, so the server holds only one");
        }
    }

    @Test
    void tellsABrowserWhenItsPageChangesAndWhatIsWrong() throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
            socket.getOutputStream().write(("GET " + Answers.CHANGES + "?page=%2Fa%2F&tag=" + shelf.tag("a/index.html")
                    + " HTTP/1.1\r\nHost: localhost:" + server.port() + "\r\n\r\n").getBytes(StandardCharsets.UTF_8));
            StringBuilder heard = new StringBuilder();
            until(socket, heard, "retry: ");
            shelf.put(List.of(new Page("index.html", HTML + "another page")));
            shelf.faults("a.yaml:1:1: error: \"x\"\n  ^");
            until(socket, heard, "event: faults\ndata: \"a.yaml:1:1: error: \\u0022x\\u0022\\u000a  ^\"\n\n");
            assertFalse(heard.toString().contains("event: page"), heard.toString());
            shelf.put(List.of(new Page("a/index.html", HTML + "new")));
            until(socket, heard, "event: page\n");
            shelf.faults("");
            until(socket, heard, "event: faults\ndata: \"\"\n\n");
        }
    }

    private static void until(Socket socket, StringBuilder heard, String words) throws IOException {
        while (heard.indexOf(words) < 0) {
            int one = socket.getInputStream().read();
            assertTrue(one >= 0, heard.toString());
            heard.append((char) one);
        }
    }

    @Test
    void endsItsThreadsThoughABrowserListens() throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
            socket.getOutputStream().write(("GET " + Answers.CHANGES + " HTTP/1.1\r\nHost: localhost:" + server.port() + "\r\n\r\n")
                    .getBytes(StandardCharsets.UTF_8));
            until(socket, new StringBuilder(), "retry: ");
            server.close();
            assertEquals(List.of(), Thread.getAllStackTraces().keySet().stream().filter(thread -> thread.getName().equals("preview"))
                    .filter(Thread::isAlive).toList());
        }
    }

    @Test
    void keepsOnlyThePagesThatItIsToldTo() throws IOException {
        shelf.keepOnly(name -> name.startsWith("a/"));
        assertEquals("404", status(get("/")));
        assertEquals("200", status(get("/a/plan.md")));
    }
}
