package understorey.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static understorey.Samples.MAY_DAY;
import static understorey.Samples.picture;
import static understorey.order.RunningOrderTest.at;
import static understorey.order.RunningOrderTest.gated;
import static understorey.order.RunningOrderTest.plan;
import static understorey.order.RunningOrderTest.told;

import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.advice.VisitAdvice;
import understorey.plan.Contact;
import understorey.plan.Parking;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.Trip;
import understorey.visit.Day;
import understorey.visit.Hours;
import understorey.visit.Safety;
import understorey.visit.WalkOut;

/** The last minute to turn back, where somebody waits for word. From the bank it is 15 minutes by day, 22 by lamp. */
class CheckInTest {

    private static final Shot BANK = picture("a").at("Bank").shot();

    private static Trip trip(Site site, String arrive, String leave, String backBy, Shot... shots) {
        Trip trip = Samples.trip(site, arrive, leave, shots);
        return new Trip(trip.title(), trip.slug(), null, site, trip.when(), trip.arrive(), trip.leave(), trip.gear(), List.of(),
                new Contact("my sister", backBy == null ? null : at(backBy)), null, List.of(), null, trip.shots(), null);
    }

    private static LocalTime leaveBy(Trip trip) {
        return plan(trip).leaveLastSpotBy().toLocalTime();
    }

    @Test
    void turnsBackInTimeForTheWordThatIsDueWithinTheVisit() {
        assertEquals(at("08:45"), leaveBy(trip(gated(), "06:00", "10:00", "09:00", BANK)));
        assertEquals(at("09:45"), leaveBy(trip(gated(), "06:00", "10:00", null, BANK)), "due on leaving");
        assertEquals(at("09:45"), leaveBy(trip(gated(), "06:00", "10:00", "12:00", BANK)), "due after the visit");
        assertEquals(at("21:38"), leaveBy(trip(gated(), "15:00", "23:00", "22:00", BANK)), "by lamp");
    }

    @Test
    void keepsToTheGateWhereThatShutsBeforeTheWordIsDue() {
        Site closing = Samples.wood(Samples.wood().spots(), Samples.wood().walks(), null, new Parking("Gate", at("08:00"), null));
        assertEquals(at("07:45"), leaveBy(trip(closing, "06:00", "10:00", "09:00", BANK)));
        assertEquals(at("06:45"), leaveBy(trip(closing, "06:00", "10:00", "07:00", BANK)));
    }

    @Test
    void isNotLimitedByACheckInAfterMidnight() {
        assertEquals(at("21:38"), leaveBy(trip(gated(), "18:00", "22:00", "00:30", BANK)));
    }

    /** Nobody is at the bank and back within ten minutes: that word sets no limit before arriving, and a remark says it is late. */
    @Test
    void setsNoLimitByAWordThatNobodyCanKeep() {
        assertEquals(at("09:45"), leaveBy(trip(gated(), "06:00", "10:00", "06:10", BANK)));
    }

    @Test
    void leavesByTheWordWhereNoPictureIsTaken() {
        Shot missed = picture("a").at("Bank").pinned("05:00").shot();
        assertEquals(at("08:00"), leaveBy(trip(gated(), "06:00", "10:00", "08:00", missed)));
        assertEquals(at("10:00"), leaveBy(trip(gated(), "06:00", "10:00", "11:00", missed)));
    }

    @Test
    void leavesTheOrderAsItIs() {
        Shot late = picture("b").at("Footbridge").pinned("09:00").shot();
        Trip due = trip(gated(), "06:00", "10:00", "08:00", BANK, late);
        assertEquals(told(plan(Samples.trip(gated(), "06:00", "10:00", BANK, late))), told(plan(due)));
        assertEquals(at("07:51"), leaveBy(due), "nine minutes from the footbridge");
    }

    /** One reckoning for both: who turns back at the last minute is home with the word by the walk-out's minutes. */
    @Test
    void walksOutInTimeForTheWord() {
        Trip trip = trip(gated(), "15:00", "23:00", "20:00", BANK);
        RunningOrder order = plan(trip);
        Safety safety = Safety.of(Day.of(trip, MAY_DAY), order.back(), order.leaveLastSpotBy(), order.shooting().stream().map(Leg::spot).toList());
        assertNotNull(safety.message());
        assertEquals(new WalkOut("Bank", 15, 15, false), safety.walkOut(), "at 20:00 it is day, at 23:00 night");
        assertEquals(15, Duration.between(safety.leaveLastSpotBy(), safety.message().backBy()).toMinutes());
        assertEquals(List.of(VisitAdvice.StayTooLate.class), Samples.kinds(safety.remarks()));
    }

    @Test
    void isDueTheNextDayWhereItsTimeIsThatOfArriving() {
        Trip trip = trip(gated(), "06:00", "10:00", "06:00", BANK);
        assertEquals(MAY_DAY.plusDays(1).atTime(6, 0).atZone(trip.site().zone()), Hours.of(trip, MAY_DAY).checkInDue(trip.contact()));
    }
}
