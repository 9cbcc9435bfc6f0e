package understorey.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.MACRO;
import static understorey.Samples.ZOOM;
import static understorey.Samples.bag;
import static understorey.Samples.fullFrame;
import static understorey.Samples.kinds;
import static understorey.Samples.picture;
import static understorey.Samples.prime;
import static understorey.Samples.the;

import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.advice.BagAdvice;
import understorey.advice.FitAdvice;
import understorey.kit.camera.Things;
import understorey.plan.Bag;
import understorey.plan.Viewpoint;

/** The author may decide on body and lens: the plan keeps the decision, and judges it. */
class ChosenCameraTest {

    private static final Bag BAG = bag(fullFrame(24), ZOOM, MACRO, prime(50));

    private static Samples.Picture head() {
        return picture("Head").wide(0.12).deep(0.002).from(Viewpoint.Stance.GROUND);
    }

    private static SmallestBag smallest(Samples.Picture... pictures) {
        return SmallestBag.of(BAG, List.of(), List.of(pictures).stream().map(Samples.Picture::intent).toList());
    }

    @Test
    void keepsTheLensAndSaysWhichWouldServeBetterAndWhy() {
        SmallestBag smallest = smallest(head().with(null, "Short zoom"));
        LensFit best = smallest.fits().get(0).best();
        assertSame(ZOOM, best.camera().lens());
        assertEquals(List.of(ZOOM), smallest.kept().lenses());
        FitAdvice.BetterCamera judgement = assertInstanceOf(FitAdvice.BetterCamera.class, best.reasons().get(0));
        assertEquals("Main body, Close-up prime", judgement.better());
        assertEquals(new FitAdvice.NoMacro(), judgement.because());
        assertTrue(smallest.left().stream().anyMatch(left -> Things.name(left.thing()).equals("Close-up prime")
                && left.why().equals(new BagAdvice.LeftByChoice("Head", "Short zoom"))));
    }

    @Test
    void saysThatNothingDoesBetter() {
        LensFit best = smallest(head().with("Main body", "Close-up prime")).fits().get(0).best();
        assertEquals(new FitAdvice.ChosenCamera(), best.reasons().get(0));
        assertEquals(FitAdvice.FramedFrom.class, kinds(best.reasons()).get(1));
    }

    @Test
    void keepsTheChoiceThoughABetterLensIsCarriedForAnotherPicture() {
        SmallestBag smallest = smallest(head(), head().with(null, "Prime 50.0"));
        assertSame(MACRO, smallest.fits().get(0).best().camera().lens());
        assertEquals("Prime 50.0", smallest.fits().get(1).best().camera().lens().name());
        assertEquals(2, smallest.kept().lenses().size());
    }

    @Test
    void keepsAChoiceThatCannotTakeThePictureAndNamesTheObjection() {
        ShotFit fit = smallest(picture("Far").equivalent(24).sharp(8, 40).with(null, "Close-up prime")).fits().get(0);
        assertEquals(Verdict.CANNOT, fit.best().verdict());
        assertSame(MACRO, fit.best().camera().lens());
        assertInstanceOf(FitAdvice.FocalLong.class, the(FitAdvice.BetterCamera.class, fit.best().reasons()).because());
    }

    /** A phone that reaches the angle is no worse a choice than a larger sensor that has to step back. */
    @Test
    void findsNothingBetterInALargerSensorWithAWorseVerdict() {
        Bag both = new Bag("Both", null, List.of(fullFrame(24), Samples.phone()), List.of(prime(30)), List.of(), List.of(), false,
                List.of(), 0, List.of());
        Intent view = picture("View").equivalent(24).sharp(3, 40).with("Pocket phone", null).intent();
        LensFit best = SmallestBag.of(both, List.of(), List.of(view)).fits().get(0).best();
        assertEquals(new FitAdvice.ChosenCamera(), best.reasons().get(0));
    }

    /** A companion's bag has other names: the decision is about the author's own bag. */
    @Test
    void decidesNothingForABagWithoutThatCamera() {
        ShotFit fit = SmallestBag.of(bag(Samples.phone()), List.of(), List.of(head().with(null, "Short zoom").intent())).fits().get(0);
        assertEquals("main", fit.best().camera().lens().name());
    }
}
