package understorey.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import understorey.plan.Season;
import understorey.season.model.SeasonScale;

class FloweringWindowPropertiesTest {

    private static final LocalDate MIDDLE = LocalDate.of(2027, 5, 5);

    private static Season past(List<Integer> off, int times) {
        String[] fulls = new String[off.size()];
        for (int i = 0; i < fulls.length; i++) {
            fulls[i] = LocalDate.of(2026 - i, 5, 5).plusDays((long) times * off.get(i)).toString();
        }
        return Woods.records(fulls);
    }

    private static FloweringWindow window(Season season, List<Season.Sighting> seen) {
        return FloweringWindow.of(Woods.wood(53, 200.0, new Season("ramsons", season.records(), null, seen)),
                Woods.RAMSONS, MIDDLE, null);
    }

    @Property(tries = 200)
    void isNeverSurerOfAWoodWhoseYearsDifferMore(
            @ForAll @Size(min = 2, max = 6) List<@IntRange(min = -8, max = 8) Integer> off) {
        List<Integer> balanced = new ArrayList<>(off);
        off.forEach(day -> balanced.add(-day));
        assertTrue(window(past(balanced, 2), List.of()).errorD() >= window(past(balanced, 1), List.of()).errorD() - 1e-6);
    }

    @Property(tries = 100)
    void givesEachDayAChanceAndAllOfThemTogetherTheLengthOfTheDisplay(
            @ForAll @Size(min = 3, max = 8) List<@IntRange(min = -10, max = 10) Integer> off) {
        FloweringWindow window = window(past(off, 1), List.of());
        double sum = 0;
        for (LocalDate day = MIDDLE.minusDays(182); day.isBefore(MIDDLE.plusDays(182)); day = day.plusDays(1)) {
            double chance = window.chanceOn(day);
            assertTrue(chance >= 0 && chance <= 1);
            assertTrue(chance <= window.chanceOn(window.best()) + 1e-9);
            sum += chance;
        }
        // A stand in full flower for 4 + 6 days has a chance on that many days, whichever they are.
        assertEquals(10, sum, 0.35);
    }

    @Property(tries = 100)
    void raisesTheChanceOfADayOnWhichItWasSeenInFullFlower(
            @ForAll @Size(min = 3, max = 6) List<@IntRange(min = -10, max = 10) Integer> off,
            @ForAll @IntRange(min = -25, max = 25) int day) {
        LocalDate date = MIDDLE.plusDays(day);
        double before = window(past(off, 1), List.of()).chanceOn(date);
        double after = window(past(off, 1), List.of(new Season.Sighting(date, Season.Stage.FULL_FLOWER))).chanceOn(date);
        assertTrue(after >= before - 1e-9, before + " became " + after);
    }

    /** The same past six months apart, north and south of the equator, gives the same window six months apart. */
    @Property(tries = 100)
    void isTheSameInTheSouthHalfAYearLater(
            @ForAll @Size(min = 3, max = 6) List<@IntRange(min = -10, max = 10) Integer> off) {
        String[] north = new String[off.size()];
        String[] south = new String[off.size()];
        for (int i = 0; i < north.length; i++) {
            LocalDate full = LocalDate.of(2026 - i, 5, 5).plusDays(off.get(i));
            north[i] = full.toString();
            south[i] = full.plusDays(184).toString();
        }
        FloweringWindow here = FloweringWindow.of(Woods.wood(53, 0.0, Woods.records(north)), Woods.RAMSONS, MIDDLE, null);
        FloweringWindow there = FloweringWindow.of(Woods.wood(-53, 0.0, Woods.records(south)), Woods.RAMSONS,
                MIDDLE.plusDays(184), null);
        // The mean on the circle of the year rounds to a day, and a leap year shifts one by another.
        assertEquals(here.peak().day().toEpochDay() + 184, there.peak().day().toEpochDay(), 1);
        assertEquals(here.errorD(), there.errorD(), 0.6);
    }

    @Property(tries = 50)
    void keepsToOneDayOfTheSeasonWhereverTheYearTurns(@ForAll @DoubleRange(min = 0, max = 364) double start) {
        LocalDate date = LocalDate.of(2021, 1, 1).plusDays((long) start);
        SeasonScale scale = SeasonScale.around(List.of(date, date.plusDays(2), date.plusDays(367)));
        int season = scale.seasonOf(date.plusYears(4));
        assertEquals(date.plusYears(4), scale.date(season, scale.day(season, date.plusYears(4))));
        assertTrue(Math.abs(scale.day(date)) <= 4, scale + " " + date);
    }
}
