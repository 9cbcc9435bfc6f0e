package understorey.pages;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * A chapter of the manual that the program comes with. The build makes its HTML, so that no run has to.
 *
 * @param name of its file, without an ending
 * @param lead one sentence below the title
 * @param html the rest
 */
public record Chapter(String name, String title, String lead, String html) {

    private static final String FOLDER = "/understorey/manual/";
    /** In the order in which a new user reads them. */
    private static final List<String> NAMES = List.of("first-plan", "when-to-go", "order", "what-comes-out", "in-the-field", "printing",
            "publishing", "checking", "templates", "glossary");

    static List<Chapter> all() {
        return NAMES.stream().map(Chapter::of).toList();
    }

    private static Chapter of(String name) {
        try (InputStream in = Chapter.class.getResourceAsStream(FOLDER + name + ".html")) {
            String[] parts = new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n", 3);
            return new Chapter(name, parts[0], parts[1], parts[2]);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
