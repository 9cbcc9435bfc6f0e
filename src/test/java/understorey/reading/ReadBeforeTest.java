package understorey.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import understorey.plan.Trip;
import understorey.reading.subject.SubjectCatalogue;

/** Reading again gives what reading for the first time gives, and reads only what changed. */
class ReadBeforeTest {

    private static final String SITE = "site: %s\nlatitude: 52.337\nlongitude: -3.548\ntime_zone: Europe/London\n";
    private static final String TRIP = """
            trip: %s
            site: %s
            date: 2027-05-08
            gear: phone
            shots:
              - {name: The carpet, subject: ramsons}
            """;

    @TempDir
    private Path folder;
    private final ReadBefore before = new ReadBefore(SubjectCatalogue.builtIn());

    @BeforeEach
    void writeTwoWoodsAndTheirTrips() throws IOException {
        write("sites/oak.yaml", SITE.formatted("Oak"));
        write("sites/ash.yaml", SITE.formatted("Ash"));
        write("a.yaml", TRIP.formatted("A", "oak"));
        write("b.yaml", TRIP.formatted("B", "ash") + "forecast: hours.csv\n");
        write("c.yaml", TRIP.formatted("C", "{site: Own, latitude: 52, longitude: -3, time_zone: Europe/London}"));
        write("hours.csv", "time,wind\n06:00,1 m/s\n09:00,2 m/s\n");
        again();
    }

    private void write(String name, String text) throws IOException {
        Files.createDirectories(folder.resolve(name).getParent());
        Files.writeString(folder.resolve(name), text);
    }

    /** All as if it was read for the first time. */
    private Plans again() {
        Plans plans = PlansReader.read(folder, before);
        assertEquals(PlansReader.read(folder), plans);
        return plans;
    }

    private Trip trip(int place) {
        return again().trips().get(place);
    }

    @Test
    void readsOneTripAgainAndNoOther() throws IOException {
        Trip a = trip(0);
        Trip b = trip(1);
        write("a.yaml", TRIP.formatted("Another title", "oak"));
        assertEquals("Another title", trip(0).title());
        assertNotSame(a, trip(0));
        assertSame(b, trip(1));
    }

    @Test
    void readsTheTripsOfASiteThatChanged() throws IOException {
        Trip b = trip(1);
        write("sites/oak.yaml", SITE.formatted("Old Oak"));
        assertEquals("Old Oak", trip(0).site().name());
        assertSame(b, trip(1));
    }

    @Test
    void readsTheTripOfATableThatChanged() throws IOException {
        Trip a = trip(0);
        Trip b = trip(1);
        write("hours.csv", "time,wind\n06:00,9 m/s\n09:00,2 m/s\n");
        assertNotEquals(b.forecast(), trip(1).forecast());
        assertSame(a, trip(0));
    }

    @Test
    void findsAFaultAndItsRepair() throws IOException {
        write("a.yaml", TRIP.formatted("A", "oak").replace("ramsons", "ramsnos"));
        assertEquals(1, again().errors());
        write("a.yaml", TRIP.formatted("A", "oak"));
        assertEquals(0, again().errors());
        write("sites/ash.yaml", "site: Ash\n");
        assertEquals(2, again().trips().size());
        write("sites/ash.yaml", SITE.formatted("Ash"));
        assertEquals(3, again().trips().size());
    }

    @Test
    void seesFilesThatComeAndGo() throws IOException {
        write("d.yaml", TRIP.formatted("D", "oak") + "story: after [the first](../a/index.html)\n");
        assertEquals(4, again().trips().size());
        Files.delete(folder.resolve("a.yaml"));
        assertEquals(1, again().errors(), "a link to a trip that is gone");
        Files.delete(folder.resolve("hours.csv"));
        assertEquals(2, again().errors());
        write("gear/phone.yaml", "bag: My phone\nbodies: [{name: P, sensor: full-frame}]\n");
        again();
    }

    /** Where two trips describe a wood of one name, its page gets the name of the second trip too. */
    @Test
    void namesThePagesOfWoodsDescribedInTripsAsTheFirstReadingDoes() throws IOException {
        write("b2.yaml", TRIP.formatted("B2", "{site: Own, latitude: 53, longitude: -3, time_zone: Europe/London}"));
        assertEquals("own", trip(2).site().slug());
        assertEquals("own-c", trip(3).site().slug());
    }
}
