package understorey.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.bag;
import static understorey.Samples.fullFrame;
import static understorey.Samples.kinds;
import static understorey.Samples.picture;
import static understorey.Samples.prime;
import static understorey.Samples.the;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import understorey.Samples;
import understorey.advice.CoverAdvice;
import understorey.optics.FlowerCover;
import understorey.optics.FlowerLayer;
import understorey.plan.Bag;
import understorey.plan.Lens;
import understorey.plan.Slope;
import understorey.plan.Subject;
import understorey.plan.Viewpoint;
import understorey.reading.subject.SubjectCatalogue;

/**
 * Photographers know from practice (no source): a floor of flowers from standing height is thin at 12 to 24 mm,
 * balanced at 40 to 55 mm, thick at 200 mm and more from further back, and thick with any lens from low down.
 */
class CoverTradeTest {

    private static final SubjectCatalogue CATALOGUE = SubjectCatalogue.builtIn();
    private static final Bag PRIMES = bag(fullFrame(24), Stream.of(12, 14, 20, 24, 40, 50, 55, 85, 120, 200, 300)
            .map(Samples::prime).toArray(Lens[]::new));

    /** As the tool proposes; and sharp from 4 m on. */
    static Stream<CoverTrade> standing() {
        return Stream.of("ramsons", "bluebell", "wood-anemone", "snowdrop", "heather", "fireweed", "fly-agaric",
                        "large-flowered-trillium", "namaqualand-daisy", "amancay").map(CATALOGUE::find)
                .flatMap(subject -> Stream.of(picture("Floor").of(subject),
                        picture("Floor").of(subject).equivalent(50).sharp(4, 40)))
                .map(shot -> trade(shot, PRIMES));
    }

    private static CoverTrade trade(Samples.Picture shot, Bag bag) {
        return CoverTrade.of(WholeBag.fit(shot.intent(), bag), null);
    }

    private static CoverChoice at(CoverTrade trade, double focalMm) {
        return trade.choices().stream().filter(choice -> choice.equivalentMm() == focalMm).findFirst().orElseThrow();
    }

    private static List<ToDoubleFunction<CoverChoice>> covers() {
        return List.of(choice -> choice.typical().cover(), choice -> choice.thick().cover());
    }

    @ParameterizedTest
    @MethodSource("standing")
    void thickensFromTwentyFourToTwoHundredMillimetres(CoverTrade trade) {
        assertEquals(50, trade.planned().equivalentMm(), 1e-9);
        assertEquals(1.5, trade.planned().ground().heightM(), 0);
        for (ToDoubleFunction<CoverChoice> cover : covers()) {
            double before = 0;
            for (double focalMm : new double[]{24, 50, 120, 200}) {
                double now = cover.applyAsDouble(at(trade, focalMm));
                assertTrue(now > before * 1.01, () -> focalMm + " mm: " + trade);
                before = now;
            }
            assertTrue(cover.applyAsDouble(at(trade, 300)) >= before);
        }
    }

    /** Thin, balanced and thick: against the 50 mm lens, by what is left bare where little is. */
    @ParameterizedTest
    @MethodSource("standing")
    void isThinWideBalancedAtFiftyAndThickLong(CoverTrade trade) {
        for (ToDoubleFunction<CoverChoice> cover : covers()) {
            double fifty = depth(cover, trade, 50);
            for (double focalMm : new double[]{12, 14, 20, 24}) {
                assertTrue(depth(cover, trade, focalMm) < 0.75 * fifty, () -> focalMm + " mm: " + trade);
            }
            for (double focalMm : new double[]{40, 55}) {
                assertEquals(1, depth(cover, trade, focalMm) / fifty, 0.2);
            }
            for (double focalMm : new double[]{200, 300}) {
                assertTrue(depth(cover, trade, focalMm) > 2 * fifty, () -> focalMm + " mm: " + trade);
            }
        }
    }

    /** Petal area over a square metre of picture that would cover as much at random: −ln(1 − cover). */
    private static double depth(ToDoubleFunction<CoverChoice> cover, CoverTrade trade, double focalMm) {
        return -Math.log(1 - cover.applyAsDouble(at(trade, focalMm)));
    }

    /**
     * Thicker than the same lens from standing height. (A 12 mm lens still sees much of its own feet: it comes to six
     * tenths of a 50 mm picture that runs to the far end of the floor.)
     */
    @ParameterizedTest
    @MethodSource("standing")
    void isThickFromLowDownWithAnyLens(CoverTrade trade) {
        if (trade.lowered() == null) {
            assertTrue(trade.planned().fit().intent().shot().subject().heightM() > 0.9);
            return;
        }
        Subject subject = trade.planned().fit().intent().shot().subject();
        FlowerLayer layer = FlowerLayer.of(subject.heightM(), subject.flowerAreaIndex().typical());
        double fifty = trade.planned().typical().cover();
        for (CoverChoice choice : trade.choices()) {
            double low = FlowerCover.of(choice.ground().along(trade.loweredM()), layer).cover();
            assertTrue(low > 1.05 * choice.typical().cover(), () -> choice.focalMm() + " mm: " + trade);
            assertTrue(low > 0.6 * fifty, () -> choice.focalMm() + " mm: " + trade);
        }
        assertEquals(subject.heightM() + 0.1, trade.loweredM(), 1e-12);
    }

    /** The price of thickness: from further back, trees grow against the flowers. */
    @ParameterizedTest
    @MethodSource("standing")
    void enlargesTheTreesAndStandsFurtherBackWithALongerLens(CoverTrade trade) {
        for (int i = 1; i < trade.choices().size(); i++) {
            CoverChoice shorter = trade.choices().get(i - 1);
            CoverChoice longer = trade.choices().get(i);
            assertTrue(longer.equivalentMm() > shorter.equivalentMm());
            assertTrue(longer.nearestM() >= shorter.nearestM());
            assertTrue(longer.trunkScale() >= shorter.trunkScale());
        }
        CoverChoice planned = trade.planned();
        assertEquals(planned.nearestM() / (planned.nearestM() + 10), planned.trunkScale(), 1e-12);
        assertEquals(4, at(trade, 200).nearestM() / planned.nearestM(), 0.35);
    }

    @Test
    void leavesThePlannedLensAsItStands() {
        ShotFit fit = WholeBag.fit(picture("Floor").of(CATALOGUE.find("ramsons")).tilt(12).intent(),
                bag(fullFrame(24), Samples.ZOOM));
        CoverChoice planned = CoverTrade.of(fit, null).planned();
        assertSame(fit.best(), planned.fit());
        assertEquals(12, planned.ground().tiltDeg(), 0);
        assertEquals(fit.best().view(), planned.ground().angle());
        assertEquals(FlowerCover.of(planned.ground(), FlowerLayer.of(0.375, 0.2765)), planned.thick());
    }

    @Test
    void comparesEachLensOnceAndAZoomAtItsEndsToo() {
        CoverTrade trade = trade(picture("Floor").of(CATALOGUE.find("ramsons")),
                Samples.with(bag(fullFrame(24), Samples.ZOOM, Samples.MACRO, prime(50)), Samples.tube(12)));
        assertEquals(List.of(24.0, 50.0, 50.0, 70.0, 90.0),
                trade.choices().stream().map(choice -> (double) Math.round(choice.equivalentMm())).toList());
        assertEquals(1, trade.choices().stream().filter(CoverChoice::planned).count());
    }

    @Test
    void comparesTheWholeFrameOfAPhoneWithTheCropPlanned() {
        CoverTrade trade = trade(picture("Floor").of(CATALOGUE.find("ramsons")).equivalent(50).sharp(3, 40),
                bag(Samples.phone()));
        assertEquals(3, trade.choices().size());
        assertEquals(50, trade.planned().equivalentMm(), 1e-6);
        assertTrue(trade.planned().cropTimes() > 1);
        CoverChoice whole = trade.choices().get(1);
        assertSame(trade.planned().fit(), whole.fit());
        assertEquals(trade.planned().equivalentMm() / trade.planned().cropTimes(), whole.equivalentMm(), 1e-6);
        assertTrue(whole.typical().cover() < trade.planned().typical().cover());
    }

    /** Straight down from 1.5 m a lens that focuses from 2.4 m on shows nothing. */
    @Test
    void leavesOutALensThatShowsNoGroundInFocus() {
        Samples.Picture down = picture("Down").of(CATALOGUE.find("ramsons")).tilt(90).equivalent(50).sharp(1.4, 1.6);
        CoverTrade trade = trade(down, bag(fullFrame(24), prime(50), prime(240)));
        assertEquals(1, trade.choices().size());
        assertEquals(50, trade.planned().focalMm(), 1e-9);
    }

    /** tan 15° · cos 60° is tan 7.631°. */
    @ParameterizedTest
    @CsvSource({"225,-15", "45,15", "135,0", "285,-7.631", "105,7.631"})
    void takesOfASlopeWhatRisesAlongTheView(double facingDeg, double riseDeg) {
        assertEquals(riseDeg, CoverTrade.alongViewDeg(new Slope(15, 225), facingDeg), 0.001);
    }

    @Test
    void takesTheGroundAsLevelWhereNobodySaidWhereTheLensLooks() {
        assertEquals(0, CoverTrade.alongViewDeg(new Slope(15, 225), null));
        assertEquals(0, CoverTrade.alongViewDeg(null, 45.0));
    }

    @Test
    void tellsNothingWhereNothingIsToTell() {
        assertNull(trade(picture("Unknown flower"), PRIMES));
        assertNull(trade(picture("Crowns").of(CATALOGUE.find("ramsons")).tilt(-60), PRIMES));
        assertNull(trade(picture("Floor").of(CATALOGUE.find("ramsons")), bag(fullFrame(24))));
    }

    @Test
    void saysWhatLongerWiderAndLowerChange() {
        CoverTrade trade = trade(picture("Floor").of(CATALOGUE.find("ramsons")), PRIMES);
        assertEquals(List.of(CoverAdvice.CoverPlanned.class, CoverAdvice.CoverLonger.class,
                CoverAdvice.CoverWider.class, CoverAdvice.CoverLowered.class), kinds(trade.reasons()));
        assertEquals(trade.planned().typical().cover(), the(CoverAdvice.CoverPlanned.class, trade.reasons()).typical());
        assertEquals(300, the(CoverAdvice.CoverLonger.class, trade.reasons()).focal(), 1e-9);
        assertEquals(12, the(CoverAdvice.CoverWider.class, trade.reasons()).focal(), 1e-9);
        assertTrue(the(CoverAdvice.CoverLonger.class, trade.reasons()).trunk()
                > the(CoverAdvice.CoverLonger.class, trade.reasons()).before());
        assertEquals(0.475, the(CoverAdvice.CoverLowered.class, trade.reasons()).height(), 1e-12);
    }

    /** Straight down no lens looks flatter than another, and a longer one sees less to the side. */
    @Test
    void promisesNoThicknessWhereThereIsNone() {
        CoverTrade down = trade(picture("Down").of(CATALOGUE.find("ramsons")).tilt(90).equivalent(50).sharp(1.4, 1.6),
                bag(fullFrame(24), prime(35), prime(50), prime(85)));
        assertEquals(3, down.choices().size());
        assertEquals(List.of(CoverAdvice.CoverPlanned.class, CoverAdvice.CoverLowered.class), kinds(down.reasons()));
    }

    @Test
    void asksNoOneToLowerACameraThatIsLow() {
        CoverTrade low = trade(picture("Low").of(CATALOGUE.find("ramsons")).from(new Viewpoint.Height(0.5))
                .equivalent(50).sharp(2, 20), bag(fullFrame(24), prime(50)));
        assertNull(low.lowered());
        assertEquals(List.of(CoverAdvice.CoverPlanned.class), kinds(low.reasons()));
        assertNotNull(trade(picture("Floor").of(CATALOGUE.find("ramsons")), PRIMES).lowered());
    }
}
