package understorey.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import understorey.packing.Caution;
import understorey.plan.Trip;
import understorey.reading.Plans;
import understorey.reading.PlansReader;
import understorey.reason.Reason;
import understorey.share.Sharing;

/** The limits and weights are the project's own rules of thumb: these tests hold the order that they are meant to give. */
class SpoilersTest {

    private static final Path PLANS = Path.of("plans");
    private static final String RAMSONS = "first-light-in-the-ramsons";
    private static final String ANEMONES = "anemones-under-the-beeches";

    @TempDir
    private Path folder;

    /** A week after the last day on which the flowers are expected to be full. */
    @Test
    void namesAChanceOfFlowersOfFivePercentFirst() throws IOException {
        Brief late = brief(RAMSONS, "date: 2027-05-08", "date: 2027-05-17");
        Reason first = Spoilers.of(late).get(0);
        assertEquals(SpoilerReason.FLOWERS_UNLIKELY, first.kind());
        assertEquals(0.05, number(first, "chance"), 0.01, first.toString());
    }

    @Test
    void ranksNoMoreThanThreeAndSaysEachOnce() throws IOException {
        for (String trip : List.of(RAMSONS, ANEMONES, "a-weekend-for-the-anemones", "paper-stars-on-red-sand")) {
            List<Reason> named = Spoilers.of(brief(trip));
            assertTrue(!named.isEmpty() && named.size() <= 3, trip + named);
            assertEquals(named.size(), named.stream().map(Reason::kind).distinct().count(), trip + named);
        }
    }

    @Test
    void namesTheLullThatThePicturesNeedTheMistAndTheRainOfTheForecast() throws IOException {
        List<Reason> named = Spoilers.of(brief(RAMSONS));
        assertEquals(List.of(SpoilerReason.WIND_BLURS, SpoilerReason.MIST_HIDES_SUN, SpoilerReason.RAIN_PERHAPS), kinds(named));
        assertEquals(List.of(5), named.get(0).figures().get("worst").value());
        assertEquals(List.of(2, 3), named.get(1).figures().get("pictures").value());
        assertEquals(0.4, number(named.get(2), "chance"), 1e-9);
        assertEquals(0.2, number(named.get(2), "amount"), 1e-9);
    }

    @Test
    void putsDangerousGustsBeforeEverythingElse() throws IOException {
        List<Reason> named = Spoilers.of(brief(RAMSONS, "gust: 4 m/s", "gust: 16 m/s"));
        assertEquals(Caution.GUSTS_BREAK_BRANCHES, named.get(0).kind());
        assertEquals(16, number(named.get(0), "gust"), 1e-9);
    }

    @Test
    void namesRainThatIsSureBeforeRainThatIsNot() throws IOException {
        List<Reason> sure = Spoilers.of(brief(RAMSONS, "rain: 0 mm}\n  - {time: \"10:00\"", "rain: 2 mm}\n  - {time: \"10:00\""));
        assertTrue(kinds(sure).contains(SpoilerReason.RAIN_FORECAST), sure.toString());
        assertFalse(kinds(sure).contains(SpoilerReason.RAIN_PERHAPS), sure.toString());
    }

    @Test
    void namesTheSkyAndTheWindWhereThereIsNoForecast() throws IOException {
        List<Reason> named = Spoilers.of(brief(ANEMONES));
        assertTrue(kinds(named).containsAll(List.of(SpoilerReason.NO_FORECAST, SpoilerReason.NO_WIND_FORECAST)), named.toString());
        assertTrue(number(named.get(kinds(named).indexOf(SpoilerReason.NO_FORECAST)), "stops") > 1, named.toString());
    }

    @Test
    void namesMistThatAPictureNeedsAndTheForecastDoesNotGive() throws IOException {
        List<Reason> named = Spoilers.of(brief(RAMSONS, "light: [soft]", "light: [mist]", ", temperature_850: 2 °C, wind_850: 6 m/s", "",
                "dew_point: 4.5 °C", "dew_point: -9 °C", "dew_point: 5.5 °C", "dew_point: -9 °C"));
        assertTrue(kinds(named).contains(SpoilerReason.MIST_NOT_EXPECTED) || kinds(named).contains(SpoilerReason.MIST_MAY_FAIL),
                named.toString());
    }

    @Test
    void namesPicturesWithoutTimeAndACheckInThatIsMissed() throws IOException {
        List<Reason> named = Spoilers.of(brief(RAMSONS, "leave: \"09:30\"", "leave: \"06:30\""));
        assertTrue(kinds(named).contains(SpoilerReason.PICTURES_LEFT_OUT), named.toString());
        assertTrue(Spoilers.of(brief(RAMSONS, "back_by: \"12:00\"", "back_by: \"07:00\"")).stream()
                .anyMatch(reason -> reason.kind().name().equals("BACK_TOO_LATE")));
    }

    /** Still, dry, overcast air, all pictures without a wish and flowers in full: what is left is told with its figure. */
    @Test
    void namesTheGreatestOfTheSmallRisksWhereNoneIsGreat() throws IOException {
        List<Reason> named = Spoilers.of(brief(RAMSONS, "light: [soft]", "light: []", "light: [backlight]", "light: []",
                "light: [soft, after-rain]", "light: []", "gust: 1.5 m/s, ", "", "gust: 2 m/s, ", "", "gust: 4 m/s, ", "", "gust: 24 km/h, ", "",
                "wind: 0.5 m/s", "wind: 0 m/s", "wind: 1 m/s", "wind: 0 m/s", "wind: 2 m/s", "wind: 0 m/s", "wind: 12 km/h", "wind: 0 m/s",
                "rain: 0.2 mm, rain_chance: 40 %", "rain: 0 mm"));
        assertEquals(1, named.size(), named.toString());
        assertEquals(SpoilerReason.FLOWERS_LIKELY, named.get(0).kind());
        assertEquals(brief(RAMSONS).season().window().chanceOn(LocalDate.of(2027, 5, 8)), number(named.get(0), "chance"), 1e-9);
    }

    private static List<Reason.Kind> kinds(List<Reason> reasons) {
        return reasons.stream().map(Reason::kind).toList();
    }

    private static double number(Reason reason, String figure) {
        return ((Number) reason.figures().get(figure).value()).doubleValue();
    }

    /** A trip that comes with the project, with some of its text replaced: old, new, old, new … */
    private Brief brief(String slug, String... replaced) throws IOException {
        try (Stream<Path> files = Files.walk(PLANS)) {
            for (Path file : new ArrayList<>(files.filter(Files::isRegularFile).toList())) {
                String text = Files.readString(file);
                if (file.endsWith(slug + ".yaml")) {
                    for (int i = 0; i < replaced.length; i += 2) {
                        assertTrue(text.contains(replaced[i]), replaced[i]);
                        text = text.replace(replaced[i], replaced[i + 1]);
                    }
                }
                Path copy = folder.resolve(PLANS.relativize(file));
                Files.createDirectories(copy.getParent());
                Files.writeString(copy, text);
            }
        }
        Plans plans = PlansReader.read(folder);
        assertFalse(plans.hasErrors(), plans.findings().toString());
        Trip trip = plans.trips().stream().filter(one -> one.slug().equals(slug)).findFirst().orElseThrow();
        return Planner.brief(Sharing.forAudience(trip));
    }
}
