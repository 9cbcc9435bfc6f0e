package understorey.cli;

import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** One line for a failure that no finding covers: of the disk, or of the tool itself, which leaves a report. */
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
            return "not enough memory: start Java with a larger -Xmx" + reported(fault, "");
        }
        String message = fault.getMessage() == null ? fault.getClass().getSimpleName() : fault.getMessage();
        return fault instanceof RuntimeException || fault instanceof StackOverflowError
                ? message + reported(fault, "a fault in this tool") : message;
    }

    /** What kind of fault it is, and which file has the whole of it. */
    private static String reported(Throwable fault, String kind) {
        Path report = FaultReport.write(fault);
        String file = report == null ? "" : "the report is " + report;
        String both = kind + (kind.isEmpty() || file.isEmpty() ? "" : "; ") + file;
        return both.isEmpty() ? "" : " (" + both + ")";
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
