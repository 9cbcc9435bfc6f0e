package understorey.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import understorey.reading.Plans;
import understorey.reading.PlansReader;
import understorey.season.FloweringWindow;

class NewCommandTest {

    @TempDir
    private Path home;
    private Path plans;

    @BeforeEach
    void startAFolder() {
        plans = home.resolve("plans");
        Run run = Run.of("new", "plans", "--plans", plans);
        assertEquals(0, run.exit(), run.err());
    }

    @Test
    void writesAFolderThatBuildsAsItStands() {
        Plans read = PlansReader.read(plans);
        assertEquals(List.of(), read.findings());
        assertEquals(List.of("my-first-trip"), read.trips().stream().map(trip -> trip.slug()).toList());
        assertEquals(3, read.trips().get(0).shots().size());
        assertEquals("my-bag", read.trips().get(0).gear().slug());
        Run built = Run.of("build", plans, "--out", home.resolve("out"));
        assertEquals(0, built.exit(), built.err());
    }

    /** Every key that a starter shows as a comment is one that the readers take. */
    @Test
    void holdsWithEveryCommentTakenAway() throws IOException {
        for (String file : List.of("my-first-trip.yaml", "sites/my-wood.yaml", "gear/my-bag.yaml")) {
            Path path = plans.resolve(file);
            String bare = Files.readString(path).replaceAll("(?m)^( *)# ([a-z_]+: )", "$1$2").replace("spot: Footbridge", "spot: Gate");
            assertTrue(bare.length() < Files.readString(path).length());
            Files.writeString(path, bare);
        }
        // The one spot of the starter is the gate.
        Path wood = plans.resolve("sites/my-wood.yaml");
        Files.writeString(wood, Files.readString(wood).replace("to: Footbridge", "to: Hut") + "\n");
        String two = Files.readString(wood).replace("  - name: Gate", "  - {name: Hut}\n  - name: Gate");
        Files.writeString(wood, two);
        assertEquals(List.of(), PlansReader.read(plans).findings());
    }

    @Test
    void namesTheWordsThatAKeyTakes() throws IOException {
        String trip = Files.readString(plans.resolve("my-first-trip.yaml"));
        assertTrue(trip.contains("; words: clear, scattered, broken, overcast\n"), trip);
        assertTrue(trip.contains("; words: audience: private, party, public; position: exact, coarse, hidden\n"), trip);
        assertFalse(trip.contains("words: yes") || trip.contains("hemisphere"), trip);
        String site = Files.readString(plans.resolve("sites/my-wood.yaml"));
        assertTrue(site.contains("stage: leafless, bud-burst, half-leaf, full-leaf\n"), site);
    }

    @Test
    void overwritesNothing() throws IOException {
        Path trip = plans.resolve("my-first-trip.yaml");
        Files.writeString(trip, "mine");
        Run run = Run.of("new", "trip", "My first trip", "--plans", plans);
        assertEquals(2, run.exit());
        assertTrue(run.err().contains("is there already"), run.err());
        assertEquals("mine", Files.readString(trip));
    }

    @Test
    void takesTheSiteTheBagAndTheFlowerOfTheFolder() throws IOException {
        Files.writeString(plans.resolve("sites/my-wood.yaml"), """
                site: Far copse
                latitude: -33.4
                longitude: 150.2
                time_zone: Australia/Sydney
                season: [{subject: hoary-sunray}]
                """);
        assertEquals(0, Run.of("new", "trip", "Mine: the second", "--plans", plans).exit());
        Plans read = PlansReader.read(plans.resolve("mine-the-second.yaml"));
        assertEquals(List.of(), read.findings());
        assertEquals("Mine: the second", read.trips().get(0).title());
        assertEquals("Far copse", read.trips().get(0).site().name());
        assertEquals("hoary-sunray", read.trips().get(0).shots().get(0).subject().key());
        FloweringWindow window = FloweringWindow.of(read.sites().get(0), read.trips().get(0).shots().get(0).subject(), read.trips().get(0).when().days().get(0), null);
        assertEquals(List.of(window.best()), read.trips().get(0).when().days());
        assertTrue(window.best().isAfter(LocalDate.now()));
    }

    @Test
    void beginsATripWithLastYearsOne() throws IOException {
        Path old = plans.resolve("old.yaml");
        Files.writeString(old, """
                # Kept: my own remark
                trip: The old title
                site: my-wood
                date: 2019-05-08   # the best day
                gear: phone
                forecast:
                  - {time: "05:00", temperature: 6 °C, dew_point: 5 °C}
                shots:
                  - {name: The carpet, subject: ramsons}
                """);
        Run run = Run.of("new", "trip", "Again", "--plans", plans, "--from", old);
        assertEquals(0, run.exit(), run.err());
        String next = Files.readString(plans.resolve("again.yaml"));
        assertTrue(next.startsWith("# Kept: my own remark\ntrip: Again\nsite: my-wood\n"), next);
        assertTrue(next.contains("-05-08   # the best day") && !next.contains("2019"), next);
        assertTrue(next.contains("# forecast:\n#   - {time: \"05:00\""), next);
        Plans read = PlansReader.read(plans.resolve("again.yaml"));
        assertEquals(List.of(), read.findings());
        assertTrue(read.trips().get(0).forecast().isEmpty());
        assertEquals(2, Run.of("new", "bag", "--plans", plans, "--from", old).exit());
    }

    @Test
    void givesAScoutingSheetWithANewSite() throws IOException {
        Run run = Run.of("new", "site", "Long <Copse>", "--plans", plans);
        assertEquals(0, run.exit(), run.err());
        String sheet = Files.readString(plans.resolve("sites/long-copse-scouting.html"));
        assertTrue(sheet.contains("<h1>Long &lt;Copse&gt;</h1>"), sheet.substring(0, 200));
        for (String key : List.of("latitude", "trees", "stage", "base", "stems", "bearing", "distance", "slope", "clearing")) {
            assertTrue(sheet.contains("<code>" + key + "</code>"), key);
        }
        assertFalse(sheet.contains("http://") || sheet.contains("<script"));
        assertEquals("Long <Copse>", PlansReader.read(plans).sites().get(0).name());
    }
}
