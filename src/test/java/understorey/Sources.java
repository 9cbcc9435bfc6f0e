package understorey;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The project's own source files. */
public final class Sources {

    private static final Path MAIN = Path.of("src", "main", "java", "understorey");

    private Sources() {
    }

    static Stream<Path> main() {
        return below(MAIN).filter(path -> path.toString().endsWith(".java"));
    }

    static Stream<Path> main(String room) {
        return main().filter(path -> path.startsWith(MAIN.resolve(room)));
    }

    static Stream<Path> below(Path folder) {
        try (Stream<Path> paths = Files.walk(folder)) {
            return List.copyOf(paths.filter(Files::isRegularFile).sorted().toList()).stream();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    public static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** The lines of a file, which need not be text: some cases are about bytes that are none. */
    static long lines(Path file) {
        try {
            return new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1).lines().count();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
