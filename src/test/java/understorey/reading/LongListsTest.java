package understorey.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import understorey.yaml.finding.Finding;

/** Lists are as long as a plan can be made for; a longer one is one finding, at its key. */
class LongListsTest {

    private static final String PLAN = """
            trip: Long lists
            date: 2027-05-08
            companions: [%companions]
            site:
              site: Any wood
              latitude: 52.337
              longitude: -3.548
              time_zone: Europe/London
              skyline: [%skyline]
              spots: [%spots]
            gear:
              gear: Any bag
              bodies: [{name: Body, pixels: 24 Mpx, sensor: full-frame, mount: A}]
              lenses: [%lenses]
              supports: [%supports]
            shots: [%shots]
            """;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {"shots; 200; {name: N#, subject: ramsons}", "companions; 20; {name: N#, gear: phone}",
        "spots; 200; {name: N#}", "skyline; 720; {bearing: 0.#, angle: 2}", "supports; 100; {name: N#, kind: tripod}",
        "lenses; 100; {name: N#, mount: A, focal: 50 mm, aperture: f/4, closest: 0.4 m}"})
    void takesSoManyEntriesAndNoMore(String key, int most, String entry) throws IOException {
        assertEquals(List.of(), texts(key, most, entry));
        assertEquals(List.of("'" + key + "' has " + (most + 1) + " entries; at most " + most + " are allowed"),
                texts(key, most + 1, entry));
    }

    @Test
    void refusesTenThousandShotsAtTheirKey() throws IOException {
        texts("shots", 9000, "{name: N#, subject: ramsons}");
        Finding finding = PlansReader.read(folder).findings().get(0);
        assertEquals(16, finding.line());
        assertEquals(1, finding.column());
    }

    private List<String> texts(String key, int count, String entry) throws IOException {
        List<String> entries = IntStream.range(0, count).mapToObj(i -> entry.replace("#", String.valueOf(1000 + i))).toList();
        String plan = PLAN.replace("%" + key, String.join(", ", entries)).replace("%shots", "{name: One, subject: ramsons}");
        Files.writeString(folder.resolve("trip.yaml"), plan.replaceAll("%\\w+", ""));
        return PlansReader.read(folder).findings().stream().map(Finding::text).toList();
    }
}
