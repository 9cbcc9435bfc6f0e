package understorey.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import understorey.Pipe;
import understorey.plan.Trip;
import understorey.yaml.finding.Finding;

class PlansReaderTest {

    private static final String TRIP = """
            trip: A test
            site: {site: Testing Wood, latitude: 51.5, longitude: -2.5, time_zone: Europe/London}
            date: 2027-05-08
            gear: phone
            shots: [{name: One, subject: ramsons}]
            """;

    @TempDir
    Path folder;

    private void write(String file, String text) throws IOException {
        Path path = folder.resolve(file);
        Files.createDirectories(path.getParent());
        Files.writeString(path, text);
    }

    @Test
    void readsTheOtherTripsWhenOneIsFaulty() throws IOException {
        write("b.yaml", TRIP);
        write("a.yaml", TRIP);
        write("c.yaml", TRIP.replace("51.5", "151.5"));
        Plans plans = PlansReader.read(folder);
        assertEquals(List.of("a", "b"), plans.trips().stream().map(Trip::slug).toList());
        assertEquals(List.of(folder.resolve("c.yaml")), plans.faultyTrips());
        assertTrue(plans.hasErrors());
    }

    @Test
    void takesABagFileCalledPhoneForTheBuiltInOne() throws IOException {
        write("a.yaml", TRIP);
        write("gear/phone.yaml", "gear: My own\nbodies: [{name: Mine, sensor: aps-c, pixels: 24 Mpx, mount: A}]\n");
        assertEquals("My own", PlansReader.read(folder).trips().get(0).gear().name());
    }

    @Test
    void namesFilesFromThePlansFolderOn() throws IOException {
        write("gear/bag.yaml", "gear: Bag\n");
        assertEquals(folder.getFileName() + "/gear/bag.yaml", PlansReader.read(folder).findings().get(1).file());
    }

    @Test
    void sharesThePageOfASiteThatTwoTripsDescribeAlike() throws IOException {
        write("a.yaml", TRIP);
        write("b.yaml", TRIP);
        write("c.yaml", TRIP.replace("51.5", "51.6"));
        List<Trip> trips = PlansReader.read(folder).trips();
        assertEquals("testing-wood", trips.get(0).site().slug());
        assertEquals("testing-wood", trips.get(1).site().slug());
        assertEquals("testing-wood-c", trips.get(2).site().slug());
    }

    @Test
    void passesOverHiddenFilesAndFolders() throws IOException {
        write("a.yaml", TRIP);
        write(".b.yaml", "no trip");
        write("c/d.yaml", "no trip");
        write("notes.txt", "no trip");
        Plans plans = PlansReader.read(folder);
        assertEquals(List.of(), plans.findings());
        assertEquals(1, plans.trips().size());
    }

    @Test
    void waitsForNoPipeAndKeepsItsTripAmongTheFaulty() throws Exception {
        write("a.yaml", TRIP);
        write("c.yaml", TRIP + "forecast: hours.csv\n");
        Pipe.at(folder.resolve("b.yaml"));
        Pipe.at(folder.resolve("hours.csv"));
        Files.createSymbolicLink(folder.resolve("d.yaml"), Path.of("/dev/zero"));
        Plans plans = PlansReader.read(folder);
        assertEquals(List.of("a"), plans.trips().stream().map(Trip::slug).toList());
        assertEquals(List.of("b.yaml", "c.yaml", "d.yaml"),
                plans.faultyTrips().stream().map(trip -> trip.getFileName().toString()).toList());
        assertEquals(List.of("this is not an ordinary file, so it is ignored",
                folder.getFileName() + "/hours.csv is not an ordinary file, so it is ignored",
                "this is not an ordinary file, so it is ignored"), plans.findings().stream().map(Finding::text).toList());
    }

    @Test
    void readsOneTripWithTheFindingsOfItsOwnFilesOnly() throws IOException {
        write("a.yaml", TRIP.replace("{site: Testing Wood", "{site: Testing Wood, sites: no"));
        write("b.yaml", TRIP.replace("gear: phone", "gear: bag").replace("ramsons", "ramsnos"));
        write("gear/bag.yaml", "gear: Bag\n");
        write("gear/other.yaml", "gear: Other\n");
        write("c.yml", TRIP);
        Plans plans = PlansReader.read(folder.resolve("b.yaml"));
        assertEquals("b", plans.only());
        assertEquals(List.of(folder.resolve("b.yaml")), plans.faultyTrips());
        assertEquals(Set.of(folder.getFileName() + "/b.yaml", folder.getFileName() + "/gear/bag.yaml"),
                plans.findings().stream().map(Finding::file).collect(Collectors.toSet()));
    }

    @Test
    void callsTheSiteOfOneTripAsAllTripsTogetherDo() throws IOException {
        write("a.yaml", TRIP);
        write("b.yaml", TRIP.replace("51.5", "51.6"));
        assertEquals("testing-wood-b", PlansReader.read(folder.resolve("b.yaml")).trips().get(0).site().slug());
    }

    @Test
    void warnsWithoutStopping() throws IOException {
        write("a.yaml", TRIP);
        write("b.yml", TRIP);
        Plans plans = PlansReader.read(folder);
        assertEquals(1, plans.findings().size());
        assertFalse(plans.hasErrors());
    }

    @Test
    void readsTheSameOnEveryRun() throws IOException {
        write("a.yaml", TRIP);
        write("b.yaml", TRIP.replace("ramsons", "ramsnos"));
        assertEquals(PlansReader.read(folder), PlansReader.read(folder));
    }

    @Test
    void refusesNamesThatDifferInCapitalsOnly() throws IOException {
        write("Trip.yaml", TRIP);
        assumeFalse(Files.exists(folder.resolve("trip.yaml")), "this file system does not tell capitals apart");
        write("trip.yaml", TRIP);
        Plans plans = PlansReader.read(folder);
        assertEquals(List.of("Trip"), plans.trips().stream().map(Trip::slug).toList());
        assertEquals("this name differs from 'Trip.yaml' only in capitals, so both would be the same page",
                plans.findings().get(0).text());
    }

    @Test
    void bearsAFileFullOfFaults() throws IOException {
        StringBuilder text = new StringBuilder(TRIP);
        for (int i = 0; i < 20_000; i++) {
            text.append("k").append(i).append(": 1\n");
        }
        write("a.yaml", text.toString());
        Plans plans = PlansReader.read(folder);
        assertEquals(20_000, plans.errors());
        assertEquals(101, plans.findings().size());
        assertEquals("and 19900 more in this file", plans.findings().get(100).text());
    }
}
