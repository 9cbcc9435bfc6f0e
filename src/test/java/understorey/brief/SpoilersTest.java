package understorey.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.kinds;
import static understorey.Samples.the;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import understorey.advice.Advice;
import understorey.advice.CautionAdvice;
import understorey.advice.SpoilerAdvice;
import understorey.advice.VisitAdvice;
import understorey.kit.Verdict;
import understorey.plan.Trip;
import understorey.reading.Plans;
import understorey.reading.PlansReader;
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
        SpoilerAdvice.FlowersUnlikely first = assertInstanceOf(SpoilerAdvice.FlowersUnlikely.class, Spoilers.of(late).get(0));
        assertEquals(0.05, first.chance(), 0.01, first.toString());
    }

    @Test
    void ranksNoMoreThanThreeAndSaysEachOnce() throws IOException {
        for (String trip : List.of(RAMSONS, ANEMONES, "a-weekend-for-the-anemones", "paper-stars-on-red-sand")) {
            List<Advice> named = Spoilers.of(brief(trip));
            assertTrue(!named.isEmpty() && named.size() <= 3, trip + named);
            assertEquals(named.size(), kinds(named).stream().distinct().count(), trip + named);
        }
    }

    /** The headline settings hold the mean wind of each picture; what is left to spoil them are the gusts. */
    @Test
    void namesTheGustsTheRainAndTheMistThatOutlastTheSettings() throws IOException {
        Brief longer = brief(RAMSONS, "leave: \"09:30\"", "leave: \"10:30\"");
        assertTrue(longer.timed().stream().allMatch(shot -> shot.settings().motionStops() == 0));
        List<Advice> named = Spoilers.of(longer);
        assertEquals(List.of(SpoilerAdvice.WindBlurs.class, SpoilerAdvice.RainPerhaps.class, SpoilerAdvice.MistHidesSun.class), kinds(named));
        assertEquals(List.of(5), the(SpoilerAdvice.WindBlurs.class, named).worst(), "the macro picture");
        assertEquals(List.of(2, 3), the(SpoilerAdvice.MistHidesSun.class, named).pictures());
        assertEquals(0.4, the(SpoilerAdvice.RainPerhaps.class, named).chance(), 1e-9);
        assertEquals(0.2, the(SpoilerAdvice.RainPerhaps.class, named).amount(), 1e-9);
    }

    /** Gusts of 12 m/s: too strong for the shutter speed of some pictures, and those are named. */
    @Test
    void namesTheWindWhereItIsTooStrongForTheShutterSpeeds() throws IOException {
        Brief gusty = brief(RAMSONS, "gust: 2 m/s", "gust: 12 m/s", "gust: 4 m/s", "gust: 12 m/s");
        SpoilerAdvice.WindBlurs wind = the(SpoilerAdvice.WindBlurs.class, Spoilers.of(gusty));
        assertEquals(gusty.timed().stream().filter(shot -> shot.time() != null && shot.settings().motionBlur() != null)
                .map(TimedShot::number).toList(), wind.pictures());
        assertTrue(gusty.timed().get(wind.worst().get(0) - 1).settings().shutterS() > wind.longest());
    }

    @Test
    void namesRainThatTheForecastGivesAsAChanceAlone() throws IOException {
        List<Advice> named = Spoilers.of(brief(RAMSONS, "rain: 0.2 mm, rain_chance: 40 %", "rain_chance: 70 %",
                "leave: \"09:30\"", "leave: \"10:30\""));
        assertEquals(0.7, the(SpoilerAdvice.RainOfAnyAmount.class, named).chance(), 1e-9);
    }

    /** Each figure and each picture that is named, against the plan itself. */
    @Test
    void saysNothingThatIsNotTrueOfThePlan() throws IOException {
        for (String trip : List.of(RAMSONS, ANEMONES, "a-weekend-for-the-anemones", "paper-stars-on-red-sand")) {
            Brief brief = brief(trip);
            for (Advice risk : Spoilers.of(brief)) {
                assertTrue(holds(risk, brief), trip + risk);
            }
        }
    }

    private static boolean holds(Advice risk, Brief brief) {
        if (risk instanceof SpoilerAdvice.FlowersLikely flowers) {
            return flowers.chance() >= 0.8 && flowers.chance() == brief.season().window().chanceOn(brief.date());
        } else if (risk instanceof SpoilerAdvice.FlowersUnlikely flowers) {
            return flowers.chance() < 0.8 && flowers.chance() == brief.season().window().chanceOn(brief.date());
        } else if (risk instanceof SpoilerAdvice.WindBlurs wind) {
            return wind.pictures().stream().allMatch(number -> brief.timed().get(number - 1).settings().motionBlur() != null);
        } else if (risk instanceof SpoilerAdvice.MistHidesSun mist) {
            return mist.pictures().stream().map(number -> brief.timed().get(number - 1)).allMatch(shot ->
                    shot.time().from().isBefore(shot.fitted().place().mist().when().to())
                            && !mist.gone().isBefore(shot.fitted().place().mist().when().to()));
        } else if (risk instanceof SpoilerAdvice.LightPoor light) {
            return light.pictures().stream().allMatch(number -> brief.timed().get(number - 1).poorLight());
        } else if (risk instanceof SpoilerAdvice.PicturesCompromised pictures) {
            return pictures.pictures().stream().allMatch(number -> brief.timed().get(number - 1).verdict() == Verdict.COMPROMISE);
        } else if (risk instanceof SpoilerAdvice.NoForecast || risk instanceof SpoilerAdvice.NoWindForecast) {
            return brief.trip().forecast().isEmpty();
        }
        return risk instanceof SpoilerAdvice.WindForecast && brief.timed().stream().allMatch(shot -> shot.settings().motionBlur() == null);
    }

    @Test
    void putsDangerousGustsBeforeEverythingElse() throws IOException {
        List<Advice> named = Spoilers.of(brief(RAMSONS, "gust: 4 m/s", "gust: 16 m/s"));
        assertEquals(16, assertInstanceOf(CautionAdvice.GustsBreakBranches.class, named.get(0)).gust(), 1e-9);
    }

    @Test
    void namesRainThatIsSureBeforeRainThatIsNot() throws IOException {
        List<Advice> sure = Spoilers.of(brief(RAMSONS, "rain: 0 mm}\n  - {time: \"10:00\"", "rain: 2 mm}\n  - {time: \"10:00\""));
        assertTrue(kinds(sure).contains(SpoilerAdvice.RainForecast.class), sure.toString());
        assertFalse(kinds(sure).contains(SpoilerAdvice.RainPerhaps.class), sure.toString());
    }

    @Test
    void namesTheSkyAndTheWindWhereThereIsNoForecast() throws IOException {
        List<Advice> named = Spoilers.of(brief(ANEMONES));
        assertTrue(kinds(named).containsAll(List.of(SpoilerAdvice.NoForecast.class, SpoilerAdvice.NoWindForecast.class)), named.toString());
        assertTrue(the(SpoilerAdvice.NoForecast.class, named).stops() > 1, named.toString());
    }

    @Test
    void namesMistThatAPictureNeedsAndTheForecastDoesNotGive() throws IOException {
        List<Advice> named = Spoilers.of(brief(RAMSONS, "light: [soft]", "light: [mist]", ", temperature_850: 2 °C, wind_850: 6 m/s", "",
                "dew_point: 4.5 °C", "dew_point: -9 °C", "dew_point: 5.5 °C", "dew_point: -9 °C"));
        assertTrue(kinds(named).contains(SpoilerAdvice.MistNotExpected.class) || kinds(named).contains(SpoilerAdvice.MistMayFail.class),
                named.toString());
    }

    /** The rain of the demo is forecast for 10:00, and the visit ends at 09:30. */
    @Test
    void saysNothingOfRainAfterTheVisit() throws IOException {
        assertFalse(kinds(Spoilers.of(brief(RAMSONS))).contains(SpoilerAdvice.RainPerhaps.class));
    }

    @Test
    void namesPicturesWithoutTimeAndACheckInThatIsMissed() throws IOException {
        List<Advice> named = Spoilers.of(brief(RAMSONS, "leave: \"09:30\"", "leave: \"06:30\""));
        assertTrue(kinds(named).contains(SpoilerAdvice.PicturesLeftOut.class), named.toString());
        assertTrue(Spoilers.of(brief(RAMSONS, "back_by: \"12:00\"", "back_by: \"07:00\"")).stream()
                .anyMatch(VisitAdvice.BackTooLate.class::isInstance));
    }

    /** Still, dry, overcast air, no light asked for and flowers in full: what remains is given with its figure. */
    @Test
    void namesTheGreatestOfTheSmallRisksWhereNoneIsGreat() throws IOException {
        List<Advice> named = Spoilers.of(brief(RAMSONS, "light: [soft]", "light: []", "light: [backlight]", "light: []",
                "light: [soft, after-rain]", "light: []", "gust: 1.5 m/s, ", "", "gust: 2 m/s, ", "", "gust: 4 m/s, ", "", "gust: 24 km/h, ", "",
                "wind: 0.5 m/s", "wind: 0 m/s", "wind: 1 m/s", "wind: 0 m/s", "wind: 2 m/s", "wind: 0 m/s", "wind: 12 km/h", "wind: 0 m/s",
                "rain: 0.2 mm, rain_chance: 40 %", "rain: 0 mm"));
        assertEquals(1, named.size(), named.toString());
        assertEquals(brief(RAMSONS).season().window().chanceOn(LocalDate.of(2027, 5, 8)),
                assertInstanceOf(SpoilerAdvice.FlowersLikely.class, named.get(0)).chance(), 1e-9);
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
