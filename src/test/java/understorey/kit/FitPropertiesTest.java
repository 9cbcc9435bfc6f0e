package understorey.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.bag;
import static understorey.Samples.fullFrame;
import static understorey.Samples.kinds;
import static understorey.Samples.picture;
import static understorey.Samples.prime;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import understorey.Samples;
import understorey.advice.FitAdvice;
import understorey.plan.Bag;
import understorey.plan.Frame;
import understorey.plan.Lens;

/** What must hold whatever the bag and the picture. */
class FitPropertiesTest {

    @Provide
    Arbitrary<Lens> lenses() {
        return Combinators.combine(Arbitraries.doubles().between(10, 300), Arbitraries.doubles().between(1, 4),
                Arbitraries.doubles().between(2, 30), Arbitraries.doubles().between(0.05, 1.2).injectNull(0.5))
                .as((shortest, zoom, closest, magnification) -> new Lens("Lens " + shortest, "A", null, shortest,
                        shortest * zoom, 4, 5.6, null, closest * shortest / 1000, magnification, 62.0, 0, null));
    }

    @Provide
    Arbitrary<Intent> intents() {
        Arbitrary<Intent> views = Combinators.combine(Arbitraries.doubles().between(14, 400),
                Arbitraries.doubles().between(0.3, 20), Arbitraries.doubles().between(1, 50))
                .as((mm, near, times) -> picture("View").equivalent(mm).sharp(near, near * times).intent());
        Arbitrary<Intent> frames = Combinators.combine(Arbitraries.doubles().between(0.01, 5),
                Arbitraries.doubles().between(0.02, 10).injectNull(0.5), Arbitraries.doubles().between(0.01, 0.5))
                .as((wide, distance, depth) -> picture("Frame").framed(new Frame(wide, null, null, distance))
                        .deep(wide * depth).intent());
        return Arbitraries.oneOf(views, frames);
    }

    @Property(tries = 300)
    void aWiderBagNeverServesWorse(@ForAll("intents") Intent intent, @ForAll("lenses") Lens first,
                                   @ForAll("lenses") Lens more) {
        ShotFit narrow = WholeBag.fit(intent, bag(fullFrame(24), first));
        ShotFit wide = WholeBag.fit(intent, bag(fullFrame(24), first, more));
        assertTrue(wide.best().verdict().compareTo(narrow.best().verdict()) <= 0);
    }

    @Property(tries = 300)
    void twiceThePixelsNeverServeWorse(@ForAll("intents") Intent intent, @ForAll("lenses") Lens lens,
                                       @ForAll @DoubleRange(min = 1, max = 60) double pixelsMpx) {
        Verdict few = WholeBag.fit(intent, bag(fullFrame(pixelsMpx), lens)).best().verdict();
        Verdict many = WholeBag.fit(intent, bag(fullFrame(2 * pixelsMpx), lens)).best().verdict();
        assertTrue(many.compareTo(few) <= 0);
    }

    @Property(tries = 300)
    void aLongerLensThanAskedNeverServesBetterNorSeesMore(@ForAll @DoubleRange(min = 14, max = 200) double wishMm,
            @ForAll @DoubleRange(min = 1, max = 3) double longer, @ForAll @DoubleRange(min = 1, max = 3) double longerStill) {
        Intent intent = picture("View").equivalent(wishMm).sharp(50, 200).intent();
        LensFit near = WholeBag.fit(intent, bag(fullFrame(24), prime(wishMm * longer))).best();
        LensFit far = WholeBag.fit(intent, bag(fullFrame(24), prime(wishMm * longer * longerStill))).best();
        assertTrue(far.verdict().compareTo(near.verdict()) >= 0);
        assertTrue(far.penalty() >= near.penalty() - 1e-9);
        assertTrue(far.view().horizontalDeg() <= near.view().horizontalDeg() + 1e-9);
    }

    @Property(tries = 300)
    void aBagServesInOneOrderBestFirst(@ForAll("intents") Intent intent,
            @ForAll @Size(min = 1, max = 5) List<@From("lenses") Lens> lenses) {
        Bag bag = bag(fullFrame(24), lenses.toArray(Lens[]::new));
        List<LensFit> tried = WholeBag.fit(intent, bag).tried();
        assertEquals(lenses.size(), tried.size());
        for (int i = 1; i < tried.size(); i++) {
            int verdicts = tried.get(i - 1).verdict().compareTo(tried.get(i).verdict());
            assertTrue(verdicts < 0
                    || verdicts == 0 && tried.get(i - 1).penalty() <= tried.get(i).penalty() + 0.01);
        }
        assertEquals(tried, WholeBag.fit(intent, bag).tried());
    }

    /** Nothing but a lens that is too long, too far or too near for it frames other than asked. */
    @Property(tries = 500)
    void framesWhatWasAskedOrSaysWhyNot(@ForAll("intents") Intent intent, @ForAll("lenses") Lens lens,
                                        @ForAll @IntRange(min = 0, max = 2) int attachment) {
        Bag bag = bag(fullFrame(24), lens);
        bag = attachment == 0 ? bag
                : Samples.with(bag, attachment == 1 ? Samples.tube(20) : Samples.closeUpLens(62, 3));
        for (LensFit fit : WholeBag.fit(intent, bag).tried()) {
            assertTrue(fit.magnification() > 0 && fit.distanceM() > 0, () -> "no real image: " + fit);
            assertTrue(fit.focusM() * 1000 > fit.actingFocalMm(), () -> "no image in focus: " + fit);
            List<Class<?>> excuses = new ArrayList<>(kinds(fit.reasons()));
            excuses.retainAll(List.of(FitAdvice.FocalLong.class, FitAdvice.TooNear.class, FitAdvice.AttachmentTooClose.class));
            if (intent.frame() != null && excuses.isEmpty()) {
                assertEquals(1, fit.frameWidthM() / intent.frame().widthM(), Framing.SAME_FOCAL - 1, () -> fit.toString());
            } else if (intent.frame() == null && !kinds(fit.reasons()).contains(FitAdvice.FocalLong.class)) {
                assertEquals(1, fit.equivalentMm() / intent.focalEquivalentMm(), Framing.SAME_FOCAL - 1);
            }
        }
    }
}
