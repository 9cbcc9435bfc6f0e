package understorey.publish;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The folder of the pages: knows its own files, and touches no other. */
record OutFolder(Path path) {

    /** The list of an earlier run; empty for a folder that is new or empty. */
    FileList earlier() throws Refusal, IOException {
        FileList none = FileList.of("");
        if (!Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
            return none;
        }
        if (!Files.isDirectory(path)) {
            throw new Refusal("'" + path + "' is a file, not a folder: name another with --out");
        }
        Path list = path.resolve(Publisher.LIST);
        if (Files.isRegularFile(list, LinkOption.NOFOLLOW_LINKS)) {
            return FileList.of(new String(Files.readAllBytes(list), StandardCharsets.UTF_8));
        }
        try (Stream<Path> files = Files.list(path)) {
            if (files.map(file -> file.getFileName().toString())
                    .anyMatch(name -> !name.equals(FolderLock.FILE) && !Staging.isNew(name))) {
                throw new Refusal("'" + path + "' is not empty and was not made by this tool: empty it, or name "
                        + "another folder with --out");
            }
        }
        return none;
    }

    void refuseWhatIsNotOurs(String page, byte[] bytes, Set<String> ours) throws Refusal, IOException {
        Path file = path;
        for (String part : page.split("/")) {
            if (!file.equals(path) && Files.exists(file) && !Files.isDirectory(file)) {
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
        if (Files.exists(file) && !ours.contains(page) && !holds(file, bytes)) {
            throw new Refusal("'" + file + "' was not made by this tool and would be overwritten: move it away");
        }
    }

    /** True for an ordinary file below the folder, without a symbolic link on the way. */
    boolean isPlainFile(String name) {
        Path file = path;
        for (String part : name.split("/")) {
            file = file.resolve(part);
            if (Files.isSymbolicLink(file)) {
                return false;
            }
        }
        return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
    }

    /** The place of an earlier file; null if this system does not allow the name. */
    @Nullable Path place(String name) {
        try {
            return path.resolve(name);
        } catch (InvalidPathException foreign) {
            return null;
        }
    }

    static boolean holds(Path file, byte[] bytes) throws IOException {
        return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && Files.size(file) == bytes.length
                && Arrays.equals(Files.readAllBytes(file), bytes);
    }

    /** Deletes a file, and the folders that it leaves empty. */
    void delete(Path file) throws IOException {
        Files.delete(file);
        for (Path parent = file.getParent(); parent != null && !parent.equals(path); parent = parent.getParent()) {
            try (Stream<Path> files = Files.list(parent)) {
                if (files.findAny().isPresent()) {
                    return;
                }
            }
            Files.delete(parent);
        }
    }

    /** A failure at one of the publisher's own files is reported as the folder's: users do not know those files. */
    IOException fault(IOException fault) {
        if (fault instanceof AccessDeniedException) {
            return new AccessDeniedException(path.toString());
        }
        String reason = fault instanceof FileSystemException disk ? disk.getReason() : fault.getMessage();
        return new FileSystemException(path.toString(), null, reason);
    }
}
