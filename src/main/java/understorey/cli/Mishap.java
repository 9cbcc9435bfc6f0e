package understorey.cli;

import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** What to say of a failure that no finding covers: the disk's, or a mistake of the tool's own. */
final class Mishap {

    private Mishap() {
    }

    static String says(Throwable fault) {
        if (fault instanceof UncheckedIOException wrapped) {
            return says(wrapped.getCause());
        }
        if (fault instanceof FileSystemException disk) {
            return "'" + disk.getFile() + "' " + what(disk);
        }
        if (fault instanceof CharacterCodingException) {
            return "a file among the templates is not text in UTF-8";
        }
        if (fault instanceof OutOfMemoryError) {
            return "there is not enough memory for this";
        }
        String message = fault.getMessage() == null ? fault.getClass().getSimpleName() : fault.getMessage();
        return fault instanceof RuntimeException || fault instanceof StackOverflowError
                ? message + " (a fault of this tool; with UNDERSTOREY_DEBUG=1 it says where)" : message;
    }

    private static String what(FileSystemException disk) {
        if (disk instanceof AccessDeniedException) {
            return "may not be read or written: look at its permissions";
        }
        if (disk instanceof NoSuchFileException) {
            return "is not there";
        }
        if (disk instanceof FileAlreadyExistsException) {
            return "is there already, and in the way";
        }
        return "cannot be used" + (disk.getReason() == null ? "" : ": " + disk.getReason());
    }
}
