package understorey.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.picture;
import static understorey.Samples.trip;
import static understorey.Samples.wood;
import static understorey.order.RunningOrderTest.AT_THE_GATE;
import static understorey.order.RunningOrderTest.at;
import static understorey.order.RunningOrderTest.gated;
import static understorey.order.RunningOrderTest.plan;
import static understorey.order.RunningOrderTest.told;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Places;
import understorey.Samples;
import understorey.advice.LeftOutAdvice;
import understorey.advice.VisitAdvice;
import understorey.plan.Position;
import understorey.plan.Share;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.Trip;
import understorey.sky.Interval;
import understorey.sky.SunDay;

/** Where the walk begins when nobody parks, and the order by lamp. */
class OrderAtTheEdgesTest {

    @Test
    void beginsAndEndsAtAPictureWhereNobodyParks() {
        RunningOrder outing = plan(trip(wood(), "06:00", "10:00", picture("a").at("Bank").shot()));
        assertEquals("06:00 SET_UP, 06:05 SHOOT", told(outing));
        assertEquals("Bank", outing.legs().get(0).spot());
        assertTrue(outing.leaveLastSpotBy().isEqual(outing.leave()));
        RunningOrder two = plan(trip(wood(), "06:00", "10:00", picture("a").at("Bank").shot(), picture("b").at("Footbridge").shot()));
        assertEquals("06:00 SET_UP, 06:05 SHOOT, 06:20 WALK Footbridge, 06:26 SET_UP, 06:30 SHOOT", told(two));
        assertEquals(List.of(VisitAdvice.NoParking.class), Samples.kinds(two.remarks()));
    }

    /** Whatever stands first in the file does not decide where the walk begins. */
    @Test
    void losesNoMustByAnotherPictureBeforeItWhereNobodyParks() {
        Shot must = picture("a").at("Bank").pinned("06:04").shot();
        assertEquals(at("06:04"), plan(trip(wood(), "06:00", "07:00", picture("b").at("Gate").shot(), must)).timeOf("a").from().toLocalTime());
    }

    @Test
    void keepsPicturesOutOfTheDarkUnlessTheyArePinned() {
        RunningOrder night = plan(trip(gated(), "00:30", "03:00", picture("a").at("Footbridge").shot(),
                picture("b").at("Footbridge").pinned("02:00").shot()));
        assertNull(night.timeOf("a"));
        assertEquals(at("02:00"), night.timeOf("b").from().toLocalTime());
        assertEquals(List.of(LeftOutAdvice.VisitTooDark.class, VisitAdvice.CouldArriveLater.class), Samples.kinds(night.remarks()));
        RunningOrder dawn = plan(trip(gated(), "00:30", "07:00", picture("a").at("Footbridge").shot()));
        assertTrue(dawn.timeOf("a").from().getHour() >= 5);
        assertEquals(List.of(VisitAdvice.CouldArriveLater.class), Samples.kinds(dawn.remarks()));
    }

    /** At 70° N in December the sun stays down, yet at noon it stands above −6°: light enough for a path. */
    @Test
    void seesThePathInTheTwilightOfAPolarNoon() {
        Site site = wood(Places.POLAR_NIGHT, wood().spots(), wood().walks(), null, AT_THE_GATE);
        RunningOrder outing = Orders.of(trip(site, "11:00", "13:00", picture("a").at("Footbridge").shot()), Places.POLAR_NIGHT.date());
        assertEquals(Duration.ofMinutes(9), Duration.between(outing.legs().get(0).from(), outing.legs().get(0).to()));
        RunningOrder early = Orders.of(trip(site, "06:00", "08:00", picture("a").at("Footbridge").pinned("06:30").shot()), Places.POLAR_NIGHT.date());
        assertEquals(Duration.ofMinutes(13), Duration.between(early.legs().get(0).from(), early.legs().get(0).to()));
    }

    /** Where dusk falls after midnight, the date's own dusk comes before its dawn; the day between is no night. */
    @Test
    void doesNotTakeTheDuskOfTheNightBeforeForTonights() {
        Places north = new Places(new Position(59.5, 25), ZoneId.of("Europe/Helsinki"), LocalDate.of(2027, 6, 21));
        SunDay sun = SunDay.of(north.position(), Interval.day(north.date(), north.zone()));
        assertTrue(sun.civilDusk().isBefore(sun.civilDawn()));
        Site site = wood(north, wood().spots(), wood().walks(), null, AT_THE_GATE);
        RunningOrder outing = Orders.of(trip(site, "11:00", "13:00", picture("a").at("Footbridge").shot()), north.date());
        assertEquals(Duration.ofMinutes(9), Duration.between(outing.legs().get(0).from(), outing.legs().get(0).to()));
    }

    @Test
    void saysThatWalksAreWithheldWherePositionsAre() {
        Trip open = trip(wood(wood().spots(), List.of(), null, AT_THE_GATE), "06:00", "10:00", picture("a").at("Bank").shot());
        assertEquals(List.of(VisitAdvice.WalkAssumed.class, VisitAdvice.WalkAssumed.class), Samples.kinds(plan(open).remarks()));
        Trip hidden = new Trip(open.title(), open.slug(), null, open.site(), open.when(), open.arrive(), open.leave(), open.gear(), List.of(), null,
                null, List.of(), null, open.shots(), new Share(Share.Audience.PUBLIC, Share.Precision.HIDDEN));
        assertEquals(List.of(VisitAdvice.WalksWithheld.class), Samples.kinds(plan(hidden).remarks()));
    }
}
