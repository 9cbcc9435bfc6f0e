package understorey.preview;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * Waits until something is saved in some folders. The system tells it at once; a look at every file, once a second, finds what
 * the system does not tell, for example on a network drive or when too much happens at once. So a change is never missed,
 * and a folder may come and go.
 */
public final class FolderWatch implements AutoCloseable {

    private static final int LOOK_EVERY_MS = 1000;
    /** Editors save in several steps, for example a new file and a rename: the steps of one save come this soon after each other. */
    private static final int QUIET_MS = 5;
    private static final int MOST_STEPS = 25;

    private final List<Path> folders;
    private final WatchService service;
    private final Map<Path, WatchKey> watched = new HashMap<>();
    private FolderState seen;

    /** Watches from now on. */
    public FolderWatch(List<Path> folders) throws IOException {
        this.folders = List.copyOf(folders);
        service = folders.get(0).getFileSystem().newWatchService();
        register();
        seen = FolderState.of(folders);
    }

    /** Returns after a save, as soon as it seems to be complete. */
    public void await() throws InterruptedException {
        while (true) {
            WatchKey key = service.poll(LOOK_EVERY_MS, TimeUnit.MILLISECONDS);
            boolean told = key != null;
            for (int step = 0; key != null && step < MOST_STEPS; step++) {
                key.pollEvents();
                key.reset();
                key = service.poll(QUIET_MS, TimeUnit.MILLISECONDS);
            }
            if (key != null) {
                key.reset();
            }
            register();
            FolderState now = FolderState.of(folders);
            // Two saves at one tick of the clock may look alike.
            if (told || !now.equals(seen)) {
                seen = now;
                return;
            }
        }
    }

    /** Folders that were not there before. */
    private void register() {
        watched.values().removeIf(key -> !key.isValid());
        for (Path folder : folders) {
            if (!watched.containsKey(folder) && Files.isDirectory(folder)) {
                try {
                    watched.put(folder, folder.register(service, StandardWatchEventKinds.ENTRY_CREATE,
                            StandardWatchEventKinds.ENTRY_MODIFY, StandardWatchEventKinds.ENTRY_DELETE));
                } catch (IOException unwatched) {
                    // The system watches no more folders; the look once a second is left.
                    continue;
                }
            }
        }
    }

    @Override
    public void close() throws IOException {
        service.close();
    }
}
