package understorey.publish;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;
import org.jspecify.annotations.Nullable;

/**
 * Holds a folder for one build at a time, by a lock on a file in it. The system drops the lock of a process that is
 * killed. The file is deleted while the lock is held, so a lock counts only on the file that still has the name.
 */
final class FolderLock implements AutoCloseable {

    static final String FILE = ".understorey-lock";
    private static final long PAUSE_MS = 50;
    /** A file lock belongs to the process, so threads of this one need a lock of their own. */
    private static final ReentrantLock THIS_PROCESS = new ReentrantLock();

    private final Path file;
    private final FileChannel channel;
    /** Folders that were not there before, the innermost first. */
    private final List<Path> made;

    private FolderLock(Path file, FileChannel channel, List<Path> made) {
        this.file = file;
        this.channel = channel;
        this.made = made;
    }

    /**
     * Waits until no other build holds the folder, which is made where there is none.
     *
     * @throws Refusal when one still does after that many seconds
     */
    static FolderLock take(Path folder, int seconds) throws Refusal, IOException {
        Path file = folder.resolve(FILE);
        boolean held = false;
        List<Path> missing = missing(folder);
        try {
            if (THIS_PROCESS.tryLock(seconds, TimeUnit.SECONDS)) {
                for (long pauses = seconds * 1000L / PAUSE_MS; pauses >= 0; pauses--) {
                    if (!Files.isDirectory(folder)) {
                        Files.createDirectories(folder);
                    }
                    FileChannel channel = locked(file);
                    if (channel != null) {
                        held = true;
                        return new FolderLock(file, channel, missing);
                    }
                    Thread.sleep(PAUSE_MS);
                }
            }
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
        } finally {
            if (!held && THIS_PROCESS.isHeldByCurrentThread()) {
                THIS_PROCESS.unlock();
            }
        }
        throw new Refusal("another build is writing into '" + folder + "': try again when it has ended");
    }

    private static List<Path> missing(Path folder) {
        List<Path> missing = new ArrayList<>();
        for (Path at = folder.toAbsolutePath(); at != null && !Files.exists(at); at = at.getParent()) {
            missing.add(at);
        }
        return missing;
    }

    /** The locked file; null if another process has it, or has just deleted it. */
    private static @Nullable FileChannel locked(Path file) throws Refusal, IOException {
        if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new Refusal("'" + file + "' is not an ordinary file: remove it");
        }
        FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE,
                LinkOption.NOFOLLOW_LINKS);
        boolean ours = false;
        try {
            Object opened = key(file);
            FileLock lock = channel.tryLock();
            ours = lock != null && Objects.equals(opened, key(file));
        } catch (NoSuchFileException deleted) {
            ours = false;
        } finally {
            if (!ours) {
                channel.close();
            }
        }
        return ours ? channel : null;
    }

    private static Object key(Path file) throws IOException {
        return Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS).fileKey();
    }

    /** A folder that was made and is still empty goes too. */
    @Override
    public void close() throws IOException {
        try (channel) {
            Files.deleteIfExists(file);
            for (Path folder : made) {
                Files.delete(folder);
            }
        } catch (DirectoryNotEmptyException filled) {
            return;
        } finally {
            THIS_PROCESS.unlock();
        }
    }
}
