package understorey.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import understorey.plan.Trip;
import understorey.reading.PlansReader;

/** A day that is hardly worth going says so before anything else. */
class HopelessPageTest {

    private static final String PLAN = """
            trip: Late
            site:
              site: Invented Clough
              latitude: 52.337
              longitude: -3.548
              time_zone: Europe/London
              country: GB
              canopy: {trees: deciduous, stage: full-leaf, height: 18 m}
              season:
                - subject: ramsons
                  records:
                    - {first: 2023-04-24, full: 2023-05-03, over: 2023-05-25}
                    - {first: 2024-04-25, full: 2024-05-04, over: 2024-05-26}
                    - {first: 2025-04-26, full: 2025-05-05, over: 2025-05-27}
            date: 2027-06-20
            arrive: "08:00"
            leave: "12:00"
            gear: phone
            forecast:
              - {time: "07:00", temperature: 10 °C, wind: 9 m/s, gust: 16 m/s, cloud: 7, rain: 0 mm}
              - {time: "13:00", temperature: 10 °C, wind: 9 m/s, gust: 16 m/s, cloud: 7, rain: 0 mm}
            shots: [{name: Carpet, subject: ramsons, role: opening, light: [soft]}]
            """;

    @TempDir
    private Path folder;

    private List<Page> pages(String plan) throws IOException {
        Files.writeString(folder.resolve("late.yaml"), plan);
        List<Trip> trips = PlansReader.read(folder).trips();
        assertEquals(1, trips.size());
        return Briefs.pages(trips, List.of());
    }

    private static String text(String html) {
        return html.replaceAll("<[^>]*>", " ").replace("&nbsp;", " ").replace("\u00a0", " ").replaceAll("\\s+", " ").strip();
    }

    @Test
    void saysFirstThatTheDayIsHopelessAndWhatToDo() throws IOException {
        List<Page> pages = pages(PLAN);
        for (String name : List.of("index.html", "field-sheet.html", "plan.md")) {
            String page = SitePagesTest.page(pages, "late/" + name);
            String first = text(page.substring(page.indexOf(name.startsWith("field") ? "</nav>" : name.endsWith("md") ? "# Late" : "<h1>")));
            assertTrue(first.replaceAll("[*#]", "").strip().replaceFirst("^Late ", "").strip().startsWith("Reconsider: gusts up to 16.0 m/s"), first.substring(0, 200));
            Matcher instead = Pattern.compile("chance of full flower for ramsons \\(wild garlic\\)\\. Go from (\\d+ \\w+) to (\\d+ May) instead").matcher(first);
            assertTrue(instead.find() && instead.start() < 300, first.substring(0, 400));
        }
    }

    @Test
    void saysNothingOfTheKindOnAGoodDay() throws IOException {
        List<Page> pages = pages(PLAN.replace("2027-06-20", "2027-05-08").replace("gust: 16", "gust: 2").replace("wind: 9", "wind: 1"));
        for (String name : List.of("index.html", "field-sheet.html", "plan.md")) {
            String page = SitePagesTest.page(pages, "late/" + name);
            assertFalse(page.contains("Reconsider") || page.contains("ardly worth"), name);
        }
    }
}
