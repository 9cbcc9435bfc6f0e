package understorey.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;
import understorey.yaml.finding.Finding;

/** Whatever happens to the text of a plan, reading it ends in a trip or in a finding. */
class MutatedPlanTest {

    private static final Path EXAMPLES = Path.of("src", "test", "resources", "contract", "plans");
    private static final String[] PIECES = {":", ": ", "- ", "\n", "  ", "\t", "[", "]", "{", "}", "\"", "'", "|", ">",
        "&a ", "*a", "!b ", "#", "~", "---\n", "? ", "%", "@", ",", "\u0007", "\uD83C\uDF3C", "\uD83C", "9999999999", "-",
        "1e400", ".nan", "<<: ", "null", "\\", "\r", "\u2028", "\uFEFF", "f/", " mm"};

    private static Path folder;

    @BeforeContainer
    static void copyTheExamples() throws IOException {
        folder = Files.createTempDirectory("plans");
        for (String kind : new String[] {"sites", "gear"}) {
            Files.createDirectories(folder.resolve(kind));
        }
        for (String file : new String[] {"sites/gorsewell-dingle.yaml", "sites/gorsewell-daily-means.csv",
            "gear/day-bag.yaml", "gear/pocket-phone.yaml"}) {
            Files.copy(EXAMPLES.resolve(file), folder.resolve(file));
        }
    }

    @AfterContainer
    static void removeThem() throws IOException {
        try (var files = Files.walk(folder)) {
            files.sorted((a, b) -> b.compareTo(a)).forEach(path -> path.toFile().delete());
        }
    }

    @Property(tries = 400)
    void readsAnyTripWithoutThrowing(@ForAll long seed) throws IOException {
        tryIt("first-light-in-the-ramsons.yaml", "first-light-in-the-ramsons.yaml", seed);
    }

    @Property(tries = 200)
    void readsAnySiteWithoutThrowing(@ForAll long seed) throws IOException {
        tryIt("sites/gorsewell-dingle.yaml", "mutated.yaml", seed);
    }

    @Property(tries = 200)
    void readsAnyBagWithoutThrowing(@ForAll long seed) throws IOException {
        tryIt("gear/day-bag.yaml", "mutated.yaml", seed);
    }

    private static void tryIt(String example, String name, long seed) throws IOException {
        Random random = new Random(seed);
        String text = Files.readString(EXAMPLES.resolve(example));
        for (int i = random.nextInt(6); i >= 0; i--) {
            text = mutated(text, random);
        }
        int slash = example.indexOf('/');
        Path file = slash < 0 ? folder.resolve(name) : folder.resolve(example.substring(0, slash)).resolve(name);
        Files.write(file, text.getBytes(java.nio.charset.StandardCharsets.UTF_8));
        Plans plans = PlansReader.read(folder);
        int read = plans.trips().size() + plans.sites().size() + plans.bags().size();
        long faulty = plans.findings().stream().filter(f -> f.level() == Finding.Level.ERROR).map(Finding::file).distinct().count();
        // Three files are sound; the fourth is either read or has an error.
        assertEquals(4, read + (int) faulty, text);
        for (Finding finding : plans.findings()) {
            assertTrue(finding.plain().length() < 2000, finding::plain);
        }
        Files.delete(file);
    }

    private static String mutated(String text, Random random) {
        int at = random.nextInt(text.length() + 1);
        int end = Math.min(text.length(), at + 1 + random.nextInt(12));
        switch (random.nextInt(4)) {
            case 0:
                return text.substring(0, at) + text.substring(end);
            case 1:
                return text.substring(0, at) + PIECES[random.nextInt(PIECES.length)] + text.substring(at);
            case 2:
                return text.substring(0, at) + PIECES[random.nextInt(PIECES.length)] + text.substring(end);
            default:
                int from = random.nextInt(text.length() + 1);
                return text.substring(0, at) + text.substring(from, Math.min(text.length(), from + 40)) + text.substring(at);
        }
    }
}
