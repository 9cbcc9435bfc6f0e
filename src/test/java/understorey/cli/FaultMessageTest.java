package understorey.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
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
    void ownsUpToAFaultOfTheTool() {
        assertEquals("no altitude: 91 (a fault in this tool; set UNDERSTOREY_DEBUG=1 for details)",
                FaultMessage.says(new IllegalArgumentException("no altitude: 91")));
        assertEquals("NullPointerException (a fault in this tool; set UNDERSTOREY_DEBUG=1 for details)",
                FaultMessage.says(new NullPointerException()));
        assertEquals("StackOverflowError (a fault in this tool; set UNDERSTOREY_DEBUG=1 for details)",
                FaultMessage.says(new StackOverflowError()));
        assertEquals("not enough memory: start Java with a larger -Xmx", FaultMessage.says(new OutOfMemoryError("Java heap space")));
        assertEquals("read error", FaultMessage.says(new IOException("read error")));
    }
}
