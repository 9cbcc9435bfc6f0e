package understorey.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a build for the public may not give away. */
class SensitivePlacesTest {

    @TempDir
    private Path home;

    private void trip(String file, String site, double latitude, String gear, String audience) throws IOException {
        Files.createDirectories(home.resolve("plans/gear"));
        Files.writeString(home.resolve("plans/" + file + ".yaml"), """
                trip: First light
                site: {site: %s, latitude: %s, longitude: -3.5, time_zone: Europe/London, sensitive: yes}
                date: 2027-05-08
                gear: %s
                shots:
                  - {name: The floor, subject: ramsons}
                share: {audience: %s}
                """.formatted(site, latitude, gear, audience));
    }

    private Run build(String audience) {
        return Run.of("build", home.resolve("plans"), "--out", home.resolve("site"), "--audience", audience);
    }

    @Test
    void refusesTwoPlacesUnderOnePublicName() throws IOException {
        trip("one", "Tawny Spur", 52, "phone", "public");
        trip("two", "Quiet Hollow", 57, "phone", "public");
        Run run = build("public");
        assertEquals(1, run.exit());
        assertTrue(run.err().contains("two sites, 'tawny-spur' and 'quiet-hollow', are called 'A wood' on public pages"), run.err());
        assertFalse(Files.exists(home.resolve("site")));
    }

    @Test
    void warnsOfAFileNameThatTellsThePlace() throws IOException {
        trip("tawny-in-may", "Tawny Spur", 52, "phone", "public");
        trip("in-may", "Tawny Spur", 52, "phone", "public");
        Run run = build("public");
        assertTrue(run.err().contains("tawny-in-may: warning: the file name"), run.err());
        assertFalse(run.err().contains("\nin-may: warning: the file"), run.err());
    }

    @Test
    void showsThePublicNoBagThatOnlyAPrivateTripCarries() throws IOException {
        trip("one", "Tawny Spur", 52, "phone", "public");
        trip("two", "Tawny Spur", 52, "mine", "private");
        Files.writeString(home.resolve("plans/gear/mine.yaml"), """
                gear: My secret bag
                bodies:
                  - name: Pocket camera
                    pixels: 12 Mpx
                    fixed_lenses:
                      - {name: main, sensor: one-inch, focal: 9 mm, aperture: f/2, closest: 0.1 m}
                """);
        assertEquals(0, build("public").exit());
        assertFalse(Files.readString(home.resolve("site/index.html")).contains("My secret bag"));
        assertFalse(Files.exists(home.resolve("site/gear/mine.html")));
        assertEquals(0, build("private").exit());
        assertTrue(Files.exists(home.resolve("site/gear/mine.html")));
    }
}
