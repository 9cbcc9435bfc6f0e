package understorey.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.MAY_DAY;
import static understorey.Samples.picture;
import static understorey.Samples.trip;
import static understorey.Samples.wood;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import understorey.Places;
import understorey.Samples;
import understorey.advice.LeftOutAdvice;
import understorey.advice.VisitAdvice;
import understorey.advice.WaitAdvice;
import understorey.plan.Opening;
import understorey.plan.Parking;
import understorey.plan.Position;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.Trip;
import understorey.sky.Interval;
import understorey.sky.SunDay;
import understorey.visit.Hours;

class RunningOrderTest {

    static final Parking AT_THE_GATE = new Parking("Gate", null, null);

    static RunningOrder plan(Trip trip) {
        return Orders.of(trip, MAY_DAY);
    }

    static Site gated() {
        return wood(wood().spots(), wood().walks(), null, AT_THE_GATE);
    }

    static String told(RunningOrder outing) {
        List<String> told = new ArrayList<>();
        for (Leg leg : outing.legs()) {
            told.add(leg.from().toLocalTime() + " " + leg.what() + (leg.what() == Leg.What.WALK ? " " + leg.spot() : ""));
        }
        return String.join(", ", told);
    }

    static LocalTime at(String time) {
        return LocalTime.parse(time);
    }

    /** The bright minutes at its start hold no picture of 20: fair light for all of it is worth the wait (common practice, no source). */
    @Test
    void beginsNoPictureShortlyBeforeItsLightEnds() {
        RunningOrder outing = Orders.of(trip(gated(), "06:00", "10:00", picture("a").at("Footbridge").minutes(20).shot()),
                shot -> time -> time.toLocalTime().isBefore(at("06:20")) ? 1 : time.getHour() < 7 ? 0.1 : 0.35);
        assertEquals(at("07:00"), outing.timeOf("a").from().toLocalTime(), told(outing));
    }

    /** It dims a little at the end: that is no reason to wait. */
    @Test
    void beginsInLightThatDimsALittle() {
        RunningOrder outing = Orders.of(trip(gated(), "06:00", "10:00", picture("a").at("Footbridge").minutes(20).shot()),
                shot -> time -> time.toLocalTime().isBefore(at("06:25")) ? 0.62 : 0.6);
        assertEquals(at("06:15"), outing.timeOf("a").from().toLocalTime(), told(outing));
    }

    @Test
    void walksFromTheCarParkThroughThePicturesAndBack() {
        RunningOrder outing = plan(trip(gated(), "06:00", "10:00", picture("a").at("Footbridge").shot(),
                picture("b").at("Footbridge").minutes(20).shot(), picture("c").at("Bank").shot()));
        assertEquals("06:00 WALK Footbridge, 06:09 SET_UP, 06:15 SHOOT, 06:30 SET_UP, 06:35 SHOOT, "
                + "06:55 WALK Bank, 07:01 SET_UP, 07:05 SHOOT, 07:20 WALK Gate", told(outing));
        assertEquals(at("07:35"), outing.legs().get(8).to().toLocalTime());
        assertEquals(at("09:45"), outing.leaveLastSpotBy().toLocalTime());
        assertEquals(at("07:05"), outing.timeOf("c").from().toLocalTime());
        assertTrue(outing.remarks().isEmpty());
    }

    @Test
    void waitsForAPinAndLeavesOutOneThatIsTooEarly() {
        RunningOrder outing = plan(trip(gated(), "06:00", "10:00", picture("a").at("Footbridge").pinned("06:30").shot(),
                picture("b").at("Bank").pinned("06:12").shot()));
        assertEquals("06:00 WALK Footbridge, 06:09 SET_UP, 06:12 WAIT, 06:30 SHOOT, 06:45 WALK Gate", told(outing));
        assertEquals(List.of(LeftOutAdvice.PinMissed.class), Samples.kinds(outing.remarks()));
    }

    @Test
    void movesAPictureBehindTheOneItMustFollow() {
        RunningOrder outing = plan(trip(wood(), "06:00", "10:00", picture("a").after("c").shot(), picture("b").shot(),
                picture("c").shot()));
        assertEquals(List.of("b", "c", "a"), outing.legs().stream().filter(leg -> leg.what() == Leg.What.SHOOT)
                .map(Leg::shot).toList());
    }

    @Test
    void takesPicturesThatWaitForEachOtherAsTheyStand() {
        RunningOrder outing = plan(trip(wood(), "06:00", "10:00", picture("a").after("b").shot(), picture("b").after("a").shot()));
        assertEquals(List.of("a", "b"), outing.legs().stream().filter(leg -> leg.what() == Leg.What.SHOOT)
                .map(Leg::shot).toList());
    }

    @Test
    void leavesOutWhatWouldOverrunAndStillTakesWhatDoesNot() {
        RunningOrder outing = plan(trip(gated(), "06:00", "07:00", picture("a").at("Footbridge").shot(),
                picture("b").at("Bank").minutes(40).shot(), picture("c").at("Footbridge").minutes(5).shot()));
        assertNull(outing.timeOf("b"));
        assertEquals(at("06:35"), outing.timeOf("c").from().toLocalTime());
        assertEquals(List.of(LeftOutAdvice.LongerThanVisit.class), Samples.kinds(outing.remarks()));
    }

    @Test
    void walksTheWayBackInTheDarkWhenItIsDarkByThen() {
        ZonedDateTime dusk = SunDay.of(Places.MID_LATITUDE.position(), Interval.day(MAY_DAY, Samples.zone())).civilDusk();
        LocalTime last = dusk.toLocalTime().plusMinutes(12).truncatedTo(ChronoUnit.MINUTES);
        Shot twilight = picture("a").at("Bank").pinned(last.minusMinutes(14).toString()).minutes(15).shot();
        RunningOrder outing = plan(trip(gated(), "18:00", last.plusMinutes(24).toString(), twilight));
        Leg back = outing.legs().get(outing.legs().size() - 1);
        assertEquals(Duration.ofMinutes(22), Duration.between(back.from(), back.to()));
        assertEquals(outing.leave().minusMinutes(22), outing.leaveLastSpotBy());
        assertNull(plan(trip(gated(), "18:00", last.plusMinutes(20).toString(), twilight)).timeOf("a"));
    }

    @Test
    void countsWithDarknessInTheLastMinuteToTurnBack() {
        RunningOrder outing = plan(trip(gated(), "15:00", "22:30", picture("a").at("Bank").shot()));
        assertEquals(at("22:08"), outing.leaveLastSpotBy().toLocalTime());
    }

    @Test
    void assumesAWalkThatNobodyTimedAndSaysSoOnce() {
        RunningOrder outing = plan(trip(gated(), "06:00", "10:00", picture("a").at("Gate").shot(), picture("b").shot(),
                picture("c").at("Gate").shot(), picture("d").shot()));
        assertEquals("06:00 SET_UP, 06:05 SHOOT, 06:20 SET_UP, 06:25 SHOOT, 06:40 WALK null, 06:45 SET_UP, 06:50 SHOOT, "
                + "07:05 SET_UP, 07:10 SHOOT, 07:25 WALK Gate", told(outing));
        assertEquals(Set.of(VisitAdvice.WalkAssumed.class), new HashSet<>(Samples.kinds(outing.remarks())));
        assertEquals(2, outing.remarks().size(), "there and back");
    }

    @Test
    void remarksOnGatesAndTheCarPark() {
        Site closed = wood(wood().spots(), wood().walks(), new Opening(at("07:00"), at("20:00")),
                new Parking("Gate", at("19:00"), null));
        RunningOrder outing = plan(trip(closed, "06:00", "20:30", picture("a").at("Bank").shot()));
        assertEquals(List.of(VisitAdvice.BeforeOpening.class, VisitAdvice.AfterClosing.class, VisitAdvice.CarParkCloses.class),
                Samples.kinds(outing.remarks()));
        assertTrue(plan(trip(closed, "07:00", "19:00", picture("a").at("Bank").shot())).remarks().isEmpty());
    }

    @Test
    void waitsAtTheGateUntilItOpensAndIsBackWhenItCloses() {
        Site closed = wood(wood().spots(), wood().walks(), new Opening(at("07:00"), at("20:00")),
                new Parking("Gate", at("08:00"), null));
        RunningOrder outing = plan(trip(closed, "06:00", "20:30", picture("a").at("Bank").shot(), picture("b").at("Bank").shot()));
        assertEquals("06:00 WAIT, 07:00 WALK Bank, 07:15 SET_UP, 07:20 SHOOT, 07:35 WALK Gate", told(outing));
        assertInstanceOf(WaitAdvice.WaitForOpening.class, outing.legs().get(0).why());
        assertEquals("Gate", outing.legs().get(0).spot());
        assertEquals(at("07:45"), outing.leaveLastSpotBy().toLocalTime());
        assertTrue(Samples.kinds(outing.remarks()).contains(LeftOutAdvice.NoTimeLeft.class));
    }

    @Test
    void takesThePictureWhenItsLightIsBestAndSaysWhatTheWaitIsFor() {
        Trip trip = trip(gated(), "06:00", "10:00", picture("a").at("Footbridge").shot(), picture("b").at("Footbridge").minutes(10).shot());
        RunningOrder outing = Orders.of(trip, shot -> time -> shot.name().equals("b") ? 0.5 : time.getHour() == 7 ? 1 : 0.2);
        assertEquals("06:00 WALK Footbridge, 06:09 SET_UP, 06:15 SHOOT, 06:25 SET_UP, 06:28 WAIT, 07:00 SHOOT, 07:15 WALK Gate",
                told(outing));
        WaitAdvice.WaitWithRoom room = assertInstanceOf(WaitAdvice.WaitWithRoom.class, outing.legs().get(4).why());
        assertInstanceOf(WaitAdvice.WaitForLight.class, room.why());
        assertEquals("a", outing.legs().get(4).shot());
    }

    @Test
    void waitsForTheSunToRise() {
        SunDay sun = SunDay.of(Places.MID_LATITUDE.position(), Interval.day(MAY_DAY, Samples.zone()));
        RunningOrder outing = plan(trip(gated(), "04:30", "10:00", picture("a").at("Footbridge").minutes(5).shot()));
        Leg wait = outing.legs().get(2);
        assertInstanceOf(WaitAdvice.WaitForSunrise.class, wait.why());
        Duration late = Duration.between(sun.sunrise(), outing.timeOf("a").from());
        assertTrue(!late.isNegative() && late.toMinutes() < 5);
    }

    @Test
    void leavesTimeToChangeTheLens() {
        Trip trip = trip(wood(), "06:00", "10:00", picture("a").at("Bank").shot(), picture("b").at("Bank").minutes(12).shot(),
                picture("c").at("Bank").shot());
        Quality always = time -> 1;
        assertEquals("06:00 SET_UP, 06:05 SHOOT, 06:20 SET_UP, 06:25 SHOOT, 06:37 SET_UP, 06:40 SHOOT",
                told(Orders.of(trip, shot -> always, "long", "wide", "wide")));
        RunningOrder outing = Orders.of(trip, shot -> always, "long", "long", "wide");
        assertEquals("06:00 SET_UP, 06:05 SHOOT, 06:17 SET_UP, 06:20 SHOOT, 06:35 SET_UP, 06:40 SHOOT", told(outing));
        assertEquals("b", outing.legs().get(0).shot(), "so the change falls into a wait for the grid");
    }

    @Test
    void arrivesAtCivilDawnAndLeavesFourHoursLaterByDefault() {
        SunDay sun = SunDay.of(Places.MID_LATITUDE.position(), Interval.day(MAY_DAY, Samples.zone()));
        Trip trip = trip(wood(), null, null, picture("a").shot());
        RunningOrder outing = plan(trip);
        assertTrue(Duration.between(outing.arrive(), sun.civilDawn()).abs().toSeconds() <= 30);
        assertEquals(0, outing.arrive().getSecond());
        assertEquals(Duration.ofHours(4), Duration.between(outing.arrive(), outing.leave()));
        assertEquals(List.of("arrive", "leave"), List.copyOf(Hours.of(trip, MAY_DAY).assumed()));
    }

    @Test
    void comesAboutNoonWhereThereIsNoCivilDawn() {
        for (Places place : List.of(Places.POLAR_DAY,
                new Places(new Position(80, 15), ZoneId.of("Europe/Oslo"), LocalDate.of(2027, 12, 20)))) {
            SunDay sun = SunDay.of(place.position(), Interval.day(place.date(), place.zone()));
            assertNull(sun.civilDawn());
            Site site = wood(place, wood().spots(), wood().walks(), null, null);
            RunningOrder outing = Orders.of(trip(site, null, null, picture("a").shot()), place.date());
            assertTrue(Duration.between(outing.arrive().plusHours(2), sun.solarNoon()).abs().toSeconds() <= 30);
        }
    }

    @Property(tries = 200)
    void joinsLegToLegAndIsBackInTime(@ForAll @IntRange(min = 0, max = 1000) int arriveMinute,
            @ForAll @IntRange(min = 30, max = 430) int visitMinutes,
            @ForAll @Size(min = 1, max = 6) List<@IntRange(min = 0, max = 11) Integer> shots,
            @ForAll @IntRange(min = 1, max = 90) int minutes) {
        String arrive = LocalTime.MIN.plusMinutes(arriveMinute).toString();
        String leave = LocalTime.MIN.plusMinutes(arriveMinute + visitMinutes).toString();
        List<Shot> pictures = new ArrayList<>();
        for (int shot : shots) {
            Samples.Picture picture = picture("p" + pictures.size()).minutes(minutes)
                    .at(List.of("Gate", "Footbridge", "Bank").get(shot % 3));
            pictures.add((shot / 3 == 0 ? picture.pinned("09:00") : picture).shot());
        }
        RunningOrder outing = plan(trip(gated(), arrive, leave, pictures.toArray(Shot[]::new)));
        ZonedDateTime end = outing.arrive();
        Set<String> taken = new HashSet<>();
        for (Leg leg : outing.legs()) {
            assertEquals(end, leg.from());
            assertTrue(leg.to().isAfter(leg.from()));
            assertTrue(leg.what() != Leg.What.SHOOT || taken.add(leg.shot()));
            end = leg.to();
        }
        assertFalse(end.isAfter(outing.leave()));
        Set<Class<?>> reasons = Set.of(LeftOutAdvice.NoTimeLeft.class, LeftOutAdvice.LongerThanVisit.class,
                LeftOutAdvice.LeftForLight.class, LeftOutAdvice.PinMissed.class, LeftOutAdvice.PinsClash.class,
                LeftOutAdvice.PinTooLate.class, LeftOutAdvice.VisitTooDark.class);
        long missed = Samples.kinds(outing.remarks()).stream().filter(reasons::contains).count();
        assertEquals(pictures.size(), taken.size() + missed);
    }

    /** Fair light is no reason to take again what was taken in good light. */
    @Test
    void offersTheTimeLeftToPicturesInNoWorseLightThanBefore() {
        Function<Shot, Quality> fading = shot -> time -> shot.name().equals("even") || time.getHour() < 7 ? 0.8 : 0.4;
        RunningOrder outing = Orders.of(trip(gated(), "06:00", "10:00", picture("fading").at("Footbridge").shot(),
                picture("even").at("Footbridge").shot()), fading);
        assertEquals(List.of("even"), ((VisitAdvice.TimeLeftFor) outing.timeLeft()).shots());
    }
}
