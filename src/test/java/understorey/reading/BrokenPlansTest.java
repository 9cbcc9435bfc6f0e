package understorey.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import understorey.yaml.finding.Finding;

/**
 * Each folder of {@code broken} is a plans folder with its faults and, complete, what is said about them.
 * The texts are rewritten with {@code -Dexpectations=write} only.
 */
class BrokenPlansTest {

    private static final Path CASES = Path.of("src", "test", "resources", "broken");

    @TestFactory
    List<DynamicTest> saysAllThatIsWrong() throws IOException {
        List<DynamicTest> tests = new ArrayList<>();
        for (Path folder : folders()) {
            tests.add(DynamicTest.dynamicTest(folder.getFileName().toString(), () -> compare(folder)));
        }
        assertFalse(tests.isEmpty());
        return tests;
    }

    @Test
    void tellsTenFaultsOfOneTripInOneRunEachWithItsPlace() {
        Plans plans = PlansReader.read(CASES.resolve("ten-faults").resolve("plans"));
        assertEquals(10, plans.findings().size());
        for (Finding finding : plans.findings()) {
            assertEquals(Finding.Level.ERROR, finding.level());
            assertEquals("plans/ten-faults.yaml", finding.file());
            assertTrue(finding.line() > 0 && finding.column() > 0, finding.plain());
        }
        assertEquals(10, plans.findings().stream().map(Finding::line).distinct().count());
        assertEquals(10, plans.findings().stream().map(Finding::text).distinct().count());
        assertTrue(plans.trips().isEmpty());
    }

    private static void compare(Path folder) throws IOException {
        Plans plans = PlansReader.read(folder.resolve("plans"));
        StringBuilder said = new StringBuilder();
        for (Finding finding : plans.findings()) {
            said.append(finding.plain()).append("\n\n");
        }
        for (Path trip : plans.faultyTrips()) {
            said.append("not built: ").append(trip.getFileName()).append('\n');
        }
        Path expected = folder.resolve("expected.txt");
        if ("write".equals(System.getProperty("expectations"))) {
            Files.writeString(expected, said);
        }
        assertEquals(Files.readString(expected, StandardCharsets.UTF_8), said.toString());
        assertFalse(plans.findings().isEmpty(), "a case of this test has a fault");
    }

    private static List<Path> folders() throws IOException {
        List<Path> folders = new ArrayList<>();
        try (DirectoryStream<Path> found = Files.newDirectoryStream(CASES, Files::isDirectory)) {
            found.forEach(folders::add);
        }
        Collections.sort(folders);
        return folders;
    }
}
