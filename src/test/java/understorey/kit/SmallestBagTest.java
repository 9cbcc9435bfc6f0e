package understorey.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.BEANBAG;
import static understorey.Samples.LEGS;
import static understorey.Samples.MACRO;
import static understorey.Samples.POLARISER;
import static understorey.Samples.RING;
import static understorey.Samples.ZOOM;
import static understorey.Samples.fullFrame;
import static understorey.Samples.kinds;
import static understorey.Samples.picture;
import static understorey.Samples.prime;
import static understorey.Samples.with;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.advice.BagAdvice;
import understorey.advice.FitAdvice;
import understorey.advice.HelpAdvice;
import understorey.kit.camera.Things;
import understorey.plan.Bag;
import understorey.plan.Body;
import understorey.plan.Companion;
import understorey.plan.Lens;
import understorey.plan.Sensor;
import understorey.plan.Support;
import understorey.plan.Viewpoint;

class SmallestBagTest {

    private static final Intent VIEW = picture("View").equivalent(50).sharp(10, 40).intent();
    private static final Intent LONG_VIEW = picture("Long view").equivalent(68).sharp(20, 40).intent();
    private static final Intent STAR = picture("Star").wide(0.036).deep(0.001).from(Viewpoint.Stance.GROUND).intent();

    private static SmallestBag smallest(Bag bag, Intent... intents) {
        return SmallestBag.of(bag, List.of(), List.of(intents));
    }

    private static List<String> carried(SmallestBag smallest) {
        return Things.of(smallest.kept()).stream().map(Things::name).toList();
    }

    private static Class<?> why(SmallestBag smallest, String name) {
        return smallest.left().stream().filter(left -> Things.name(left.thing()).equals(name)).findFirst().orElseThrow()
                .why().getClass();
    }

    private static Lens heavy(double focalMm) {
        return new Lens("Heavy " + focalMm, "A", null, focalMm, focalMm, 1.4, 1.4, 22.0, 0.5, null, 62.0, 0, 900.0);
    }

    @Test
    void takesTheLighterOfTwoLensesThatDoAsWell() {
        SmallestBag smallest = smallest(Samples.bag(fullFrame(24), heavy(50), prime(50)), VIEW);
        assertEquals(List.of("Main body", "Prime 50.0"), carried(smallest));
        assertEquals(BagAdvice.LeftSpared.class, why(smallest, "Heavy 50.0"));
        assertEquals("Prime 50.0", assertInstanceOf(BagAdvice.LeftSpared.class, smallest.left().get(0).why()).instead());
        assertEquals(900, Things.weightG(smallest.left().get(0).thing()));
    }

    @Test
    void letsOneZoomDoForTwoPrimesAndUsesALensThatIsCarriedAnyhow() {
        SmallestBag two = smallest(Samples.bag(fullFrame(24), ZOOM, prime(50), prime(68)), VIEW, LONG_VIEW);
        assertEquals(List.of("Main body", "Short zoom"), carried(two));
        assertSame(ZOOM, two.fits().get(0).best().camera().lens());
        SmallestBag macro = smallest(Samples.bag(fullFrame(24), prime(90), MACRO), STAR,
                picture("Ninety").equivalent(90).sharp(20, 40).intent());
        assertEquals(List.of("Main body", "Close-up prime"), carried(macro));
        assertSame(MACRO, macro.fits().get(1).best().camera().lens());
    }

    /** Verdicts do not know of supports: by them alone no bag would ever hold legs. */
    @Test
    void keepsTheLegsThatHoldACameraSteadyAndAtItsHeight() {
        Bag bag = with(Samples.bag(fullFrame(24), ZOOM), LEGS, BEANBAG, Samples.MONOPOD);
        assertEquals(List.of("Main body", "Short zoom", "Legs"), carried(smallest(bag, VIEW)));
        Support low = new Support("Low legs", Support.Kind.TRIPOD, 0.1, 1.0, null, 600.0);
        assertEquals(List.of("Main body", "Short zoom", "Legs"),
                carried(smallest(with(Samples.bag(fullFrame(24), ZOOM), LEGS, low), VIEW)));
        assertEquals(List.of("Main body", "Close-up prime", "Beanbag"),
                carried(smallest(with(Samples.bag(fullFrame(24), MACRO), LEGS, BEANBAG), STAR)));
    }

    @Test
    void keepsThePolariserAndItsRingWhereAPictureAsksForThem() {
        Bag bag = with(Samples.bag(fullFrame(24), MACRO), POLARISER, RING, Samples.tube(12));
        Intent polarised = picture("Star").wide(0.036).deep(0.001).polarised().intent();
        assertEquals(List.of("Main body", "Close-up prime", "Polariser", "Ring 62 to 72"),
                carried(smallest(bag, polarised)));
        assertEquals(List.of("Main body", "Close-up prime"), carried(smallest(bag, STAR)));
    }

    @Test
    void saysWhyEachThingStaysAtHome() {
        Lens other = new Lens("Other make", "B", null, 50, 50, 2, 2, null, 0.4, null, null, 0, null);
        SmallestBag smallest = smallest(Samples.bag(fullFrame(24), prime(50), prime(300), other), VIEW);
        assertEquals(BagAdvice.LeftUnasked.class, why(smallest, "Prime 300.0"));
        assertEquals(BagAdvice.LeftNoBody.class, why(smallest, "Other make"));
        assertNull(Things.weightG(smallest.left().get(1).thing()));
    }

    /** The left-at-home list and the lens table agree about a lens: it fits, and so does another. */
    @Test
    void saysOfAThingThatFitsAPictureThatAnotherDoesItAsWell() {
        SmallestBag smallest = smallest(with(Samples.bag(fullFrame(24), prime(50), Samples.ZOOM), Samples.LEGS,
                Samples.BEANBAG), VIEW);
        for (SmallestBag.Left left : smallest.left()) {
            LensFit fit = smallest.fits().get(0).tried().stream()
                    .filter(tried -> tried.camera().lens().name().equals(Things.name(left.thing()))).findFirst().orElse(null);
            if (fit != null) {
                String shot = VIEW.shot().name();
                String instead = smallest.fits().get(0).best().camera().lens().name();
                assertEquals(fit.verdict() == Verdict.FITS ? new BagAdvice.LeftAsWell(shot, instead)
                        : new BagAdvice.LeftCompromise(shot, instead), left.why());
            }
        }
        assertTrue(smallest.left().stream().anyMatch(left -> left.why() instanceof BagAdvice.LeftAsWell));
    }

    /** Neither is a macro lens, so a tube is half a stop behind: equals, and the lighter is carried. */
    @Test
    void namesAllThatDoesTheWorkOfAThingAtHome() {
        Lens near = new Lens("Near zoom", "A", null, 70, 70, 4, 4, 22.0, 0.4, 0.3, 62.0, 0, 900.0);
        Lens tele = new Lens("Tele", "A", null, 70, 70, 4, 4, 22.0, 0.5, 0.2, 72.0, 0, 430.0);
        Intent head = picture("Head").wide(0.13).deep(0.001).intent();
        SmallestBag smallest = smallest(with(Samples.bag(fullFrame(24), near, tele), Samples.tube(12)), head);
        assertEquals(List.of("Main body", "Tele", "Tube 12.0"), carried(smallest));
        assertEquals("Tele + Tube 12.0", assertInstanceOf(BagAdvice.LeftSpared.class, smallest.left().get(0).why()).instead());
    }

    /** A macro lens is for a single head, whatever it weighs: common practice, no source. */
    @Test
    void carriesTheMacroLensThoughALighterOneReachesTheFrame() {
        Lens tele = new Lens("Tele", "A", null, 70, 70, 4, 4, 22.0, 0.5, 0.3, 72.0, 0, 430.0);
        Lens longest = new Lens("Longest", "A", null, 500, 500, 5.6, 5.6, 22.0, 1.8, 0.36, 72.0, 0, 500.0);
        Bag bag = with(Samples.bag(fullFrame(24), MACRO, tele, longest), Samples.tube(50));
        assertEquals(List.of("Main body", "Close-up prime"), carried(smallest(bag, STAR)));
        Intent head = picture("Head").wide(0.1).deep(0.002).intent();
        assertEquals(List.of("Main body", "Close-up prime"), carried(smallest(bag, head)));
    }

    /** The larger sensor has less noise, the same lens on it serves better: common practice, no source. */
    @Test
    void carriesTheBodyWithTheLargerSensorThoughItIsHeavier() {
        Body small = new Body("Small body", Sensor.APS_C, 24, "A", 100, 3200, 0, 28.0, 400, 300.0, List.of());
        Bag bag = new Bag("Two bodies", null, List.of(small, fullFrame(24)), List.of(ZOOM), List.of(), List.of(), false,
                List.of(), 0, List.of());
        assertEquals(List.of("Main body", "Short zoom"), carried(smallest(bag, VIEW)));
        Body like = new Body("Like body", Sensor.FULL_FRAME, 24, "A", 100, 3200, 0, 28.0, 400, 500.0, List.of());
        Bag equals = new Bag("Two bodies", null, List.of(fullFrame(24), like), List.of(ZOOM), List.of(), List.of(), false,
                List.of(), 0, List.of());
        assertEquals(List.of("Like body", "Short zoom"), carried(smallest(equals, VIEW)));
    }

    @Test
    void stillTellsHowTheLensesAtHomeWouldDo() {
        ShotFit fit = smallest(Samples.bag(fullFrame(24), heavy(50), prime(50)), VIEW).fits().get(0);
        assertEquals(2, fit.tried().size());
        assertInstanceOf(FitAdvice.LensAtHome.class, fit.tried().get(1).objection());
        assertEquals(Verdict.FITS, fit.tried().get(1).verdict());
    }

    @Test
    void changesLensesLeastAmongBagsOfOneWeight() {
        Lens wide = new Lens("Wide zoom", "A", null, 35, 50, 4, 4, 22.0, 0.38, 0.3, 72.0, 0, 300.0);
        Lens normal = new Lens("Normal zoom", "A", null, 50, 70, 4, 4, 22.0, 0.38, 0.3, 72.0, 0, 300.0);
        Intent wideView = picture("Wide view").equivalent(35).sharp(8, 40).intent();
        assertEquals(List.of("Main body", "Prime 35.0", "Normal zoom"), carried(smallest(
                Samples.bag(fullFrame(24), wide, prime(68), prime(35), normal), VIEW, LONG_VIEW, VIEW, wideView)));
    }

    @Test
    void takesTheFirstInTheFileOfTwoThatAreAlike() {
        Lens one = new Lens("One", "A", null, 50, 50, 2, 2, null, 0.4, null, null, 0, null);
        Lens other = new Lens("Other", "A", null, 50, 50, 2, 2, null, 0.4, null, null, 0, null);
        assertEquals(List.of("Main body", "One"), carried(smallest(Samples.bag(fullFrame(24), one, other), VIEW)));
    }

    @Test
    void carriesNothingForWhatTheWholeBagCannotTake() {
        Intent far = picture("Far").equivalent(2000).sharp(50, 60).intent();
        SmallestBag smallest = smallest(Samples.bag(fullFrame(24), ZOOM), far);
        assertEquals(List.of(), carried(smallest));
        assertEquals(Verdict.CANNOT, smallest.fits().get(0).best().verdict());
        assertTrue(kinds(smallest.fits().get(0).helps()).contains(HelpAdvice.HelpLonger.class));
    }

    @Test
    void neverWeighsMoreThanTheWholeBagsOwnChoicesWhenThereIsTooMuchToSearch() {
        List<Lens> lenses = new ArrayList<>();
        List<Intent> intents = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            lenses.add(prime(30 + 6 * i));
            intents.add(picture("View " + i).equivalent(30 + 6 * i).sharp(40, 80).intent());
        }
        SmallestBag smallest = smallest(Samples.bag(fullFrame(24), lenses.toArray(Lens[]::new)),
                intents.toArray(Intent[]::new));
        assertTrue(carried(smallest).size() < 25, carried(smallest).toString());
    }

    @Test
    void saysWhoseThingWouldDo() {
        Companion friend = new Companion("A friend", with(Samples.bag(Samples.body("Other body",
                Sensor.APS_C, 20), MACRO), LEGS));
        ShotFit fit = SmallestBag.of(Samples.bag(fullFrame(24), ZOOM), List.of(friend), List.of(STAR)).fits().get(0);
        assertEquals(new HelpAdvice.Borrow("A friend", "Close-up prime"), Samples.the(HelpAdvice.Borrow.class, fit.helps()));
    }

    @Test
    void borrowsLegsWhereNothingHoldsTheCameraAndNothingWhereAllIsWell() {
        Companion friend = new Companion("A friend", with(Samples.bag(fullFrame(24), prime(50)), LEGS));
        List<Companion> friends = List.of(friend);
        ShotFit byHand = SmallestBag.of(Samples.bag(fullFrame(24), ZOOM), friends, List.of(VIEW)).fits().get(0);
        assertEquals(List.of(HelpAdvice.HelpSupport.class, HelpAdvice.Borrow.class), kinds(byHand.helps()));
        assertEquals(new HelpAdvice.Borrow("A friend", "Legs"), byHand.helps().get(1));
        Bag own = with(Samples.bag(fullFrame(24), ZOOM), LEGS);
        assertEquals(List.of(), SmallestBag.of(own, friends, List.of(VIEW)).fits().get(0).helps());
    }

    @Test
    void letsACompanionTakeWhatOnlyTheirOwnCameraCan() {
        Lens theirs = new Lens("Their prime", "B", null, 300, 300, 4, 4, null, 2, null, null, 0, null);
        Body body = new Body("Their body", Sensor.FULL_FRAME, 24, "B",
                100, 3200, 0, null, null, null, List.of());
        Companion friend = new Companion("A friend", Samples.bag(body, theirs));
        Intent far = picture("Far").equivalent(300).sharp(50, 60).intent();
        ShotFit fit = SmallestBag.of(Samples.bag(fullFrame(12), prime(24)), List.of(friend), List.of(far)).fits().get(0);
        assertEquals(Verdict.CANNOT, fit.best().verdict());
        assertEquals("Their body, Their prime", Samples.the(HelpAdvice.BorrowCamera.class, fit.helps()).item());
    }
}
