package understorey.publish;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Pattern;

/**
 * New files of a build, whole and on the disk before the first one takes its place. Several threads may write at once.
 * What has no place in the end is deleted; what a killed build left is swept away by the next one.
 */
final class Staging implements AutoCloseable {

    private static final String PREFIX = ".understorey-new";
    private static final Pattern OURS = Pattern.compile(Pattern.quote(PREFIX) + "(-[0-9a-f]{8}-\\d+)?");
    /** Files that wait for the disk at once: it then takes many of them in one turn, on any number of cores. */
    private static final int AT_ONCE = 16;

    private final Path folder;
    private final String mark = UUID.randomUUID().toString().substring(0, 8);
    private final Set<Path> waiting = ConcurrentHashMap.newKeySet();
    private final Set<Path> touched = new LinkedHashSet<>();
    private final AtomicInteger count = new AtomicInteger();

    Staging(Path folder) {
        this.folder = folder;
    }

    /** Whether a name in the folder is one of a new file, of this build or of a killed one. */
    static boolean isNew(String name) {
        return OURS.matcher(name).matches();
    }

    /** Deletes what killed builds left. Only for the build that holds the folder. */
    static void sweep(Path folder) throws IOException {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, PREFIX + "*")) {
            for (Path file : files) {
                if (isNew(file.getFileName().toString()) && !Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS)) {
                    Files.delete(file);
                }
            }
        }
    }

    /** Writes a new file. */
    Path write(byte[] bytes) throws IOException {
        Path file = folder.resolve(PREFIX + "-" + mark + "-" + count.getAndIncrement());
        waiting.add(file);
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer rest = ByteBuffer.wrap(bytes);
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
        }
        return file;
    }

    /** Waits until every new file is on the disk. */
    void force() throws IOException {
        List<Callable<Void>> files = new ArrayList<>();
        for (Path file : waiting) {
            files.add(() -> force(file, StandardOpenOption.WRITE));
        }
        all(files);
    }

    /** Gives a new file its place. */
    void place(Path fresh, Path place) throws IOException {
        // A link to a folder is no folder to createDirectories, and the folder of pages may be one.
        Path folder = Objects.requireNonNull(place.getParent(), "a page is in the folder of pages");
        if (!Files.isDirectory(folder)) {
            Files.createDirectories(folder);
        }
        try {
            Files.move(fresh, place, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException plain) {
            Files.move(fresh, place, StandardCopyOption.REPLACE_EXISTING);
        }
        waiting.remove(fresh);
        touched.add(place.getParent());
    }

    /** Waits until the folders are on the disk too, where the system can do that. */
    void settle() throws IOException {
        List<Callable<Void>> folders = new ArrayList<>();
        for (Path changed : touched) {
            folders.add(() -> {
                try {
                    return force(changed, StandardOpenOption.READ);
                } catch (IOException notHere) {
                    // Some systems open no folder; there the names follow a little later.
                    return null;
                }
            });
        }
        all(folders);
        touched.clear();
    }

    private static Void force(Path file, StandardOpenOption how) throws IOException {
        try (FileChannel channel = FileChannel.open(file, how)) {
            channel.force(true);
            return null;
        }
    }

    private static void all(List<Callable<Void>> works) throws IOException {
        ExecutorService pool = Executors.newFixedThreadPool(Math.max(1, Math.min(AT_ONCE, works.size())));
        try {
            for (Future<Void> done : pool.invokeAll(works)) {
                done.get();
            }
        } catch (ExecutionException fault) {
            throw fault.getCause() instanceof IOException disk ? disk : new IOException(fault.getCause());
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
            throw new IOException("stopped", stop);
        } finally {
            pool.shutdown();
        }
    }

    @Override
    public void close() throws IOException {
        for (Path file : waiting) {
            Files.deleteIfExists(file);
        }
    }
}
