package understorey.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.picture;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.advice.Advice;
import understorey.advice.HelpAdvice;
import understorey.advice.TripAdvice;
import understorey.advice.VisitAdvice;
import understorey.kit.Verdict;
import understorey.packing.Packing;
import understorey.plan.Bag;
import understorey.plan.Companion;
import understorey.plan.Contact;
import understorey.plan.Trip;
import understorey.reading.subject.SubjectCatalogue;

class PlannerTest {

    private static Brief brief(LocalDate date, Samples.Picture... pictures) {
        understorey.plan.Shot[] shots = new understorey.plan.Shot[pictures.length];
        for (int i = 0; i < shots.length; i++) {
            shots[i] = pictures[i].shot();
        }
        return Planner.brief(Samples.trip(Samples.wood(), date, "09:00", "12:00", List.of(), shots));
    }

    private static List<Class<?>> kinds(Brief brief) {
        return brief.findings().stream().<Class<?>>map(Advice::getClass).toList();
    }

    /** European summer time 2027: begins on 28 March, ends on 31 October (Directive 2000/84/EC: last Sundays). */
    @Test
    void saysWhenTheClocksChange() {
        assertTrue(kinds(brief(LocalDate.of(2027, 3, 28), picture("a"))).contains(TripAdvice.ClocksGoForward.class));
        assertTrue(kinds(brief(LocalDate.of(2027, 10, 31), picture("a"))).contains(TripAdvice.ClocksGoBack.class));
        List<Class<?>> ordinary = kinds(brief(LocalDate.of(2027, 3, 27), picture("a")));
        assertFalse(ordinary.contains(TripAdvice.ClocksGoForward.class) || ordinary.contains(TripAdvice.ClocksGoBack.class));
    }

    @Test
    void holdsTheTableOfADayOf23And25Hours() {
        assertEquals(92, brief(LocalDate.of(2027, 3, 28), picture("a")).day().light().size());
        assertEquals(100, brief(LocalDate.of(2027, 10, 31), picture("a")).day().light().size());
    }

    @Test
    void warnsThatWordIsDueBeforeOneIsBack() {
        Trip trip = Samples.trip(Samples.wood(), Samples.MAY_DAY, "09:00", "12:00", List.of(), Samples.picture("a").at("Bank").shot());
        for (String by : List.of("09:19", "09:20")) {
            Brief brief = Planner.brief(new Trip(trip.title(), trip.slug(), null, trip.site(), trip.when(), trip.arrive(), trip.leave(),
                    trip.gear(), List.of(), new Contact("my sister", LocalTime.parse(by)), null, List.of(), null, trip.shots(), null));
            assertEquals("09:20", brief.safety().back().toLocalTime().toString());
            assertEquals(by.equals("09:19"), brief.findings().stream().anyMatch(finding ->
                    finding instanceof VisitAdvice.BackTooLate && finding.severity() == Advice.Severity.WARNING), by);
        }
    }

    /** Nothing is wrong with coming too early. */
    @Test
    void notesThatOneCouldArriveLater() {
        Trip trip = Samples.trip(Samples.wood(), Samples.MAY_DAY, "09:00", "12:00", List.of(),
                Samples.picture("a").at("Bank").pinned("10:00").shot());
        assertEquals(List.of(Advice.Severity.NOTE), Planner.brief(trip).findings().stream()
                .filter(VisitAdvice.CouldArriveLater.class::isInstance).map(Advice::severity).toList());
    }

    @Test
    void saysThatNobodyDescribedTheTrees() {
        assertTrue(kinds(brief(Samples.MAY_DAY, picture("a"))).contains(TripAdvice.CanopyUnknown.class)
                == (Samples.wood().canopy() == null));
    }

    /** A leafed wood on a clear day is metered at EV 8 to 10 (common practice, no source); open ground at EV 14 to 15. */
    @Test
    void plansTheLightOfTheWoodThatAWoodlandFlowerGrowsIn() {
        Brief bluebells = brief(Samples.MAY_DAY, picture("a").of(SubjectCatalogue.builtIn().find("bluebell")));
        assertEquals(9, bluebells.timed().get(0).light().floorEv(1), 1.5);
        assertTrue(bluebells.assumed().contains("canopy"));
        assertTrue(kinds(bluebells).contains(TripAdvice.WoodAssumed.class) && !kinds(bluebells).contains(TripAdvice.CanopyUnknown.class));
        Brief lilies = brief(Samples.MAY_DAY, picture("a").of(SubjectCatalogue.builtIn().find("bush-lily")));
        assertTrue(kinds(lilies).contains(TripAdvice.EvergreensAssumed.class));
        Brief heath = brief(Samples.MAY_DAY, picture("a").of(SubjectCatalogue.builtIn().find("heather")));
        assertTrue(heath.assumed().contains("canopy") && kinds(heath).contains(TripAdvice.CanopyUnknown.class));
        assertEquals(14.5, heath.timed().get(0).light().floorEv(1), 1);
    }

    @Test
    void warnsOfACarpetOfWhichTheFrameShowsNoGround() {
        Samples.Picture up = picture("a").of(SubjectCatalogue.builtIn().find("ramsons")).equivalent(50).sharp(2.5, 40).tilt(-20);
        assertEquals(List.of(Advice.Severity.WARNING), brief(Samples.MAY_DAY, up).findings().stream()
                .filter(TripAdvice.NoGroundInFrame.class::isInstance).map(Advice::severity).toList());
        assertFalse(kinds(brief(Samples.MAY_DAY, up.tilt(5))).contains(TripAdvice.NoGroundInFrame.class));
    }

    @Test
    void packsNothingForAPictureThatCannotBeTaken() {
        Brief brief = brief(Samples.MAY_DAY, picture("far").equivalent(2000).sharp(50, 60));
        assertEquals(Verdict.CANNOT, brief.timed().get(0).verdict());
        assertEquals(List.of(), brief.packing().take().stream().filter(item -> !item.shots().isEmpty()).toList());
        assertTrue(kinds(brief).contains(TripAdvice.ShotCannot.class));
    }

    @Test
    void settlesOnTheExpectedSkyOnlyWhenNobodyKnowsIt() {
        Brief brief = brief(Samples.MAY_DAY, picture("a"));
        assertTrue(kinds(brief).contains(TripAdvice.SkyUnknown.class) && brief.assumed().contains("sky"));
        TimedShot shot = brief.timed().get(0);
        assertEquals(shot.otherSkies().get(1).settings().ev100(), shot.settings().ev100(), 1e-12);
    }

    @Test
    void plansWithTheSmallestBagAndPacksWhatThePlanUses() {
        Trip trip = Samples.trip(Samples.wood(), Samples.MAY_DAY, "09:00", "12:00", List.of(),
                picture("a").equivalent(50).sharp(10, 40).shot());
        Bag bag = Samples.bag(Samples.fullFrame(24), Samples.ZOOM, Samples.prime(50));
        Companion friend = new Companion("A friend", Samples.with(bag, Samples.LEGS));
        Brief brief = Planner.brief(new Trip(trip.title(), trip.slug(), null, trip.site(), trip.when(), trip.arrive(),
                trip.leave(), bag, List.of(friend), null, null, List.of(), null, trip.shots(), null));
        assertEquals("Prime 50.0", brief.timed().get(0).fit().best().camera().lens().name());
        assertEquals(List.of("Main body", "Prime 50.0"), brief.packing().take().stream().map(Packing.Item::name).toList());
        assertEquals("Short zoom", brief.packing().leave().get(0).name());
        assertTrue(brief.timed().get(0).fit().helps().stream().anyMatch(help -> help instanceof HelpAdvice.Borrow));
    }
}
