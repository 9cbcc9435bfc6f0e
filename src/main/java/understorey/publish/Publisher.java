package understorey.publish;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import understorey.pages.Page;

/** Writes the pages of a site into one folder. */
public final class Publisher {

    /** The publisher's own list of the files it wrote, one a line, sorted. */
    static final String LIST = ".understorey-files";

    /**
     * What happened.
     *
     * @param written   files that are new or differ
     * @param unchanged files whose bytes were right already: their time stays
     * @param deleted   files of an earlier run that no plan makes any more
     */
    public record Outcome(int written, int unchanged, int deleted) {
    }

    private final Path folder;
    private final boolean keepOld;

    private Publisher(Path folder, boolean keepOld) {
        this.folder = folder;
        this.keepOld = keepOld;
    }

    /**
     * Publishes pages.
     *
     * @param keepOld keeps what an earlier run wrote and this one does not: a plan that cannot be read today
     *                loses nothing
     * @throws Refusal     when the folder is not ours to write into, or two pages want one file
     * @throws IOException when the disk fails
     */
    public static Outcome publish(List<Page> pages, Path folder, boolean keepOld) throws Refusal, IOException {
        return new Publisher(folder, keepOld).publish(pages);
    }

    private Outcome publish(List<Page> pages) throws Refusal, IOException {
        Set<String> before = listed();
        Set<String> now = new TreeSet<>();
        for (Page page : pages) {
            if (!now.add(page.path())) {
                throw new Refusal("two pages want the file '" + page.path() + "': give one of the two another name");
            }
            refuseLinks(page.path());
        }
        Files.createDirectories(folder);
        int written = 0;
        for (Page page : pages) {
            byte[] bytes = page.content().getBytes(StandardCharsets.UTF_8);
            written += write(folder.resolve(page.path()), bytes) ? 1 : 0;
        }
        int deleted = 0;
        for (String old : before) {
            if (keepOld) {
                now.add(old);
            } else if (!now.contains(old)) {
                deleted += delete(old) ? 1 : 0;
            }
        }
        write(folder.resolve(LIST), (String.join("\n", now) + "\n").getBytes(StandardCharsets.UTF_8));
        return new Outcome(written, pages.size() - written, deleted);
    }

    /** The list of an earlier run; empty for a folder that is new or empty. */
    private Set<String> listed() throws Refusal, IOException {
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            return Set.of();
        }
        if (!Files.isDirectory(folder)) {
            throw new Refusal("'" + folder + "' is a file, not a folder: name another with --out");
        }
        Path list = folder.resolve(LIST);
        if (Files.isRegularFile(list, LinkOption.NOFOLLOW_LINKS)) {
            Set<String> names = new LinkedHashSet<>();
            for (String name : Files.readAllLines(list)) {
                if (inside(name)) {
                    names.add(name);
                }
            }
            return names;
        }
        try (Stream<Path> files = Files.list(folder)) {
            if (files.findAny().isPresent()) {
                throw new Refusal("'" + folder + "' is not empty and was not made by this tool: empty it, or name "
                        + "another folder with --out");
            }
        }
        return Set.of();
    }

    /** A name that stays below the folder, whatever someone wrote into the list. */
    private boolean inside(String name) {
        if (name.isBlank()) {
            return false;
        }
        Path path = folder.resolve(name).normalize();
        return path.startsWith(folder.normalize()) && !path.equals(folder.normalize());
    }

    private void refuseLinks(String name) throws Refusal {
        Path path = folder;
        for (Path part : Path.of(name)) {
            path = path.resolve(part);
            if (Files.isSymbolicLink(path)) {
                throw new Refusal("'" + path + "' is a link: remove it, pages are never written through links");
            }
        }
    }

    private static boolean write(Path file, byte[] bytes) throws IOException {
        if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && Files.size(file) == bytes.length
                && Arrays.equals(Files.readAllBytes(file), bytes)) {
            return false;
        }
        Files.createDirectories(file.getParent());
        Path fresh = file.resolveSibling("." + file.getFileName() + ".new");
        Files.write(fresh, bytes);
        try {
            Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException plain) {
            Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING);
        }
        return true;
    }

    private boolean delete(String name) throws IOException {
        Path file = folder.resolve(name);
        boolean ours = Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                && file.toRealPath().startsWith(folder.toRealPath());
        if (!ours) {
            return false;
        }
        Files.delete(file);
        for (Path parent = file.getParent(); !parent.equals(folder); parent = parent.getParent()) {
            try (Stream<Path> files = Files.list(parent)) {
                if (files.findAny().isPresent()) {
                    break;
                }
            }
            Files.delete(parent);
        }
        return true;
    }
}
