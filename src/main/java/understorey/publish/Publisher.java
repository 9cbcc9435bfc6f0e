package understorey.publish;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.function.BiPredicate;
import org.jspecify.annotations.Nullable;
import understorey.pages.Page;

/**
 * Writes the pages of a site into one folder, and holds the folder until it is closed. Pages are staged as they are made,
 * by any thread; none takes its place before all are on the disk.
 */
public final class Publisher implements AutoCloseable {

    /** Name of the publisher's own list of the files that it wrote, one per line, sorted. */
    static final String LIST = ".understorey-files";
    /** How long a build waits for another one that writes into the same folder. */
    private static final int PATIENCE_S = 30;
    /** What file systems allow one name, in bytes. */
    private static final int LONGEST_NAME = 255;

    /**
     * Result of a run: how many files were written, left alone and deleted.
     *
     * @param written   files that are new or differ
     * @param unchanged files whose bytes were already right: their time stays
     * @param deleted   files of an earlier run that no plan needs any more
     */
    public record Outcome(int written, int unchanged, int deleted) {
    }

    /**
     * A page that is ready.
     *
     * @param due   whether this build may write it
     * @param fresh its new file; null if the old one stays
     */
    private record Ready(String page, boolean due, @Nullable Path fresh) {
    }

    private final OutFolder folder;
    private final String audience;
    private final @Nullable String trip;
    private final FolderLock held;
    private final FileList before;
    private final Staging staging;
    private final SortedMap<Integer, List<Ready>> turns = new ConcurrentSkipListMap<>();
    private final SortedMap<Integer, Exception> faults = new ConcurrentSkipListMap<>();

    private Publisher(OutFolder folder, String audience, @Nullable String trip, FolderLock held, FileList before) {
        this.folder = folder;
        this.audience = audience;
        this.trip = trip;
        this.held = held;
        this.before = before;
        this.staging = new Staging(folder.path());
    }

    /**
     * Takes hold of the folder.
     *
     * @param audience audience of the pages, in one word
     * @param trip     name of the only trip whose pages are written; of others and of shared pages only those that are not
     *                 there yet. Null for a whole site
     * @throws Refusal     if the folder was not made by this tool, another build holds it, or one trip is for another
     *                     audience than the pages there
     * @throws IOException if the disk fails
     */
    public static Publisher open(Path folder, String audience, @Nullable String trip) throws Refusal, IOException {
        return open(folder, PATIENCE_S, audience, trip);
    }

    static Publisher open(Path path, int patienceS, String audience, @Nullable String trip) throws Refusal, IOException {
        OutFolder folder = new OutFolder(path.toString().isEmpty() ? Path.of(".") : path);
        folder.earlier();
        FolderLock held = hold(folder, patienceS);
        try {
            FileList before = folder.earlier();
            if (trip != null && !before.names().isEmpty() && !before.audience().equals(audience)) {
                throw new Refusal("'" + folder.path() + "' holds pages for another audience: build the whole folder of plans, "
                        + "or name another folder with --out");
            }
            return new Publisher(folder, audience, trip, held, before);
        } catch (IOException | Refusal fault) {
            held.close();
            throw fault;
        }
    }

    /** The folder, created if necessary, without the remains of killed builds. */
    private static FolderLock hold(OutFolder folder, int patienceS) throws Refusal, IOException {
        FolderLock held = null;
        try {
            held = FolderLock.take(folder.path(), patienceS);
            Staging.sweep(folder.path());
            return held;
        } catch (IOException fault) {
            if (held != null) {
                held.close();
            }
            throw folder.fault(fault);
        }
    }

    /**
     * Writes pages beside their places; those that are there already are left alone. What stops it, {@link #publish} throws.
     *
     * @param turn of these pages among all, from 0
     * @return false if nothing can be published any more
     */
    public boolean stage(int turn, List<Page> pages) {
        try {
            turns.put(turn, ready(pages));
            return true;
        } catch (Refusal | IOException fault) {
            faults.put(turn, fault);
            return false;
        }
    }

    private List<Ready> ready(List<Page> pages) throws Refusal, IOException {
        List<Ready> ready = new ArrayList<>();
        for (Page page : pages) {
            refuseWrongName(page.path());
            boolean due = trip == null || page.path().startsWith(trip + "/")
                    || !before.names().contains(page.path()) || !folder.isPlainFile(page.path());
            ready.add(new Ready(page.path(), due, due ? fresh(page) : null));
        }
        return ready;
    }

    private @Nullable Path fresh(Page page) throws Refusal, IOException {
        byte[] bytes = page.bytes();
        folder.refuseWhatIsNotOurs(page.path(), bytes, before.names());
        return OutFolder.holds(folder.path().resolve(page.path()), bytes) ? null : write(bytes);
    }

    private Path write(byte[] bytes) throws IOException {
        try {
            return staging.write(bytes);
        } catch (IOException fault) {
            throw folder.fault(fault);
        }
    }

    /**
     * Gives every staged page its place, and deletes what no plan needs any more.
     *
     * @param keepOld decides whether a file stays that an earlier run wrote and this one does not; gets its name and the
     *                audience of that run (empty if unknown). Where one trip is built, everything else stays
     * @throws Refusal     if a page has no valid name, two need the same file, or a file or link of the user's is in the
     *                     place of one; then nothing is changed
     * @throws IOException if the disk fails
     */
    public Outcome publish(BiPredicate<String, String> keepOld) throws Refusal, IOException {
        throwFirstFault();
        List<Ready> pages = turns.values().stream().flatMap(List::stream).toList();
        refuseTwins(pages);
        List<Ready> due = pages.stream().filter(Ready::due).toList();
        FileList now = FileList.of(audience, due.stream().map(Ready::page).toList());
        // The list names every file before the file is there: a run that is cut off forgets none.
        FileList between = before.and(now);
        List<Path> gone = gone(now, trip == null ? keepOld : (file, earlier) -> !file.startsWith(trip + "/"));
        Path list = folder.path().resolve(LIST);
        byte[] first = bytes(between.text());
        @Nullable Path begun = OutFolder.holds(list, first) ? null : write(first);
        @Nullable Path done = now.text().equals(between.text()) ? null : write(bytes(now.text()));
        force();
        place(begun, list);
        for (Ready page : due) {
            place(page.fresh(), folder.path().resolve(page.page()));
        }
        for (Path old : gone) {
            folder.delete(old);
        }
        place(done, list);
        staging.settle();
        int written = (int) due.stream().filter(page -> page.fresh() != null).count();
        return new Outcome(written, due.size() - written, gone.size());
    }

    private void throwFirstFault() throws Refusal, IOException {
        Exception first = faults.isEmpty() ? null : faults.get(faults.firstKey());
        if (first instanceof Refusal refusal) {
            throw refusal;
        }
        if (first instanceof IOException disk) {
            throw disk;
        }
    }

    /** Earlier files to delete; the others are added to the list. */
    private List<Path> gone(FileList now, BiPredicate<String, String> keepOld) {
        List<Path> gone = new ArrayList<>();
        for (String old : before.names()) {
            Path file = now.names().contains(old) ? null : folder.place(old);
            if (file != null && folder.isPlainFile(old) && !keepOld.test(old, before.audience())) {
                gone.add(file);
            } else if (file == null || folder.isPlainFile(old)) {
                now.names().add(old);
            }
        }
        return gone;
    }

    private void force() throws IOException {
        try {
            staging.force();
        } catch (IOException fault) {
            throw folder.fault(fault);
        }
    }

    private void place(@Nullable Path fresh, Path place) throws IOException {
        if (fresh != null) {
            staging.place(fresh, place);
        }
    }

    private static void refuseWrongName(String page) throws Refusal {
        if (!FileList.staysInside(page)) {
            throw new Refusal("'" + page + "' is not a valid page name");
        }
        for (String part : page.split("/")) {
            if (bytes(part).length > LONGEST_NAME) {
                throw new Refusal("the name of the page '" + page + "' is too long for a file");
            }
        }
    }

    private static void refuseTwins(List<Ready> pages) throws Refusal {
        Map<String, String> names = new HashMap<>();
        for (Ready ready : pages) {
            String page = ready.page();
            String other = names.putIfAbsent(page.toLowerCase(Locale.ROOT), page);
            if (page.equals(other)) {
                throw new Refusal("two pages need the same file '" + page + "': rename one of their plans");
            }
            if (other != null) {
                throw new Refusal("the pages '" + other + "' and '" + page + "' differ in capitals only: "
                        + "rename one of their plans");
            }
        }
    }

    private static byte[] bytes(String content) {
        return content.getBytes(StandardCharsets.UTF_8);
    }

    /** Deletes what has no place, and the folder too where it was made for nothing. */
    @Override
    public void close() throws IOException {
        try (held) {
            staging.close();
        }
    }
}
