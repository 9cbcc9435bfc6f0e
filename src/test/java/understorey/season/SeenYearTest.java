package understorey.season;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.plan.Season;

class SeenYearTest {

    private static List<Season.Flowering> records(String[] past, Season.Sighting... seen) {
        return SeenYear.of(Woods.season(null, List.of(seen), past)).records();
    }

    @Test
    void keepsTheFirstFlowersTheMiddleOfTheFullOnesAndTheEnd() {
        assertEquals(List.of(new Season.Flowering(LocalDate.of(2027, 4, 20), LocalDate.of(2027, 5, 3), LocalDate.of(2027, 5, 24))),
                records(new String[] {"2026-05-04"}, Woods.seen("2027-05-06", Season.Stage.FULL_FLOWER),
                        Woods.seen("2027-04-22", Season.Stage.FIRST_FLOWERS), Woods.seen("2027-04-20", Season.Stage.FIRST_FLOWERS),
                        Woods.seen("2027-05-01", Season.Stage.FULL_FLOWER), Woods.seen("2027-05-03", Season.Stage.FULL_FLOWER),
                        Woods.seen("2027-05-24", Season.Stage.OVER)));
    }

    @Test
    void addsNothingForBudsASeasonOnRecordOrAContradiction() {
        String[] past = {"2026-05-04"};
        assertEquals(List.of(), records(past));
        assertEquals(List.of(), records(past, Woods.seen("2027-04-20", Season.Stage.IN_BUD)));
        assertEquals(List.of(), records(past, Woods.seen("2026-05-03", Season.Stage.FULL_FLOWER)));
        assertEquals(List.of(), records(past, Woods.seen("2027-05-20", Season.Stage.FIRST_FLOWERS),
                Woods.seen("2027-05-01", Season.Stage.OVER)));
    }

    @Test
    void keepsASeasonOverTheTurnOfTheYearTogether() {
        assertEquals(List.of(new Season.Flowering(LocalDate.of(2026, 12, 20), LocalDate.of(2027, 1, 4), null)),
                records(new String[0], Woods.seen("2026-12-20", Season.Stage.FIRST_FLOWERS),
                        Woods.seen("2027-01-04", Season.Stage.FULL_FLOWER)));
    }
}
