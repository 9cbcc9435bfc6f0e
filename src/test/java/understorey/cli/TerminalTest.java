package understorey.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import understorey.reading.Plans;
import understorey.yaml.finding.Finding;

class TerminalTest {

    private static final String TRIP = """
            trip: A "quick" look
            site: {site: Testing Wood, latitude: 52.337, longitude: -3.548, time_zone: Europe/London}
            date: 2027-05-08
            gear: phone
            shots:
              - {name: "The \\e[31m carpet", subject: ramsons}
            """;
    private static final List<Finding> FINDINGS = List.of(
            new Finding(Finding.Level.ERROR, "a.yaml", 1, 1, 1, "text \u001b[5m", "do it", "x: 1"),
            new Finding(Finding.Level.WARNING, "b.yaml", 0, 0, 0, "text", null, null));

    private static final Plans NONE = new Plans(List.of(), List.of(), List.of(), List.of(), 0, 0, List.of(), List.of(), null, Path.of("plans"),
            Set.of(), null, List.of());

    @TempDir
    private Path home;

    private static String shown(boolean colour) {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        PrintStream stream = new PrintStream(err, true, StandardCharsets.UTF_8);
        new Terminal(stream, stream, colour).findingsWithTheirCount(NONE, FINDINGS);
        return err.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
    }

    @Test
    void coloursPathLevelAndCaretsOnATerminal() {
        assertEquals("\u001b[1ma.yaml:1:1\u001b[0m: \u001b[1;31merror\u001b[0m: text \\u001b[5m\n    x: 1\n"
                + "    \u001b[1;31m^\u001b[0m\n    fix: do it\n"
                + "\u001b[1mb.yaml\u001b[0m: \u001b[1;33mwarning\u001b[0m: text\n1 error, 1 warning\n", shown(true));
    }

    @Test
    void isPlainElsewhere() {
        assertEquals("a.yaml:1:1: error: text \\u001b[5m\n    x: 1\n    ^\n    fix: do it\n"
                + "b.yaml: warning: text\n1 error, 1 warning\n", shown(false));
    }

    @Test
    void letsNoEscapeOfKeyValueOrFileNameThrough() throws IOException {
        Path plans = Files.createDirectory(home.resolve("plans"));
        Files.writeString(plans.resolve("red\u001b[31m\u202e.yaml"), TRIP);
        Files.writeString(plans.resolve("key.yaml"), TRIP + "\"no\\e[2J\": 1\nsky: \"\\e]0;title\\a\"\nstory: \u202etxet\n");
        Files.writeString(plans.resolve("good.yaml"), TRIP);
        Path out = home.resolve("out\u009b1m");
        for (List<Object> line : List.<List<Object>>of(List.of("check", plans), List.of("check", plans, "--json"),
                List.of("build", plans, "--out", out), List.of("days", plans.resolve("good.yaml")),
                List.of("days", plans.resolve("good.yaml"), "--csv"), List.of("days", plans.resolve("good.yaml"), "--json"),
                List.of("days", home.resolve("no\u001b[1m.yaml")), List.of("check", "--no\u001b[1m"), List.of("bui\u001b[1mld"),
                List.of("build", plans, "--audience", "\u001b[1m"), List.of("check", "a", "b\u001b[1m"),
                List.of("build", plans, "--templates", "\u001b[1m"), List.of("check", "no\0folder"))) {
            Run run = Run.of(line.toArray());
            String all = run.out() + run.err();
            assertFalse(all.isEmpty(), line.toString());
            assertFalse(all.codePoints().anyMatch(c -> c != '\n' && Character.isISOControl(c) || c == 0x202e), all);
        }
    }

    @Test
    void showsEscapesInsteadOfObeyingThem() throws IOException {
        Path plans = Files.createDirectory(home.resolve("plans"));
        Files.writeString(plans.resolve("key.yaml"), TRIP + "\"no\\e[2J\": 1\n");
        String err = Run.of("check", plans).err();
        assertTrue(err.contains("plans/key.yaml:7:1: error: unknown key 'no\\u001b[2J' in this trip\n"), err);
        Path red = Files.move(plans.resolve("key.yaml"), plans.resolve("red\u001b[31m.yaml"));
        assertTrue(Run.of("check", plans).err().startsWith("plans/red\\u001b[31m.yaml: error: "));
        JsonNode findings = new ObjectMapper().readTree(Run.of("check", plans, "--json").out());
        assertEquals("plans/" + red.getFileName(), findings.get(0).get("file").textValue(), "JSON keeps the name");
    }
}
