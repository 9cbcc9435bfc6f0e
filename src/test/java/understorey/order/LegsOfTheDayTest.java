package understorey.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.sky.Interval;

class LegsOfTheDayTest {

    private static final ZonedDateTime SIX = ZonedDateTime.parse("2027-05-08T06:00+01:00[Europe/London]");

    @Test
    void tellsWhenAPictureIsTakenNotWhenOneWalksToIt() {
        Leg walk = new Leg(SIX, SIX.plusMinutes(9), Leg.What.WALK, "Bank", "a");
        Leg shoot = new Leg(SIX.plusMinutes(9), SIX.plusMinutes(24), Leg.What.SHOOT, "Bank", "a");
        Leg back = new Leg(SIX.plusMinutes(24), SIX.plusMinutes(33), Leg.What.WALK, null, null);
        RunningOrder outing = new RunningOrder(SIX, SIX, SIX.plusHours(1), SIX.plusMinutes(51),
                List.of(walk, shoot, back), List.of(), null, null);
        assertEquals(new Interval(shoot.from(), shoot.to()), outing.timeOf("a"));
        assertNull(outing.timeOf("b"));
    }
}
