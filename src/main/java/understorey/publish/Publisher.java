package understorey.publish;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiPredicate;
import understorey.pages.Page;

/** Writes the pages of a site into one folder. */
public final class Publisher {

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

    private final OutFolder folder;
    private final int patienceS;

    Publisher(Path folder, int patienceS) {
        this.folder = new OutFolder(folder.toString().isEmpty() ? Path.of(".") : folder);
        this.patienceS = patienceS;
    }

    /**
     * Publishes the pages of a whole site. All refusals come before the first byte is written, and every new file is on
     * the disk before the first one takes its place.
     *
     * @param audience audience of the pages, in one word
     * @param keepOld  decides whether a file stays that an earlier run wrote and this one does not; gets its name and the
     *                 audience of that run (empty if unknown)
     * @throws Refusal     if the folder was not made by this tool, or two pages need the same file
     * @throws IOException if the disk fails
     */
    public static Outcome publish(List<Page> pages, Path folder, String audience,
                                  BiPredicate<String, String> keepOld) throws Refusal, IOException {
        return new Publisher(folder, PATIENCE_S).publish(pages, audience, keepOld);
    }

    /**
     * Publishes the pages of one trip. Pages that it shares with others are written only where there are none yet.
     *
     * @param trip the name of the trip's own folder
     * @throws Refusal as for a whole site, and when the folder holds pages for another audience
     */
    public static Outcome publishTrip(List<Page> pages, Path folder, String audience, String trip)
            throws Refusal, IOException {
        return new Publisher(folder, PATIENCE_S).publishTrip(pages, audience, trip);
    }

    @SuppressWarnings("try")
    Outcome publish(List<Page> pages, String audience, BiPredicate<String, String> keepOld)
            throws Refusal, IOException {
        refuse(pages);
        try (FolderLock held = hold()) {
            return write(pages, folder.earlier(), audience, keepOld);
        }
    }

    @SuppressWarnings("try")
    Outcome publishTrip(List<Page> pages, String audience, String trip) throws Refusal, IOException {
        refuse(pages);
        try (FolderLock held = hold()) {
            FileList before = folder.earlier();
            if (!before.names().isEmpty() && !before.audience().equals(audience)) {
                throw new Refusal("'" + folder.path() + "' holds pages for another audience: build the whole folder of plans, "
                        + "or name another folder with --out");
            }
            List<Page> due = new ArrayList<>();
            for (Page page : pages) {
                boolean there = before.names().contains(page.path()) && folder.isPlainFile(page.path());
                if (page.path().startsWith(trip + "/") || !there) {
                    due.add(page);
                }
            }
            return write(due, before, audience, (file, earlier) -> !file.startsWith(trip + "/"));
        }
    }

    /** The folder, created if necessary, without the remains of killed builds. */
    private FolderLock hold() throws Refusal, IOException {
        folder.earlier();
        FolderLock held = null;
        try {
            if (!Files.isDirectory(folder.path())) {
                Files.createDirectories(folder.path());
            }
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

    private Outcome write(List<Page> pages, FileList before, String audience, BiPredicate<String, String> keepOld)
            throws Refusal, IOException {
        FileList now = FileList.of(audience, List.of());
        for (Page page : pages) {
            folder.refuseWhatIsNotOurs(page.path(), bytes(page.content()), before.names());
            now.names().add(page.path());
        }
        List<Path> gone = new ArrayList<>();
        // The list names every file before the file is there: a run that is cut off forgets none.
        FileList between = before.and(now);
        for (String old : before.names()) {
            Path file = now.names().contains(old) ? null : folder.place(old);
            if (file != null && folder.isPlainFile(old) && !keepOld.test(old, before.audience())) {
                gone.add(file);
            } else if (file == null || folder.isPlainFile(old)) {
                now.names().add(old);
            }
        }
        try (Staging staging = new Staging(folder.path())) {
            Map<Path, Path> fresh = new LinkedHashMap<>();
            Path list = folder.path().resolve(LIST);
            stage(staging, fresh, list, bytes(between.text()));
            for (Page page : pages) {
                stage(staging, fresh, folder.path().resolve(page.path()), bytes(page.content()));
            }
            int written = fresh.size() - (fresh.containsKey(list) ? 1 : 0);
            Path last = now.text().equals(between.text()) ? null : stage(staging, bytes(now.text()));
            for (Map.Entry<Path, Path> file : fresh.entrySet()) {
                staging.place(file.getValue(), file.getKey());
            }
            for (Path old : gone) {
                folder.delete(old);
            }
            if (last != null) {
                staging.place(last, list);
            }
            staging.settle();
            return new Outcome(written, pages.size() - written, gone.size());
        }
    }

    private void stage(Staging staging, Map<Path, Path> fresh, Path place, byte[] bytes) throws IOException {
        if (!OutFolder.holds(place, bytes)) {
            fresh.put(place, stage(staging, bytes));
        }
    }

    private Path stage(Staging staging, byte[] bytes) throws IOException {
        try {
            return staging.write(bytes);
        } catch (IOException fault) {
            throw folder.fault(fault);
        }
    }

    private static void refuse(List<Page> pages) throws Refusal {
        Map<String, String> names = new HashMap<>();
        for (Page page : pages) {
            if (!FileList.staysInside(page.path())) {
                throw new Refusal("'" + page.path() + "' is not a valid page name");
            }
            for (String part : page.path().split("/")) {
                if (bytes(part).length > LONGEST_NAME) {
                    throw new Refusal("the name of the page '" + page.path() + "' is too long for a file");
                }
            }
            String other = names.putIfAbsent(page.path().toLowerCase(Locale.ROOT), page.path());
            if (page.path().equals(other)) {
                throw new Refusal("two pages need the same file '" + page.path() + "': rename one of their plans");
            }
            if (other != null) {
                throw new Refusal("the pages '" + other + "' and '" + page.path() + "' differ in capitals only: "
                        + "rename one of their plans");
            }
        }
    }

    private static byte[] bytes(String content) {
        return content.getBytes(StandardCharsets.UTF_8);
    }
}
