package understorey.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.MACRO;
import static understorey.Samples.ZOOM;
import static understorey.Samples.fullFrame;
import static understorey.Samples.kinds;
import static understorey.Samples.picture;
import static understorey.Samples.prime;
import static understorey.Samples.the;

import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.advice.FitAdvice;
import understorey.kit.camera.Camera;
import understorey.plan.Frame;
import understorey.plan.Lens;
import understorey.plan.Role;
import understorey.plan.Sensor;

class FramingTest {

    private static Framing framing(Lens lens, Samples.Picture picture) {
        return Framing.of(new Camera(fullFrame(24), lens, Sensor.FULL_FRAME, null), picture.intent());
    }

    /** Thin lens: 36 mm of sensor on 3 m from 5 m off takes f = s·m / (1 + m), m = 0.012. */
    @Test
    void findsTheFocalLengthForAFrameAtADistance() {
        Framing framing = framing(ZOOM, picture("a").framed(new Frame(3.0, null, null, 5.0)));
        assertEquals(5000 * 0.012 / 1.012, framing.reach().focalMm(), 1e-9);
        assertEquals(0.012, framing.magnification(), 1e-12);
        assertEquals(Verdict.FITS, framing.verdict());
    }

    /** A zoom that shrinks while it focuses close is set longer than the thin lens, until the frame is as asked. */
    @Test
    void setsABreathingZoomToTheFrameAsked() {
        Lens tele = new Lens("Tele", "A", null, 100, 400, 5, 6, 32.0, 0.98, 0.31, 77.0, 0, 1400.0, 0.4);
        Framing framing = framing(tele, picture("a").framed(new Frame(null, 0.4, null, 1.6)).upright());
        assertEquals(36 / 400.0, framing.magnification(), 1e-4);
        assertTrue(framing.reach().focalMm() > 1600 * 0.09 / 1.09, "longer than a thin lens");
        assertEquals(Verdict.FITS, framing.verdict());
        assertTrue(kinds(framing.reasons()).contains(FitAdvice.FocalReached.class));
    }

    /** No nearer than the lens focuses: a crop helps, another focal length or another spot does not. */
    @Test
    void cropsWhatLiesNearerThanTheLensFocuses() {
        Framing framing = framing(prime(200), picture("a").framed(new Frame(0.06, null, null, 0.02)));
        assertEquals(Verdict.CANNOT, framing.verdict());
        assertTrue(kinds(framing.reasons()).containsAll(List.of(FitAdvice.TooNear.class, FitAdvice.MagnificationShort.class)));
        assertEquals(0.06, 0.036 / framing.cropTimes() / framing.magnification(), 1e-9);
    }

    /** From 47 mm on, half the 100 mm proposed and a tenth: common practice, no source. */
    @Test
    void holdsAWideLensAgainstAPlantThatIsToStandOut() {
        Samples.Picture plant = picture("a").role(Role.DETAIL).wide(0.75);
        assertEquals(Verdict.COMPROMISE, framing(prime(35), plant).verdict());
        assertTrue(kinds(framing(prime(35), plant).reasons()).contains(FitAdvice.BackgroundWide.class));
        assertEquals(Verdict.FITS, framing(prime(50), plant).verdict());
        assertEquals(70, framing(ZOOM, plant).reach().focalMm(), 1e-9);
    }

    @Test
    void cropsToExactlyTheFrameAskedFromItsDistance() {
        Framing framing = framing(prime(50), picture("a").framed(new Frame(0.12, null, null, 0.6)));
        assertEquals(0.12, 0.036 / framing.cropTimes() / framing.magnification(), 1e-9);
        assertTrue(kinds(framing.reasons()).contains(FitAdvice.FocalShort.class));
    }

    @Test
    void refusesADistanceInsideTheLens() {
        Framing framing = framing(MACRO, picture("a").framed(new Frame(0.036, null, null, 0.05)));
        assertEquals(Verdict.CANNOT, framing.verdict());
        assertTrue(kinds(framing.reasons()).contains(FitAdvice.TooNear.class));
        assertEquals(0.14, framing.distanceM(), 1e-9);
        assertEquals(1, framing.magnification(), 1e-9);
    }

    @Test
    void measuresWidthAlongTheFramesOwnWidth() {
        assertEquals(0.012, framing(ZOOM, picture("a").wide(3)).magnification(), 1e-12);
        assertEquals(0.008, framing(ZOOM, picture("a").wide(3).upright()).magnification(), 1e-12);
    }

    @Test
    void fillsAShareOfTheHeightWithThePlant() {
        Framing framing = framing(ZOOM, picture("a").framed(new Frame(null, null, 0.5, null)));
        assertEquals(24 / 750.0, framing.magnification(), 1e-12);
    }

    @Test
    void framesAtFiftyMillimetresWhereTheAuthorLeavesTheDistanceOpen() {
        assertEquals(50, framing(ZOOM, picture("a").wide(3)).reach().focalMm(), 1e-12);
        assertEquals(70, framing(ZOOM, picture("a").wide(0.3)).reach().focalMm());
        assertEquals(35, framing(ZOOM, picture("a").wide(3).equivalent(35).deep(0.5)).reach().focalMm(), 1e-12);
    }

    @Test
    void ranksTheLensThatHasTheFocalLengthAskedBeforeOneThatHasNot() {
        Samples.Picture picture = picture("a").wide(3).equivalent(100).deep(0.5);
        ShotFit fit = WholeBag.fit(picture.intent(), Samples.bag(fullFrame(24), prime(50), prime(100)));
        assertEquals(100, fit.best().focalMm());
    }

    @Test
    void warnsOfAFlowerUnderTheFrontOfTheLens() {
        Lens tiny = new Lens("Tiny macro", "A", null, 30, 30, 2.8, 2.8, null, 0.12, 1.0, null, 0, null);
        Framing framing = framing(tiny, picture("a").wide(0.036));
        assertSame(Verdict.FITS, framing.verdict());
        assertTrue(kinds(framing.reasons()).contains(FitAdvice.WorkingDistanceSmall.class));
    }

    /**
     * A carpet looks best at 40 to 55 mm, and 35 mm still serves: common practice, no source. At 24 mm the flowers look
     * sparse, so an expert calls it a compromise.
     */
    @Test
    void usesAWholeLensAtItsNearestWhereTheAuthorGivesNoFocalLength() {
        Framing framing = framing(prime(24), picture("a"));
        assertEquals(1, framing.cropTimes());
        assertEquals(Verdict.COMPROMISE, framing.verdict());
        assertTrue(kinds(framing.reasons()).contains(FitAdvice.ProposedWider.class));
        assertEquals(Verdict.FITS, framing(prime(35), picture("a")).verdict());
        assertEquals(Verdict.FITS, framing(prime(70), picture("a")).verdict());
        assertEquals(Verdict.COMPROMISE, framing(prime(100), picture("a")).verdict());
        assertTrue(framing(prime(35), picture("a")).penalty() < framing.penalty());
    }

    /** What is proposed is common practice, no source; that it is said, and only then, is not. */
    @Test
    void saysWhyItProposesAFocalLengthOrAFrame() {
        assertEquals(List.of(FitAdvice.FocalReached.class, FitAdvice.ProposedFloor.class), kinds(framing(ZOOM, picture("a")).reasons()));
        assertEquals(List.of(FitAdvice.FocalReached.class, FitAdvice.ProposedWayIn.class),
                kinds(framing(ZOOM, picture("a").role(Role.APPROACH)).reasons()));
        assertTrue(kinds(framing(MACRO, picture("a").role(Role.CLOSING)).reasons()).contains(FitAdvice.ProposedHead.class));
        assertTrue(kinds(framing(ZOOM, picture("a").role(Role.DETAIL)).reasons()).contains(FitAdvice.ProposedPlant.class));
        assertEquals(List.of(FitAdvice.FocalReached.class), kinds(framing(ZOOM, picture("a").equivalent(50)).reasons()));
        assertEquals(List.of(FitAdvice.FramedFrom.class), kinds(framing(ZOOM, picture("a").wide(3)).reasons()));
    }

    /** Size in the frame goes with the inverse of the distance, from the thin lens far away. */
    @Test
    void saysHowFarToGoInInsteadOfCropping() {
        Framing framing = framing(prime(50), picture("a").framed(new Frame(1.0, null, null, 4.0)));
        assertEquals(1 / framing.cropTimes(), the(FitAdvice.FocalShort.class, framing.reasons()).share(), 1e-12);
    }
}
