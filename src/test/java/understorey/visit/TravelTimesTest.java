package understorey.visit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class TravelTimesTest {

    /** Dark before 6:00 and from 20:00 on; seven minutes by day, ten by lamp. */
    private static TravelTimes ways() {
        boolean[] night = new boolean[1440];
        for (int i = 0; i < night.length; i++) {
            night[i] = i < 360 || i >= 1200;
        }
        return new TravelTimes(new int[][] {{0, 7}, {7, 0}}, new int[][] {{0, 10}, {10, 0}}, night);
    }

    @Test
    void walksByDayAndByLamp() {
        assertEquals(607, ways().arrive(0, 1, 600));
        assertEquals(310, ways().arrive(0, 1, 300));
        assertEquals(600, ways().arrive(1, 1, 600));
        assertEquals(1439 + 10, ways().arrive(0, 1, 1439));
    }

    /** Five of ten minutes in the dark are half the way; the other half takes three and a half by day. */
    @Test
    void walksOutOfTheDarkAndIntoIt() {
        assertEquals(364, ways().arrive(0, 1, 355));
        assertEquals(1197 + 3 + 6, ways().arrive(0, 1, 1197));
    }

    @Property
    void neverArrivesEarlierForSettingOutLater(@ForAll @IntRange(min = 0, max = 1500) int minute) {
        assertTrue(ways().arrive(0, 1, minute) <= ways().arrive(0, 1, minute + 1));
    }

    @Property
    void knowsTheLastMinuteToSetOut(@ForAll @IntRange(min = 20, max = 1500) int minute) {
        int leaving = ways().leaveBy(0, 1, minute);
        assertTrue(ways().arrive(0, 1, leaving) <= minute);
        assertTrue(ways().arrive(0, 1, leaving + 1) > minute);
    }
}
