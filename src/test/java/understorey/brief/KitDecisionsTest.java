package understorey.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
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
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import understorey.Samples;
import understorey.advice.FitAdvice;
import understorey.advice.HelpAdvice;
import understorey.advice.SetAdvice;
import understorey.advice.ToneAdvice;
import understorey.advice.TripAdvice;
import understorey.exposure.Settings;
import understorey.kit.CoverChoice;
import understorey.kit.LensFit;
import understorey.kit.Verdict;
import understorey.packing.Packing;
import understorey.plan.Filter;
import understorey.plan.Support;

/** With what an expert takes a picture, and at which settings. All of it is common practice, no source. */
class KitDecisionsTest {

    private static final String HOURS = visit("08:00", "12:00");
    private static final String OVERCAST = "sky: overcast\n";
    private static final String HEAD = "shots: [{name: Head, subject: ramsons, role: closing}]\n";
    private static final String CARPET = "shots: [{name: Carpet, subject: ramsons, role: opening}]\n";

    @TempDir
    private Path folder;

    private Brief withFullBag(String... more) throws IOException {
        return planned(folder, WOOD, FULL_BAG, HOURS, String.join("", more));
    }

    private static String wind(String wind, String gust) {
        return forecast(6, 13, "temperature: 10 °C, wind: " + wind + ", gust: " + gust + ", cloud: 8, rain: 0 mm");
    }

    private static LensFit fit(Brief brief, String shot) {
        return brief.shot(shot).fit().best();
    }

    private static String lens(Brief brief, String shot) {
        return fit(brief, shot).camera().lens().name();
    }

    private static double cover(Brief brief, String shot) {
        return brief.shot(shot).cover().choices().stream().filter(CoverChoice::planned).findFirst().orElseThrow().typical().cover();
    }

    private static List<String> carried(Brief brief) {
        return brief.packing().take().stream().map(Packing.Item::name).toList();
    }

    private static List<Filter.Kind> filters(LensFit fit) {
        return fit.filters().stream().map(Filter::kind).toList();
    }

    @Nested
    class WithWhat {

        @Test
        void takesTheCarpetAtANormalFocalLength() throws IOException {
            Brief brief = withFullBag(OVERCAST, CARPET);
            double equivalentMm = fit(brief, "Carpet").equivalentMm();
            assertTrue(equivalentMm >= 40 && equivalentMm <= 55, equivalentMm + " mm");
            assertEquals("Short zoom", lens(brief, "Carpet"));
            assertEquals(Verdict.FITS, brief.shot("Carpet").verdict());
        }

        /** A long lens from farther back lets the flowers close up. */
        @Test
        void takesADenseCarpetWithTheLongZoomFromFartherBack() throws IOException {
            Brief brief = withFullBag(OVERCAST, """
                    shots:
                      - {name: Carpet, subject: ramsons, role: opening}
                      - {name: Dense, subject: ramsons, role: approach, viewpoint: standing, focal_equivalent: 200 mm}
                    """);
            assertEquals("Long zoom", lens(brief, "Dense"));
            assertEquals(200, fit(brief, "Dense").equivalentMm(), 2);
            assertTrue(fit(brief, "Dense").focusM() > 2 * fit(brief, "Carpet").focusM(),
                    fit(brief, "Dense").focusM() + " m, " + fit(brief, "Carpet").focusM() + " m");
            assertTrue(cover(brief, "Dense") > cover(brief, "Carpet"));
        }

        /** The near flower looks large, and the wood behind it small. */
        @Test
        void goesWideForALowWayIn() throws IOException {
            Brief brief = withFullBag(OVERCAST, "shots: [{name: Low, subject: ramsons, role: approach, viewpoint: ground}]\n");
            assertEquals("Wide prime", lens(brief, "Low"));
            assertTrue(fit(brief, "Low").equivalentMm() <= 28, fit(brief, "Low").equivalentMm() + " mm");
            assertTrue(fit(brief, "Low").heightM() < 0.35, fit(brief, "Low").heightM() + " m");
        }

        /** The short zoom focuses near enough for a crop, and the macro lens is 600 g more. */
        @Test
        void carriesTheMacroLensForOneHeadAlthoughItIsHeavier() throws IOException {
            Brief brief = withFullBag(OVERCAST, """
                    shots:
                      - {name: Carpet, subject: ramsons, role: opening}
                      - {name: Head, subject: ramsons, role: closing}
                    """);
            assertEquals("Close-up prime", lens(brief, "Head"));
            assertEquals(Verdict.FITS, fit(brief, "Head").verdict());
            assertTrue(carried(brief).containsAll(List.of("Short zoom", "Close-up prime")), carried(brief).toString());
        }

        @Test
        void leavesAtHomeWhatNoPictureAsksFor() throws IOException {
            List<String> home = withFullBag(OVERCAST, CARPET).packing().leave().stream().map(Packing.Item::name).toList();
            assertTrue(home.containsAll(List.of("Long zoom", "Wide prime", "Close-up prime", "Polariser")), home.toString());
        }

        @Test
        void keepsTheLensThatTheAuthorNamesAndJudgesIt() throws IOException {
            Brief brief = withFullBag(OVERCAST, HEAD.replace("closing", "closing, lens: Short zoom"));
            assertEquals("Short zoom", lens(brief, "Head"));
            FitAdvice.BetterCamera better = Samples.the(FitAdvice.BetterCamera.class, fit(brief, "Head").reasons());
            assertEquals("Main body, Close-up prime", better.better());
        }

        @Test
        void putsOnThePolariserThatIsAsked() throws IOException {
            Brief brief = withFullBag(OVERCAST, CARPET.replace("opening", "opening, polariser: yes"));
            assertEquals(List.of(Filter.Kind.POLARISER), filters(fit(brief, "Carpet")));
            assertEquals(1.5, fit(brief, "Carpet").lossStops());
            assertTrue(carried(brief).contains("Polariser"), carried(brief).toString());
        }

        @Test
        void packsTheRingThatThePolariserNeedsOnASmallerThread() throws IOException {
            Brief brief = withFullBag(OVERCAST, HEAD.replace("closing", "closing, polariser: yes"));
            assertEquals(List.of(Filter.Kind.STEP_UP_RING, Filter.Kind.POLARISER), filters(fit(brief, "Head")));
            assertTrue(carried(brief).containsAll(List.of("Ring 62 to 72", "Polariser")), carried(brief).toString());
        }

        @Test
        void takesTripodAndReleaseForTheCarpet() throws IOException {
            Brief brief = withFullBag(OVERCAST, CARPET);
            assertEquals(Support.Kind.TRIPOD, fit(brief, "Carpet").support().kind());
            assertTrue(fit(brief, "Carpet").released());
            assertTrue(carried(brief).containsAll(List.of("Legs", "Remote release")), carried(brief).toString());
        }

        /** At 20 mm the flowers thin out. */
        @Test
        void callsTheCarpetACompromiseWithAWideLensAlone() throws IOException {
            String wide = FULL_BAG.replaceAll(" {4}- \\{name: (Short|Long|Close).*\n", "");
            Brief brief = planned(folder, WOOD, wide, HOURS, OVERCAST, CARPET);
            assertEquals(Verdict.COMPROMISE, brief.shot("Carpet").verdict());
            assertTrue(has(FitAdvice.ProposedWider.class, fit(brief, "Carpet").reasons()), fit(brief, "Carpet").reasons().toString());
        }
    }

    @Nested
    class AtWhichSettings {

        @ParameterizedTest
        @ValueSource(ints = {1, 2, 3, 5, 8})
        void givesAHeadlineThatHoldsInTheWindOrSaysThatNoneDoes(int wind) throws IOException {
            TimedShot head = withFullBag(wind(wind + " m/s", 2 * wind + " m/s"), HEAD).shot("Head");
            assertTrue(head.settings().motionStops() == 0 || head.verdict() != Verdict.FITS, head.settings().toString());
        }

        @Test
        void stopsOneHeadInAWindOf3MetresPerSecond() throws IOException {
            TimedShot head = withFullBag(wind("3 m/s", "6 m/s"), HEAD).shot("Head");
            assertEquals(Verdict.FITS, head.verdict(), head.settings().toString());
            assertTrue(head.settings().shutterS() <= 1 / 100.0, head.settings().toString());
        }

        @Test
        void assumesABreezeWhereNoneIsForecast() throws IOException {
            String pinned = HEAD.replace("closing", "closing, start: \"09:00\"");
            Brief brief = withFullBag(pinned);
            assertEquals(2, Samples.the(TripAdvice.WindAssumed.class, brief.findings()).wind());
            TimedShot head = brief.shot("Head");
            assertTrue(head.settings().shutterS() <= 1 / 30.0 || head.verdict() != Verdict.FITS, head.settings().toString());
            Settings still = withFullBag(wind("0 m/s", "0 m/s").replace("cloud: 8", "cloud: 6"), pinned).shot("Head").settings();
            assertTrue(head.settings().shutterS() < still.shutterS(), head.settings() + " " + still);
        }

        @Test
        void takesNoCloseUpInAGaleAndSaysWhatHelps() throws IOException {
            TimedShot head = withFullBag(wind("13 m/s", "20 m/s"), HEAD).shot("Head");
            assertNotEquals(Verdict.FITS, head.verdict());
            assertTrue(has(HelpAdvice.HelpShelter.class, head.helps()), head.helps().toString());
        }

        @ParameterizedTest
        @ValueSource(strings = {"full", "phone"})
        void neverTiltsSteeplyByDefault(String bag) throws IOException {
            Brief brief = planned(folder, WOOD, bag.equals("full") ? FULL_BAG : PHONE, HOURS, OVERCAST, """
                    shots:
                      - {name: A, subject: ramsons, role: opening}
                      - {name: B, subject: bluebell, role: approach}
                      - {name: C, subject: ramsons, role: approach, viewpoint: ground}
                      - {name: D, subject: wood-anemone, role: detail}
                      - {name: E, subject: wood-anemone, role: closing}
                    """);
            for (TimedShot shot : brief.timed()) {
                assertTrue(Math.abs(shot.fit().best().tiltDeg()) <= 45, shot.intent().shot().name() + " " + shot.fit().best().tiltDeg());
            }
        }

        @ParameterizedTest
        @CsvSource({"20° down,20", "10° up,-10", "8,8"})
        void tiltsAsTheAuthorSays(String written, double degrees) throws IOException {
            Brief brief = withFullBag(OVERCAST, CARPET.replace("opening", "opening, tilt: " + written));
            assertEquals(degrees, fit(brief, "Carpet").tiltDeg());
        }

        @Test
        void keepsIsoAtMost400ForACarpetInStillAirByDay() throws IOException {
            Settings settings = withFullBag(wind("0.5 m/s", "1 m/s"), CARPET).shot("Carpet").settings();
            assertTrue(settings.iso() <= 400, settings.toString());
        }

        /** A meter makes leaves mid-grey, and white petals in the sun clip. */
        @Test
        void exposesWhitePetalsForLessThanTheirLeavesAsk() throws IOException {
            Settings white = withFullBag("sky: clear\n", HEAD).shot("Head").settings();
            assertTrue(Samples.the(ToneAdvice.PetalsClip.class, white.reasons()).less() > 0);
            Settings blue = withFullBag("sky: clear\n", HEAD.replace("ramsons", "bluebell")).shot("Head").settings();
            assertFalse(has(ToneAdvice.PetalsClip.class, blue.reasons()), blue.reasons().toString());
        }

        @Test
        void keepsTheShutterSpeedThatTheAuthorSetsAndJudgesIt() throws IOException {
            TimedShot head = withFullBag(wind("3 m/s", "6 m/s"), HEAD.replace("closing", "closing, shutter: 1 s")).shot("Head");
            assertEquals(1, head.settings().shutterS());
            assertTrue(has(SetAdvice.BlurAsSet.class, head.settings().reasons()), head.settings().reasons().toString());
        }

        @Test
        void keepsTheApertureThatTheAuthorSets() throws IOException {
            Settings settings = withFullBag(OVERCAST, HEAD.replace("closing", "closing, aperture: f/4")).shot("Head").settings();
            assertEquals(4, settings.fNumber());
        }

        @Test
        void takesAShorterTimeInMoreWind() throws IOException {
            double still = withFullBag(wind("0.5 m/s", "1 m/s"), HEAD).shot("Head").settings().shutterS();
            double breeze = withFullBag(wind("3 m/s", "6 m/s"), HEAD).shot("Head").settings().shutterS();
            assertTrue(breeze < still, breeze + " s, " + still + " s");
        }
    }
}
