package understorey.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import understorey.Samples;
import understorey.advice.Advice;
import understorey.advice.CautionAdvice;
import understorey.advice.FitAdvice;
import understorey.advice.PhoneAdvice;
import understorey.advice.ShutterAdvice;
import understorey.advice.SpoilerAdvice;
import understorey.kit.LensFit;
import understorey.kit.Verdict;
import understorey.season.FloweringWindow;

/**
 * What an expert decides on small trips: whether to go at all, and what a phone alone can do. Common practice, no source,
 * unless a test names one. When, with what, at which settings and in which light are in the tests beside this one.
 */
class DecisionsTest {

    private static final String HOURS = visit("09:00", "12:00");
    private static final String HEAD = "shots: [{name: Head, subject: ramsons, role: closing}]\n";

    @TempDir
    private Path folder;

    private static String on(String date) {
        return WOOD.replace("2027-05-08", date);
    }

    private static String rain(String amount) {
        return forecast(9, 12, "temperature: 10 °C, wind: 1 m/s, gust: 2 m/s, cloud: 8, rain: " + amount);
    }

    @Nested
    class WhetherAtAll {

        @Test
        void namesFlowersThatAreHardlyThereFirst() throws IOException {
            List<Advice> spoilers = planned(folder, on("2027-03-25"), FULL_BAG, HOURS, "sky: overcast\n", HEAD).spoilers();
            SpoilerAdvice.FlowersUnlikely first = (SpoilerAdvice.FlowersUnlikely) spoilers.get(0);
            assertTrue(first.chance() <= 0.05, first.toString());
        }

        @Test
        void alwaysNamesWhatCouldSpoilTheDay() throws IOException {
            for (String sky : List.of("", "sky: clear\n", "sky: overcast\n", rain("0 mm"))) {
                List<Advice> spoilers = planned(folder, WOOD, FULL_BAG, HOURS, sky, HEAD).spoilers();
                assertTrue(!spoilers.isEmpty() && spoilers.size() <= 3, sky + spoilers);
            }
        }

        /** Diaries of southern England and Ireland have it at its best from the middle of June, as the catalogue quotes. */
        @Test
        void expectsAnEnglishFoxgloveInJune() throws IOException {
            String foxglove = HEAD.replace("ramsons", "foxglove");
            FloweringWindow window = planned(folder, on("2027-06-18"), FULL_BAG, HOURS, foxglove).season().windows().get(0);
            MonthDay peak = MonthDay.from(window.peak().day());
            assertTrue(peak.isAfter(MonthDay.of(6, 5)) && peak.isBefore(MonthDay.of(7, 1)), peak.toString());
            assertEquals(FloweringWindow.Method.CATALOGUE, window.method());
            assertTrue(window.chanceOn(LocalDate.of(2027, 6, 18)) > 10 * window.chanceOn(LocalDate.of(2027, 4, 20)));
            Brief april = planned(folder, on("2027-04-20"), FULL_BAG, HOURS, foxglove);
            assertTrue(has(SpoilerAdvice.FlowersUnlikely.class, april.spoilers()), april.spoilers().toString());
        }

        @Test
        void quotesTheLawOfTheCountryOnly() throws IOException {
            CautionAdvice.PlantLaw british = Samples.the(CautionAdvice.PlantLaw.class, planned(folder, WOOD, FULL_BAG, HOURS, HEAD).cautions());
            assertTrue(british.source().startsWith("Wildlife and Countryside Act 1981"), british.toString());
            String danish = WOOD.replace("country: GB", "country: DK").replace("52.337", "55.874").replace("-3.548", "9.862")
                    .replace("Europe/London", "Europe/Copenhagen");
            List<Advice> cautions = planned(folder, danish, FULL_BAG, HOURS, HEAD).cautions();
            assertFalse(has(CautionAdvice.PlantLaw.class, cautions), cautions.toString());
            assertTrue(has(CautionAdvice.PlantLawUnknown.class, cautions), cautions.toString());
        }

        @Test
        void takesARainCoverWhereRainIsForecast() throws IOException {
            assertTrue(has(CautionAdvice.RainCover.class, planned(folder, WOOD, FULL_BAG, HOURS, rain("1.5 mm"), HEAD).cautions()));
            assertFalse(has(CautionAdvice.RainCover.class, planned(folder, WOOD, FULL_BAG, HOURS, rain("0 mm"), HEAD).cautions()));
        }

        @Test
        void namesTheWindThatBlursTheCloseUp() throws IOException {
            String windy = rain("0 mm").replace("wind: 1 m/s, gust: 2 m/s", "wind: 9 m/s, gust: 13 m/s");
            List<Advice> spoilers = planned(folder, WOOD, FULL_BAG, HOURS, windy, HEAD).spoilers();
            assertTrue(has(SpoilerAdvice.WindBlurs.class, spoilers), spoilers.toString());
        }

        /** A forecast of gusts is off by a metre a second or more, and twigs and branches can break from 14 m/s. */
        @Test
        void putsFallingBranchesFirstInStrongGusts() throws IOException {
            String strong = rain("3 mm").replace("wind: 1 m/s, gust: 2 m/s", "wind: 7 m/s, gust: 13 m/s");
            SpoilerAdvice.BranchesMayFall first = (SpoilerAdvice.BranchesMayFall) planned(folder, WOOD, FULL_BAG,
                    HOURS, strong, HEAD).spoilers().get(0);
            assertEquals(13, first.gust(), 1e-9);
            List<Advice> open = planned(folder, WOOD.replaceAll("canopy: .*", "canopy: none"), FULL_BAG, HOURS, strong, HEAD).spoilers();
            assertFalse(has(SpoilerAdvice.BranchesMayFall.class, open), open.toString());
        }

        @Test
        void warnsOfFallingBranchesInAGale() throws IOException {
            String gale = rain("0 mm").replace("wind: 1 m/s, gust: 2 m/s", "wind: 12 m/s, gust: 21 m/s");
            Brief brief = planned(folder, WOOD, FULL_BAG, HOURS, gale, HEAD);
            assertTrue(brief.cautions().get(0) instanceof CautionAdvice.GustsTooStrong, brief.cautions().toString());
            assertEquals(brief.cautions().get(0), brief.spoilers().get(0));
        }
    }

    @Nested
    class OnlyAPhone {

        private Brief withPhone(String hours, String... more) throws IOException {
            return planned(folder, WOOD, PHONE, hours, String.join("", more));
        }

        private LensFit fit(Brief brief, String shot) {
            return brief.shot(shot).fit().best();
        }

        @Test
        void takesTheCarpetWithTheMainCamera() throws IOException {
            Brief brief = withPhone(HOURS, "sky: overcast\nshots: [{name: Carpet, subject: ramsons, role: opening}]\n");
            assertEquals("main", fit(brief, "Carpet").camera().lens().name());
            assertNotEquals(Verdict.CANNOT, brief.shot("Carpet").verdict());
        }

        /** The main camera sees wider than a carpet asks for, and its flowers thin out. */
        @Test
        void callsThatCarpetACompromise() throws IOException {
            Brief brief = withPhone(HOURS, "sky: overcast\nshots: [{name: Carpet, subject: ramsons, role: opening}]\n");
            assertEquals(Verdict.COMPROMISE, brief.shot("Carpet").verdict());
            assertTrue(fit(brief, "Carpet").objection() instanceof FitAdvice.ProposedWider, fit(brief, "Carpet").reasons().toString());
        }

        @Test
        void cropsTheMainCameraForOneHead() throws IOException {
            Brief brief = withPhone(HOURS, "sky: overcast\n", HEAD);
            assertEquals("main", fit(brief, "Head").camera().lens().name());
            assertEquals(Verdict.COMPROMISE, brief.shot("Head").verdict());
            assertTrue(has(FitAdvice.MagnificationShort.class, fit(brief, "Head").reasons()), fit(brief, "Head").reasons().toString());
        }

        /** A hand does not hold a second and a half. */
        @Test
        void takesNoPictureInDeepShadeBeforeSunrise() throws IOException {
            Brief brief = withPhone(visit("04:30", "05:20"), "sky: overcast\nshots: [{name: Carpet, subject: ramsons, role: opening}]\n");
            assertNotEquals(Verdict.FITS, brief.shot("Carpet").verdict(), brief.shot("Carpet").settings().toString());
        }

        @Test
        void locksFocusAndExposureAndAdvisesNeitherRawNorARelease() throws IOException {
            Brief brief = withPhone(HOURS, "sky: overcast\n", HEAD);
            List<Advice> reasons = brief.shot("Head").settings().reasons();
            assertTrue(has(PhoneAdvice.PhoneLock.class, reasons) && has(PhoneAdvice.PhoneBurst.class, reasons), reasons.toString());
            assertFalse(has(ShutterAdvice.LetGoByRemote.class, reasons), reasons.toString());
            assertNull(brief.packing().cardGb());
            assertEquals(List.of(0), brief.shot("Head").settings().bracketStops());
        }

        @Test
        void goesLowAndWideWithTheWideCameraWhereThatIsAsked() throws IOException {
            Brief brief = withPhone(HOURS, """
                    sky: overcast
                    shots:
                      - {name: Low, subject: ramsons, role: approach, viewpoint: ground}
                      - {name: Wide, subject: ramsons, role: approach, viewpoint: ground, focal_equivalent: 14 mm}
                    """);
            assertEquals("wide", fit(brief, "Wide").camera().lens().name());
            assertTrue(fit(brief, "Low").equivalentMm() <= 28, fit(brief, "Low").equivalentMm() + " mm");
        }

        @Test
        void bracesThePhoneOnABagNearTheGround() throws IOException {
            Brief brief = withPhone(HOURS, "sky: overcast\nshots: [{name: Low, subject: ramsons, role: approach, viewpoint: ground}]\n");
            assertTrue(has(PhoneAdvice.PhoneBracedLow.class, brief.shot("Low").settings().reasons()));
        }
    }
}
