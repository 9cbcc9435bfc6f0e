package understorey;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** A folder with all below it, so that two states of it can be compared. */
public final class Tree {

    private Tree() {
    }

    /** Every file with its text and every folder with none, by name below the folder, with slashes. */
    public static SortedMap<String, String> of(Path folder) {
        return of(folder, false);
    }

    /** The same with the time of each file, in which a file written with the same bytes shows too. */
    public static SortedMap<String, String> withTimes(Path folder) {
        return of(folder, true);
    }

    private static SortedMap<String, String> of(Path folder, boolean times) {
        SortedMap<String, String> tree = new TreeMap<>();
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : (Iterable<Path>) paths::iterator) {
                boolean file = Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS);
                String name = folder.relativize(path).toString().replace('\\', '/');
                tree.put(name, !file ? "folder" : (times ? Files.getLastModifiedTime(path) + "\n" : "")
                        + new String(Files.readAllBytes(path), StandardCharsets.UTF_8));
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
        return tree;
    }

    /** Copies a folder with all below it. */
    public static Path copy(Path from, Path to) throws IOException {
        try (Stream<Path> paths = Files.walk(from)) {
            for (Path path : (Iterable<Path>) paths::iterator) {
                Path target = to.resolve(from.relativize(path).toString());
                if (Files.isDirectory(path)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(path, target);
                }
            }
        }
        return to;
    }

    /**
     * The first place where two trees differ: the file, its line, and both lines; empty where they are equal.
     * Only files count.
     */
    public static String firstDifference(SortedMap<String, String> expected, SortedMap<String, String> actual) {
        TreeMap<String, String> names = new TreeMap<>(expected);
        names.putAll(actual);
        for (String name : names.keySet()) {
            String want = expected.get(name);
            String have = actual.get(name);
            if (want == null || have == null) {
                return name + " is " + (want == null ? "there but not expected" : "expected but not there");
            }
            if (!want.equals(have)) {
                return name + ":" + line(want.split("\n", -1), have.split("\n", -1));
            }
        }
        return "";
    }

    private static String line(String[] want, String[] have) {
        int line = 0;
        while (line < want.length && line < have.length && want[line].equals(have[line])) {
            line++;
        }
        return (line + 1) + "\n  expected: " + (line < want.length ? want[line] : "the end")
                + "\n  but is:   " + (line < have.length ? have[line] : "the end");
    }
}
