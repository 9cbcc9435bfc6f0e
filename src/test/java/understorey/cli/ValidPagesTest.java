package understorey.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import nu.validator.validation.SimpleDocumentValidator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/** Every page is valid for the Nu HTML checker (validator.github.io), an independent reader of the HTML Living Standard. */
class ValidPagesTest {

    /** A property of SVG 2, chapter 13, that the checker's list of CSS properties lacks. */
    private static final String UNKNOWN = "CSS: “paint-order”: Property “paint-order” doesn't exist.";
    private static final long STACK = 64L << 20;
    private static SimpleDocumentValidator checker;

    @TempDir
    private Path home;

    /** Errors and warnings with their lines. */
    private static final class Faults implements ErrorHandler {

        private final String page;
        private final List<String> found = new ArrayList<>();

        Faults(String page) {
            this.page = page;
        }

        @Override
        public void warning(SAXParseException fault) {
            add(fault);
        }

        @Override
        public void error(SAXParseException fault) {
            add(fault);
        }

        @Override
        public void fatalError(SAXParseException fault) {
            add(fault);
        }

        private void add(SAXParseException fault) {
            if (UNKNOWN.equals(fault.getMessage())) {
                return;
            }
            found.add(page + ":" + fault.getLineNumber() + ": " + fault.getMessage());
        }
    }

    /** The schema is read by recursion that needs more than the usual stack. */
    @BeforeAll
    static void openTheChecker() throws InterruptedException {
        Faults faults = new Faults("schema");
        Thread reader = new Thread(null, () -> {
            try {
                checker = new SimpleDocumentValidator();
                checker.setUpMainSchema("http://s.validator.nu/html5-rdfalite.rnc", faults);
            } catch (Exception fault) {
                faults.found.add(fault.toString());
            }
        }, "schema", STACK);
        reader.start();
        reader.join();
        assertEquals(List.of(), faults.found);
    }

    @Test
    void isEveryPageOfTheDemo() throws IOException, SAXException {
        assertEquals(List.of(), faults(Path.of("site-out")));
    }

    @Test
    void isEveryPageWithAnAddress() throws IOException, SAXException {
        Path site = home.resolve("site");
        assertEquals(0, Run.of("build", "plans", "--out", site, "--address", "https://example.org/flowers").exit());
        assertEquals(List.of(), faults(site));
    }

    @Test
    void isNoPageWithAFault() throws IOException, SAXException {
        String page = Files.readString(Path.of("site-out/index.html"));
        assertFalse(faults("index.html", page.replace("<h1>", "<h1 align=\"left\">")).isEmpty());
        assertFalse(faults("index.html", page.replace("</ul>", "")).isEmpty());
    }

    private static List<String> faults(Path site) throws IOException, SAXException {
        List<String> faults = new ArrayList<>();
        List<Path> pages;
        try (Stream<Path> files = Files.walk(site)) {
            pages = files.filter(file -> file.toString().endsWith(".html")).sorted().toList();
        }
        assertTrue(pages.size() > 10, "only " + pages.size());
        for (Path page : pages) {
            faults.addAll(faults(site.relativize(page).toString(), Files.readString(page)));
        }
        return faults;
    }

    private static List<String> faults(String name, String page) throws IOException, SAXException {
        Faults faults = new Faults(name);
        checker.setUpValidatorAndParsers(faults, false, false);
        InputSource source = new InputSource(new StringReader(page));
        source.setSystemId("https://example.org/" + name);
        checker.checkHtmlInputSource(source);
        return faults.found;
    }
}
