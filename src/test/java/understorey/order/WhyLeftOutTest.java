package understorey.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.plan.Shot;
import understorey.plan.Trip;
import understorey.reason.Reason;
import understorey.visit.Hours;
import understorey.visit.OutingReason;

/** Gate to footbridge nine minutes, three to set up, so ready at 6:12 and back nine minutes after the last picture. */
class WhyLeftOutTest {

    private static RunningOrder inLight(Trip trip, Function<Shot, Quality> light) {
        return Orders.of(trip, light);
    }

    private static Samples.Picture here(String name) {
        return picture(name).at("Footbridge");
    }

    private static Reason only(RunningOrder outing) {
        assertEquals(1, outing.remarks().size(), Samples.kinds(outing.remarks()).toString());
        return outing.remarks().get(0);
    }

    @Test
    void doesNotAskToDropAnyOtherPictureForOneThatIsTooLongAlone() {
        Reason lone = only(plan(trip(gated(), "06:00", "07:00", here("a").minutes(37).shot())));
        assertEquals(OutingReason.LONGER_THAN_VISIT, lone.kind());
        assertEquals(37.0, lone.figures().get("minutes").value());
        assertNotNull(plan(trip(gated(), "06:00", "07:00", here("a").minutes(36).shot())).timeOf("a"), "6:15 to 6:51");
        Shot must = LeftOutTest.must(here("a").minutes(37));
        assertEquals("LONGER_THAN_VISIT", Samples.kinds(plan(trip(gated(), "06:00", "07:00", must)).remarks()).get(0));
    }

    /** No lamp is wanted from 4:59: from five o'clock on there is no time for a quarter of an hour and the way back. */
    @Test
    void blamesTheDarkOnlyWhereThereIsTime() {
        assertEquals(OutingReason.VISIT_TOO_DARK, only(plan(trip(gated(), "02:00", "03:00", here("a").shot()))).kind());
        assertEquals(OutingReason.VISIT_TOO_DARK, only(plan(trip(gated(), "03:00", "05:23", here("a").shot()))).kind());
        assertNotNull(plan(trip(gated(), "03:00", "05:24", here("a").shot())).timeOf("a"));
        assertEquals(OutingReason.LONGER_THAN_VISIT, only(plan(trip(gated(), "02:00", "03:00", here("a").minutes(45).shot()))).kind());
    }

    /** From 6:25 on the light of the one is good for a quarter of an hour; the other fits before or after it only if that is given up. */
    @Test
    void saysThatAPictureIsLeftOutForTheLightOfOthers() {
        Function<Shot, Quality> quality = shot -> time -> shot.name().equals("b") ? 0.1 : time.getMinute() >= 25 && time.getMinute() < 40 ? 1 : 0.1;
        RunningOrder outing = inLight(trip(gated(), "06:00", "07:00", here("a").shot(), here("b").shot()), quality);
        assertEquals(at("06:25"), outing.timeOf("a").from().toLocalTime());
        assertEquals(OutingReason.LEFT_FOR_LIGHT, only(outing).kind());
        assertEquals("b", only(outing).figures().get("shot").value());
        RunningOrder must = inLight(trip(gated(), "06:00", "07:00", here("a").shot(), LeftOutTest.must(here("b"))), quality);
        assertNotNull(must.timeOf("a"));
        assertNotNull(must.timeOf("b"), "so a must is taken all the same");
        RunningOrder longer = inLight(trip(gated(), "06:00", "07:00", here("a").shot(), here("b").minutes(20).shot()), quality);
        assertEquals(OutingReason.NO_TIME_LEFT, only(longer).kind());
    }

    @Test
    void namesThePinnedPictureThatWaitsForIt() {
        Reason why = only(plan(trip(gated(), "06:00", "10:00", here("a").minutes(30).shot(), LeftOutTest.must(here("b").pinned("06:20").after("a")))));
        assertEquals(OutingReason.PIN_BEFORE_IT, why.kind());
        assertEquals("a", why.figures().get("shot").value());
        assertEquals("b", why.figures().get("other").value());
        assertEquals(at("06:20"), ((ZonedDateTime) why.figures().get("pin").value()).toLocalTime());
        Shot pinned = here("a").pinned("07:00").shot();
        assertEquals(OutingReason.PIN_BEFORE_IT, only(plan(trip(gated(), "06:10", "10:00", pinned,
                LeftOutTest.must(here("b").pinned("06:30").after("a"))))).kind());
    }

    @Test
    void namesThePinnedPictureThatItWaitsFor() {
        Reason why = only(plan(trip(gated(), "06:10", "07:10", here("a").after("b").shot(), LeftOutTest.must(here("b").pinned("06:40")))));
        assertEquals(OutingReason.PIN_LEAVES_TOO_LITTLE, why.kind());
        assertEquals("b", why.figures().get("other").value());
        assertEquals(OutingReason.NO_TIME_LEFT, only(plan(trip(gated(), "06:20", "07:10", here("a").minutes(20).shot(),
                LeftOutTest.must(here("b").pinned("06:40"))))).kind(), "neither waits for the other");
    }

    @Test
    void saysThatSoManyMustsAreTooManyToFindRoomFor() {
        List<Shot> shots = new ArrayList<>();
        for (int i = 0; i < 13; i++) {
            shots.add(LeftOutTest.must(here("p" + i)));
        }
        List<Reason> remarks = plan(trip(gated(), "06:00", "07:00", shots.toArray(Shot[]::new))).remarks();
        assertEquals(OutingReason.MUSTS_TOO_MANY, remarks.get(remarks.size() - 1).kind());
        assertEquals(13, Samples.figure(remarks, OutingReason.MUSTS_TOO_MANY, "count"));
    }

    /** No lamp is wanted from 4:59 to 21:23; some twenty minutes are lacking. */
    @Test
    void putsAWalkByLampBehindTheOtherOffers() {
        Shot first = LeftOutTest.must(here("a").minutes(30));
        Shot second = LeftOutTest.must(here("b").minutes(30));
        assertEquals(List.of("NO_TIME_FOR_MUST", "ROOM_BY_LEAVING", "ROOM_BY_SHORTENING", "ROOM_BY_ARRIVING_IN_THE_DARK"),
                Samples.kinds(plan(trip(gated(), "05:00", "06:10", first, second)).remarks()));
        assertEquals(List.of("NO_TIME_FOR_MUST", "ROOM_BY_ARRIVING", "ROOM_BY_SHORTENING", "ROOM_BY_LEAVING_IN_THE_DARK"),
                Samples.kinds(plan(trip(gated(), "20:05", "21:15", first, second)).remarks()));
    }

    /** Against every order of every choice: a reason is true of each picture that a made-up visit leaves out. */
    @Test
    void givesNoReasonThatEveryOrderBelies() {
        SmallTrips trips = new SmallTrips(1665);
        ZonedDateTime midnight = MAY_DAY.atStartOfDay(Samples.zone());
        Map<String, Integer> seen = new TreeMap<>();
        for (int i = 0; i < 700; i++) {
            Visit visit = trips.visit(2 + i % 4, 40 + i % 60, 1 + i % 3);
            List<Shot> shots = new ArrayList<>();
            for (int shot = 0; shot < visit.tasks().size(); shot++) {
                shots.add(picture("p" + shot).shot());
            }
            Hours hours = new Hours(midnight, midnight.plusMinutes(visit.from()), midnight.plusMinutes(visit.to()), 0, 1439, List.of(),
                    Set.of());
            Schedule schedule = Schedule.best(visit);
            for (Reason why : LeftOut.of(hours, visit, schedule, Orders.candidates(shots, shot -> time -> 1))) {
                if (why.figures().containsKey("shot") && why.kind() != OutingReason.ROOM_BY_SHORTENING) {
                    check((OutingReason) why.kind(), visit, schedule, Integer.parseInt(((String) why.figures().get("shot").value()).substring(1)));
                    seen.merge(why.kind().name(), 1, Integer::sum);
                }
            }
        }
        for (String kind : List.of("LONGER_THAN_VISIT", "LEFT_FOR_LIGHT", "NO_TIME_LEFT", "NO_TIME_FOR_MUST", "PIN_BEFORE_IT", "PIN_LEAVES_TOO_LITTLE")) {
            assertTrue(seen.getOrDefault(kind, 0) > 3, seen.toString());
        }
    }

    private static void check(OutingReason kind, Visit visit, Schedule schedule, int left) {
        List<Integer> together = new ArrayList<>();
        for (int i = 0; i < visit.tasks().size(); i++) {
            if (i == left || schedule.takes(i)) {
                together.add(i);
            }
        }
        boolean alone = EveryOrder.of(visit.only(List.of(left))).most() == 1;
        boolean beside = EveryOrder.of(visit.only(together)).most() == together.size();
        switch (kind) {
            case PIN_MISSED, PIN_TOO_LATE -> assertTrue(!alone, kind.name());
            case LONGER_THAN_VISIT, VISIT_TOO_DARK -> {
                Task lit = visit.only(List.of(left)).tasks().get(0).inAnyLight();
                boolean inTheDark = EveryOrder.of(visit.with(List.of(lit))).most() == 1;
                assertTrue(!alone && inTheDark == (kind == OutingReason.VISIT_TOO_DARK), kind.name());
            }
            case LEFT_FOR_LIGHT -> {
                assertTrue(beside);
                List<Task> tasks = new ArrayList<>(visit.tasks());
                Task picture = tasks.get(left);
                tasks.set(left, new Task(picture.spot(), picture.minutes(), Task.MUST, picture.pin(), picture.after(), picture.setUp(),
                        picture.lens(), picture.quality()));
                assertTrue(Schedule.best(visit.with(tasks)).takes(left), "as a must it is taken");
            }
            default -> assertTrue(alone && !beside, kind.name());
        }
    }
}
