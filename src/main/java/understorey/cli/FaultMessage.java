package understorey.cli;

import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** Message for a failure that no finding covers: of the disk, or of the tool itself. */
final class FaultMessage {

    private FaultMessage() {
    }

    static String says(Throwable fault) {
        if (fault instanceof UncheckedIOException && fault.getCause() != null) {
            return says(fault.getCause());
        }
        if (fault instanceof FileSystemException disk) {
            return "'" + disk.getFile() + "' " + what(disk);
        }
        if (fault instanceof CharacterCodingException) {
            return "one of the templates is not UTF-8 text";
        }
        if (fault instanceof OutOfMemoryError) {
            return "not enough memory: start Java with a larger -Xmx";
        }
        String message = fault.getMessage() == null ? fault.getClass().getSimpleName() : fault.getMessage();
        return fault instanceof RuntimeException || fault instanceof StackOverflowError
                ? message + " (a fault in this tool; set UNDERSTOREY_DEBUG=1 for details)" : message;
    }

    private static String what(FileSystemException disk) {
        if (disk instanceof AccessDeniedException) {
            return "cannot be read or written: check its permissions";
        }
        if (disk instanceof NoSuchFileException) {
            return "does not exist";
        }
        if (disk instanceof FileAlreadyExistsException) {
            return "already exists";
        }
        return "cannot be used" + (disk.getReason() == null ? "" : ": " + disk.getReason());
    }
}
