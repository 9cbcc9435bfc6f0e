package understorey.preview;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.BindException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/** Shows a shelf to browsers on this computer only: it listens on the loopback address. */
public final class PreviewServer implements AutoCloseable {

    public static final int LAST_PORT = 65_535;
    private static final int PORTS_TRIED = 100;
    private static final int LONGEST_END_S = 5;

    private final Shelf shelf;
    private final HttpServer server;
    private final ExecutorService threads = Executors.newCachedThreadPool(task -> {
        Thread thread = new Thread(task, "preview");
        thread.setDaemon(true);
        return thread;
    });

    private PreviewServer(Shelf shelf, HttpServer server) {
        this.shelf = shelf;
        this.server = server;
        server.createContext("/", new Answers(shelf, server.getAddress().getPort()));
        server.setExecutor(threads);
        server.start();
    }

    /**
     * Listens on a port, or on the next one that is free.
     *
     * @param port 0 for any
     * @throws IOException when none is free
     */
    public static PreviewServer open(Shelf shelf, int port) throws IOException {
        // An answer is several small packets; without this, each waits 40 ms for a sign that the last one arrived.
        System.setProperty("sun.net.httpserver.nodelay", "true");
        for (int tried = port; tried <= Math.min(LAST_PORT, port + PORTS_TRIED); tried++) {
            HttpServer server = listen(tried);
            if (server != null) {
                return new PreviewServer(shelf, server);
            }
        }
        throw new BindException("no port from " + port + " on is free");
    }

    private static @Nullable HttpServer listen(int port) throws IOException {
        try {
            return HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), 0);
        } catch (BindException taken) {
            return null;
        }
    }

    public int port() {
        return server.getAddress().getPort();
    }

    /** Ends all answers and their threads. */
    @Override
    public void close() {
        shelf.close();
        server.stop(0);
        threads.shutdownNow();
        try {
            threads.awaitTermination(LONGEST_END_S, TimeUnit.SECONDS);
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
        }
    }
}
