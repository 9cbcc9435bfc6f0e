package understorey.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static understorey.Samples.MAY_DAY;
import static understorey.Samples.picture;
import static understorey.Samples.trip;
import static understorey.Samples.wood;

import java.time.Duration;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.advice.LeftOutAdvice;
import understorey.advice.RoomAdvice;
import understorey.plan.Parking;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.Trip;
import understorey.sky.Interval;
import understorey.sky.SunDay;

/** Gate to footbridge nine minutes, footbridge to bank six, three minutes to set up. */
class LeftOutTest {

    private static Site gated() {
        return wood(wood().spots(), wood().walks(), null, new Parking("Gate", null, null));
    }

    private static RunningOrder plan(Trip trip) {
        return Orders.of(trip, MAY_DAY);
    }

    static Shot must(Samples.Picture picture) {
        Shot shot = picture.shot();
        return new Shot(shot.name(), shot.role(), shot.subject(), shot.spot(), shot.viewpoint(), shot.orientation(), shot.sharp(),
                shot.focalEquivalentMm(), shot.frame(), shot.facingDeg(), shot.light(), shot.polariser(), shot.duration(), 3, null, null,
                shot.tiltDeg(), shot.start(), shot.after(), shot.printWidthM(), null);
    }

    /** Both are done at 7:20, back at 7:29; the grid rounds the others. */
    @Test
    void saysWhatWouldMakeRoomForEveryMust() {
        Shot first = must(picture("a").at("Footbridge").minutes(30));
        Shot second = must(picture("b").at("Footbridge").minutes(30));
        RunningOrder outing = plan(trip(gated(), "06:00", "07:20", first, second, picture("c").at("Footbridge").shot()));
        assertEquals(LocalTime.parse("06:15"), outing.timeOf("a").from().toLocalTime());
        assertEquals(LocalTime.parse("06:50"), outing.timeOf("c").from().toLocalTime());
        assertEquals(List.of(LeftOutAdvice.NoTimeForMust.class, RoomAdvice.RoomByArriving.class,
                        RoomAdvice.RoomByLeaving.class, RoomAdvice.RoomByShortening.class),
                Samples.kinds(outing.remarks()));
        assertEquals("b", Samples.the(LeftOutAdvice.NoTimeForMust.class, outing.remarks()).shot());
        assertEquals(9, Samples.the(RoomAdvice.RoomByLeaving.class, outing.remarks()).minutes());
        assertEquals(7, Samples.the(RoomAdvice.RoomByArriving.class, outing.remarks()).minutes());
        assertEquals(8, Samples.the(RoomAdvice.RoomByShortening.class, outing.remarks()).minutes());
    }

    @Test
    void saysThatTwoPinsClash() {
        RunningOrder outing = plan(trip(gated(), "06:30", "10:00", must(picture("a").at("Footbridge").pinned("07:00")),
                must(picture("b").at("Bank").pinned("07:20"))));
        assertEquals(List.of(LeftOutAdvice.PinsClash.class, RoomAdvice.RoomByShortening.class), Samples.kinds(outing.remarks()));
        assertEquals(4, Samples.the(RoomAdvice.RoomByShortening.class, outing.remarks()).minutes());
        RunningOrder far = plan(trip(gated(), "06:30", "10:00", must(picture("a").at("Footbridge").pinned("07:00")),
                must(picture("b").at("Bank").pinned("07:04"))));
        assertEquals(List.of(LeftOutAdvice.PinsClash.class, RoomAdvice.NoRoom.class), Samples.kinds(far.remarks()));
    }

    @Test
    void saysThatAPinIsNotDoneInTime() {
        RunningOrder outing = plan(trip(gated(), "06:00", "10:00", picture("a").at("Footbridge").pinned("09:40").shot()));
        assertEquals(List.of(LeftOutAdvice.PinTooLate.class), Samples.kinds(outing.remarks()));
    }

    /** Both pins stand against the third; the must is what it gives way to. */
    @Test
    void blamesTheMustAndNotThePictureBesideIt() {
        RunningOrder outing = plan(trip(gated(), "06:00", "10:00", picture("nice").at("Bank").pinned("07:00").minutes(10).shot(),
                must(picture("must").at("Bank").pinned("07:13").minutes(10)), picture("out").at("Bank").pinned("07:05").minutes(10).shot()));
        assertEquals("must", Samples.the(LeftOutAdvice.PinsClash.class, outing.remarks()).other());
    }

    /** It wishes for nothing that the visit has, and is a must: by day all the same. */
    @Test
    void takesAMustByDayWhereNoHourHasItsLight() {
        Trip trip = trip(gated(), "03:00", "10:00", must(picture("a").at("Footbridge")));
        SunDay sun = SunDay.of(trip.site().position(), Interval.day(MAY_DAY, trip.site().zone()));
        RunningOrder outing = Orders.of(trip, shot -> time -> 0);
        assertEquals(Duration.ZERO, Duration.between(sun.sunrise(), outing.timeOf("a").from()).truncatedTo(ChronoUnit.HOURS));
    }

    @Test
    void saysThatAPictureFollowsOneThatIsLeftOut() {
        RunningOrder outing = plan(trip(gated(), "06:00", "07:20", picture("late").at("Footbridge").pinned("08:00").shot(),
                picture("next").at("Footbridge").after("late").shot(), picture("free").at("Footbridge").shot()));
        assertEquals(List.of(LeftOutAdvice.PinTooLate.class, LeftOutAdvice.FollowsNothing.class), Samples.kinds(outing.remarks()));
        assertEquals(new LeftOutAdvice.FollowsNothing("next", "late"), outing.remarks().get(1));
    }
}
