package understorey.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Units and clock of the pages: those of each trip, unless the command line gives units. */
class UnitsOptionTest {

    private static final String QUICK = """
            site: {site: Testing Wood, latitude: 51.5, longitude: -2.5, elevation: 100 m, time_zone: Europe/London}
            date: 2027-05-08
            arrive: "05:00"
            leave: "09:30"
            gear: phone
            shots:
              - {name: The floor, subject: ramsons, light: [soft], sharp: {near: 2 m, far: 8 m}}
            """;
    private static final String IMPERIAL = "units: imperial\nclock: 12\n";

    @TempDir
    private Path home;
    private Path plans;
    private Path site;

    @BeforeEach
    void writeTwoTrips() throws IOException {
        plans = Files.createDirectory(home.resolve("plans"));
        site = home.resolve("site");
        Files.writeString(plans.resolve("here.yaml"), "trip: Here\n" + QUICK);
        Files.writeString(plans.resolve("there.yaml"), "trip: There\n" + IMPERIAL + QUICK);
    }

    @Test
    void eachTripHasItsOwnUnitsAndPagesTheyShareHaveTheUsualOnes() throws IOException {
        build();
        assertPage("here/index.html", "100\u00a0m", "328\u00a0ft");
        assertPage("there/index.html", "328\u00a0ft", "100\u00a0m");
        assertPage("sites/testing-wood.html", "100\u00a0m", "328\u00a0ft");
        assertPage("index.html", "05:00–09:30", "5:00–9:30\u00a0am");
    }

    @Test
    void sharedPagesHaveTheUnitsThatAllTripsAgreeOn() throws IOException {
        Files.writeString(plans.resolve("here.yaml"), "trip: Here\n" + IMPERIAL + QUICK);
        build();
        assertPage("sites/testing-wood.html", "328\u00a0ft", "100\u00a0m");
        assertPage("index.html", "5:00–9:30\u00a0am", "05:00–09:30");
    }

    @Test
    void unitsOfTheCommandLineWin() throws IOException {
        build("--units", "metric");
        assertPage("there/index.html", "100\u00a0m", "328\u00a0ft");
        assertPage("there/index.html", "5:00\u00a0am", "05:00");
        build("--units", "imperial");
        assertPage("here/index.html", "328\u00a0ft", "100\u00a0m");
        assertPage("sites/testing-wood.html", "328\u00a0ft", "100\u00a0m");
    }

    @Test
    void checkSaysWhatItFindsInTheUnitsOfTheTrip() {
        String mixed = Run.of("check", plans).err();
        assertTrue(mixed.contains("plans/here.yaml: note: No wind forecast: a light breeze of 2.0\u00a0m/s".replace('\u00a0', ' ')), mixed);
        assertTrue(mixed.contains("plans/there.yaml: note: No wind forecast: a light breeze of 4.5 mph"), mixed);
        assertFalse(Run.of("check", plans, "--units", "imperial").err().contains("m/s"));
    }

    @Test
    void daysSaysTimesOnTheClockOfTheTripAndProgramsGetTheUsualOnes() {
        Path trip = plans.resolve("there.yaml");
        assertTrue(Run.of("days", trip).out().matches("(?s).*The floor \\d+:\\d\\d am.*"));
        assertTrue(Run.of("days", plans.resolve("here.yaml")).out().matches("(?s).*The floor \\d\\d:\\d\\d .*"));
        assertEquals(Run.of("days", plans.resolve("here.yaml"), "--csv").out(), Run.of("days", trip, "--csv").out());
        assertEquals(0, Run.of("days", trip, "--units", "metric").exit());
    }

    @Test
    void refusesOtherUnits() {
        for (String command : new String[] {"build", "check", "days", "preview"}) {
            Run run = Run.of(command, plans.resolve("here.yaml"), "--units", "furlongs");
            assertEquals(2, run.exit());
            assertTrue(run.err().contains("'furlongs' is not a system of units; use metric or imperial"), run.err());
        }
    }

    private void build(String... more) {
        Object[] words = new Object[4 + more.length];
        System.arraycopy(new Object[] {"build", plans, "--out", site}, 0, words, 0, 4);
        System.arraycopy(more, 0, words, 4, more.length);
        Run run = Run.of(words);
        assertEquals(0, run.exit(), run.err());
    }

    private void assertPage(String page, String with, String without) throws IOException {
        String text = Files.readString(site.resolve(page));
        assertTrue(text.contains(with), page + " without " + with);
        assertFalse(text.contains(without), page + " with " + without);
    }
}
