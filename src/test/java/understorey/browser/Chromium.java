package understorey.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/** The machine's own browser: the one that {@code CHROMIUM} names, or the first on the path. */
final class Chromium implements AutoCloseable {

    private static final List<String> NAMES = List.of("chromium", "chromium-browser");
    private static final Path PROGRAM = found();
    private static final Path SITE = Path.of("site-out").toAbsolutePath();

    private final Playwright playwright;
    private final Browser browser;

    private Chromium(Path program) {
        playwright = Playwright.create();
        browser = playwright.chromium().launch(new BrowserType.LaunchOptions().setExecutablePath(program)
                .setArgs(List.of("--no-sandbox", "--disable-gpu", "--disable-quic", "--disable-background-networking",
                        "--disable-component-update", "--disable-sync", "--no-first-run")));
    }

    /** Starts the browser; skips the tests where there is none. */
    static Chromium start() {
        Assumptions.assumeTrue(PROGRAM != null, "no chromium");
        return new Chromium(PROGRAM);
    }

    private static Path found() {
        Stream<Path> onPath = Stream.of(System.getenv("PATH").split(File.pathSeparator))
                .flatMap(folder -> NAMES.stream().map(name -> Path.of(folder, name)));
        Path program = Stream.concat(Stream.ofNullable(System.getenv("CHROMIUM")).map(Path::of), onPath)
                .filter(Files::isExecutable).findFirst().orElse(null);
        if (program == null) {
            System.err.println("No page is opened in a browser: no chromium on the path, and CHROMIUM names none.");
        }
        return program;
    }

    /** A blank page in a fresh profile. */
    Page page(int width, int height) {
        return browser.newPage(new Browser.NewPageOptions().setViewportSize(width, height)
                .setColorScheme(ColorScheme.LIGHT).setLocale("en-GB"));
    }

    /** Every HTML page of the committed site, by path below it. */
    static List<String> pages() {
        try (Stream<Path> files = Files.walk(SITE)) {
            return files.map(file -> SITE.relativize(file).toString().replace('\\', '/'))
                    .filter(name -> name.endsWith(".html")).sorted().toList();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    static String address(String page) {
        return SITE.resolve(page).toUri().toString();
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
    }
}
