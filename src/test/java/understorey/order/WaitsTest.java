package understorey.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.MAY_DAY;
import static understorey.Samples.picture;
import static understorey.Samples.trip;
import static understorey.order.RunningOrderTest.at;
import static understorey.order.RunningOrderTest.gated;
import static understorey.order.RunningOrderTest.told;

import java.time.LocalTime;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.advice.WaitAdvice;
import understorey.light.Outlook.Grade;
import understorey.plan.LightWish;
import understorey.plan.Role;
import understorey.plan.Shot;
import understorey.plan.Trip;
import understorey.sky.Interval;
import understorey.sky.SunDay;

/** What is said of a wait: gate to footbridge nine minutes, three to set up, so ready at 6:12. */
class WaitsTest {

    private static final Function<Shot, Quality> ALWAYS = shot -> time -> 1;

    private static RunningOrder plan(Function<Shot, Quality> light, Shot... shots) {
        return Orders.of(trip(gated(), "06:00", "10:00", shots), light);
    }

    private static Samples.Picture extra() {
        return picture("extra").at("Footbridge").role(Role.EXTRA);
    }

    private static Shot pinned(String time) {
        return picture("pinned").at("Footbridge").role(Role.OPENING).pinned(time).shot();
    }

    private static void offersAnExtraOfOnesOwn(RunningOrder outing, int leg, int minutes) {
        WaitAdvice.WaitWithRoom room = assertInstanceOf(WaitAdvice.WaitWithRoom.class, outing.legs().get(leg).why(), told(outing));
        assertEquals(minutes, room.minutes());
        assertInstanceOf(WaitAdvice.WaitForPin.class, room.why());
    }

    @Test
    void takesAnExtraInTheWaitThatHoldsIt() {
        assertEquals("06:00 WALK Footbridge, 06:09 SET_UP, 06:15 SHOOT, 06:30 SET_UP, 06:33 SHOOT, 06:48 WALK Gate",
                told(plan(ALWAYS, pinned("06:33"), extra().shot())));
    }

    @Test
    void namesNoExtraThatDoesNotFitBeforeTheNextIsSetUp() {
        RunningOrder outing = plan(ALWAYS, pinned("06:32"), extra().shot());
        offersAnExtraOfOnesOwn(outing, 2, 20);
        assertEquals(at("06:50"), outing.timeOf("extra").from().toLocalTime());
        assertInstanceOf(WaitAdvice.WaitForPin.class, plan(ALWAYS, pinned("06:31"), extra().shot()).legs().get(2).why(), "too short for anything");
    }

    @Test
    void namesNoExtraThatIsPinnedToAnotherTime() {
        offersAnExtraOfOnesOwn(plan(ALWAYS, pinned("07:00"), extra().pinned("08:00").shot()), 2, 48);
    }

    @Test
    void namesNoExtraThatIsPlannedForItsBetterLight() {
        RunningOrder outing = plan(shot -> time -> shot.name().equals("extra") && time.getHour() < 8 ? 0.5 : 1, pinned("07:00"),
                extra().shot());
        offersAnExtraOfOnesOwn(outing, 2, 48);
        assertEquals(at("08:00"), outing.timeOf("extra").from().toLocalTime());
    }

    @Test
    void namesNoExtraThatIsToFollowThePictureWaitedFor() {
        offersAnExtraOfOnesOwn(plan(ALWAYS, pinned("07:00"), extra().after("pinned").shot()), 2, 48);
    }

    @Test
    void namesNoExtraThatIsTakenAlready() {
        RunningOrder outing = plan(ALWAYS, pinned("06:50"), extra().pinned("06:12").minutes(1).shot());
        offersAnExtraOfOnesOwn(outing, 4, 34);
    }

    @Test
    void namesNoExtraThatIsLeftOut() {
        RunningOrder outing = plan(ALWAYS, pinned("06:50"), extra().minutes(200).shot());
        offersAnExtraOfOnesOwn(outing, 2, 38);
        assertNull(outing.timeOf("extra"));
    }

    /** So there is never an extra to name: of what is left out a wait holds nothing that has light and may come then. */
    @Test
    void leavesNoWaitThatHoldsAPictureLeftOut() {
        SmallTrips trips = new SmallTrips(1753);
        int tried = 0;
        for (int i = 0; i < 4000; i++) {
            Visit visit = trips.visit(2 + i % 6, 60 + i % 120, 1 + i % 3);
            Schedule schedule = Schedule.best(visit);
            Set<Integer> done = new TreeSet<>();
            int last = -1;
            int end = 0;
            for (Schedule.Take take : schedule.takes()) {
                int ready = last < 0 ? visit.readyFirst(take.task()) : visit.ready(last, take.task(), end);
                for (int left = 0; left < visit.tasks().size(); left++) {
                    if (take.start() - ready >= 5 && !schedule.takes(left) && mayCome(visit, schedule, left, take.task(), done)) {
                        assertFalse(holds(visit, left, take, ready), "trip " + i);
                        tried++;
                    }
                }
                last = take.task();
                end = take.start() + visit.tasks().get(last).minutes();
                done.add(last);
            }
        }
        assertTrue(tried > 300, tried + " pictures left out at the spot of a wait");
    }

    /** It waits for nothing that is taken later, nor anything that is done for it. */
    private static boolean mayCome(Visit visit, Schedule schedule, int left, int next, Set<Integer> done) {
        Task extra = visit.tasks().get(left);
        boolean inTurn = true;
        for (Schedule.Take take : schedule.takes()) {
            inTurn &= done.contains(take.task()) ? !visit.tasks().get(take.task()).after().contains(left) : !extra.after().contains(take.task());
        }
        return inTurn && !extra.pinned() && extra.spot() == visit.tasks().get(next).spot();
    }

    private static boolean holds(Visit visit, int left, Schedule.Take next, int ready) {
        Task extra = visit.tasks().get(left);
        Task waitedFor = visit.tasks().get(next.task());
        int change = extra.lens() == waitedFor.lens() ? 0 : visit.lensChange();
        int start = (ready + change + extra.setUp() + 4) / 5 * 5;
        return start + extra.minutes() + change + waitedFor.setUp() <= next.start() && extra.value()[start / 5] > 0.2;
    }

    private static RunningOrder waiting(int minutes, double before, double after) {
        LocalTime better = at("06:15").plusMinutes(minutes);
        return plan(shot -> time -> time.toLocalTime().isBefore(better) ? before : after, picture("a").at("Footbridge").shot());
    }

    /** Three quarters of an hour are too long a wait for poor light that is slightly less poor (common practice, no source). */
    @Test
    void waitsForABetterGradeAndNotFromPoorToPoor() {
        assertEquals(at("07:00"), waiting(45, 0.1, 0.35).timeOf("a").from().toLocalTime());
        assertEquals(at("09:15"), waiting(180, 0.5, 0.65).timeOf("a").from().toLocalTime());
        assertEquals(at("06:15"), waiting(45, 0.1, 0.25).timeOf("a").from().toLocalTime());
    }

    @Test
    void saysWhatIsGained() {
        assertEquals(new WaitAdvice.WaitForLight(waiting(10, 0.1, 0.35).timeOf("a").from(), Grade.FAIR), waiting(10, 0.1, 0.35).legs().get(2).why());
        assertEquals(new WaitAdvice.WaitForBestLight(waiting(10, 0.6, 1).timeOf("a").from(), Grade.GOOD), waiting(10, 0.6, 1).legs().get(2).why());
    }

    /** Not even ten minutes are worth it. */
    @Test
    void waitsNotAtAllFromPoorToPoor() {
        assertEquals(at("06:15"), waiting(10, 0.05, 0.25).timeOf("a").from().toLocalTime());
        assertEquals(at("06:15"), waiting(10, 0.35, 0.55).timeOf("a").from().toLocalTime());
    }

    /** Nothing is to be had but day instead of dusk; the sun rises at about 5:20. */
    @Test
    void waitsForTheDayWhereThereIsNoLightAtAll() {
        Shot plain = picture("a").at("Footbridge").shot();
        Shot lowSun = new Shot(plain.name(), null, plain.subject(), plain.spot(), null, null, null, null, null,
                null, List.of(LightWish.LOW_SUN), null,
                null, null, null, null, null, null, null, null, null);
        Trip trip = trip(gated(), "05:05", "10:00", lowSun);
        SunDay sun = SunDay.of(trip.site().position(), Interval.day(MAY_DAY, trip.site().zone()));
        RunningOrder outing = Orders.of(trip, shot -> time -> 0);
        assertInstanceOf(WaitAdvice.WaitForDay.class, outing.legs().get(2).why(), told(outing));
        assertFalse(outing.timeOf("a").from().isBefore(sun.sunrise()));
    }
}
