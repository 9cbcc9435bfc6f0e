package understorey.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SunriseResult;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import understorey.brief.Brief;
import understorey.brief.Planner;
import understorey.plan.Display;
import understorey.plan.Trip;
import understorey.reading.Plans;
import understorey.reading.PlansReader;
import understorey.share.Sharing;

/**
 * Public pages of a sensitive site are the same, byte for byte, for every place in its cell: no attack on them, by
 * skyline, times, walks or heights, can lead nearer than the cell.
 */
class SamePagesTest {

    private static final int PLACES = 50;

    @TempDir
    private Path home;
    private final Random random = new Random(20270508);

    private double in(double from, double to) {
        return from + random.nextDouble() * (to - from);
    }

    /** An invented hilly place in the cell round a point, and a trip to it: all differs that a public page may not tell. */
    private Map<String, String> pages(String position, double latitude, double longitude, double halfDeg, double elevationM)
            throws IOException {
        String wood = word();
        String first = word();
        String second = word();
        double lat = latitude + in(-0.98, 0.98) * halfDeg;
        double lon = longitude + in(-0.98, 0.98) * halfDeg;
        StringBuilder skyline = new StringBuilder();
        for (int bearing = 0; bearing < 360; bearing += 30) {
            skyline.append("  - {bearing: ").append(bearing).append(String.format(Locale.ROOT, ", angle: %.1f}%n", in(0, 25)));
        }
        String site = String.format(Locale.ROOT, """
                site: %s
                public_name: A wood in the hills
                latitude: %.5f
                longitude: %.5f
                elevation: %.1f m
                time_zone: Etc/GMT%s
                canopy: {trees: deciduous, stage: half-leaf, height: %.1f m}
                skyline:
                %sspots:
                  - {name: %s, at: [%.5f, %.5f], slope: {angle: %.0f, faces: %.0f}, clearing: {radius: %.0f m}}
                  - {name: %s, at: [%.5f, %.5f], skyline: [{bearing: S, angle: %.0f}]}
                walks: [{from: %s, to: %s, duration: %.0f min}]
                opening: {from: "0%d:%02d", to: "2%d:%02d"}
                parking: {spot: %s, closes: "21:%02d", fee: %.0f coins}
                season:
                  - subject: ramsons
                    records: [{first: 2026-04-0%d, full: 2026-04-24, over: 2026-05-15}]
                access: By the road number %d.
                reports: https://example.org/%d
                notes: Some %d notes.
                sensitive: yes
                """, wood, lat, lon, elevationM + in(-45, 45), zone(longitude), in(18, 22), skyline, first, lat + 0.001, lon,
                in(1, 40), in(0, 359), in(5, 30), second, lat, lon + 0.001, in(1, 40), first, second, in(2, 50),
                random.nextInt(1, 5), random.nextInt(60), random.nextInt(4), random.nextInt(60), first, random.nextInt(60),
                in(1, 9), random.nextInt(6, 9), random.nextInt(999), random.nextInt(999), random.nextInt(999));
        return pages(site, trip(position, first, second));
    }

    private String word() {
        StringBuilder word = new StringBuilder("Q");
        for (int i = 0; i < 9; i++) {
            word.append((char) random.nextInt('a', 'z' + 1));
        }
        return word.toString();
    }

    private static String zone(double longitude) {
        long hours = Math.round(longitude / 15);
        return hours == 0 ? "0" : hours > 0 ? "-" + hours : "+" + -hours;
    }

    private static String trip(String position, String first, String second) {
        return """
                trip: White under the trees
                site: here
                date: 2027-05-08
                gear: phone
                forecast:
                  - {time: "05:00", temperature: 6.3 °C, dew_point: 5.5 °C, wind: 1 m/s, cloud: 2, rain: 0 mm}
                  - {time: "12:00", temperature: 11.2 °C, humidity: 71 %%, wind: 3 m/s, cloud: 4, rain: 0 mm}
                shots:
                  - {name: The floor, subject: ramsons, spot: %s, facing: ENE, light: [low-sun, backlight], priority: 3}
                  - {name: One head, subject: ramsons, spot: %s, role: closing, light: [soft]}
                share: {audience: public, position: %s}
                """.formatted(first, second, position);
    }

    private Map<String, String> pages(String site, String written) throws IOException {
        Files.createDirectories(home.resolve("sites"));
        Files.writeString(home.resolve("sites/here.yaml"), site);
        Files.writeString(home.resolve("trip.yaml"), written);
        Plans plans = PlansReader.read(home);
        assertEquals(List.of(), plans.findings(), site);
        List<Brief> briefs = new ArrayList<>();
        for (Trip trip : plans.trips()) {
            briefs.add(Planner.brief(Sharing.forAudience(trip)));
        }
        Map<String, String> pages = new TreeMap<>();
        Briefs.pages(SitePages.open(null, null, Display.USUAL), briefs, List.of(), List.of(), List.of())
                .forEach(page -> pages.put(page.path(), page.content()));
        return pages;
    }

    /** The centre of a cell anywhere that people photograph woods, well off the poles. */
    private double centre(double from, double to, double cellDeg) {
        return Math.round(in(from, to) / cellDeg) * cellDeg;
    }

    @ParameterizedTest
    @ValueSource(strings = {"coarse", "hidden"})
    void areTheSameForEveryPlaceInACell(String position) throws IOException {
        double cell = position.equals("coarse") ? 0.1 : 1;
        for (int i = 0; i < PLACES; i++) {
            double latitude = centre(-55, 65, cell);
            double longitude = centre(-175, 175, cell);
            double elevation = 100 * random.nextInt(0, 20) + 0.0;
            Map<String, String> one = pages(position, latitude, longitude, cell / 2, elevation);
            Map<String, String> other = pages(position, latitude, longitude, cell / 2, elevation);
            assertTrue(one.size() > 5, "pages " + one.keySet());
            assertEquals(one.keySet(), other.keySet());
            for (String path : one.keySet()) {
                assertEquals("", difference(one.get(path), other.get(path)), path + " at " + latitude + ", " + longitude);
            }
        }
    }

    private static String difference(String one, String other) {
        List<String> lines = one.lines().toList();
        List<String> others = other.lines().toList();
        for (int i = 0; i < Math.min(lines.size(), others.size()); i++) {
            if (!lines.get(i).equals(others.get(i))) {
                return lines.get(i) + "\n" + others.get(i);
            }
        }
        return one.equals(other) ? "" : lines.size() + " lines, and " + others.size();
    }

    /**
     * Solar noon tells a longitude: four minutes of time a degree (an independent library gives the noon of the true
     * place). From the pages it comes out no nearer than the page's own step of time, 1.25° or 3.75°.
     */
    @ParameterizedTest
    @ValueSource(strings = {"coarse", "hidden"})
    void giveTimesOnAGridOnly(String position) throws IOException {
        int step = position.equals("coarse") ? 5 : 15;
        Pattern noon = Pattern.compile("\"solar_noon\": \"([^\"]+)\"");
        Pattern times = Pattern.compile("T\\d\\d:(\\d\\d):(\\d\\d)[+-Z]");
        for (int i = 0; i < 10; i++) {
            double latitude = centre(-50, 55, 1);
            double longitude = centre(-170, 170, 1);
            String json = pages(position, latitude, longitude, 0.05, 100).get("trip/plan.json");
            Matcher told = noon.matcher(json);
            assertTrue(told.find(), json);
            ZonedDateTime at = ZonedDateTime.parse(told.group(1));
            SunriseResult real = SPA.calculateSunriseTransitSet(at.toLocalDate().atStartOfDay(at.getZone()), latitude, longitude, 69);
            double offMin = Duration.between(((SunriseResult.RegularDay) real).transit(), at).toSeconds() / 60.0;
            assertTrue(Math.abs(offMin) <= step / 2.0 + 0.5, "noon off by " + offMin + " min");
            Matcher time = times.matcher(json);
            int found = 0;
            while (time.find()) {
                found++;
                assertEquals(0, Integer.parseInt(time.group(1)) % step, json.substring(time.start() - 40, time.end()));
                assertEquals("00", time.group(2));
            }
            assertTrue(found > 100, "times " + found);
        }
    }
}
