package understorey.preview;

import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Tells one browser, while it shows a page, when that page changes and what is wrong with the plans: server-sent events (HTML Living
 * Standard, 9.2).
 */
final class ChangeStream {

    /** A line this often finds out whether the browser is still there. */
    private static final int BEAT_MS = 2000;

    private final Shelf shelf;
    private final HttpExchange exchange;

    ChangeStream(Shelf shelf, HttpExchange exchange) {
        this.shelf = shelf;
        this.exchange = exchange;
    }

    /** Goes on until the browser leaves or the shelf closes. */
    void run() throws IOException {
        Map<String, String> asked = query(exchange.getRequestURI().getRawQuery());
        String name = Answers.name(asked.getOrDefault("page", "/"));
        Shelf.Shown shown = new Shelf.Shown(asked.getOrDefault("tag", ""), "");
        exchange.getResponseHeaders().set("Content-Type", "text/event-stream");
        exchange.getResponseHeaders().set("Cache-Control", "no-store");
        if (exchange.getRequestMethod().equals("HEAD")) {
            exchange.sendResponseHeaders(200, -1);
            return;
        }
        exchange.sendResponseHeaders(200, 0);
        try (OutputStream out = exchange.getResponseBody()) {
            write(out, "retry: 500\n\n");
            while (!shelf.isClosed()) {
                Shelf.Shown now = shelf.await(name, shown, BEAT_MS);
                tell(out, shown, now);
                shown = now;
            }
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
        }
    }

    private static void tell(OutputStream out, Shelf.Shown shown, Shelf.Shown now) throws IOException {
        if (!now.faults().equals(shown.faults())) {
            write(out, "event: faults\ndata: " + quoted(now.faults()) + "\n\n");
        }
        // A page that is gone stays on the screen until it is back.
        if (!now.tag().equals(shown.tag()) && !now.tag().isEmpty()) {
            write(out, "event: page\ndata: " + now.tag() + "\n\n");
        }
        if (now.equals(shown)) {
            write(out, ":\n");
        }
    }

    private static void write(OutputStream out, String text) throws IOException {
        out.write(text.getBytes(StandardCharsets.UTF_8));
        out.flush();
    }

    /** A JSON string, on one line. */
    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        for (char c : text.toCharArray()) {
            quoted.append(c == '"' || c == '\\' || c < ' ' ? "\\u00" + Character.forDigit(c >> 4, 16) + Character.forDigit(c & 15, 16) : c);
        }
        return quoted.append('"').toString();
    }

    private static Map<String, String> query(@Nullable String raw) {
        Map<String, String> values = new HashMap<>();
        for (String pair : raw == null ? new String[0] : raw.split("&")) {
            int is = pair.indexOf('=');
            if (is > 0) {
                values.put(pair.substring(0, is), URLDecoder.decode(pair.substring(is + 1), StandardCharsets.UTF_8));
            }
        }
        return values;
    }
}
