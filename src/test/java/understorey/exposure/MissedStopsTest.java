package understorey.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.LEGS;
import static understorey.Samples.MACRO;
import static understorey.Samples.bag;
import static understorey.Samples.fullFrame;
import static understorey.Samples.picture;
import static understorey.Samples.released;
import static understorey.Samples.with;
import static understorey.exposure.Fits.PRIME;
import static understorey.exposure.Fits.deepStarOnLegs;
import static understorey.exposure.Fits.fit;
import static understorey.exposure.Fits.starOnLegs;
import static understorey.exposure.Fits.viewAt;
import static understorey.exposure.Fits.wind;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.kit.LensFit;

/** What settings miss, as facts: each stop of light that is missing is a stop of shutter speed (APEX). */
class MissedStopsTest {

    /** By the exposure equation each stop less light at the highest ISO doubles the time. */
    @Test
    void missTheHandsLimitByAStopMorePerStopLessLight() {
        assertEquals(0, Fits.settings(fit(viewAt(8), PRIME), 9, 0, null).motionStops());
        double two = Fits.settings(fit(viewAt(8), PRIME), 4, 0, null).motionStops();
        assertTrue(two > 1 / 3.0, two + " stops");
        assertEquals(two + 1, Fits.settings(fit(viewAt(8), PRIME), 3, 0, null).motionStops(), 1e-9);
    }

    @Test
    void missWhatTheStemsAllowByMoreInMoreWind() {
        assertEquals(0, Fits.settings(starOnLegs(), 9, 0, 0.0).motionStops());
        double windy = Fits.settings(starOnLegs(), 9, 0, 1.5).motionStops();
        assertTrue(windy > 1, windy + " stops");
        assertTrue(Fits.settings(starOnLegs(), 9, 0, 3.0).motionStops() > windy);
    }

    /** Beyond half a minute a camera needs bulb, and bulb a release. */
    @Test
    void missWhatACameraWithoutAReleaseCanTime() {
        assertTrue(Fits.settings(fit(viewAt(8), with(PRIME, LEGS)), -6, 0, null).motionStops() > 1);
        assertEquals(0, Fits.settings(fit(viewAt(8), released(with(PRIME, LEGS))), -4, 0, null).motionStops());
    }

    @Property(tries = 200)
    void neverMissLessInLessLight(@ForAll @DoubleRange(min = -6, max = 15) double ev100,
                                  @ForAll @DoubleRange(min = 0, max = 3) double more,
                                  @ForAll @DoubleRange(min = 0, max = 3) double windMs, @ForAll boolean byHand) {
        LensFit fit = byHand ? fit(viewAt(5), PRIME) : starOnLegs();
        assertTrue(Fits.settings(fit, ev100, 0, windMs).motionStops()
                >= Fits.settings(fit, ev100 + more, 0, windMs).motionStops() - 1e-9);
    }

    /** Blur grows with the opening: an f-number of half the one needed holds two stops less. */
    @Test
    void missTheDepthOfOneFrameByTheStopsThatItIsOpenedToo() {
        assertEquals(0, Fits.settings(fit(viewAt(8), PRIME), 12, 0, null).depthStops());
        Settings oneFrame = Exposure.of(deepStarOnLegs(), List.of(), wind(9, 0.6, 1.4));
        assertEquals(1, oneFrame.stackFrames());
        assertEquals(2 * Math.log(deepStarOnLegs().fNumberNeeded() / oneFrame.fNumber()) / Math.log(2), oneFrame.depthStops(), 1e-9);
        assertTrue(oneFrame.depthStops() > 1);
        Settings stacked = Exposure.of(deepStarOnLegs(), List.of(), wind(9, 0.0, 0.0));
        assertTrue(stacked.stackFrames() > 1);
        assertEquals(0, stacked.depthStops());
    }

    @Test
    void missADepthThatWasOnlySuggestedToo() {
        LensFit left = fit(picture("Dusk floor").equivalent(50), PRIME);
        assertEquals(0, Fits.settings(left, 12, 0, null).depthStops());
        assertTrue(Fits.settings(left, 2, 0, null).depthStops() > 1);
    }

    @Test
    void areNoneForACloseUpInTheCalm() {
        LensFit star = fit(picture("One star").wide(0.072).deep(0.003), with(bag(fullFrame(24), MACRO), LEGS));
        Settings settings = Fits.settings(star, 10, 0, 0.0);
        assertEquals(0, settings.depthStops() + settings.motionStops());
    }
}
