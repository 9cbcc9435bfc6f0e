package understorey.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.plan.Season;

/** How far a stand is on a day: in bud below 0, in full flower at 0, over above it. */
class RipenessTest {

    private static FloweringWindow window(Season.Sighting... seen) {
        return Woods.ramsons(new Season("ramsons", List.of(), null, List.of(seen)), "2027-05-05");
    }

    /** Full flower is from the last third of the rise to the first third of the fall, so half of a side is a quarter of the rest. */
    @Test
    void runsFromAllBudsAtTheFirstFlowerToAllOverAtTheLast() {
        FloweringWindow window = window();
        LocalDate peak = window.peak().day();
        assertEquals(0, window.ripeness(peak));
        assertEquals(-1, window.ripeness(window.first().day()), 1e-9);
        assertEquals(1, window.ripeness(window.over().day()), 1e-9);
        long riseD = peak.toEpochDay() - window.first().day().toEpochDay();
        assertEquals(-0.25, window.ripeness(peak.minusDays(riseD / 2)), 0.05);
        double before = -1;
        for (LocalDate day = window.first().day(); !day.isAfter(window.over().day()); day = day.plusDays(1)) {
            assertTrue(window.ripeness(day) >= before, day.toString());
            before = window.ripeness(day);
        }
        assertEquals(-1, window.ripeness(peak.minusDays(60)));
        assertEquals(1, window.ripeness(peak.plusDays(90)));
    }

    @Test
    void aStageSeenOnTheDayCounts() {
        LocalDate day = LocalDate.parse("2027-05-05");
        assertEquals(-0.5, window(new Season.Sighting(day, Season.Stage.FIRST_FLOWERS)).ripeness(day));
        assertEquals(0.5, window(new Season.Sighting(day, Season.Stage.FADING)).ripeness(day));
        assertEquals(0, window(new Season.Sighting(day, Season.Stage.FULL_FLOWER)).ripeness(day));
    }
}
