package understorey.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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
    void stopsATripWhoseFileNameTellsThePlace() throws IOException {
        trip("tawny-in-may", "Tawny Spur", 52, "phone", "public");
        trip("in-may", "Tawny Spur", 52, "phone", "public");
        Run run = build("public");
        assertEquals(1, run.exit());
        assertTrue(run.err().contains("plans/tawny-in-may.yaml: error: the name of this file comes near a name that public "
                + "pages hide: \"tawny\""), run.err());
        assertFalse(Files.exists(home.resolve("site/tawny-in-may")));
        assertTrue(Files.exists(home.resolve("site/in-may/index.html")));
    }

    private void leaking(String reviewed) throws IOException {
        Files.createDirectories(home.resolve("plans/gear"));
        Files.createDirectories(home.resolve("plans/sites"));
        Files.writeString(home.resolve("plans/sites/spur.yaml"), """
                site: Tawny Spur
                public_name: A quiet wood
                latitude: 52.337
                longitude: -3.548
                time_zone: Europe/London
                sensitive: yes
                spots: [{name: Footbridge}]
                cautions: [Mind the step., The footbridge is slippery.]
                """);
        Files.writeString(home.resolve("plans/gear/mine.yaml"), """
                gear: My bag
                bodies:
                  - name: Pocket camera
                    pixels: 12 Mpx
                    fixed_lenses:
                      - {name: Tawny special, sensor: one-inch, focal: 9 mm, aperture: f/2, closest: 0.1 m}
                """);
        Files.writeString(home.resolve("plans/first.yaml"), """
                trip: First light
                site: spur
                date: 2027-05-08
                gear: mine
                story: |
                  White from the gate
                  to 52.337\u00a0N, 3.548 W.
                shots:
                  - {name: The floor, subject: ramsons, spot: Footbridge}
                  - {name: One head, subject: ramsons, notes: From the foot bridge, otherwise: "see [map](https&#58;//example.org/x)"}
                share: {audience: public%s}
                """.formatted(reviewed));
    }

    @Test
    void saysWhereEachTextGivesThePlaceAway() throws IOException {
        leaking("");
        trip("second", "Quiet Hollow", 57, "phone", "public");
        for (Run run : List.of(build("public"), build("private"), Run.of("check", home.resolve("plans")))) {
            assertEquals(1, run.exit(), run.err());
            for (String finding : List.of("plans/first.yaml:5:8: error: \"52.337 N\" reads as a position",
                    "plans/first.yaml:10:47: error: \"foot bridge\" comes near a name",
                    "plans/first.yaml:10:80: error: this link may lead to a place that public pages hide: https://example.org/x",
                    "plans/sites/spur.yaml:8:28: error: \"footbridge\" comes near a name",
                    "plans/gear/mine.yaml:6:16: error: \"tawny\" comes near a name")) {
                assertTrue(run.err().contains(finding), finding + "\n" + run.err());
            }
        }
        assertTrue(Files.exists(home.resolve("site/second/index.html")));
        assertFalse(Files.exists(home.resolve("site/first")));
        assertFalse(Files.exists(home.resolve("site/sites/a-quiet-wood.html")));
        assertTrue(Run.of("check", home.resolve("plans"), "--json").out().contains("reads as a position"));
    }

    @Test
    void letsReviewedNamesAndLinksPassButNoPosition() throws IOException {
        leaking(", reviewed: [footbridge, tawny, \"https://example.org/x\"]");
        Run run = build("public");
        assertTrue(run.err().contains("1 error, 0 warnings"), run.err());
        assertTrue(run.err().contains("reads as a position"), run.err());
        Path trip = home.resolve("plans/first.yaml");
        Files.writeString(trip, Files.readString(trip).replaceAll("  to 52.*\n", ""));
        run = build("public");
        assertEquals(0, run.exit(), run.err());
        assertTrue(Files.readString(home.resolve("site/first/index.html")).contains("From the foot bridge"), "as written");
    }

    @Test
    void asksNothingOfATripForTheParty() throws IOException {
        leaking("");
        Path trip = home.resolve("plans/first.yaml");
        Files.writeString(trip, Files.readString(trip).replace("public", "party"));
        assertEquals(0, build("party").exit());
    }

    @Test
    void givesAHiddenPlaceNoCalendarAndNoWaypoints() throws IOException {
        trip("one", "Tawny Spur", 52, "phone", "public");
        Path trip = home.resolve("plans/one.yaml");
        Files.writeString(trip, Files.readString(trip).replace("audience: public", "audience: public, position: hidden"));
        assertEquals(0, build("public").exit());
        try (Stream<Path> files = Files.list(home.resolve("site/one"))) {
            assertEquals(List.of("field-sheet.html", "index.html", "plan.json", "plan.md"),
                    files.map(file -> file.getFileName().toString()).sorted().toList());
        }
        String index = Files.readString(home.resolve("site/index.html"));
        assertTrue(index.contains("May 2027, with the times of the middle of the month"), index);
        // The catalogue's first flowers at that latitude are expected on the very day.
        assertFalse(index.replace("first flowers 8 May", "").replace("over 28 May", "").contains("8 May") || index.contains("trip.ics"), index);
        assertTrue(Files.readString(home.resolve("site/one/plan.json")).contains("\"date\": \"2027-05\""));
    }

    /**
     * The day, the forecast and the skyline are withheld: no page may tell of others as if they were the author's. At 51° no day of
     * the catalogue's own season is the day withheld, 8 May, which at 52° is that of the first flowers.
     */
    @ParameterizedTest
    @ValueSource(strings = {"coarse", "hidden"})
    void claimsNothingOfWhatIsWithheld(String position) throws IOException {
        boolean hidden = position.equals("hidden");
        trip("one", "Tawny Spur", 51, "phone", "public");
        Path trip = home.resolve("plans/one.yaml");
        Files.writeString(trip, Files.readString(trip).replace("audience: public", "audience: public, position: " + position)
                .replace("sensitive: yes", "sensitive: yes, skyline: [{bearing: E, angle: 9}]")
                + "forecast: [{time: \"05:00\", temperature: 6 °C, dew_point: 5 °C, wind: 1 m/s, cloud: 2, rain: 0 mm}]\n");
        assertEquals(0, build("public").exit());
        StringBuilder all = new StringBuilder();
        for (String page : List.of("one/index.html", "one/plan.md", "one/plan.json", "one/field-sheet.html", "sites/a-wood.html")) {
            String text = Files.readString(home.resolve("site").resolve(page));
            assertTrue(page.endsWith("json") || page.endsWith("field-sheet.html") || text.replace('\u00a0', ' ').contains("a level horizon"), page);
            all.append(text.replace('\u00a0', ' '));
        }
        for (String claim : List.of("above the skyline", "over the skyline", "behind the skyline", "Sun and skyline", "On May")) {
            assertFalse(all.toString().contains(claim), claim);
        }
        for (String claim : List.of("15 May", "trip: ", "Trip: ", "Vertical line: the trip", "No forecast and no", "no forecast and no", "8 May")) {
            assertFalse(hidden && all.toString().contains(claim), claim);
        }
        for (String told : List.of("Vertical line: the middle of the month", "Mid May, ", "In mid May 2027. ", "A forecast is not shown")) {
            assertEquals(hidden, all.toString().contains(told), told);
        }
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
