package understorey.exposure.scale;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.LEGS;
import static understorey.Samples.bag;
import static understorey.Samples.kinds;
import static understorey.Samples.picture;
import static understorey.Samples.with;
import static understorey.exposure.Fits.PRIME;
import static understorey.exposure.Fits.fit;
import static understorey.exposure.Fits.viewAt;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.advice.PhoneAdvice;
import understorey.advice.ToneAdvice;
import understorey.exposure.Conditions;
import understorey.exposure.Exposure;
import understorey.exposure.Fits;
import understorey.exposure.Metering;
import understorey.exposure.Settings;
import understorey.kit.LensFit;

/** How many stops a file holds is common practice, no source; the tests hold the frames to their own words. */
class BracketTest {

    private static Settings in(double contrast, Double shade, Double sunStops) {
        return Exposure.of(fit(viewAt(8), with(PRIME, LEGS)), List.of(), new Conditions(9, contrast, shade, 0, 0, sunStops, Metering.GROUND, 2));
    }

    @Test
    void bracketsMoreThanFourStopsFromTheShadeDown() {
        assertEquals(List.of(0), in(4, 0.0, null).bracketStops());
        Settings flecked = in(4.1, 0.0, null);
        assertEquals(List.of(-4, -2, 0), flecked.bracketStops());
        assertTrue(kinds(flecked.reasons()).contains(ToneAdvice.Bracket.class));
        assertEquals(List.of(-4, -2, 0), in(5.5, 0.0, null).bracketStops());
        assertEquals(List.of(-4, -2, 0), in(30, 0.0, null).bracketStops(), "four stops are the most");
    }

    @Test
    void goesBothWaysWhereTheLightBetweenIsMetered() {
        assertEquals(List.of(-2, 0), in(6, 3.0, null).bracketStops());
        assertEquals(List.of(-2, 0, 2), in(6, 4.0, null).bracketStops());
    }

    @Test
    void exposesForTheFlecksWhereOneFrameHoldsThem() {
        Settings flecked = in(3, 0.0, null);
        assertEquals(List.of(0), flecked.bracketStops());
        assertEquals(2, Samples.the(ToneAdvice.ExposeForFlecks.class, flecked.reasons()).less(), 1e-9);
        assertEquals(2, flecked.lessStops(), 1e-9);
        assertEquals(in(0, 0.0, null).shutterS() / 4, flecked.shutterS(), flecked.shutterS() * 0.06, "the settings are two stops below the meter");
        assertFalse(kinds(in(1, 0.0, null).reasons()).contains(ToneAdvice.ExposeForFlecks.class));
        assertFalse(kinds(in(3, 2.5, null).reasons()).contains(ToneAdvice.ExposeForFlecks.class), "they are metered almost as they are");
        assertFalse(kinds(in(3, null, null).reasons()).contains(ToneAdvice.ExposeForFlecks.class), "the metering of the patches is not known");
    }

    @Test
    void bracketsForTheSunInTheFrame() {
        Settings into = in(0, 0.0, 8.0);
        assertTrue(kinds(into.reasons()).contains(ToneAdvice.FrameHoldsSun.class));
        assertEquals(List.of(-4, -2, 0), into.bracketStops(), "no frame is for the sun's own disc");
        Settings aside = in(0, 0.0, null);
        assertEquals(List.of(0), aside.bracketStops());
        assertFalse(kinds(aside.reasons()).contains(ToneAdvice.FrameHoldsSun.class));
    }

    @Test
    void holdsTwoStopsLessWithoutRaw() {
        LensFit phone = fit(picture("a").equivalent(25), bag(Samples.phone()));
        Settings settings = Fits.settings(phone, 9, 3, null);
        assertEquals(List.of(-2, 0), Bracket.stops(3, 0, false, 2));
        assertEquals(List.of(0), settings.bracketStops(), "a phone has no bracket, it has HDR");
        assertTrue(kinds(settings.reasons()).contains(PhoneAdvice.PhoneHdr.class));
        assertTrue(kinds(settings.reasons()).contains(PhoneAdvice.PhoneTones.class));
        assertFalse(kinds(in(3, 0.0, null).reasons()).contains(ToneAdvice.NoRaw.class));
    }

    /** More frames do not line up. */
    @Test
    void takesTwoFramesByHandOrOfFlowersThatMove() {
        Conditions deep = new Conditions(11, 6, 0.0, 0, 0, null, Metering.GROUND, 2);
        assertEquals(List.of(-2, 0), Exposure.of(fit(viewAt(8), PRIME), List.of(), deep).bracketStops());
        Conditions windy = new Conditions(11, 6, 0.0, 1.2, 2, null, Metering.GROUND, 2);
        assertEquals(List.of(-2, 0), Exposure.of(fit(viewAt(8), with(PRIME, LEGS)), List.of(), windy).bracketStops());
        assertEquals(List.of(-4, -2, 0), Exposure.of(fit(viewAt(8), with(PRIME, LEGS)), List.of(), deep).bracketStops());
    }

    /** Each light of the scene lies within what some frame holds: a stop above its own light, the rest below. */
    @Property
    void holdsEveryLightInSomeFrame(@ForAll @DoubleRange(min = 0, max = 5) double above,
                                    @ForAll @DoubleRange(min = 0, max = 1) double below, @ForAll boolean raw,
                                    @ForAll @DoubleRange(min = 0, max = 1) double share) {
        List<Integer> stops = Bracket.stops(above, below, raw, Bracket.MOST_STEPS);
        double held = Bracket.heldStops(raw);
        double shift = stops.size() == 1 ? Bracket.lessStops(above) : 0;
        double light = -below + share * (above + below);
        assertTrue(stops.stream().anyMatch(stop -> light + stop - shift <= 1 + 1e-9
                && light + stop - shift >= 1 - held - 1e-9), light + " in " + stops);
        assertTrue(stops.contains(0));
    }
}
