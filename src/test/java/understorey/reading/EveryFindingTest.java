package understorey.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.Method;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The folder {@code broken} has a case for every finding of the readers and for every way out: each text in their code is used while
 * its plans are read. Those that no file in the repository can raise are listed with the reason.
 */
class EveryFindingTest {

    private static final Path BROKEN = Path.of("src", "test", "resources", "broken");
    private static final Path UNRAISED = Path.of("src", "test", "resources", "unraised.txt");

    @Test
    void isRaisedByAPlanInTheFolderOfFaults() throws IOException, ReflectiveOperationException, URISyntaxException {
        Path classes = Path.of(PlansReader.class.getProtectionDomain().getCodeSource().getLocation().toURI());
        Set<String> missing = new TreeSet<>();
        try (Stream<Path> files = Stream.concat(Files.walk(classes.resolve("understorey/yaml")), Files.walk(classes.resolve("understorey/reading")))) {
            for (Path file : files.filter(path -> path.toString().endsWith(".class")).toList()) {
                missing.addAll(Uttered.all(file));
            }
        }
        assertTrue(missing.size() > 200, missing.size() + " texts");
        Method read = new Uttered(classes).loadClass("understorey.reading.PlansReader").getMethod("read", Path.class);
        try (Stream<Path> folders = Files.list(BROKEN)) {
            for (Path folder : folders.sorted().toList()) {
                Object plans = read.invoke(null, folder.resolve("plans"));
                for (Object finding : (List<?>) plans.getClass().getMethod("findings").invoke(plans)) {
                    finding.getClass().getMethod("plain").invoke(finding);
                }
            }
        }
        missing.removeAll(Uttered.texts());
        List<String> listed = Files.readAllLines(UNRAISED, StandardCharsets.UTF_8).stream().filter(line -> !line.startsWith("#"))
                .map(line -> line.replaceFirst(" \\| [^|]*$", "")).toList();
        assertEquals(String.join("\n", listed), String.join("\n", missing), "texts that no plan in the folder raises");
    }
}
