package understorey.pages.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The templates, sentences and style sheets that the program comes with. */
public final class BuiltInTemplates {

    /** Where they are on the class path. */
    public static final String FOLDER = "/understorey/templates/";

    private BuiltInTemplates() {
    }

    /** One of the files, as it is. */
    public static String text(String name) {
        try (InputStream in = BuiltInTemplates.class.getResourceAsStream(FOLDER + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
