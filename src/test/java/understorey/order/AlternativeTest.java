package understorey.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static understorey.Samples.picture;
import static understorey.Samples.trip;
import static understorey.Samples.wood;

import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import understorey.plan.Shot;
import understorey.plan.Trip;

class AlternativeTest {

    private static final Trip TRIP = trip(wood(), "06:00", "10:00", picture("a").at("Bank").shot(), orElse(picture("b").at("Bank").shot()));
    private static final Function<Shot, Quality> CLEAR = shot -> time -> shot.name().equals("a") == time.getHour() < 8 ? 1 : 0.5;
    private static final Function<Shot, Quality> RAIN = shot -> time -> shot.name().equals("b") == time.getHour() < 7 ? 0.25 : 0.2;

    private static Shot orElse(Shot shot) {
        return new Shot(shot.name(), shot.role(), shot.subject(), shot.spot(), null, null, null, null, null, null, List.of(), null, null,
                null, null, "Go closer.", null, null, null, null, null);
    }

    private static RunningOrder plan(Function<Shot, Quality> light) {
        return Orders.of(TRIP, light);
    }

    private static Alternative alternative(Alternative.Day day, RunningOrder planned, RunningOrder then, Function<Shot, Quality> light) {
        return alternative(TRIP.shots(), day, planned, then, light);
    }

    private static Alternative alternative(List<Shot> shots, Alternative.Day day, RunningOrder planned, RunningOrder then,
                                           Function<Shot, Quality> light) {
        return Alternative.of(day, planned, Orders.candidates(shots, CLEAR), then, Orders.candidates(shots, light));
    }

    @Test
    void tellsOnlyWhatDiffers() {
        Alternative rain = alternative(Alternative.Day.RAIN, plan(CLEAR), plan(RAIN), RAIN);
        assertEquals(List.of("b"), rain.changes().stream().map(Alternative.Change::shot).toList());
        assertEquals(LocalTime.of(8, 0), rain.changes().get(0).planned().from().toLocalTime());
        assertEquals(LocalTime.of(6, 25), rain.changes().get(0).then().from().toLocalTime());
        assertEquals(List.of("b"), rain.instead().stream().map(Shot::name).toList());
    }

    @Test
    void saysNothingOfADayLikeThePlan() {
        assertNull(alternative(Alternative.Day.CLEAR, plan(CLEAR), plan(CLEAR), CLEAR));
    }

    @Test
    void namesAPictureThatOneOfTheDaysLeavesOut() {
        RunningOrder none = plan(CLEAR);
        RunningOrder empty = new RunningOrder(none.arrive(), none.arrive(), none.leave(), none.leave(), List.of(), List.of(), null, null);
        Alternative dull = alternative(Alternative.Day.OVERCAST, none, empty, CLEAR);
        assertEquals(List.of("a", "b"), dull.changes().stream().map(Alternative.Change::shot).toList());
        assertNull(dull.changes().get(0).then());
        assertEquals(1, dull.instead().size());
        assertNull(alternative(Alternative.Day.OVERCAST, empty, none, CLEAR).changes().get(1).planned());
    }

    /** The order turns, but the pin stays: to say that a picture moves from a time to the same time is to say nothing. */
    @Test
    void saysNothingOfAPictureThatStaysWhereItIsPinned() {
        RunningOrder planned = taken("a", 6, "b", 7, "c", 8);
        RunningOrder other = taken("c", 6, "b", 7, "a", 8);
        List<Shot> shots = List.of(picture("a").shot(), picture("b").shot(), picture("c").shot());
        Alternative turned = alternative(shots, Alternative.Day.WIND, planned, other, CLEAR);
        assertEquals(List.of("c", "a"), turned.changes().stream().map(Alternative.Change::shot).toList());
        RunningOrder pushed = taken("b", 7, "c", 8, "a", 9);
        assertEquals(List.of("a"), alternative(shots, Alternative.Day.WIND, planned, pushed, CLEAR).changes().stream()
                .map(Alternative.Change::shot).toList());
    }

    private static RunningOrder taken(Object... shotsAndHours) {
        RunningOrder any = plan(CLEAR);
        List<Leg> legs = new ArrayList<>();
        for (int i = 0; i < shotsAndHours.length; i += 2) {
            ZonedDateTime from = any.arrive().withHour((Integer) shotsAndHours[i + 1]);
            legs.add(new Leg(from, from.plusMinutes(15), Leg.What.SHOOT, "Bank", (String) shotsAndHours[i]));
        }
        return new RunningOrder(any.arrive(), any.arrive(), any.leave(), any.leave(), legs, List.of(), null, null);
    }
}
