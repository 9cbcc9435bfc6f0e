package understorey.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.brief.SmallTrip.FULL_BAG;
import static understorey.brief.SmallTrip.PHONE;
import static understorey.brief.SmallTrip.WOOD;
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
import understorey.advice.Advice;
import understorey.advice.ComposeAdvice;
import understorey.kit.LensFit;
import understorey.kit.Verdict;
import understorey.packing.Packing;
import understorey.plan.Sharp;
import understorey.plan.Viewpoint;

/** Where an expert puts the camera, and where it points. All of it is common practice, no source. */
class FramingDecisionsTest {

    private static final String HOURS = visit("08:00", "12:00");
    private static final String OVERCAST = "sky: overcast\n";

    private static final String LONG_BAG = FULL_BAG.replace("Long zoom, mount: A, focal: 70-200", "Long zoom, mount: A, focal: 70-300");

    @TempDir
    private Path folder;

    private Brief brief(String bag, String shot) throws IOException {
        return planned(folder, WOOD, bag, HOURS, OVERCAST, "shots: [{name: It, subject: bluebell, " + shot + "}]\n");
    }

    private TimedShot shot(String bag, String shot) throws IOException {
        return brief(bag, shot).shot("It");
    }

    private static double headsM(TimedShot shot) {
        return shot.intent().shot().subject().heightM();
    }

    @Nested
    class FromAbove {

        /** The flowers are right under the lens, however wide the frame is. */
        @ParameterizedTest
        @ValueSource(ints = {50, 60, 75, 89, 90})
        void framesFromWhereTheCameraIsAboveTheFlowers(int deg) throws IOException {
            TimedShot shot = shot(FULL_BAG, "role: detail, viewpoint: 1.5 m, frame: {width: 1.2 m}, tilt: " + deg);
            LensFit fit = shot.fit().best();
            assertEquals((1.5 - headsM(shot)) / Math.sin(Math.toRadians(deg)), fit.distanceM(), 0.01);
            assertEquals(1.2, fit.frameWidthM(), 0.03);
            assertEquals(Verdict.FITS, shot.verdict());
        }

        @Test
        void keepsItsFocalLengthSharpFromTheHeadsToTheGround() throws IOException {
            TimedShot shot = shot(FULL_BAG, "role: detail, viewpoint: standing, focal_equivalent: 28 mm, tilt: 90");
            assertEquals(28, shot.fit().best().equivalentMm(), 0.5);
            assertTrue(shot.settings().sharpFromM() <= 1.5 - headsM(shot), shot.settings().toString());
            assertTrue(shot.settings().sharpToM() >= 1.5 && shot.settings().sharpToM() < 4, shot.settings().toString());
            assertTrue(shot.settings().fNumber() <= 8, shot.settings().toString());
        }

        @Test
        void bendsDownToOneHead() throws IOException {
            TimedShot shot = shot(FULL_BAG, "role: closing, tilt: 90");
            LensFit fit = shot.fit().best();
            assertEquals("Close-up prime", fit.camera().lens().name());
            assertEquals(headsM(shot) + fit.distanceM(), fit.heightM(), 0.01);
        }

        @ParameterizedTest
        @ValueSource(strings = {"role: detail, frame: {width: 1.2 m}", "role: opening", "role: detail, focal_equivalent: 28 mm"})
        void speaksOfNeitherForegroundNorTrunks(String picture) throws IOException {
            Brief brief = brief(FULL_BAG, "viewpoint: standing, tilt: 90, " + picture);
            List<Advice> advice = brief.composition(brief.shot("It"));
            assertEquals(List.of(new ComposeAdvice.KeepFeetOut()), advice);
            assertNull(brief.shot("It").settings().background());
        }
    }

    @Nested
    class OnePlant {

        private static final String STEM = """
                shots:
                  - {name: Carpet, subject: bluebell, role: opening}
                  - {name: Stem, subject: bluebell, role: detail, viewpoint: ground, frame: {height: 50 cm}, orientation: portrait}
                """;

        private Brief stem(String bag) throws IOException {
            return planned(folder, WOOD, bag, HOURS, OVERCAST, STEM);
        }

        private static List<String> carried(Brief brief) {
            return brief.packing().take().stream().map(Packing.Item::name).toList();
        }

        /** What is behind the stem blurs with the focal length, and 600 g are no reason to see it. */
        @Test
        void carriesALongerLensThanTheCarpetNeeds() throws IOException {
            Brief brief = stem(FULL_BAG);
            assertTrue(brief.shot("Stem").fit().best().equivalentMm() >= 90, brief.shot("Stem").fit().best().camera().name());
            assertTrue(carried(brief).containsAll(List.of("Short zoom", "Close-up prime")), carried(brief).toString());
        }

        @Test
        void zoomsInOnAPlantThatIsToStandOut() throws IOException {
            Brief brief = stem(FULL_BAG.replaceAll(" {4}- \\{name: Close.*\n", ""));
            LensFit fit = brief.shot("Stem").fit().best();
            assertEquals("Long zoom", fit.camera().lens().name());
            assertTrue(fit.equivalentMm() >= 100 && fit.equivalentMm() <= 200, fit.equivalentMm() + " mm");
        }

        @Test
        void takesAPlantWithTheOnlyZoomThereIs() throws IOException {
            Brief brief = stem(FULL_BAG.replaceAll(" {4}- \\{name: (Close|Long|Wide).*\n", ""));
            assertEquals(70, brief.shot("Stem").fit().best().equivalentMm(), 0.5);
            assertEquals(Verdict.FITS, brief.shot("Stem").verdict());
        }
    }

    @Nested
    class FromTheGround {

        /** Of the tangent of half the angle of view: 1 on the top edge. */
        private double headRow(LensFit fit) {
            double nearM = ((Sharp.Range) fit.intent().sharp()).nearM();
            double upDeg = Math.toDegrees(Math.atan((fit.intent().shot().subject().heightM() - fit.heightM()) / nearM));
            return Math.tan(Math.toRadians(upDeg + fit.tiltDeg())) / Math.tan(Math.toRadians(fit.view().verticalDeg() / 2));
        }

        /** A camera lower than the flowers looks up to them. */
        @ParameterizedTest
        @CsvSource({"ramsons, landscape", "bluebell, landscape", "bluebell, portrait", "wood-anemone, portrait"})
        void keepsTheNearestSharpHeadInTheFrame(String subject, String orientation) throws IOException {
            for (String bag : List.of(FULL_BAG, PHONE)) {
                Brief brief = planned(folder, WOOD, bag, HOURS, OVERCAST, "shots: [{name: It, subject: " + subject
                        + ", role: approach, viewpoint: ground, orientation: " + orientation + "}]\n");
                LensFit fit = brief.shot("It").fit().best();
                assertTrue(headRow(fit) <= 0.8 + 1e-9, headRow(fit) + " at " + fit.tiltDeg() + "° down");
                assertTrue(fit.tiltDeg() >= -12, fit.tiltDeg() + "° down");
            }
        }

        /** A flower of a metre does not fit; the ground it grows on still does. */
        @Test
        void keepsTheGroundUnderFlowersTooTallForTheFrame() throws IOException {
            Brief brief = planned(folder, WOOD, FULL_BAG, HOURS, OVERCAST,
                    "shots: [{name: It, subject: foxglove, role: approach, viewpoint: ground}]\n");
            LensFit fit = brief.shot("It").fit().best();
            assertTrue(fit.tiltDeg() < 0 && fit.tiltDeg() >= -12, fit.tiltDeg() + "° down");
            assertTrue(fit.ground(0).showsGround(15));
        }
    }

    /** From 135 mm on a proposed depth is one that f/11 holds; what lies before and behind it blurs. */
    @ParameterizedTest
    @ValueSource(ints = {135, 200, 240, 300})
    void asksALongLensForNoMoreDepthThanF11Gives(int focal) throws IOException {
        for (String role : List.of("opening", "approach", "extra")) {
            TimedShot shot = shot(LONG_BAG, "role: " + role + ", viewpoint: standing, focal_equivalent: " + focal + " mm");
            assertTrue(shot.fit().best().fNumberNeeded() <= 11.3, shot.fit().best().fNumberNeeded() + " for " + shot.fit().best().intent().sharp());
            assertEquals(Verdict.FITS, shot.verdict());
        }
    }

    @Nested
    class WithAPhone {

        private static final String LITTLE_LEGS = """
                gear:
                  gear: Phone and small tripod
                  bodies:
                    - name: Phone
                      pixels: 12 Mpx
                      base_iso: 50
                      top_iso: 800
                      stabilised: 2 stops
                      fixed_lenses:
                        - {name: main, sensor: {width: 9.8 mm, height: 7.3 mm}, focal: 6.9 mm, aperture: f/1.8, closest: 0.12 m}
                        - {name: wide, sensor: {width: 6.4 mm, height: 4.8 mm}, focal: 2.2 mm, aperture: f/2.2, closest: 0.03 m}
                  supports:
                    - {name: Little legs, kind: tripod, lowest: 12 cm, highest: 30 cm, carries: 1 kg, weight: 200 g}
                """;

        /** A low camera is for the one flower in front of it. */
        @ParameterizedTest
        @ValueSource(strings = {"extra", "approach", "opening"})
        void putsANearFlowerBeforeALowCamera(String role) throws IOException {
            TimedShot low = shot(LITTLE_LEGS, "viewpoint: ground, role: " + role);
            LensFit fit = low.fit().best();
            assertEquals(Verdict.FITS, low.verdict(), fit.reasons().toString());
            assertTrue(fit.focusM() <= 1, fit.focusM() + " m");
            assertTrue(low.settings().sharpFromM() <= 0.8, low.settings().sharpFromM() + " m");
        }

        /** Two metres of flowers are a scene: from the knees, with its ground; a hand's width is one plant. */
        @Test
        void takesAWideFrameAsAScene() throws IOException {
            LensFit scene = shot(LITTLE_LEGS, "role: detail, frame: {width: 2 m}").fit().best();
            assertEquals(Viewpoint.Stance.KNEELING, scene.intent().viewpoint());
            assertEquals(1, ((Sharp.Depth) scene.intent().sharp()).depthM(), 1e-9);
            LensFit plant = shot(LITTLE_LEGS, "role: detail, frame: {width: 20 cm}").fit().best();
            assertEquals(new Viewpoint.Height(plant.intent().shot().subject().heightM()), plant.intent().viewpoint());
            assertTrue(((Sharp.Depth) plant.intent().sharp()).depthM() < 0.05);
        }

        /** From legs that are 8 cm too low a whole plant is aimed at with a slight tilt; one head from near by would need 45°. */
        @Test
        void usesLegsThatAreALittleTooShortWhereASlightTiltIsEnough() throws IOException {
            LensFit plant = shot(LITTLE_LEGS, "role: detail, frame: {height: 40 cm}").fit().best();
            assertEquals("Little legs", plant.support() == null ? "hands" : plant.support().name());
            assertEquals(0.3, plant.heightM(), 1e-9);
            assertEquals(0, plant.tiltDeg(), 20);
            assertNull(shot(LITTLE_LEGS, "role: closing").fit().best().support());
            LensFit asked = shot(LITTLE_LEGS, "role: closing, viewpoint: 38 cm").fit().best();
            assertEquals(0.38, asked.heightM(), 1e-9);
        }
    }

    /** Trunks stand in such a frame, but it shows no rhythm of them. */
    @Test
    void speaksOfNoTrunksWhereTheFrameEndsOnTheGround() throws IOException {
        for (int deg : List.of(5, 20, 30, 40)) {
            Brief brief = brief(FULL_BAG, "role: opening, tilt: " + deg);
            List<Advice> advice = brief.composition(brief.shot("It"));
            assertEquals(deg < 20, has(ComposeAdvice.TrunksOnly.class, advice) || has(ComposeAdvice.TreesWholeFrom.class, advice), advice.toString());
            assertFalse(has(ComposeAdvice.KeepFeetOut.class, advice), advice.toString());
        }
    }
}
