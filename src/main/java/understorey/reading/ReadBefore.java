package understorey.reading;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import understorey.reading.files.PlanFolder;
import understorey.reading.subject.SubjectCatalogue;
import understorey.yaml.finding.Findings;

/**
 * What the files of a folder said when they were last read. A file is read again only when its text is different, or a file that
 * it names. Files with errors are always read again, and so are trips that describe their site in place: the name of its
 * page depends on all trips.
 */
public final class ReadBefore {

    /**
     * A file as read.
     *
     * @param value null for a file with errors
     * @param found what was found in it
     * @param named the files that it names, without those beside it
     */
    record Reading<T>(@Nullable T value, Findings found, Set<String> named) {
    }

    /**
     * A file that had no errors.
     *
     * @param named  what the library held under the names that it uses
     * @param beside the bytes of the tables that it names
     */
    private record Kept(Reading<?> reading, Map<String, Object> named, Map<Path, byte[]> beside) {
    }

    private final SubjectCatalogue catalogue;
    private final Map<Path, Kept> files = new HashMap<>();
    private List<?> around = List.of();

    /** Nothing was read yet. */
    public ReadBefore(SubjectCatalogue catalogue) {
        this.catalogue = catalogue;
    }

    SubjectCatalogue catalogue() {
        return catalogue;
    }

    /** The names of all files: links in texts may lead to their pages, so that other names have every file read again. */
    void around(List<?> names) {
        if (!names.equals(around)) {
            files.clear();
            around = List.copyOf(names);
        }
    }

    /**
     * A file, as it was read before or read again.
     *
     * @param opened its text now
     * @param known  what a name stands for now; null for one that must be looked up each time
     */
    @SuppressWarnings("unchecked")
    <T> Reading<T> of(PlanFolder.Entry file, Findings opened, Function<String, @Nullable Object> known, Supplier<Reading<T>> read) {
        Kept kept = files.get(file.path());
        if (kept != null && isSame(kept, opened, known)) {
            return (Reading<T>) kept.reading();
        }
        Reading<T> reading = read.get();
        files.remove(file.path());
        if (reading.value() != null && opened.errors() == 0) {
            keep(file, reading, known);
        }
        return reading;
    }

    private void keep(PlanFolder.Entry file, Reading<?> reading, Function<String, @Nullable Object> known) {
        Map<String, Object> named = new HashMap<>();
        for (String name : reading.named()) {
            Object value = known.apply(name);
            if (value == null) {
                return;
            }
            named.put(name, value);
        }
        Map<Path, byte[]> beside = new HashMap<>();
        file.beside().opened().forEach(table -> beside.put(table, bytes(table)));
        files.put(file.path(), new Kept(reading, named, beside));
    }

    private static boolean isSame(Kept kept, Findings opened, Function<String, @Nullable Object> known) {
        return opened.errors() == 0 && kept.reading().found().source().text().equals(opened.source().text())
                && kept.named().entrySet().stream().allMatch(name -> name.getValue().equals(known.apply(name.getKey())))
                && kept.beside().entrySet().stream().allMatch(table -> Arrays.equals(table.getValue(), bytes(table.getKey())));
    }

    /** Nothing of a table that cannot be read: reading the file says why. */
    private static byte[] bytes(Path table) {
        try {
            return Files.isRegularFile(table) ? Files.readAllBytes(table) : new byte[0];
        } catch (IOException unread) {
            return new byte[0];
        }
    }
}
