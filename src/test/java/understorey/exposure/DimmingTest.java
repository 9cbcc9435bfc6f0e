package understorey.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Glass.neutralDensity;
import static understorey.Samples.LEGS;
import static understorey.Samples.bag;
import static understorey.Samples.fullFrame;
import static understorey.Samples.kinds;
import static understorey.Samples.picture;
import static understorey.Samples.with;
import static understorey.exposure.Fits.fit;
import static understorey.exposure.Fits.wind;

import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.advice.ApertureAdvice;
import understorey.advice.MotionAdvice;
import understorey.kit.Darkening;
import understorey.kit.LensFit;
import understorey.kit.Verdict;
import understorey.plan.Bag;
import understorey.plan.Filter;
import understorey.plan.Lens;

/** f/1.4 in EV 15 at ISO 100 is 1.96 / 32768 = 1/16700 s by the equation: a stop shorter than a shutter goes. */
class DimmingTest {

    private static final Lens FAST = new Lens("Fast", "A", null, 50, 50, 1.4, 1.4, 16.0, 0.5, null, 62.0, 0, null);
    private static final Samples.Picture PLANT = picture("Plant").wide(0.72).deep(0.001);
    private static final Samples.Picture FAR = picture("Far").equivalent(50).sharp(90, 110);

    private static Settings settings(Samples.Picture picture, Lens lens, double ev100, Filter... filters) {
        Bag bag = with(with(bag(fullFrame(24), lens), LEGS), filters);
        LensFit fit = fit(picture, bag);
        return Exposure.of(fit, Darkening.of(bag, fit), wind(ev100, 0, null));
    }

    @Test
    void putsTheWeakestFilterThatDoesOnACloseUp() {
        Settings settings = settings(PLANT, FAST, 15, neutralDensity(62, 6), neutralDensity(62, 3), neutralDensity(62, 0.3));
        assertEquals(1.4, settings.fNumber());
        assertEquals(List.of("ND 3.0"), settings.dimming().stream().map(Filter::name).toList());
        assertEquals(1 / 2000.0, settings.shutterS());
        assertEquals(3, settings.lossStops(), 0.2);
        assertEquals(Verdict.FITS, settings.verdict());
        assertTrue(kinds(settings.reasons()).contains(ApertureAdvice.DimmedByFilter.class));
    }

    @Test
    void putsItOnByARing() {
        Settings settings = settings(PLANT, FAST, 15, neutralDensity(72, 3), Samples.RING);
        assertEquals(List.of("Ring 62 to 72", "ND 3.0"), settings.dimming().stream().map(Filter::name).toList());
        assertTrue(kinds(settings.reasons()).contains(ApertureAdvice.DimmedByFilterAndRing.class));
    }

    @Test
    void stopsACloseUpDownWithoutAFilterAndSaysWhatThatCosts() {
        Settings settings = settings(PLANT, FAST, 15, neutralDensity(72, 3));
        assertEquals(List.of(1.8, 1 / 8000.0), List.of(settings.fNumber(), settings.shutterS()));
        assertEquals(List.of(), settings.dimming());
        assertTrue(kinds(settings.reasons()).contains(ApertureAdvice.StoppedDownShows.class));
        assertEquals(Verdict.FITS, settings.verdict());
    }

    @Test
    void stopsAViewDownRatherThanPutAFilterOn() {
        Settings settings = settings(FAR, FAST, 17, neutralDensity(62, 6));
        assertEquals(List.of(), settings.dimming());
        assertTrue(settings.shutterS() >= 1 / 8000.0);
        Settings only = settings(FAR, FAST, 15);
        assertTrue(only.fNumber() >= 1.4 && only.shutterS() >= 1 / 8000.0);
    }

    @Test
    void leavesInTheBagWhatNoTimeAsksFor() {
        assertEquals(List.of(), settings(PLANT, FAST, 12, neutralDensity(62, 3)).dimming());
    }

    @Test
    void isACompromiseOrCannotBeWhereNothingDims() {
        Lens open = new Lens("Open", "A", null, 50, 50, 1.4, 1.4, 1.4, 0.5, null, 62.0, 0, null);
        Settings little = settings(PLANT, open, 14.8);
        assertEquals(List.of(Verdict.COMPROMISE, 1 / 8000.0), List.of(little.verdict(), little.shutterS()));
        assertEquals(Settings.Limit.BRIGHT, little.limit());
        assertEquals(Verdict.CANNOT, settings(PLANT, open, 16).verdict());
        assertEquals(Verdict.FITS, settings(PLANT, open, 16, neutralDensity(62, 3)).verdict());
    }

    /** A wind that stands stems for less than any shutter has cannot be raised ISO for. */
    @Test
    void neverSetsATimeThatNoShutterHas() {
        Settings storm = Exposure.of(Fits.starOnLegs(), List.of(), wind(16, 8.0, 16.0));
        assertTrue(storm.shutterS() >= 1 / 8000.0, "1/" + 1 / storm.shutterS());
        assertTrue(kinds(storm.reasons()).contains(MotionAdvice.WindTooStrong.class) && storm.limits().contains(Settings.Limit.STEMS));
    }

    @Test
    void leavesAPhoneItsOwnTimes() {
        Settings settings = Fits.settings(fit(picture("a").equivalent(25), bag(Samples.phone())), 17, 0, null);
        assertTrue(settings.shutterS() < 1 / 8000.0);
        assertNull(settings.limit());
    }
}
