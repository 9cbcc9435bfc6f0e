package understorey.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.ZOOM;
import static understorey.Samples.bag;
import static understorey.Samples.fullFrame;
import static understorey.Samples.kinds;
import static understorey.Samples.picture;
import static understorey.Samples.prime;
import static understorey.Samples.the;
import static understorey.Samples.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.advice.FitAdvice;
import understorey.advice.HelpAdvice;
import understorey.kit.camera.Camera;
import understorey.plan.Bag;
import understorey.plan.Filter;
import understorey.plan.Frame;
import understorey.plan.Lens;
import understorey.plan.Support;

class RemediesTest {

    /** Held by taking the advice. */
    @Test
    void namesTheDistanceFromWhichTheSharpnessWouldDo() {
        for (double far : new double[] {30, Double.POSITIVE_INFINITY}) {
            ShotFit short1 = WholeBag.fit(picture("a").equivalent(70).sharp(2, far).intent(), bag(fullFrame(24), ZOOM));
            double near = the(HelpAdvice.HelpSpotClear.class, short1.helps()).near();
            LensFit there = WholeBag.fit(picture("a").equivalent(70).sharp(near, far).intent(), bag(fullFrame(24), ZOOM)).best();
            assertEquals(1, there.fNumberNeeded() / there.fNumberUseful(), 0.02);
            assertEquals(Verdict.FITS, there.verdict());
        }
    }

    @Test
    void offersAnotherSpotWhereTheLensIsTooShortOrTooLong() {
        ShotFit tooShort = WholeBag.fit(picture("a").equivalent(50).sharp(10, 40).intent(), bag(fullFrame(24), prime(35)));
        assertEquals(50 / 35.0, the(HelpAdvice.HelpSpotNearer.class, tooShort.helps()).times(), 1e-9);
        ShotFit tooLong = WholeBag.fit(picture("a").equivalent(50).sharp(10, 40).intent(), bag(fullFrame(24), prime(75)));
        assertEquals(1.5, the(HelpAdvice.HelpSpotFarther.class, tooLong.helps()).times(), 1e-9);
        assertFalse(kinds(WholeBag.fit(picture("a").equivalent(50).sharp(10, 40).intent(), bag(fullFrame(24), prime(54)))
                .helps()).contains(HelpAdvice.HelpSpotFarther.class));
    }

    @Test
    void stepsBackAndCropsWhereTheDistanceAskedIsTooNear() {
        ShotFit fit = WholeBag.fit(picture("a").framed(new Frame(0.2, null, null, 0.15)).deep(0.002).intent(),
                bag(fullFrame(24), prime(50)));
        double distance = the(HelpAdvice.HelpCrop.class, fit.helps()).distance();
        assertEquals(distance / 0.15, the(HelpAdvice.HelpCrop.class, fit.helps()).times(), 1e-9);
        LensFit there = WholeBag.fit(picture("a").framed(new Frame(0.2, null, null, distance)).deep(0.002).intent(),
                bag(fullFrame(24), prime(50))).best();
        assertFalse(kinds(there.reasons()).contains(FitAdvice.TooNear.class));
    }

    /** Life size is the most the lens does; a tube of 12 mm on 90 mm adds 0.13 to it. */
    @Test
    void namesWhatTheBagHoldsBeforeWhatIsToBuy() {
        Samples.Picture close = picture("a").wide(0.025).deep(0.008);
        ShotFit bare = WholeBag.fit(close.intent(), bag(fullFrame(24), Samples.MACRO));
        assertTrue(kinds(bare.helps()).containsAll(List.of(HelpAdvice.HelpTube.class, HelpAdvice.HelpCloseUpLens.class)),
                () -> kinds(bare.helps()).toString());
        Bag tubed = with(bag(fullFrame(24), Samples.MACRO), Samples.tube(12));
        List<LensFit> tried = Camera.of(tubed).stream().map(camera -> LensTrial.of(tubed, camera, close.intent())).toList();
        LensFit alone = tried.stream().filter(fit -> fit.camera().attachment() == null).findFirst().orElseThrow();
        List<Class<?>> helps = kinds(Remedies.of(alone, tried, tubed));
        assertTrue(helps.contains(HelpAdvice.HelpAttach.class) && !helps.contains(HelpAdvice.HelpTube.class), helps::toString);
    }

    @Test
    void namesNoTubeAndNoCloseUpLensThatNobodyMakes() {
        ShotFit far = WholeBag.fit(picture("a").wide(0.004).deep(0.001).intent(), bag(fullFrame(24), Samples.MACRO));
        assertFalse(kinds(far.helps()).contains(HelpAdvice.HelpTube.class));
        assertFalse(kinds(far.helps()).contains(HelpAdvice.HelpCloseUpLens.class));
    }

    @Test
    void namesThePrintThatThePixelsAreEnoughFor() {
        Samples.Picture picture = picture("a").equivalent(50).sharp(10, 40).print(0.6);
        double print = the(HelpAdvice.HelpSmallerPrint.class, WholeBag.fit(picture.intent(), bag(fullFrame(6), ZOOM)).helps()).print();
        assertTrue(print < 0.6);
        Samples.Picture smaller = picture("a").equivalent(50).sharp(10, 40).print(print - 1e-9);
        assertFalse(kinds(WholeBag.fit(smaller.intent(), bag(fullFrame(6), ZOOM)).best().reasons()).contains(FitAdvice.PrintSoft.class));
    }

    @Test
    void asksForSomethingThatCarriesWhatOverloadsTheLegs() {
        Support frail = new Support("Frail legs", Support.Kind.TRIPOD, 0.1, 1.6, 1.0, 300.0);
        ShotFit fit = WholeBag.fit(picture("a").equivalent(50).sharp(10, 40).intent(), with(bag(fullFrame(24), ZOOM), frail));
        assertEquals(1.09, the(HelpAdvice.HelpStrongerSupport.class, fit.helps()).load(), 1e-9);
        assertFalse(kinds(fit.helps()).contains(HelpAdvice.HelpSupport.class));
    }

    /** The ring asked for, once in the bag, puts the close-up lens on. */
    @Test
    void asksForTheRingThatACloseUpLensWants() {
        Lens small = new Lens("Small zoom", "A", null, 24, 70, 4, 4, 22.0, 0.38, 0.3, 62.0, 0, 430.0);
        Intent intent = picture("a").wide(0.07).deep(0.002).intent();
        Filter closeUp = Samples.closeUpLens(72, 5);
        ShotFit without = WholeBag.fit(intent, with(bag(fullFrame(24), small), closeUp));
        assertEquals(72, the(HelpAdvice.HelpStepUpRing.class, without.helps()).thread());
        SmallestBag packed = SmallestBag.of(with(bag(fullFrame(24), small), closeUp, Samples.RING, Samples.tube(5)),
                List.of(), List.of(intent));
        LensFit best = packed.fits().get(0).best();
        assertEquals(closeUp, best.camera().attachment());
        assertEquals(Samples.RING, best.camera().ring());
        assertTrue(best.penalty() < without.best().penalty());
        assertEquals(List.of(closeUp, Samples.RING), packed.kept().filters());
    }
}
