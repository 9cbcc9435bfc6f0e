package understorey.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.MAY_DAY;
import static understorey.Samples.picture;
import static understorey.Samples.trip;
import static understorey.order.RunningOrderTest.at;
import static understorey.order.RunningOrderTest.gated;
import static understorey.order.RunningOrderTest.plan;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.advice.Advice;
import understorey.advice.LeftOutAdvice;
import understorey.advice.RoomAdvice;
import understorey.plan.Shot;
import understorey.plan.Trip;
import understorey.sky.Interval;
import understorey.visit.Hours;

/** Gate to footbridge nine minutes, three to set up, so ready at 6:12 and back nine minutes after the last picture. */
class WhyLeftOutTest {

    private static RunningOrder inLight(Trip trip, Function<Shot, Quality> light) {
        return Orders.of(trip, light);
    }

    private static Samples.Picture here(String name) {
        return picture(name).at("Footbridge");
    }

    private static Advice only(RunningOrder outing) {
        assertEquals(1, outing.remarks().size(), Samples.kinds(outing.remarks()).toString());
        return outing.remarks().get(0);
    }

    @Test
    void doesNotAskToDropAnyOtherPictureForOneThatIsTooLongAlone() {
        Advice lone = only(plan(trip(gated(), "06:00", "07:00", here("a").minutes(37).shot())));
        assertEquals(37, assertInstanceOf(LeftOutAdvice.LongerThanVisit.class, lone).minutes());
        assertNotNull(plan(trip(gated(), "06:00", "07:00", here("a").minutes(36).shot())).timeOf("a"), "6:15 to 6:51");
        Shot must = LeftOutTest.must(here("a").minutes(37));
        assertEquals(LeftOutAdvice.LongerThanVisit.class, Samples.kinds(plan(trip(gated(), "06:00", "07:00", must)).remarks()).get(0));
    }

    /** No lamp is wanted from 4:59: from five o'clock on there is no time for a quarter of an hour and the way back. */
    @Test
    void blamesTheDarkOnlyWhereThereIsTime() {
        assertInstanceOf(LeftOutAdvice.VisitTooDark.class, only(plan(trip(gated(), "02:00", "03:00", here("a").shot()))));
        assertInstanceOf(LeftOutAdvice.VisitTooDark.class, only(plan(trip(gated(), "03:00", "05:23", here("a").shot()))));
        assertNotNull(plan(trip(gated(), "03:00", "05:24", here("a").shot())).timeOf("a"));
        assertInstanceOf(LeftOutAdvice.LongerThanVisit.class, only(plan(trip(gated(), "02:00", "03:00", here("a").minutes(45).shot()))));
    }

    /** From 6:25 on the light of the one is good for a quarter of an hour; the other fits before or after it only if that is given up. */
    @Test
    void saysThatAPictureIsLeftOutForTheLightOfOthers() {
        Function<Shot, Quality> quality = shot -> time -> shot.name().equals("b") ? 0.1 : time.getMinute() >= 25 && time.getMinute() < 40 ? 1 : 0.1;
        RunningOrder outing = inLight(trip(gated(), "06:00", "07:00", LeftOutTest.must(here("a")), here("b").shot()), quality);
        assertEquals(at("06:25"), outing.timeOf("a").from().toLocalTime());
        assertEquals(new LeftOutAdvice.LeftForLight("b"), only(outing));
        RunningOrder must = inLight(trip(gated(), "06:00", "07:00", LeftOutTest.must(here("a")), LeftOutTest.must(here("b"))), quality);
        assertNotNull(must.timeOf("a"));
        assertNotNull(must.timeOf("b"), "so a must is taken all the same");
        RunningOrder longer = inLight(trip(gated(), "06:00", "07:00", LeftOutTest.must(here("a")), here("b").minutes(20).shot()), quality);
        assertInstanceOf(LeftOutAdvice.NoTimeLeft.class, only(longer));
    }

    @Test
    void namesThePinnedPictureThatWaitsForIt() {
        Advice why = only(plan(trip(gated(), "06:00", "10:00", here("a").minutes(30).shot(),
                LeftOutTest.must(here("b").pinned("06:20").after("a")))));
        assertEquals(new LeftOutAdvice.PinBeforeIt("b", MAY_DAY.atTime(6, 20).atZone(Samples.zone()), "a"), why);
        Shot pinned = here("a").pinned("07:00").shot();
        assertInstanceOf(LeftOutAdvice.PinBeforeIt.class, only(plan(trip(gated(), "06:10", "10:00", pinned,
                LeftOutTest.must(here("b").pinned("06:30").after("a"))))));
    }

    @Test
    void namesThePinnedPictureThatItWaitsFor() {
        Advice why = only(plan(trip(gated(), "06:10", "07:10", here("a").after("b").shot(), LeftOutTest.must(here("b").pinned("06:40")))));
        assertEquals("b", assertInstanceOf(LeftOutAdvice.PinLeavesTooLittle.class, why).other());
        assertInstanceOf(LeftOutAdvice.NoTimeLeft.class, only(plan(trip(gated(), "06:20", "07:10", here("a").minutes(20).shot(),
                LeftOutTest.must(here("b").pinned("06:40"))))), "neither waits for the other");
    }

    @Test
    void saysThatSoManyMustsAreTooManyToFindRoomFor() {
        List<Shot> shots = new ArrayList<>();
        for (int i = 0; i < 13; i++) {
            shots.add(LeftOutTest.must(here("p" + i)));
        }
        List<Advice> remarks = plan(trip(gated(), "06:00", "07:00", shots.toArray(Shot[]::new))).remarks();
        assertInstanceOf(RoomAdvice.MustsTooMany.class, remarks.get(remarks.size() - 1));
        assertEquals(13, Samples.the(RoomAdvice.MustsTooMany.class, remarks).count());
    }

    /** No head torch is needed from 4:59 to 21:23; some twenty minutes are lacking. Pictures in the dark gain nothing. */
    @Test
    void putsAWalkByLampBehindTheOtherOffers() {
        Shot first = LeftOutTest.must(here("a").minutes(30));
        Shot second = LeftOutTest.must(here("b").minutes(30));
        assertEquals(List.of(LeftOutAdvice.NoTimeForMust.class,
                        RoomAdvice.RoomByLeaving.class, RoomAdvice.RoomByShortening.class, RoomAdvice.RoomByArrivingInTheDark.class),
                Samples.kinds(plan(trip(gated(), "05:18", "06:28", first, second)).remarks()));
        assertEquals(List.of(LeftOutAdvice.NoTimeForMust.class,
                        RoomAdvice.RoomByArriving.class, RoomAdvice.RoomByShortening.class, RoomAdvice.RoomByLeavingInTheDark.class),
                Samples.kinds(plan(trip(gated(), "20:05", "21:15", first, second)).remarks()));
        assertEquals(List.of(LeftOutAdvice.NoTimeForMust.class, RoomAdvice.RoomByLeaving.class, RoomAdvice.RoomByShortening.class),
                Samples.kinds(plan(trip(gated(), "05:00", "06:10", first, second)).remarks()));
    }

    /** Against every order of every choice: a reason is true of each picture that a made-up visit leaves out. */
    @Test
    void givesNoReasonThatEveryOrderBelies() {
        SmallTrips trips = new SmallTrips(1665);
        ZonedDateTime midnight = MAY_DAY.atStartOfDay(Samples.zone());
        Map<Class<?>, Integer> seen = new HashMap<>();
        for (int i = 0; i < 700; i++) {
            Visit visit = trips.visit(2 + i % 4, 40 + i % 60, 1 + i % 3);
            List<Shot> shots = new ArrayList<>();
            for (int shot = 0; shot < visit.tasks().size(); shot++) {
                shots.add(picture("p" + shot).shot());
            }
            Hours hours = new Hours(new Interval(midnight, midnight.plusDays(1)), midnight.plusMinutes(visit.from()), midnight.plusMinutes(visit.to()), 0, 1439, List.of(),
                    Set.of());
            Schedule schedule = Schedule.best(visit);
            for (Advice why : LeftOut.of(hours, visit, schedule, Orders.candidates(shots, shot -> time -> 1))) {
                if (why instanceof LeftOutAdvice left) {
                    check(left, visit, schedule, Integer.parseInt(left.shot().substring(1)));
                    seen.merge(left.getClass(), 1, Integer::sum);
                }
            }
        }
        for (Class<?> kind : List.of(LeftOutAdvice.LongerThanVisit.class, LeftOutAdvice.LeftForLight.class, LeftOutAdvice.NoTimeLeft.class,
                LeftOutAdvice.NoTimeForMust.class, LeftOutAdvice.PinBeforeIt.class, LeftOutAdvice.PinLeavesTooLittle.class)) {
            assertTrue(seen.getOrDefault(kind, 0) > 3, seen.toString());
        }
    }

    private static void check(LeftOutAdvice why, Visit visit, Schedule schedule, int left) {
        List<Integer> together = new ArrayList<>();
        for (int i = 0; i < visit.tasks().size(); i++) {
            if (i == left || schedule.takes(i)) {
                together.add(i);
            }
        }
        boolean alone = EveryOrder.of(visit.only(List.of(left))).most() == 1;
        boolean beside = EveryOrder.of(visit.only(together)).most() == together.size();
        if (why instanceof LeftOutAdvice.PinMissed || why instanceof LeftOutAdvice.PinTooLate) {
            assertTrue(!alone, why.toString());
        } else if (why instanceof LeftOutAdvice.LongerThanVisit || why instanceof LeftOutAdvice.VisitTooDark) {
            Task lit = visit.only(List.of(left)).tasks().get(0).inAnyLight();
            boolean inTheDark = EveryOrder.of(visit.with(List.of(lit))).most() == 1;
            assertTrue(!alone && inTheDark == why instanceof LeftOutAdvice.VisitTooDark, why.toString());
        } else if (why instanceof LeftOutAdvice.LeftForLight) {
            assertTrue(beside);
            List<Task> tasks = new ArrayList<>(visit.tasks());
            Task picture = tasks.get(left);
            tasks.set(left, new Task(picture.spot(), picture.minutes(), Task.MUST, picture.pin(), picture.after(), picture.setUp(),
                    picture.lens(), picture.value()));
            assertTrue(Schedule.best(visit.with(tasks)).takes(left), "as a must it is taken");
        } else {
            assertTrue(alone && !beside, why.toString());
        }
    }
}
