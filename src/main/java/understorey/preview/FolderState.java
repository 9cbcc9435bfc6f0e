package understorey.preview;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What can be seen of the files in some folders without reading them. Two states differ after a save, since a file system gives
 * the new file another time.
 */
public record FolderState(Map<Path, Stamp> files) {

    /** Of one file. */
    public record Stamp(long size, FileTime saved) {
    }

    /** Of one folder; empty for none. */
    public static FolderState of(@Nullable Path folder) {
        return of(folder == null ? List.of() : List.of(folder));
    }

    /** Of folders; those that are not there have no files. */
    static FolderState of(List<Path> folders) {
        Map<Path, Stamp> files = new TreeMap<>();
        for (Path folder : folders) {
            try (DirectoryStream<Path> found = Files.newDirectoryStream(folder)) {
                for (Path file : found) {
                    add(file, files);
                }
            } catch (IOException gone) {
                continue;
            }
        }
        return new FolderState(files);
    }

    private static void add(Path file, Map<Path, Stamp> files) {
        try {
            BasicFileAttributes seen = Files.readAttributes(file, BasicFileAttributes.class);
            files.put(file, new Stamp(seen.size(), seen.lastModifiedTime()));
        } catch (IOException gone) {
            files.remove(file);
        }
    }
}
