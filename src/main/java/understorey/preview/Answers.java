package understorey.preview;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpHandler;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/**
 * Answers a browser with a page of the shelf. No name leads to a file, so none leads out of the site. A request under another name
 * than that of this computer comes from a page of someone else (DNS rebinding) and is refused.
 */
final class Answers implements HttpHandler {

    static final String CHANGES = "/.understorey/changes";
    private static final int OK = 200;
    private static final int FORBIDDEN = 403;
    private static final int NOT_FOUND = 404;
    private static final int NOT_ALLOWED = 405;
    private static final int HTTP_PORT = 80;
    private static final String HTML = "text/html; charset=utf-8";
    private static final Map<String, String> TYPES = Map.of("html", HTML, "md", "text/markdown; charset=utf-8",
            "json", "application/json", "ics", "text/calendar; charset=utf-8", "gpx", "application/gpx+xml", "png", "image/png");

    private final Shelf shelf;
    private final List<String> names;

    Answers(Shelf shelf, int port) {
        this.shelf = shelf;
        List<String> local = List.of("localhost", "127.0.0.1", "[::1]");
        names = port == HTTP_PORT ? local : local.stream().map(name -> name + ":" + port).toList();
    }

    @Override
    public void handle(HttpExchange exchange) throws IOException {
        try (exchange) {
            List<String> host = exchange.getRequestHeaders().getOrDefault("Host", List.of());
            String path = exchange.getRequestURI().getPath();
            if (host.size() != 1 || !names.contains(host.get(0))) {
                say(exchange, FORBIDDEN, "This preview answers only to " + names.get(0) + ".\n");
            } else if (!List.of("GET", "HEAD").contains(exchange.getRequestMethod())) {
                exchange.getResponseHeaders().set("Allow", "GET, HEAD");
                say(exchange, NOT_ALLOWED, "This preview only shows pages.\n");
            } else if (path.equals(CHANGES)) {
                new ChangeStream(shelf, exchange).run();
            } else {
                page(exchange, name(path));
            }
        }
    }

    /** Name of the page that an address shows. */
    static String name(String path) {
        return path.substring(1) + (path.endsWith("/") ? "index.html" : "");
    }

    private void page(HttpExchange exchange, String name) throws IOException {
        String tag = shelf.tag(name);
        byte[] page = shelf.page(name);
        if (page == null) {
            String missing = "<!DOCTYPE html>\n<html lang=\"en\"><meta charset=\"utf-8\"><title>No such page</title>"
                    + "<p>There is no such page. <a href=\"/\">All trips</a></p>\n";
            send(exchange, NOT_FOUND, HTML, ReloadScript.in(missing.getBytes(StandardCharsets.UTF_8), ""));
            return;
        }
        String type = TYPES.getOrDefault(name.substring(name.lastIndexOf('.') + 1), "application/octet-stream");
        send(exchange, OK, type, type.equals(HTML) ? ReloadScript.in(page, tag) : page);
    }

    private static void say(HttpExchange exchange, int status, String text) throws IOException {
        send(exchange, status, "text/plain; charset=utf-8", text.getBytes(StandardCharsets.UTF_8));
    }

    private static void send(HttpExchange exchange, int status, String type, byte[] body) throws IOException {
        Headers headers = exchange.getResponseHeaders();
        headers.set("Content-Type", type);
        headers.set("Cache-Control", "no-store");
        headers.set("X-Content-Type-Options", "nosniff");
        headers.set("Cross-Origin-Resource-Policy", "same-origin");
        if (exchange.getRequestMethod().equals("HEAD")) {
            headers.set("Content-Length", String.valueOf(body.length));
            exchange.sendResponseHeaders(status, -1);
            return;
        }
        exchange.sendResponseHeaders(status, body.length);
        try (OutputStream out = exchange.getResponseBody()) {
            out.write(body);
        }
    }
}
