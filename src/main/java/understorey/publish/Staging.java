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
import java.util.Set;
import java.util.UUID;
import java.util.regex.Pattern;

/**
 * New files of a build, whole and on the disk before the first one takes its place. What has no place in the end is
 * deleted; what a killed build left is swept away by the next one.
 */
final class Staging implements AutoCloseable {

    private static final String PREFIX = ".understorey-new";
    private static final Pattern OURS = Pattern.compile(Pattern.quote(PREFIX) + "(-[0-9a-f]{8}-\\d+)?");

    private final Path folder;
    private final String mark = UUID.randomUUID().toString().substring(0, 8);
    private final List<Path> waiting = new ArrayList<>();
    private final Set<Path> touched = new LinkedHashSet<>();
    private int count;

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

    /** Writes a new file and waits until it is on the disk. */
    Path write(byte[] bytes) throws IOException {
        Path file = folder.resolve(PREFIX + "-" + mark + "-" + count++);
        waiting.add(file);
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer rest = ByteBuffer.wrap(bytes);
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
            channel.force(true);
        }
        return file;
    }

    /** Gives a new file its place. */
    void place(Path fresh, Path place) throws IOException {
        // A link to a folder is no folder to createDirectories, and the folder of pages may be one.
        if (!Files.isDirectory(place.getParent())) {
            Files.createDirectories(place.getParent());
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
    void settle() {
        for (Path changed : touched) {
            try (FileChannel channel = FileChannel.open(changed, StandardOpenOption.READ)) {
                channel.force(true);
            } catch (IOException notHere) {
                // Some systems open no folder; there the names follow a little later.
                continue;
            }
        }
        touched.clear();
    }

    @Override
    public void close() throws IOException {
        for (Path file : waiting) {
            Files.deleteIfExists(file);
        }
    }
}
