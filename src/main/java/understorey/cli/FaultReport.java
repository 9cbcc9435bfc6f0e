package understorey.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What is needed to mend a fault of the tool, in a file of its own: the user sees one line that names the file. */
final class FaultReport {

    private static final String KEPT_IN = "java.io.tmpdir";

    private FaultReport() {
    }

    /** The file in the folder for temporary files, one for each kind of fault; null where none can be written. */
    static @Nullable Path write(Throwable fault) {
        Path file = Path.of(System.getProperty(KEPT_IN)).resolve("understorey-" + kind(fault) + ".txt");
        try {
            return Files.exists(file, LinkOption.NOFOLLOW_LINKS) ? file : Files.writeString(file, text(fault), StandardOpenOption.CREATE_NEW);
        } catch (FileAlreadyExistsException another) {
            return file;
        } catch (IOException | OutOfMemoryError full) {
            return null;
        }
    }

    /** The same for faults of the same place and message. */
    private static String kind(Throwable fault) {
        StackTraceElement[] trace = fault.getStackTrace();
        return Integer.toHexString(Objects.hash(fault.toString(), trace.length == 0 ? "" : trace[0].toString()));
    }

    private static String text(Throwable fault) {
        StringWriter text = new StringWriter();
        PrintWriter lines = new PrintWriter(text);
        lines.println("understorey " + Understorey.version());
        for (String property : new String[] {"java.vm.name", "java.version", "os.name", "os.arch"}) {
            lines.println(property + " " + System.getProperty(property));
        }
        lines.println("memory " + Runtime.getRuntime().maxMemory() / (1 << 20) + " MiB");
        fault.printStackTrace(lines);
        return text.toString();
    }
}
