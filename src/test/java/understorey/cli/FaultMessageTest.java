package understorey.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class FaultMessageTest {

    @Test
    void saysWhatIsTheMatterWithAFileNotOnlyItsName() {
        assertEquals("'site' cannot be read or written: check its permissions",
                FaultMessage.says(new AccessDeniedException("site")));
        assertEquals("'site' does not exist", FaultMessage.says(new UncheckedIOException(new NoSuchFileException("site"))));
        assertEquals("'site' already exists", FaultMessage.says(new FileAlreadyExistsException("site")));
        assertEquals("'site' cannot be used", FaultMessage.says(new DirectoryNotEmptyException("site")));
        assertEquals("'site' cannot be used: No space left on device",
                FaultMessage.says(new FileSystemException("site", null, "No space left on device")));
    }

    @Test
    void saysThatAFileIsNoText() {
        assertEquals("one of the templates is not UTF-8 text",
                FaultMessage.says(new UncheckedIOException(new MalformedInputException(1))));
    }

    @Test
    void ownsUpToAFaultOfTheToolAndLeavesAReport() throws IOException {
        Pattern said = Pattern.compile("no altitude: 91 \\(a fault in this tool; the report is (.+)\\)");
        Matcher line = said.matcher(FaultMessage.says(new IllegalArgumentException("no altitude: 91")));
        assertTrue(line.matches());
        Path report = Path.of(line.group(1));
        String text = Files.readString(report);
        assertTrue(text.contains("java.lang.IllegalArgumentException: no altitude: 91") && text.contains("FaultMessageTest"), text);
        assertTrue(text.startsWith("understorey ") && text.contains("java.version " + System.getProperty("java.version")), text);
        Files.delete(report);
        assertTrue(clean(FaultMessage.says(new NullPointerException())).startsWith("NullPointerException (a fault in this tool"));
        assertTrue(clean(FaultMessage.says(new StackOverflowError())).startsWith("StackOverflowError (a fault in this tool"));
        assertTrue(clean(FaultMessage.says(new OutOfMemoryError("Java heap space"))).startsWith("not enough memory: start Java with a larger -Xmx (the report is "));
        assertEquals("read error", FaultMessage.says(new IOException("read error")));
    }

    @Test
    void saysItWithoutAReportWhereNoneCanBeWritten() {
        String folder = System.getProperty("java.io.tmpdir");
        try {
            System.setProperty("java.io.tmpdir", "/no/such/folder");
            assertEquals("no altitude: 91 (a fault in this tool)", FaultMessage.says(new IllegalArgumentException("no altitude: 91")));
            assertEquals("not enough memory: start Java with a larger -Xmx", FaultMessage.says(new OutOfMemoryError()));
        } finally {
            System.setProperty("java.io.tmpdir", folder);
        }
    }

    /** What was said; its report is deleted. */
    private static String clean(String said) throws IOException {
        Files.deleteIfExists(Path.of(said.replaceFirst(".*the report is (.+)\\)", "$1")));
        return said;
    }
}
