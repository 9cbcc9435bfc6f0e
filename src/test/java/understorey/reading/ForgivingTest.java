package understorey.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import understorey.Forgiven;
import understorey.yaml.finding.Finding;

/** Forms that are forgiven are read like the strict ones, and near misses are not. */
class ForgivingTest {

    @TempDir
    Path folder;

    @TestFactory
    Stream<DynamicTest> readsEachFormLikeItsStrictForm() {
        return Forgiven.SAME.stream().map(form -> DynamicTest.dynamicTest(form.written(), () -> {
            Plans strict = read(form.slot(), form.strict());
            Plans written = read(form.slot(), form.written());
            assertEquals(List.of(), written.findings().stream().filter(finding -> finding.level() == Finding.Level.ERROR).toList());
            assertEquals(strict.trips(), written.trips());
            assertEquals(strict.sites(), written.sites());
            assertEquals(strict.bags(), written.bags());
            assertEquals(1, written.trips().size());
        }));
    }

    @TestFactory
    Stream<DynamicTest> refusesNearMisses() {
        return Forgiven.NEAR.stream().map(form -> DynamicTest.dynamicTest(form.written(), () -> {
            Plans read = read(form.slot(), form.written());
            assertTrue(read.hasErrors(), form.written());
            assertTrue(read.findings().get(0).line() > 0);
        }));
    }

    @Test
    void listsTheSubjectsThatANameMayMean() {
        assertEquals("which of these: ezo-corydalis, hollow-corydalis", help("corydalis"));
        assertEquals("which of these: amancay, bush-lily, katakuri, rengarenga, yellow-trout-lily", help("lilies"));
        assertEquals("did you mean 'large-flowered-trillium'?", help("trilliums"));
        assertEquals("use straight quotes: \"ramsons\"", help("“ramsons”"));
    }

    private String help(String subject) {
        Plans plans = read("@shots", "- {name: First, subject: " + subject + "}");
        assertFalse(plans.findings().isEmpty());
        return plans.findings().get(0).help();
    }

    private Plans read(String slot, String text) {
        return PlansReader.read(Forgiven.write(folder.resolve("plans"), slot, text));
    }
}
