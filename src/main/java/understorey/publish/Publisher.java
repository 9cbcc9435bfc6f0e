package understorey.publish;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
import understorey.pages.Page;

/** Writes the pages of a site into one folder. */
public final class Publisher {

    /** Name of the publisher's own list of the files that it wrote, one per line, sorted. */
    static final String LIST = ".understorey-files";
    /** Name of the temporary file: each page is written here, then moved, so that no page is ever half written. */
    static final String FRESH = ".understorey-new";

    /**
     * Result of a run: how many files were written, left alone and deleted.
     *
     * @param written   files that are new or differ
     * @param unchanged files whose bytes were already right: their time stays
     * @param deleted   files of an earlier run that no plan needs any more
     */
    public record Outcome(int written, int unchanged, int deleted) {
    }

    private final Path folder;

    private Publisher(Path folder) {
        this.folder = folder;
    }

    /**
     * Publishes pages. All refusals come before the first byte is written.
     *
     * @param audience audience of the pages, in one word
     * @param keepOld  decides whether a file stays that an earlier run wrote and this one does not; gets its name and the
     *                 audience of that run (empty if unknown)
     * @throws Refusal     if the folder was not made by this tool, or two pages need the same file
     * @throws IOException if the disk fails
     */
    public static Outcome publish(List<Page> pages, Path folder, String audience,
                                  BiPredicate<String, String> keepOld) throws Refusal, IOException {
        return new Publisher(folder.toString().isEmpty() ? Path.of(".") : folder).publish(pages, audience, keepOld);
    }

    private Outcome publish(List<Page> pages, String audience, BiPredicate<String, String> keepOld)
            throws Refusal, IOException {
        FileList before = earlier();
        FileList now = FileList.of(audience, names(pages));
        for (Page page : pages) {
            refuseWhatIsNotOurs(page, before.names());
        }
        Files.createDirectories(folder);
        // The list names every file before it exists, so that an interrupted run forgets none.
        write(LIST, before.and(now).text());
        int written = 0;
        for (Page page : pages) {
            written += write(page.path(), page.content()) ? 1 : 0;
        }
        int deleted = 0;
        for (String old : before.names()) {
            if (!now.names().contains(old) && isPlainFile(old)) {
                if (keepOld.test(old, before.audience())) {
                    now.names().add(old);
                } else {
                    delete(old);
                    deleted++;
                }
            }
        }
        write(LIST, now.text());
        return new Outcome(written, pages.size() - written, deleted);
    }

    private static SortedSet<String> names(List<Page> pages) throws Refusal {
        SortedSet<String> names = new TreeSet<>();
        for (Page page : pages) {
            if (!FileList.staysInside(page.path())) {
                throw new Refusal("'" + page.path() + "' is not a valid page name");
            }
            if (!names.add(page.path())) {
                throw new Refusal("two pages need the same file '" + page.path() + "': rename one of their plans");
            }
        }
        return names;
    }

    /** List of an earlier run; empty for a new or empty folder. */
    private FileList earlier() throws Refusal, IOException {
        FileList none = FileList.of("");
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            return none;
        }
        if (!Files.isDirectory(folder)) {
            throw new Refusal("'" + folder + "' is a file, not a folder: choose another with --out");
        }
        Path list = folder.resolve(LIST);
        if (Files.isRegularFile(list, LinkOption.NOFOLLOW_LINKS)) {
            return FileList.of(new String(Files.readAllBytes(list), StandardCharsets.UTF_8));
        }
        try (Stream<Path> files = Files.list(folder)) {
            if (files.anyMatch(file -> !file.getFileName().toString().equals(FRESH))) {
                throw new Refusal("'" + folder + "' is not empty and was not made by this tool: empty it, or "
                        + "choose another folder with --out");
            }
        }
        return none;
    }

    private void refuseWhatIsNotOurs(Page page, Set<String> ours) throws Refusal, IOException {
        Path file = folder;
        for (String part : page.path().split("/")) {
            if (!file.equals(folder) && Files.exists(file) && !Files.isDirectory(file)) {
                throw new Refusal("'" + file + "' is a file where pages need a folder: move it away");
            }
            file = file.resolve(part);
            if (Files.isSymbolicLink(file)) {
                throw new Refusal("'" + file + "' is a link: remove it, because pages are never written through links");
            }
        }
        if (Files.isDirectory(file)) {
            throw new Refusal("'" + file + "' is a folder where a page needs a file: move it away");
        }
        if (Files.exists(file) && !ours.contains(page.path()) && !holds(file, bytes(page.content()))) {
            throw new Refusal("'" + file + "' was not made by this tool and would be overwritten: move it away");
        }
    }

    /** True for a regular file below the folder, if its path has no symbolic link. */
    private boolean isPlainFile(String name) {
        Path path = folder;
        for (String part : name.split("/")) {
            path = path.resolve(part);
            if (Files.isSymbolicLink(path)) {
                return false;
            }
        }
        return Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS);
    }

    private boolean write(String name, String content) throws IOException {
        Path file = folder.resolve(name);
        byte[] bytes = bytes(content);
        if (holds(file, bytes)) {
            return false;
        }
        Files.createDirectories(file.getParent());
        Path fresh = folder.resolve(FRESH);
        Files.deleteIfExists(fresh);
        Files.write(fresh, bytes, StandardOpenOption.CREATE_NEW);
        try {
            Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException plain) {
            Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING);
        }
        return true;
    }

    private static boolean holds(Path file, byte[] bytes) throws IOException {
        return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && Files.size(file) == bytes.length
                && Arrays.equals(Files.readAllBytes(file), bytes);
    }

    private static byte[] bytes(String content) {
        return content.getBytes(StandardCharsets.UTF_8);
    }

    /** Deletes a file, and the folders that are empty after that. */
    private void delete(String name) throws IOException {
        Path file = folder.resolve(name);
        Files.delete(file);
        for (Path parent = file.getParent(); !parent.equals(folder); parent = parent.getParent()) {
            try (Stream<Path> files = Files.list(parent)) {
                if (files.findAny().isPresent()) {
                    return;
                }
            }
            Files.delete(parent);
        }
    }
}
