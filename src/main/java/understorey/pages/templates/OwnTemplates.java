package understorey.pages.templates;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import understorey.pages.words.TemplateFault;

/** A folder of the user's own templates and style sheets: ordinary text files that lie in it. */
final class OwnTemplates {

    private static final List<String> ENDINGS = List.of(".ftlh", ".ftl", ".css", ".txt");
    private static final int LARGEST = 1_000_000;

    private OwnTemplates() {
    }

    /**
     * Looks through the folder before anything of it is used.
     *
     * @throws TemplateFault at the first file that would publish what lies elsewhere, or that is no text
     */
    static void check(Path folder) throws IOException {
        Path home = folder.toRealPath();
        List<Path> files;
        try (Stream<Path> all = Files.list(folder)) {
            files = all.filter(OwnTemplates::isMeant).sorted().toList();
        }
        for (Path file : files) {
            String fault = fault(file, home);
            if (fault != null) {
                throw new TemplateFault(file.getFileName().toString(), 0, 0, fault);
            }
        }
    }

    private static boolean isMeant(Path file) {
        String name = file.getFileName().toString();
        return !name.startsWith(".") && ENDINGS.stream().anyMatch(name::endsWith);
    }

    private static @Nullable String fault(Path file, Path home) throws IOException {
        if (!Files.isRegularFile(file)) {
            return "this is not an ordinary file: move it away";
        }
        if (!file.toRealPath().startsWith(home)) {
            return "this is a link out of the folder of templates: put a copy in its place";
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(LARGEST + 1);
            if (bytes.length > LARGEST) {
                return "this file is larger than 1 MB";
            }
            if (StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).chars().anyMatch(c -> c < ' ' && !Character.isWhitespace(c))) {
                return "this file contains a control character: delete it";
            }
        } catch (CharacterCodingException notText) {
            return "this file is not UTF-8 text: save it as UTF-8 in your editor";
        }
        return null;
    }
}
