package understorey.yaml.tree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import understorey.yaml.finding.Findings;

class TextFileTest {

    @TempDir
    Path folder;

    @Test
    void refusesAFileLargerThanAMegabyteEvenIfItIsOneComment() throws IOException {
        Path file = folder.resolve("large.yaml");
        Files.writeString(file, "trip: A\n#" + "x".repeat(1_000_000));
        Findings findings = TextFile.open(file, "plans/large.yaml");
        assertFalse(findings.source().isRead());
        assertEquals("plans/large.yaml: error: this file is larger than 1 MB\n"
                + "    fix: check that it is a plan; a plan has only a few kB", findings.all().iterator().next().plain());
    }

    @Test
    void leavesAByteOrderMarkOut() {
        Findings findings = TextFile.decode("\uFEFFtrip: Café\n".getBytes(StandardCharsets.UTF_8), "a.yaml");
        assertEquals("trip: Café\n", findings.source().text());
        assertTrue(findings.all().isEmpty());
    }

    @Test
    void saysThatAMissingFileCannotBeRead() {
        assertEquals("a.yaml: error: this file cannot be read\n    fix: check its permissions",
                TextFile.open(folder.resolve("a.yaml"), "a.yaml").all().iterator().next().plain());
    }
}
