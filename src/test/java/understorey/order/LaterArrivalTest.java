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
import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.plan.Opening;
import understorey.plan.Parking;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.Trip;
import understorey.reason.Reason;
import understorey.visit.Hours;
import understorey.visit.OutingReason;

/** Gate to footbridge nine minutes by day and thirteen by lamp, three minutes to set up. */
class LaterArrivalTest {

    private static RunningOrder arriving(String arrive, String pin) {
        return plan(trip(gated(), arrive, "10:00", pinned(pin)));
    }

    private static Shot pinned(String pin) {
        return picture("a").at("Footbridge").pinned(pin).shot();
    }

    private static Reason later(RunningOrder outing) {
        return outing.remarks().stream().filter(remark -> remark.kind() == OutingReason.COULD_ARRIVE_LATER).findFirst().orElse(null);
    }

    private static Reason said(RunningOrder outing) {
        Reason later = later(outing);
        assertNotNull(later, "says that one may arrive later");
        return later;
    }

    private static LocalTime clock(Reason reason, String figure) {
        return ((ZonedDateTime) reason.figures().get(figure).value()).toLocalTime();
    }

    @Test
    void saysHowMuchLaterOneMayArriveForTheFirstPicture() {
        RunningOrder outing = arriving("06:00", "06:57");
        Reason later = said(outing);
        assertEquals(at("06:57"), clock(later, "start"));
        assertEquals(at("06:45"), clock(later, "arrive"));
        assertEquals(45.0, later.figures().get("minutes").value());
        assertEquals(outing.timeOf("a"), arriving("06:45", "06:57").timeOf("a"));
        assertNull(arriving("06:46", "06:57").timeOf("a"));
    }

    @Test
    void saysNothingOfLessThanHalfAnHour() {
        assertEquals(30.0, said(arriving("06:15", "06:57")).figures().get("minutes").value());
        assertNull(later(arriving("06:16", "06:57")));
        assertNull(later(plan(trip(gated(), "06:00", "07:00", picture("a").at("Footbridge").minutes(200).shot()))), "nothing is taken");
    }

    /** By lamp the walk is longer, and who arrives later walks by day. */
    @Test
    void countsWithTheLightOfTheLaterWalk() {
        for (String pin : List.of("04:40", "04:50", "05:00", "05:10", "05:20")) {
            LocalTime arrive = clock(later(arriving("03:00", pin)), "arrive");
            assertEquals(at(pin), arriving(arrive.toString(), pin).timeOf("a").from().toLocalTime());
            assertNull(arriving(arrive.plusMinutes(1).toString(), pin).timeOf("a"));
        }
    }

    /** Before the gate opens nobody walks: what is saved counts from the opening, what one is later from the arrival. */
    @Test
    void doesNotTakeTheWaitAtTheGateForOneOfThePicture() {
        Site closed = wood(wood().spots(), wood().walks(), new Opening(at("07:00"), at("20:00")), new Parking("Gate", null, null));
        assertNull(later(plan(trip(closed, "06:00", "10:00", pinned("07:41")))));
        Reason later = later(plan(trip(closed, "06:00", "10:00", pinned("07:42"))));
        assertEquals(at("07:30"), clock(later, "arrive"));
        assertEquals(90.0, later.figures().get("minutes").value());
    }

    @Test
    void saysSoOfAnArrivalThatNobodyGave() {
        Trip trip = trip(gated(), null, "10:00", pinned("07:00"));
        RunningOrder outing = plan(trip);
        assertTrue(Hours.of(trip, MAY_DAY).assumed().contains("arrive"));
        assertEquals(at("06:48"), clock(later(outing), "arrive"));
        assertFalse(Samples.kinds(plan(trip(gated(), "06:00", "10:00", picture("a").at("Footbridge").shot())).remarks())
                .contains("COULD_ARRIVE_LATER"));
    }
}
