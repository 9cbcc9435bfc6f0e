package understorey.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Each folder of {@code doubtful} has plans that can be read and hardly work, and the warnings of {@code check}, with their places. The texts
 * are rewritten with {@code -Dexpectations=write} only.
 */
class DoubtfulPlansTest {

    private static final Path CASES = Path.of("src", "test", "resources", "doubtful");

    @TestFactory
    List<DynamicTest> saysWhatIsDoubtfulAndWhere() throws IOException {
        List<DynamicTest> tests = new ArrayList<>();
        try (Stream<Path> folders = Files.list(CASES).sorted()) {
            folders.forEach(folder -> tests.add(DynamicTest.dynamicTest(folder.getFileName().toString(), () -> compare(folder))));
        }
        assertTrue(tests.size() >= 3);
        return tests;
    }

    private static void compare(Path folder) throws IOException {
        Run run = Run.of("check", folder.resolve("plans"));
        StringBuilder warnings = new StringBuilder();
        for (JsonNode finding : new ObjectMapper().readTree(Run.of("check", folder.resolve("plans"), "--json").out())) {
            String said = ": " + finding.get("level").textValue() + ": " + finding.get("text").textValue();
            assertTrue(run.err().contains(said + "\n"), said);
            if (finding.get("level").textValue().equals("warning")) {
                warnings.append(finding.get("file").textValue() + ":" + finding.get("line").intValue() + ":" + finding.get("column").intValue() + said + "\n");
            }
        }
        Path expected = folder.resolve("expected.txt");
        if ("write".equals(System.getProperty("expectations"))) {
            Files.writeString(expected, warnings);
        }
        assertEquals(Files.readString(expected, StandardCharsets.UTF_8), warnings.toString());
        assertEquals(0, run.exit());
    }
}
