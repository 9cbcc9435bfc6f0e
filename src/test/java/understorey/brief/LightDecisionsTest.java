package understorey.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.brief.SmallTrip.FULL_BAG;
import static understorey.brief.SmallTrip.PHONE;
import static understorey.brief.SmallTrip.WOOD;
import static understorey.brief.SmallTrip.forecast;
import static understorey.brief.SmallTrip.has;
import static understorey.brief.SmallTrip.planned;
import static understorey.brief.SmallTrip.visit;

import java.io.IOException;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import understorey.Samples;
import understorey.advice.LightAdvice;
import understorey.advice.ToneAdvice;
import understorey.advice.TripAdvice;
import understorey.advice.WeatherAdvice;
import understorey.light.Outlook;
import understorey.light.Outlook.Grade;
import understorey.plan.Position;
import understorey.sky.SunAt;
import understorey.weather.Likelihood;

/** What an expert expects of the light in a wood. All of it is common practice, no source. */
class LightDecisionsTest {

    private static final String EVENING = visit("19:00", "21:00") + "sky: clear\n";
    private static final String GLOW = "shots: [{name: Glow, subject: ramsons, facing: WNW, light: [low-sun, backlight]}]\n";
    private static final String HEAD = "shots: [{name: Head, subject: ramsons, role: closing, light: [soft]}]\n";
    private static final String ANEMONE = "shots: [{name: Star, subject: wood-anemone, role: closing, light: [soft]}]\n";

    @TempDir
    private Path folder;

    private static String edge(String bearing) {
        return WOOD.replace("country: GB\n", "country: GB\n  edges: [{bearing: " + bearing + ", distance: 40 m}]\n");
    }

    private static String cloud(int okta, String temperature) {
        return forecast(3, 14, "temperature: " + temperature + ", dew_point: 2 °C, wind: 1 m/s, cloud: " + okta + ", rain: 0 mm");
    }

    private Outlook outlook(String shot, String... parts) throws IOException {
        return planned(folder, parts).shot(shot).outlook();
    }

    @Nested
    class LightInAWood {

        @ParameterizedTest
        @ValueSource(strings = {"W", "WNW", "NW"})
        void letsLowSunInFromAnEdgeTowardsTheSun(String bearing) throws IOException {
            assertNotEquals(Grade.POOR, outlook("Glow", edge(bearing), FULL_BAG, EVENING, GLOW).grade());
        }

        @Test
        void letsNoLowSunInFromAnEdgeOnTheOtherSide() throws IOException {
            assertEquals(Grade.POOR, outlook("Glow", edge("ESE"), FULL_BAG, EVENING, GLOW).grade());
        }

        @Test
        void asksForAnOpeningTowardsTheSunWhereNoEdgeIsKnown() throws IOException {
            Outlook outlook = outlook("Glow", WOOD, FULL_BAG, EVENING, GLOW);
            assertEquals(Grade.FAIR, outlook.grade());
            assertEquals(295, Samples.the(LightAdvice.NeedsOpening.class, outlook.because()).bearing(), 15);
        }

        /** A low evening sun is not too high: it lights the other side, or cloud hides it. */
        @Test
        void namesWhatSpoilsADayWithTheHoursInWhichItDoes() throws IOException {
            Outlook outlook = outlook("Glow", edge("WNW"), FULL_BAG, visit("06:00", "21:00"),
                    forecast(3, 23, "temperature: 10 °C, wind: 1 m/s, cloud: 6, rain: 0 mm"), GLOW.replace("WNW", "E"));
            assertEquals(List.of(), outlook.windows());
            List<Outlook.Spoil> high = outlook.spoils().stream().filter(spoil -> spoil.why() instanceof LightAdvice.SunTooHigh).toList();
            assertEquals(1, high.size(), outlook.spoils().toString());
            for (ZonedDateTime end : List.of(high.get(0).when().from(), high.get(0).when().to())) {
                double altitude = SunAt.of(new Position(52.337, -3.548), end).altitudeDeg();
                assertTrue(altitude > 6, end + ": the sun is at " + altitude);
            }
        }

        /** The sun is out for half of the time. */
        @Test
        void callsAHalfCoveredSkyLessSoftThanAClosedOne() throws IOException {
            String noon = visit("11:00", "13:00");
            double half = outlook("Head", WOOD, FULL_BAG, noon, cloud(4, "12 °C"), HEAD).quality();
            double closed = outlook("Head", WOOD, FULL_BAG, noon, cloud(8, "12 °C"), HEAD).quality();
            assertTrue(half < 0.8 * closed, half + " " + closed);
        }

        @Test
        void findsSoftLightUnderACloudedSkyAndNoBacklight() throws IOException {
            String noon = visit("09:00", "11:00") + "sky: overcast\n";
            assertEquals(Grade.GOOD, outlook("Head", WOOD, FULL_BAG, noon, HEAD).grade());
            assertEquals(Grade.POOR, outlook("Head", WOOD, FULL_BAG, noon,
                    HEAD.replace("soft", "backlight").replace("closing", "closing, facing: E")).grade());
        }

        @Test
        void expectsNoMistUnderClosedCloud() throws IOException {
            Brief brief = planned(folder, WOOD, FULL_BAG, visit("05:00", "08:00"), cloud(8, "3 °C"), HEAD.replace("soft", "mist"));
            Likelihood likelihood = brief.shot("Head").fitted().place().mist().likelihood();
            assertTrue(likelihood == Likelihood.NONE || likelihood == Likelihood.LOW, likelihood.toString());
            assertEquals(Grade.POOR, brief.shot("Head").outlook().grade());
            assertTrue(has(WeatherAdvice.WithoutMist.class, brief.shot("Head").mist()), brief.shot("Head").mist().toString());
        }

        @Test
        void expectsMistAfterAClearCalmDampNight() throws IOException {
            Brief brief = planned(folder, WOOD, FULL_BAG, visit("05:00", "08:00"), cloud(0, "3 °C"), HEAD.replace("soft", "mist"));
            assertEquals(Likelihood.HIGH, brief.shot("Head").fitted().place().mist().likelihood());
            assertEquals(Grade.GOOD, brief.shot("Head").outlook().grade());
        }

        /** It changes every picture that is taken in it, and needs saying once. */
        @Test
        void saysOnceHowToExposeInLikelyMist() throws IOException {
            Brief brief = planned(folder, WOOD, FULL_BAG, visit("05:00", "06:30"), cloud(0, "3 °C"), """
                    shots:
                      - {name: Carpet, subject: ramsons, role: opening}
                      - {name: Head, subject: ramsons, role: closing}
                    """);
            assertEquals(1, brief.inMist().size());
        }

        @Test
        void saysNothingOfMistInTheAfternoon() throws IOException {
            Brief brief = planned(folder, WOOD, FULL_BAG, visit("13:00", "15:00"), cloud(0, "3 °C"), HEAD);
            assertEquals(List.of(), brief.inMist());
        }

        @Test
        void findsWoodAnemonesClosedOnADullMorning() throws IOException {
            Outlook dull = outlook("Star", WOOD, FULL_BAG, visit("08:00", "10:00"), cloud(8, "4 °C"), ANEMONE);
            assertTrue(has(LightAdvice.ClosedInDullWeather.class, dull.because()), dull.because().toString());
            assertNotEquals(Grade.GOOD, dull.grade());
        }

        @Test
        void findsRamsonsOpenOnTheSameDullMorning() throws IOException {
            Outlook dull = outlook("Head", WOOD, FULL_BAG, visit("08:00", "10:00"), cloud(8, "4 °C"), HEAD);
            assertEquals(Grade.GOOD, dull.grade(), dull.because().toString());
        }

        /** Ten lines name no trees, and ramsons grow under them. */
        @Test
        void assumesTheWoodOfAWoodlandFlower() throws IOException {
            String unsaid = WOOD.replaceAll("  canopy: .*\n", "");
            String visit = visit("08:00", "10:00") + "sky: overcast\n";
            Brief assumed = planned(folder, unsaid, PHONE, visit, HEAD);
            Brief open = planned(folder, unsaid.replace("country: GB\n", "country: GB\n  canopy: none\n"), PHONE, visit, HEAD);
            assertTrue(has(TripAdvice.WoodAssumed.class, assumed.findings()), assumed.findings().toString());
            double stops = open.shot("Head").settings().ev100() - assumed.shot("Head").settings().ev100();
            assertTrue(stops >= 2, stops + " stops");
        }

        @Test
        void assumesNoWoodOverAFlowerOfTheOpen() throws IOException {
            String unsaid = WOOD.replaceAll("  canopy: .*\n", "");
            Brief brief = planned(folder, unsaid, PHONE, visit("08:00", "10:00"), HEAD.replace("ramsons", "fireweed"));
            assertTrue(brief.findings().stream().noneMatch(TripAdvice.WoodAssumed.class::isInstance), brief.findings().toString());
            assertNull(brief.trip().site().canopy());
        }
    }

    /** A small frame lies in a fleck of sun or in the shade beside it, and a wide one holds both. */
    @Nested
    class InFlecksOfSun {

        private static final String LEAFLESS = WOOD.replace("half-leaf", "leafless");
        private static final String NOON = visit("11:00", "13:00") + "sky: clear\n";
        private static final String CARPET = "shots: [{name: Carpet, subject: ramsons, role: opening}]\n";

        private TimedShot shot(String name, String shots) throws IOException {
            TimedShot shot = planned(folder, LEAFLESS, FULL_BAG, NOON, shots).shot(name);
            assertTrue(shot.light().fleckShare() > 0.1 && shot.light().contrastStops(0) > 2, shot.light().toString());
            return shot;
        }

        @Test
        void exposesASoftCloseUpForTheShade() throws IOException {
            TimedShot head = shot("Head", HEAD);
            assertEquals(head.light().floor().shade(), head.settings().ev100(), 0.05);
            assertEquals(List.of(0), head.settings().bracketStops());
            ToneAdvice.SmallFrameInShade shade = Samples.the(ToneAdvice.SmallFrameInShade.class, head.settings().reasons());
            assertEquals(head.light().contrastStops(0), shade.stops(), 0.05);
        }

        @Test
        void exposesABacklitCloseUpForTheFleck() throws IOException {
            TimedShot head = shot("Head", HEAD.replace("soft", "backlight").replace("closing", "closing, facing: S"));
            assertEquals(head.light().floor().fleck(), head.settings().ev100(), 0.05);
            assertTrue(has(ToneAdvice.SmallFrameInSun.class, head.settings().reasons()), head.settings().reasons().toString());
            assertTrue(head.whiteBalance().kelvin() < 5600, head.whiteBalance().toString());
        }

        /** A picture of the carpet holds both lights: its darkest frame is for the flecks. */
        @Test
        void protectsTheFlecksOfTheCarpet() throws IOException {
            TimedShot carpet = shot("Carpet", CARPET);
            assertTrue(carpet.settings().ev100() > carpet.light().floor().shade() + 0.3, carpet.settings().toString());
            double above = carpet.light().floor().fleck() - carpet.settings().ev100();
            assertTrue(-carpet.settings().bracketStops().get(0) + carpet.settings().lessStops() >= above - 1, carpet.settings().toString());
        }

        /** Camera presets for shade are at 7000 to 8000 K. */
        @Test
        void balancesOpenShadeAsCamerasDo() throws IOException {
            int shade = shot("Head", HEAD).whiteBalance().kelvin();
            assertTrue(shade >= 7000 && shade <= 8000, shade + " K");
        }

        @Test
        void balancesSunAndShadeBetweenTheTwo() throws IOException {
            TimedShot carpet = planned(folder, LEAFLESS, FULL_BAG, visit("08:00", "09:00"), "sky: clear\n", CARPET).shot("Carpet");
            int mixed = carpet.whiteBalance().kelvin();
            assertTrue(mixed > 5000 && mixed < 7000, mixed + " K at " + carpet.light());
        }
    }
}
