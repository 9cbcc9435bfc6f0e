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

class MishapTest {

    @Test
    void saysWhatIsTheMatterWithAFileNotOnlyItsName() {
        assertEquals("'site' may not be read or written: look at its permissions",
                Mishap.says(new AccessDeniedException("site")));
        assertEquals("'site' is not there", Mishap.says(new UncheckedIOException(new NoSuchFileException("site"))));
        assertEquals("'site' is there already, and in the way", Mishap.says(new FileAlreadyExistsException("site")));
        assertEquals("'site' cannot be used", Mishap.says(new DirectoryNotEmptyException("site")));
        assertEquals("'site' cannot be used: No space left on device",
                Mishap.says(new FileSystemException("site", null, "No space left on device")));
    }

    @Test
    void saysThatAFileIsNoText() {
        assertEquals("a file among the templates is not text in UTF-8",
                Mishap.says(new UncheckedIOException(new MalformedInputException(1))));
    }

    @Test
    void ownsUpToAFaultOfTheTool() {
        assertEquals("no altitude: 91 (a fault of this tool; with UNDERSTOREY_DEBUG=1 it says where)",
                Mishap.says(new IllegalArgumentException("no altitude: 91")));
        assertEquals("NullPointerException (a fault of this tool; with UNDERSTOREY_DEBUG=1 it says where)",
                Mishap.says(new NullPointerException()));
        assertEquals("StackOverflowError (a fault of this tool; with UNDERSTOREY_DEBUG=1 it says where)",
                Mishap.says(new StackOverflowError()));
        assertEquals("there is not enough memory for this", Mishap.says(new OutOfMemoryError("Java heap space")));
        assertEquals("read error", Mishap.says(new IOException("read error")));
    }
}
