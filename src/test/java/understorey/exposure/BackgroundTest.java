package understorey.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.LEGS;
import static understorey.Samples.bag;
import static understorey.Samples.fullFrame;
import static understorey.Samples.kinds;
import static understorey.Samples.picture;
import static understorey.Samples.prime;
import static understorey.Samples.with;
import static understorey.exposure.Fits.fit;
import static understorey.exposure.Fits.plantOnLegs;
import static understorey.exposure.Fits.starOnLegs;
import static understorey.exposure.Fits.viewAt;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import understorey.advice.DepthAdvice;
import understorey.kit.LensFit;
import understorey.plan.Frame;
import understorey.plan.Lens;

class BackgroundTest {

    /** Thin lens: far away the disc is m f / N; 1.05 m off a metre further on it is m f / N · 1 / 2.05. */
    @Test
    void spreadsByMagnificationAndOpening() {
        Background background = Background.of(plantOnLegs(), 8);
        assertEquals(0.05 * 50 / 8 / 36, background.far(), 1e-9);
        assertEquals(0.05 * 50 / 8 / 36 / 2.05, background.near(), 1e-9);
    }

    @Test
    void meltsCloseUpAndShowsBehindAPlant() {
        assertTrue(kinds(Fits.settings(starOnLegs(), 9, 0, null).reasons()).contains(DepthAdvice.BackgroundMelts.class));
        Settings plant = Fits.settings(plantOnLegs(), 9, 0, null);
        assertTrue(kinds(plant.reasons()).contains(DepthAdvice.BackgroundShows.class));
        assertTrue(plant.background().near() < 0.03);
        Lens slow = new Lens("Slow", "A", null, 50, 50, 8, 8, 16.0, 0.5, null, null, 0, null);
        LensFit open = fit(picture("Plant").wide(0.72).deep(0.05), with(bag(fullFrame(24), slow), LEGS));
        assertTrue(kinds(Fits.settings(open, 9, 0, null).reasons()).contains(DepthAdvice.BackgroundShowsWideOpen.class));
    }

    @Test
    void isNoMatterOfAView() {
        assertNull(Fits.settings(fit(viewAt(8), with(Fits.PRIME, LEGS)), 9, 0, null).background());
    }

    /** What the advice says: wider open, longer for the same frame, and nearer, it melts more. */
    @Property(tries = 100)
    void meltsMoreWhenOpenedLongerOrNearer(@ForAll @DoubleRange(min = 0.3, max = 2) double wideM,
                                           @ForAll @DoubleRange(min = 1.1, max = 3) double times) {
        LensFit plain = fit(picture("a").framed(new Frame(wideM, null, null, null)).deep(0.01), bag(fullFrame(24), prime(50)));
        LensFit longer = fit(picture("a").framed(new Frame(wideM, null, null, null)).deep(0.01),
                bag(fullFrame(24), prime(50 * times)));
        LensFit nearer = fit(picture("a").framed(new Frame(wideM / times, null, null, null)).deep(0.01),
                bag(fullFrame(24), prime(50)));
        double near = Background.of(plain, 8).near();
        assertTrue(Background.of(plain, 8 / times).near() > near);
        assertTrue(Background.of(longer, 8).near() > near);
        assertTrue(Background.of(nearer, 8).near() > near);
        assertTrue(Background.of(plain, 8).far() > near);
    }
}
