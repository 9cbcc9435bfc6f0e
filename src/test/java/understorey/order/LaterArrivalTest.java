package understorey.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.MAY_DAY;
import static understorey.Samples.picture;
import static understorey.Samples.trip;
import static understorey.Samples.wood;
import static understorey.order.RunningOrderTest.at;
import static understorey.order.RunningOrderTest.gated;
import static understorey.order.RunningOrderTest.plan;

import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.advice.VisitAdvice;
import understorey.plan.Opening;
import understorey.plan.Parking;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.Trip;
import understorey.visit.Hours;

/** Gate to footbridge nine minutes by day and thirteen by lamp, three minutes to set up. */
class LaterArrivalTest {

    private static RunningOrder arriving(String arrive, String pin) {
        return plan(trip(gated(), arrive, "10:00", pinned(pin)));
    }

    private static Shot pinned(String pin) {
        return picture("a").at("Footbridge").pinned(pin).shot();
    }

    private static VisitAdvice.CouldArriveLater later(RunningOrder outing) {
        return outing.remarks().stream().filter(VisitAdvice.CouldArriveLater.class::isInstance)
                .map(VisitAdvice.CouldArriveLater.class::cast).findFirst().orElse(null);
    }

    private static VisitAdvice.CouldArriveLater said(RunningOrder outing) {
        VisitAdvice.CouldArriveLater later = later(outing);
        assertNotNull(later, "says that one may arrive later");
        return later;
    }

    @Test
    void saysHowMuchLaterOneMayArriveForTheFirstPicture() {
        RunningOrder outing = arriving("06:00", "06:57");
        VisitAdvice.CouldArriveLater later = said(outing);
        assertEquals(at("06:57"), later.start().toLocalTime());
        assertEquals(at("06:45"), later.arrive().toLocalTime());
        assertEquals(45, later.minutes());
        assertEquals(outing.timeOf("a"), arriving("06:45", "06:57").timeOf("a"));
        assertNull(arriving("06:46", "06:57").timeOf("a"));
    }

    @Test
    void saysNothingOfLessThanHalfAnHour() {
        assertEquals(30, said(arriving("06:15", "06:57")).minutes());
        assertNull(later(arriving("06:16", "06:57")));
        assertNull(later(plan(trip(gated(), "06:00", "07:00", picture("a").at("Footbridge").minutes(200).shot()))), "nothing is taken");
    }

    /** By lamp the walk is longer, and who arrives later walks by day. */
    @Test
    void countsWithTheLightOfTheLaterWalk() {
        for (String pin : List.of("04:40", "04:50", "05:00", "05:10", "05:20")) {
            LocalTime arrive = later(arriving("03:00", pin)).arrive().toLocalTime();
            assertEquals(at(pin), arriving(arrive.toString(), pin).timeOf("a").from().toLocalTime());
            assertNull(arriving(arrive.plusMinutes(1).toString(), pin).timeOf("a"));
        }
    }

    /** Before the gate opens nobody walks: what is saved counts from the opening, what one is later from the arrival. */
    @Test
    void doesNotTakeTheWaitAtTheGateForOneOfThePicture() {
        Site closed = wood(wood().spots(), wood().walks(), new Opening(at("07:00"), at("20:00")), new Parking("Gate", null, null));
        assertNull(later(plan(trip(closed, "06:00", "10:00", pinned("07:41")))));
        VisitAdvice.CouldArriveLater later = later(plan(trip(closed, "06:00", "10:00", pinned("07:42"))));
        assertEquals(at("07:30"), later.arrive().toLocalTime());
        assertEquals(90, later.minutes());
    }

    @Test
    void saysSoOfAnArrivalThatNobodyGave() {
        Trip trip = trip(gated(), null, "10:00", pinned("07:00"));
        RunningOrder outing = plan(trip);
        assertTrue(Hours.of(trip, MAY_DAY).assumed().contains("arrive"));
        assertEquals(at("06:48"), later(outing).arrive().toLocalTime());
        assertFalse(Samples.kinds(plan(trip(gated(), "06:00", "10:00", picture("a").at("Footbridge").shot())).remarks())
                .contains(VisitAdvice.CouldArriveLater.class));
    }
}
