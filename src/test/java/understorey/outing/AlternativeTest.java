package understorey.outing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static understorey.Samples.MAY_DAY;
import static understorey.Samples.picture;
import static understorey.Samples.trip;
import static understorey.Samples.wood;

import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.kit.Intent;
import understorey.light.LightTable;
import understorey.plan.Shot;
import understorey.plan.Trip;
import understorey.sky.SunDay;

class AlternativeTest {

    private static final Trip TRIP = trip(wood(), "06:00", "10:00", picture("a").at("Bank").shot(), orElse(picture("b").at("Bank").shot()));
    private static final List<Intent> INTENTS = Intent.of(TRIP.shots());
    private static final Quality CLEAR = (intent, time) -> intent.shot().name().equals("a") == time.getHour() < 8 ? 1 : 0.5;
    private static final Quality RAIN = (intent, time) -> intent.shot().name().equals("b") == time.getHour() < 7 ? 0.25 : 0.2;

    private static Shot orElse(Shot shot) {
        return new Shot(shot.name(), shot.role(), shot.subject(), shot.spot(), null, null, null, null, null, null, List.of(), null, null,
                null, null, "Go closer.", null, null, null, null);
    }

    private static Outing plan(Quality quality) {
        SunDay sun = SunDay.of(TRIP.site().position(), MAY_DAY, TRIP.site().zone());
        return RunningOrder.of(TRIP, MAY_DAY, sun, LightTable.of(TRIP.site(), null, MAY_DAY), INTENTS, quality, List.of());
    }

    @Test
    void tellsOnlyWhatDiffers() {
        Alternative rain = Alternative.of(Alternative.Day.RAIN, plan(CLEAR), CLEAR, plan(RAIN), RAIN, INTENTS);
        assertEquals(List.of("b", "a"), rain.changes().stream().map(Alternative.Change::shot).toList());
        assertEquals(LocalTime.of(8, 0), rain.changes().get(0).planned().from().toLocalTime());
        assertEquals(LocalTime.of(6, 5), rain.changes().get(0).then().from().toLocalTime());
        assertEquals(List.of("b"), rain.instead().stream().map(intent -> intent.shot().name()).toList());
    }

    @Test
    void saysNothingOfADayLikeThePlan() {
        assertNull(Alternative.of(Alternative.Day.CLEAR, plan(CLEAR), CLEAR, plan(CLEAR), CLEAR, INTENTS));
    }

    @Test
    void namesAPictureThatOneOfTheDaysLeavesOut() {
        Outing none = plan(CLEAR);
        Outing empty = new Outing(none.arrive(), none.leave(), none.leave(), none.lamp(), List.of(), List.of(), none.assumed());
        Alternative dull = Alternative.of(Alternative.Day.OVERCAST, none, CLEAR, empty, CLEAR, INTENTS);
        assertEquals(List.of("a", "b"), dull.changes().stream().map(Alternative.Change::shot).toList());
        assertNull(dull.changes().get(0).then());
        assertEquals(1, dull.instead().size());
        assertNull(Alternative.of(Alternative.Day.OVERCAST, empty, CLEAR, none, CLEAR, INTENTS).changes().get(1).planned());
    }

    /** The order turns, but the pin stays: to say that a picture moves from a time to the same time is to say nothing. */
    @Test
    void saysNothingOfAPictureThatStaysWhereItIsPinned() {
        Outing planned = taken("a", 6, "b", 7, "c", 8);
        Outing other = taken("c", 6, "b", 7, "a", 8);
        List<Intent> intents = Intent.of(List.of(picture("a").shot(), picture("b").shot(), picture("c").shot()));
        Alternative turned = Alternative.of(Alternative.Day.WIND, planned, CLEAR, other, CLEAR, intents);
        assertEquals(List.of("c", "a"), turned.changes().stream().map(Alternative.Change::shot).toList());
        Outing pushed = taken("b", 7, "c", 8, "a", 9);
        assertEquals(List.of("a"), Alternative.of(Alternative.Day.WIND, planned, CLEAR, pushed, CLEAR, intents).changes().stream()
                .map(Alternative.Change::shot).toList());
    }

    private static Outing taken(Object... shotsAndHours) {
        Outing any = plan(CLEAR);
        List<Leg> legs = new ArrayList<>();
        for (int i = 0; i < shotsAndHours.length; i += 2) {
            ZonedDateTime from = any.arrive().withHour((Integer) shotsAndHours[i + 1]);
            legs.add(new Leg(from, from.plusMinutes(15), Leg.What.SHOOT, "Bank", (String) shotsAndHours[i]));
        }
        return new Outing(any.arrive(), any.leave(), any.leave(), any.lamp(), legs, List.of(), any.assumed());
    }
}
