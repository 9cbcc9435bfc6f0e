package understorey.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.brief.SmallTrip.FULL_BAG;
import static understorey.brief.SmallTrip.PHONE;
import static understorey.brief.SmallTrip.WOOD;
import static understorey.brief.SmallTrip.forecast;
import static understorey.brief.SmallTrip.has;
import static understorey.brief.SmallTrip.planned;
import static understorey.brief.SmallTrip.start;
import static understorey.brief.SmallTrip.visit;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import understorey.Samples;
import understorey.advice.Advice;
import understorey.advice.ApertureAdvice;
import understorey.advice.ComposeAdvice;
import understorey.advice.DepthAdvice;
import understorey.advice.HelpAdvice;
import understorey.advice.PhoneAdvice;
import understorey.advice.ShutterAdvice;
import understorey.exposure.Settings;
import understorey.kit.LensFit;
import understorey.kit.Verdict;

/** What an expert decides for one flower head: depth, framing, release, wind. All of it is common practice, no source. */
class CloseUpDecisionsTest {

    private static final String HOURS = visit("08:00", "12:00");
    private static final String HEAD = "shots: [{name: Head, subject: bluebell, role: closing}]\n";
    private static final String LIFE_SIZE = HEAD.replace("closing", "closing, frame: {width: 36 mm}");
    private static final String STILL = wind("0 m/s", "0 m/s");
    private static final String BREEZE = wind("2 m/s", "4 m/s");

    @TempDir
    private Path folder;

    private static String wind(String wind, String gust) {
        return forecast(6, 13, "temperature: 10 °C, wind: " + wind + ", gust: " + gust + ", cloud: 8, rain: 0 mm");
    }

    private TimedShot head(String bag, String... more) throws IOException {
        return planned(folder, WOOD, bag, HOURS, String.join("", more)).shot("Head");
    }

    private static List<Advice> reasons(TimedShot shot) {
        return shot.settings().reasons();
    }

    private static double headShare(TimedShot shot) {
        LensFit fit = shot.fit().best();
        return shot.intent().shot().subject().headWidthMm() / 1000 / Math.min(fit.frameWidthM(), fit.frameHeightM());
    }

    /** Half a millimetre of a bell that is several millimetres deep. */
    @Test
    void callsASliceOfAFlowerACompromise() throws IOException {
        TimedShot slice = head(FULL_BAG, BREEZE, LIFE_SIZE);
        DepthAdvice.FlowerSliced deeper = Samples.the(DepthAdvice.FlowerSliced.class, reasons(slice));
        assertTrue(deeper.held() < deeper.flower() / 8, deeper.toString());
        assertEquals(Verdict.COMPROMISE, slice.verdict());
        HelpAdvice.HelpFrameWider wider = Samples.the(HelpAdvice.HelpFrameWider.class, slice.helps());
        assertTrue(wider.width() > 0.036 && wider.width() < 0.09, wider.toString());
    }

    /** A print of 36 × 24 cm at 300 dots an inch needs 12 Mpx. */
    @Test
    void cropsALittleWithoutCallingItACompromise() throws IOException {
        TimedShot crop = head(FULL_BAG, STILL, HEAD.replace("closing", "closing, frame: {width: 28 mm}"));
        assertEquals(36 / 28.0, crop.fit().best().cropTimes(), 0.01);
        assertEquals(Verdict.FITS, crop.fit().best().verdict());
        assertEquals(List.of(), crop.fit().helps());
        TimedShot most = head(FULL_BAG, STILL, HEAD.replace("closing", "closing, frame: {width: 20 mm}"));
        assertEquals(Verdict.COMPROMISE, most.fit().best().verdict());
    }

    @ParameterizedTest
    @ValueSource(ints = {28, 30, 32, 36, 40, 45, 48, 49})
    void advisesNoFrameThatIsAsWideAsItIs(int widthMm) throws IOException {
        TimedShot head = head(FULL_BAG, BREEZE, HEAD.replace("closing", "closing, frame: {width: " + widthMm + " mm}"));
        for (Advice help : head.helps()) {
            assertTrue(!(help instanceof HelpAdvice.HelpFrameWider wider) || wider.width() > 1.05 * head.fit().best().frameWidthM(), help.toString());
        }
        boolean deeper = has(DepthAdvice.FlowerSliced.class, reasons(head)) || has(DepthAdvice.FlowerDeeper.class, reasons(head));
        assertFalse(deeper && has(ApertureAdvice.ApertureForDepth.class, reasons(head)), reasons(head).toString());
    }

    @Test
    void countsTheFramesThatHoldTheWholeFlowerInStillAir() throws IOException {
        TimedShot head = head(FULL_BAG, STILL, LIFE_SIZE);
        DepthAdvice.FlowerByStack stack = Samples.the(DepthAdvice.FlowerByStack.class, reasons(head));
        assertTrue(stack.frames() >= 5 && stack.frames() <= 40, stack.toString());
        assertEquals(Verdict.FITS, head.verdict());
    }

    /** A stack on legs is how a deep close-up is taken; in a breeze its frames do not line up. */
    @Test
    void takesADepthThatIsAskedWithAStackWhereTheAirIsStill() throws IOException {
        String deep = LIFE_SIZE.replace("{width: 36 mm}", "{width: 36 mm}, sharp: {depth: 8 mm}");
        TimedShot still = head(FULL_BAG, STILL, deep);
        assertTrue(still.settings().stackFrames() > 1, still.settings().toString());
        assertEquals(Verdict.FITS, still.verdict());
        assertEquals(Verdict.COMPROMISE, head(FULL_BAG, BREEZE, deep).verdict());
        assertEquals(Verdict.COMPROMISE, head(FULL_BAG, STILL, deep.replace("closing,", "closing, stack: no,")).verdict());
    }

    /** Nine frames of some seconds in the first light need still air for half a minute; an hour later they need it for a few seconds. */
    @Test
    void takesAStackInTheBrighterLight() throws IOException {
        Brief brief = planned(folder, WOOD, FULL_BAG, visit("05:00", "09:00"), STILL, """
                shots:
                  - {name: Stack, subject: bluebell, role: closing, frame: {width: 36 mm}, sharp: {depth: 8 mm}, light: [soft]}
                  - {name: Carpet, subject: bluebell, role: opening, viewpoint: standing, light: [soft]}
                """);
        assertTrue(start(brief, "Carpet").isBefore(start(brief, "Stack")), brief.order().legs().toString());
        assertTrue(brief.shot("Stack").settings().stackFrames() * brief.shot("Stack").settings().shutterS() < 15,
                brief.shot("Stack").settings().toString());
    }

    @Test
    void advisesNoStackByHand() throws IOException {
        String byHand = FULL_BAG.replaceAll("(?s)  supports:\n.*?\n  filters:", "  filters:");
        TimedShot head = head(byHand, STILL, LIFE_SIZE);
        assertFalse(has(DepthAdvice.FlowerByStack.class, reasons(head)), reasons(head).toString());
        assertEquals(Verdict.COMPROMISE, head.verdict());
    }

    /** The lowest ISO, and no wider than what the depth needs. */
    @ParameterizedTest
    @ValueSource(strings = {"bluebell", "ramsons"})
    void keepsIsoAndApertureInStillAirOnATripod(String subject) throws IOException {
        Settings still = head(FULL_BAG, STILL, HEAD.replace("bluebell", subject)).settings();
        assertEquals(100, still.iso(), still.toString());
        assertTrue(still.fNumber() >= 11 && still.fNumber() <= 16, still.toString());
    }

    @Test
    void takesNoCloseUpOfFlowersThatSwingOutOfFocus() throws IOException {
        TimedShot gale = head(FULL_BAG, wind("13 m/s", "20 m/s"), HEAD);
        assertEquals(Verdict.CANNOT, gale.verdict());
        assertTrue(has(HelpAdvice.HelpShelter.class, gale.helps()), gale.helps().toString());
        assertEquals(Verdict.FITS, head(FULL_BAG, BREEZE, HEAD).verdict());
    }

    @ParameterizedTest
    @ValueSource(strings = {"landscape", "portrait"})
    void leavesAMarginAroundTheHead(String orientation) throws IOException {
        for (String subject : List.of("ramsons", "bluebell", "wood-anemone", "primrose")) {
            String shot = HEAD.replace("bluebell", subject).replace("closing", "closing, orientation: " + orientation);
            double share = headShare(head(FULL_BAG, STILL, shot));
            assertTrue(share >= 0.4 && share <= 0.8, subject + " " + share);
        }
    }

    @Test
    void saysFromWhereAFlowerThatOverfillsTheFrameWouldFit() throws IOException {
        Brief brief = planned(folder, WOOD, FULL_BAG, HOURS, STILL, LIFE_SIZE.replace("bluebell", "wood-anemone"));
        TimedShot tight = brief.shot("Head");
        List<Advice> compose = brief.composition(tight);
        ComposeAdvice.FlowerOverfills overfills = Samples.the(ComposeAdvice.FlowerOverfills.class, compose);
        assertTrue(overfills.share() > 1, overfills.toString());
        assertTrue(overfills.distance() > 1.5 * tight.fit().best().distanceM(), overfills.toString());
    }

    /** A spire of sixteen centimetres does not fit into a frame of ten. */
    @Test
    void measuresOneFlowerOfAHeadThatDoesNotFit() throws IOException {
        Brief brief = planned(folder, WOOD, FULL_BAG, HOURS, STILL, HEAD.replace("bluebell, role: closing", "foxglove, frame: {width: 10 cm}"));
        ComposeAdvice.FlowerFills fills = Samples.the(ComposeAdvice.FlowerFills.class, brief.composition(brief.shot("Head")));
        assertTrue(fills.share() > 0.4 && fills.share() <= 0.8, fills.toString());
    }

    /** Little legs that stand eight centimetres too low would aim a level phone at the stem. */
    @Test
    void aimsAtTheFlowerFromLegsOrHoldsThePhone() throws IOException {
        String legs = "gear:\n  gear: Small\n  bodies:\n    - name: Phone\n      pixels: 12 Mpx\n      base_iso: 50\n      top_iso: 800\n      weight: 190 g\n"
                + "      fixed_lenses:\n        - {name: main, sensor: {width: 9.8 mm, height: 7.3 mm}, focal: 6.9 mm, aperture: f/1.8, closest: 0.12 m}\n"
                + "  supports: [{name: Little legs, kind: tripod, lowest: 8 cm, highest: HIGH, weight: 200 g}]\n";
        LensFit low = head(legs.replace("HIGH", "30 cm"), STILL, HEAD).fit().best();
        assertNull(low.support(), low.toString());
        assertEquals(0.38, low.heightM(), 0.01);
        LensFit near = head(legs.replace("HIGH", "36 cm"), STILL, HEAD).fit().best();
        assertEquals("Little legs", near.support().name());
        double aimedM = near.heightM() - near.distanceM() * Math.sin(Math.toRadians(near.tiltDeg()));
        assertEquals(0.38, aimedM, 0.25 * near.frameHeightM());
        assertTrue(near.tiltDeg() < -2 && near.tiltDeg() >= -20, near.toString());
    }

    private static long releases(TimedShot shot) {
        return reasons(shot).stream().filter(ShutterAdvice.Release.class::isInstance).count();
    }

    @Test
    void firesByOneMethod() throws IOException {
        String noRemote = FULL_BAG.replace("  remote_release: yes\n", "");
        for (String wind : List.of(STILL, BREEZE)) {
            TimedShot remote = head(FULL_BAG, wind, HEAD);
            assertEquals(1, releases(remote), reasons(remote).toString());
            assertTrue(has(ShutterAdvice.LetGoByRemote.class, reasons(remote)), reasons(remote).toString());
            assertEquals(1, releases(head(noRemote, wind, HEAD)));
        }
        assertTrue(has(ShutterAdvice.LetGoByTimer.class, reasons(head(noRemote, STILL, HEAD))));
        assertTrue(has(ShutterAdvice.LetGoByBurst.class, reasons(head(noRemote, BREEZE, HEAD))));
    }

    /** Two seconds later the lull is over. */
    @Test
    void firesAPhoneByBurstInWind() throws IOException {
        List<Advice> breeze = reasons(head(PHONE, BREEZE, HEAD));
        assertTrue(has(PhoneAdvice.PhoneBurst.class, breeze) && !has(PhoneAdvice.PhoneTimer.class, breeze), breeze.toString());
        List<Advice> still = reasons(head(PHONE, STILL, HEAD));
        assertTrue(has(PhoneAdvice.PhoneTimer.class, still) && !has(PhoneAdvice.PhoneBurst.class, still), still.toString());
    }
}
