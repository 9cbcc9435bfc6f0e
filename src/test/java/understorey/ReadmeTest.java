package understorey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import understorey.brief.Brief;
import understorey.brief.Planner;
import understorey.reading.Plans;
import understorey.reading.PlansReader;
import understorey.share.Sharing;

/** The README promises what the tool does. */
class ReadmeTest {

    private static final Path README = Path.of("README.md");

    @TempDir
    private Path folder;

    @Test
    void firstPlanReadsWithoutAFindingAndMakesABrief() throws IOException {
        Plans plans = read(block("yaml"));

        assertEquals(List.of(), plans.findings());
        Brief brief = Planner.brief(Sharing.forAudience(plans.trips().get(0)));
        assertEquals(2, brief.timed().size());
        assertTrue(brief.timed().stream().allMatch(shot -> shot.settings() != null));
    }

    @Test
    void showsAFindingAsItIs() throws IOException {
        String shown = block("").strip();

        Plans plans = read(block("yaml").replace("date: 2027-05-08", "date: 8 May"));

        assertEquals(shown, plans.findings().get(0).plain().strip());
    }

    @Test
    void namesTheTestCommandThatTheRunnerCalls() throws IOException {
        assertTrue(Files.readString(README).contains("\nmvn -B verify\n"));
        assertTrue(Files.readAllLines(Path.of(".ci/run")).contains("mvn -B verify"));
    }

    @Test
    void linksOnlyToWhatIsThere() throws IOException {
        Matcher link = Pattern.compile("\\]\\(([^)#]+)\\)").matcher(Files.readString(README));
        int links = 0;
        while (link.find()) {
            assertTrue(Files.exists(Path.of(link.group(1))), link.group(1));
            links++;
        }
        assertTrue(links > 4);
    }

    private Plans read(String yaml) throws IOException {
        Path plans = Files.createDirectories(folder.resolve("plans"));
        Files.writeString(plans.resolve("first-look.yaml"), yaml);
        return PlansReader.read(plans);
    }

    /** The text of the first fenced block of a language. */
    private static String block(String language) throws IOException {
        Matcher block = Pattern.compile("(?ms)^```(\\w*)\\n(.*?)^```$").matcher(Files.readString(README));
        while (block.find()) {
            if (block.group(1).equals(language)) {
                return block.group(2);
            }
        }
        throw new AssertionError("README has no block of " + language);
    }
}
