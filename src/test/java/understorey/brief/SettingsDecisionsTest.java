package understorey.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
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
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import understorey.Samples;
import understorey.advice.Advice;
import understorey.advice.ApertureAdvice;
import understorey.advice.ComposeAdvice;
import understorey.advice.MotionAdvice;
import understorey.advice.PhoneAdvice;
import understorey.advice.SetAdvice;
import understorey.advice.ToneAdvice;
import understorey.advice.WeatherAdvice;
import understorey.exposure.Settings;
import understorey.kit.Verdict;

/** What an expert sets on the camera. All of it is common practice, no source. */
class SettingsDecisionsTest {

    private static final String EDGE = WOOD.replace("country: GB\n", "country: GB\n  edges: [{bearing: ENE, distance: 40 m}]\n");

    @TempDir
    private Path folder;

    @Nested
    class InMist {

        private static final String DAWN = visit("05:00", "08:00");
        private static final String DAMP = forecast(3, 9, "temperature: 3 °C, dew_point: 2 °C, wind: 1 m/s, cloud: 0, rain: 0 mm");
        private static final String MIST = "shots: [{name: Mist, subject: ramsons, role: opening, facing: ENE, light: [mist, backlight]}]\n";

        private TimedShot mist(String weather) throws IOException {
            TimedShot mist = planned(folder, EDGE, FULL_BAG, DAWN, weather, MIST).shot("Mist");
            assertTrue(mist.light().aboveSkyline(), mist.time().toString());
            return mist;
        }

        /** A meter makes mist mid-grey, and it is brighter; nothing in it is so bright that it needs holding. */
        @Test
        void givesMoreThanTheMeterInOneFrame() throws IOException {
            Settings settings = mist(DAMP).settings();
            assertEquals(-2 / 3.0, settings.lessStops(), 1e-9);
            assertEquals(List.of(0), settings.bracketStops());
            assertEquals(2 / 3.0, Samples.the(ToneAdvice.ExposeForMist.class, settings.reasons()).more(), 1e-9);
            assertFalse(has(ToneAdvice.ExposeForFlecks.class, settings.reasons()), settings.reasons().toString());
            double metered = Math.pow(2, -settings.ev100()) * settings.fNumber() * settings.fNumber() * 100 / settings.iso();
            assertEquals(2 / 3.0, Math.log(settings.shutterS() / metered) / Math.log(2), 0.2);
        }

        @Test
        void saysNothingOfAWhiteSkyThatMistVeils() throws IOException {
            Brief brief = planned(folder, EDGE, FULL_BAG, DAWN, DAMP, MIST);
            List<Advice> compose = brief.composition(brief.shot("Mist"));
            assertFalse(has(ComposeAdvice.SkyWhite.class, compose) || has(ComposeAdvice.SkyHeld.class, compose), compose.toString());
        }

        @Test
        void hasTheSettingsAtHandIfTheMistDoesNotCome() throws IOException {
            TimedShot mist = mist(DAMP);
            assertTrue(mist.otherSkies().stream().allMatch(other -> other.settings().lessStops() >= 0), mist.otherSkies().toString());
            assertTrue(mist.otherSkies().stream().anyMatch(other -> other.settings().lessStops() > 0
                    || other.settings().bracketStops().size() > 1), mist.otherSkies().toString());
            assertTrue(has(WeatherAdvice.WithoutMist.class, mist.mist()), mist.mist().toString());
        }

        @Test
        void countsOnNoMistThatIsUnlikely() throws IOException {
            TimedShot mist = mist(DAMP.replace("dew_point: 2 °C", "dew_point: -1 °C"));
            assertTrue(mist.settings().lessStops() >= 0, mist.settings().toString());
        }
    }

    @Nested
    class WhiteBalances {

        private int kelvin(String hours, String light) throws IOException {
            return planned(folder, EDGE.replace("ENE", "WNW"), FULL_BAG, hours, "sky: clear\n",
                    "shots: [{name: Carpet, subject: ramsons, role: opening, facing: WNW, light: [" + light + "]}]\n")
                    .shot("Carpet").whiteBalance().kelvin();
        }

        /** The warm light and the blue hour are what people come for. */
        @Test
        void keepTheColourOfLowSunAndOfTwilight() throws IOException {
            for (int kelvin : List.of(kelvin(visit("20:00", "20:50"), "low-sun"), kelvin(visit("21:05", "21:35"), "twilight"))) {
                assertTrue(kelvin >= 5200 && kelvin <= 5600, kelvin + " K");
            }
        }
    }

    @Nested
    class ShutterSpeeds {

        private static final String CARPET = "shots: [{name: Carpet, subject: ramsons, role: opening}]\n";
        private static final String HEAD = "shots: [{name: Carpet, subject: ramsons, role: closing}]\n";
        private static final String BY_HAND = FULL_BAG.replaceAll("(?s)  supports:\n.*?\n  filters:", "  filters:");

        private Settings in(String bag, String wind, String cloud, String shots) throws IOException {
            return planned(folder, WOOD, bag, visit("09:00", "12:00"), forecast(8, 13, "temperature: 10 °C, wind: " + wind + ", cloud: "
                    + cloud + ", rain: 0 mm"), shots).shot("Carpet").settings();
        }

        /** Gusts follow each other: what freezes the flowers matters more than the far end of a suggested depth. */
        @Test
        void freezeTheCarpetInStrongWindAtAWiderAperture() throws IOException {
            Settings calm = in(FULL_BAG, "0.3 m/s", "8", CARPET);
            Settings windy = in(FULL_BAG, "9 m/s, gust: 15 m/s", "8", CARPET);
            assertTrue(windy.shutterS() <= 1 / 50.0, windy.toString());
            assertTrue(windy.iso() <= 800 && windy.fNumber() < calm.fNumber() && windy.fNumber() >= calm.fNumber() / 2.1, windy.toString());
            assertNull(windy.motionBlur(), windy.toString());
        }

        @Test
        void waitForNoLullInStrongWind() throws IOException {
            for (String shots : List.of(CARPET, HEAD)) {
                assertNull(in(FULL_BAG, "7 m/s, gust: 11 m/s", "8", shots).lull());
            }
        }

        @Test
        void waitForALullWhereItGivesTwoStops() throws IOException {
            Settings head = in(FULL_BAG, "3 m/s, gust: 4 m/s", "8", HEAD);
            assertNotNull(head.lull(), head.toString());
            assertTrue(head.lull().iso() * 4 <= head.iso() || head.lull().fNumber() > 1.4 * head.fNumber(), head.toString());
        }

        /** A slower shutter speed is of no use to hands, and one stop of ISO is not worth the wait. */
        @Test
        void waitForNoLullByHandOrForLess() throws IOException {
            for (int wind = 1; wind < 6; wind++) {
                for (String shots : List.of(CARPET, HEAD)) {
                    assertNull(in(BY_HAND, wind + " m/s", "8", shots).lull());
                    Settings legs = in(FULL_BAG, wind + " m/s", "8", shots);
                    assertTrue(legs.lull() == null || legs.motionStops() > 0 || legs.lull().iso() * 4 <= legs.iso()
                            || legs.lull().fNumber() * legs.lull().fNumber() * legs.iso()
                            >= 3.7 * legs.fNumber() * legs.fNumber() * legs.lull().iso(), legs.toString());
                }
            }
        }
    }

    /** A second in the wind draws the flowers as streaks. */
    @Nested
    class WantedBlur {

        private static final String SWAYING = "shots: [{name: Swaying, subject: ramsons, role: detail, frame: {width: 1 m}, shutter: 1 s}]\n";
        private static final String WIND = forecast(8, 13, "temperature: 10 °C, wind: 6 m/s, gust: 9 m/s, cloud: 8, rain: 0 mm");

        private Settings in(String bag, String shots) throws IOException {
            return planned(folder, WOOD, bag, visit("09:00", "12:00"), WIND, shots).shot("Swaying").settings();
        }

        private String withFilter(int stops) {
            return FULL_BAG.replace("  filters:\n", "  filters:\n    - {name: ND, kind: neutral density, thread: 62 mm, loss: " + stops
                    + " stops, weight: 25 g}\n    - {name: ND 72, kind: neutral density, thread: 72 mm, loss: " + stops + " stops, weight: 25 g}\n");
        }

        @Test
        void isNoFaultOfThePictureAndNeedsNoShelter() throws IOException {
            Settings blurred = in(withFilter(6), SWAYING);
            assertEquals(Verdict.FITS, blurred.verdict(), blurred.toString());
            assertEquals(1, blurred.reasons().stream().filter(SetAdvice.BlurAsSet.class::isInstance).count());
            assertEquals(List.of(), blurred.helps());
            assertEquals("ND", blurred.dimming().get(blurred.dimming().size() - 1).name().substring(0, 2));
        }

        @Test
        void isTakenWithAFilterThatTheBagHas() throws IOException {
            assertNotNull(planned(folder, WOOD, withFilter(6), visit("09:00", "12:00"), WIND, SWAYING).shot("Swaying").time());
        }

        @Test
        void namesTheFilterThatItNeedsWhereTheBagHasNone() throws IOException {
            Settings bright = in(FULL_BAG, SWAYING);
            ApertureAdvice.TooBright needs = Samples.the(ApertureAdvice.TooBright.class, bright.reasons());
            assertTrue(needs.stops() > 1 && needs.stops() < 6, needs.toString());
            assertEquals(Settings.Limit.BRIGHT, bright.limit());
            assertEquals(List.of(), bright.helps());
        }

        @Test
        void takesThePolariserWhereThatIsEnough() throws IOException {
            Settings polarised = in(FULL_BAG, SWAYING.replace("1 s", "1/2 s"));
            assertEquals(Verdict.FITS, polarised.verdict(), polarised.toString());
            assertEquals("Polariser", polarised.dimming().get(polarised.dimming().size() - 1).name());
        }
    }

    @Nested
    class FramesAndReasons {

        private static final String INTO_SUN = "shots: [{name: Shot, subject: ramsons, role: opening, facing: WNW, light: [low-sun, backlight]}]\n";

        private Settings in(String site, String bag, String more) throws IOException {
            return planned(folder, site, bag, more).shot("Shot").settings();
        }

        /** A stem covers the sun's disc, and no frame holds it. */
        @Test
        void bracketFourStopsAtMost() throws IOException {
            String ride = EDGE.replace("ENE", "WNW");
            Settings into = in(ride, FULL_BAG, visit("19:30", "20:40") + "sky: clear\n" + INTO_SUN);
            List<Integer> stops = into.bracketStops();
            assertTrue(stops.size() > 1 && stops.get(stops.size() - 1) - stops.get(0) <= 4, stops.toString());
            String byHand = FULL_BAG.replaceAll("(?s)  supports:\n.*?\n  filters:", "  filters:");
            assertTrue(in(ride, byHand, visit("19:30", "20:40") + "sky: clear\n" + INTO_SUN).bracketStops().size() <= 2);
        }

        /** A tap on a carpet meters its leaves; brightened, every white star clips. */
        @Test
        void brightenNoSmallWhiteFlowersOnAPhone() throws IOException {
            String dull = visit("09:00", "11:00") + "sky: overcast\n";
            List<Advice> carpet = in(WOOD, PHONE, dull + "shots: [{name: Shot, subject: wood-anemone, role: opening}]\n").reasons();
            assertFalse(has(PhoneAdvice.PhoneBrighter.class, carpet), carpet.toString());
            assertTrue(Samples.the(PhoneAdvice.PhoneDarker.class, carpet).stops() <= 1, carpet.toString());
            List<Advice> head = in(WOOD, PHONE, dull + "shots: [{name: Shot, subject: wood-anemone, role: closing}]\n").reasons();
            assertTrue(has(PhoneAdvice.PhoneBrighter.class, head), head.toString());
        }

        /** At 1/250 s it is the light that allows the lowest ISO. */
        @Test
        void nameTheSupportWhereHandsWouldNotDo() throws IOException {
            String shot = "shots: [{name: Shot, subject: fireweed, role: opening}]\n";
            String open = WOOD.replaceAll("canopy: .*", "canopy: none");
            Settings sunny = in(open, FULL_BAG, visit("11:00", "13:00") + "sky: clear\n" + shot.replace("opening", "opening, aperture: f/5.6"));
            assertTrue(has(MotionAdvice.IsoBase.class, sunny.reasons()) && sunny.shutterS() < 1 / 100.0, sunny.toString());
            Settings dusk = in(WOOD, FULL_BAG, visit("06:30", "08:00") + forecast(5, 9, "temperature: 9 °C, wind: 0 m/s, cloud: 8, rain: 0 mm")
                    + shot.replace("fireweed", "ramsons"));
            assertTrue(has(MotionAdvice.IsoBaseSteady.class, dusk.reasons()) && dusk.shutterS() > 1 / 30.0, dusk.toString());
        }

        /** A forecast of 0 m/s is never 0.0 at a flower. */
        @Test
        void neverCountOnStillAir() throws IOException {
            String head = visit("09:00", "11:00") + forecast(8, 12, "temperature: 9 °C, wind: 0 m/s, gust: 0 m/s, cloud: 8, rain: 0 mm")
                    + "shots: [{name: Shot, subject: bluebell, role: closing, frame: {width: 36 mm}}]\n";
            assertTrue(in(WOOD, FULL_BAG, head).swayBlurMm() > 0);
        }
    }
}
