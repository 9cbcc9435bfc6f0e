package understorey.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.advice.SeasonAdvice;
import understorey.plan.Season;
import understorey.plan.Subject;

class FloweringWindowTest {

    private static LocalDate day(String date) {
        return LocalDate.parse(date);
    }

    /** April to June, 53° and 200 m, as the months have it: the middle of 1 April to 30 June. */
    @Test
    void takesTheMiddleOfTheCataloguesMonthsWhereNothingIsOnRecord() {
        FloweringWindow window = FloweringWindow.of(Woods.wood(53, 200.0), Woods.RAMSONS, day("2027-05-08"), null);
        assertEquals(FloweringWindow.Method.CATALOGUE, window.method());
        assertEquals(day("2027-05-16"), window.peak().day());
        assertEquals(22.5 * 1.2816, window.errorD(), 0.2);
        assertEquals(List.of(SeasonAdvice.ByCatalogue.class, SeasonAdvice.CourseAssumed.class), Samples.kinds(window.reasons()));
    }

    /** Hopkins 1918, from memory: four days a degree and four days every 122 m. */
    @Test
    void comesLaterFurtherNorthAndHigherUp() {
        FloweringWindow north = FloweringWindow.of(Woods.wood(56, 200.0), Woods.RAMSONS, day("2027-05-08"), null);
        assertEquals(day("2027-05-28"), north.peak().day());
        FloweringWindow high = FloweringWindow.of(Woods.wood(53, 444.0), Woods.RAMSONS, day("2027-05-08"), null);
        assertEquals(day("2027-05-24"), high.peak().day());
        FloweringWindow south = FloweringWindow.of(Woods.wood(50, null), Woods.RAMSONS, day("2027-05-08"), null);
        assertEquals(day("2027-05-04"), south.peak().day());
        assertTrue(Samples.kinds(south.reasons()).contains(SeasonAdvice.CatalogueEarlier.class));
        assertTrue(Samples.kinds(high.reasons()).contains(SeasonAdvice.CatalogueLater.class));
    }

    /** Summer and autumn flowers do not wait for spring. */
    @Test
    void doesNotMoveAnAutumnFlowerByLatitude() {
        Subject heather = Woods.subject("heather", false, 7, 9);
        assertEquals(FloweringWindow.of(Woods.wood(53, 200.0), heather, day("2027-08-08"), null).peak(),
                FloweringWindow.of(Woods.wood(58, 800.0), heather, day("2027-08-08"), null).peak());
    }

    @Test
    void mirrorsTheYearInTheOtherHemisphere() {
        FloweringWindow south = FloweringWindow.of(Woods.wood(-53, 200.0), Woods.RAMSONS, day("2027-11-08"), null);
        assertEquals(day("2027-11-15"), south.peak().day());
        FloweringWindow later = FloweringWindow.of(Woods.wood(-56, 200.0), Woods.RAMSONS, day("2027-11-08"), null);
        assertEquals(day("2027-11-27"), later.peak().day());
    }

    /** Worked by hand: 118, 124, 127 and 131 days into the year, whose mean is 125, 5 May. */
    @Test
    void takesTheMeanOfThreeYearsOrMoreAndItsPredictionInterval() {
        FloweringWindow window = Woods.ramsons(Woods.records("2023-04-28", "2025-05-04", "2026-05-07", "2022-05-11"),
                "2027-05-20");
        assertEquals(FloweringWindow.Method.MEAN, window.method());
        assertEquals(day("2027-05-05"), window.peak().day());
        assertEquals(1.6377 * 6.1237, window.errorD(), 0.05);
        assertEquals(day("2027-04-25"), window.peak().from());
        assertEquals(day("2027-05-15"), window.peak().to());
        assertEquals(day("2027-04-23"), window.first().day());
        assertEquals(day("2027-05-23"), window.over().day());
        assertEquals(day("2027-05-01"), window.fullFrom());
        assertEquals(day("2027-05-11"), window.fullTo());
        assertEquals(4, window.past().size());
        assertEquals(day("2027-05-11"), window.past().get(0).full());
        assertEquals(List.of(SeasonAdvice.ByMean.class), Samples.kinds(window.reasons()));
    }

    @Test
    void saysThatOneOrTwoYearsGiveNoIntervalAndAssumesAWideOne() {
        FloweringWindow window = Woods.ramsons(Woods.records("2025-05-04", "2026-05-04"), "2027-05-20");
        assertEquals(FloweringWindow.Method.FEW_RECORDS, window.method());
        assertEquals(day("2027-05-04"), window.peak().day());
        assertEquals(1.2816 * 10 * Math.sqrt(1.5), window.errorD(), 0.05);
        assertInstanceOf(SeasonAdvice.ByFewRecords.class, window.reasons().get(0));
    }

    @Test
    void claimsNoCertaintyFromYearsThatHappenedToBeAlike() {
        FloweringWindow window = Woods.ramsons(Woods.records("2024-05-04", "2025-05-04", "2026-05-04"), "2027-05-05");
        assertTrue(window.errorD() > 1, "error " + window.errorD());
        assertEquals(day("2027-05-04"), window.peak().day());
    }

    @Test
    void crossesTheTurnOfTheYear() {
        Season season = Woods.season(null, List.of(), "2023-12-27", "2025-01-02", "2026-01-06", "2026-12-30");
        FloweringWindow window = FloweringWindow.of(Woods.wood(-35, 10.0, season), Woods.RAMSONS, day("2028-01-20"), null);
        assertEquals(day("2028-01-01"), window.peak().day());
        assertTrue(window.errorD() < 12, "years a few days apart, not half a year");
        assertTrue(window.chanceOn(day("2027-12-31")) > 0.5 && window.chanceOn(day("2028-01-02")) > 0.5);
        assertEquals(window.peak(), FloweringWindow.of(Woods.wood(-35, 10.0, season), Woods.RAMSONS, day("2027-12-20"),
                null).peak());
    }

    @Test
    void movesByTheRangeOfPublishedSensitivitiesInAWarmSpring() {
        Season season = Woods.records("2024-05-04", "2025-05-05", "2026-05-06");
        FloweringWindow usual = Woods.ramsons(season, "2027-05-05");
        FloweringWindow warm = FloweringWindow.of(Woods.wood(53, 200.0, season), Woods.RAMSONS, day("2027-05-05"), 2.0);
        FloweringWindow cold = FloweringWindow.of(Woods.wood(53, 200.0, season), Woods.RAMSONS, day("2027-05-05"), -2.0);
        assertEquals(usual.peak().day().minusDays(9), warm.peak().day());
        assertTrue(Math.abs(usual.peak().day().until(cold.peak().day()).getDays() - 9.5) <= 0.5);
        assertTrue(warm.errorD() > usual.errorD());
        assertTrue(Samples.kinds(warm.reasons()).contains(SeasonAdvice.SpringEarlier.class));
        assertTrue(Samples.kinds(cold.reasons()).contains(SeasonAdvice.SpringLater.class));
    }

    @Test
    void letsWhatWasSeenThisYearMoveTheEstimate() {
        String[] past = {"2023-05-04", "2024-05-01", "2025-05-07", "2026-05-04"};
        FloweringWindow before = Woods.ramsons(Woods.records(past), "2027-05-05");
        FloweringWindow late = Woods.ramsons(Woods.season(null, List.of(Woods.seen("2027-05-06", Season.Stage.FIRST_FLOWERS)),
                past), "2027-05-05");
        assertTrue(late.peak().day().isAfter(before.peak().day().plusDays(2)), late.peak().toString());
        FloweringWindow over = Woods.ramsons(Woods.season(null, List.of(Woods.seen("2027-05-06", Season.Stage.FADING)),
                past), "2027-05-05");
        assertTrue(over.peak().day().isBefore(before.peak().day()));
        assertEquals(1, over.seen().size());
        assertTrue(Samples.kinds(over.reasons()).contains(SeasonAdvice.SightingsUsed.class));
    }

    @Test
    void believesWhoSawItOverOrStillInBudAgainstThePeakOfOtherYears() {
        String[] past = {"2022-05-02", "2023-05-06", "2024-04-27", "2025-05-01", "2026-05-04"};
        FloweringWindow over = Woods.ramsons(Woods.season(null, List.of(Woods.seen("2027-05-01", Season.Stage.OVER)),
                past), "2027-05-02");
        assertTrue(over.chanceOn(day("2027-05-02")) < 0.15, "it was over the day before: " + over.chanceOn(day("2027-05-02")));
        FloweringWindow bud = Woods.ramsons(Woods.season(null, List.of(Woods.seen("2027-05-07", Season.Stage.IN_BUD)),
                past), "2027-05-08");
        assertTrue(bud.chanceOn(day("2027-05-08")) < 0.2, "it was in bud the day before: " + bud.chanceOn(day("2027-05-08")));
    }

    @Test
    void staysFullOnTheDayAfterItWasSeenFull() {
        FloweringWindow window = Woods.ramsons(Woods.season(null, List.of(Woods.seen("2027-04-20", Season.Stage.FULL_FLOWER)),
                "2022-05-02", "2023-05-06", "2024-04-27", "2025-05-01", "2026-05-04"), "2027-04-21");
        assertTrue(window.chanceOn(day("2027-04-20")) > 0.9, "seen full: " + window.chanceOn(day("2027-04-20")));
        assertTrue(window.chanceOn(day("2027-04-21")) > 0.9, "a day later: " + window.chanceOn(day("2027-04-21")));
        assertTrue(window.chanceOn(day("2027-05-20")) < 0.05, "a month later: " + window.chanceOn(day("2027-05-20")));
    }

    @Test
    void countsASightingOnceThatStandsInTheRecordsToo() {
        Season.Sighting full = Woods.seen("2026-05-06", Season.Stage.FULL_FLOWER);
        FloweringWindow once = Woods.ramsons(Woods.records("2024-05-04", "2025-05-05", "2026-05-06"), "2026-05-01");
        FloweringWindow both = Woods.ramsons(Woods.season(null, List.of(full), "2024-05-04", "2025-05-05", "2026-05-06"),
                "2026-05-01");
        assertEquals(once.seen(), both.seen());
        assertEquals(once.peak(), both.peak());
    }

    @Test
    void passesOverWhatWasSeenInAnotherYear() {
        Season season = Woods.season(null, List.of(Woods.seen("2026-05-06", Season.Stage.FIRST_FLOWERS)),
                "2023-05-04", "2024-05-01", "2025-05-07");
        assertEquals(0, Woods.ramsons(season, "2027-05-05").seen().size());
    }

    @Test
    void givesAFindingForThreeSightingsThatContradictEachOther() {
        Season season = Woods.season(null, List.of(Woods.seen("2027-05-01", Season.Stage.OVER),
                Woods.seen("2027-05-08", Season.Stage.IN_BUD), Woods.seen("2027-05-03", Season.Stage.FULL_FLOWER)),
                "2023-05-04", "2024-05-01", "2025-05-07", "2026-05-04");
        FloweringWindow window = Woods.ramsons(season, "2027-05-05");
        assertEquals(List.of(SeasonAdvice.SightingsDisagree.class, SeasonAdvice.SightingsDisagree.class), Samples.kinds(window.findings()));
        assertEquals(3, window.seen().size());
        assertTrue(window.chanceOn(window.best()) > 0);
    }

    @Test
    void foretellsFromSightingsAlone() {
        Subject unknown = Woods.subject("ramsons", false, null, null);
        FloweringWindow window = FloweringWindow.of(Woods.wood(53, null, Woods.season(null,
                List.of(Woods.seen("2027-05-01", Season.Stage.FULL_FLOWER)))), unknown, day("2027-05-05"), null);
        assertEquals(FloweringWindow.Method.SIGHTINGS, window.method());
        assertTrue(window.chanceOn(day("2027-05-01")) > 0.5);
    }

    @Test
    void knowsNothingWhereNobodyDoes() {
        assertNull(FloweringWindow.of(Woods.wood(53, null), Woods.subject("a-moss", false, null, 6), day("2027-05-05"), null));
    }

    @Test
    void takesARecordOfThisYearForWhatWasSeenAndNotForThePast() {
        FloweringWindow window = Woods.ramsons(Woods.records("2024-05-04", "2025-05-05", "2026-05-06"), "2026-05-01");
        assertEquals(FloweringWindow.Method.FEW_RECORDS, window.method());
        assertEquals(3, window.seen().size());
        assertEquals(2, window.past().size());
        FloweringWindow only = Woods.ramsons(Woods.records("2026-05-06"), "2026-05-01");
        assertEquals(FloweringWindow.Method.CATALOGUE, only.method());
        assertTrue(only.chanceOn(day("2026-05-06")) > 0.8);
    }

    @Test
    void fillsInAPeakThatNobodySaw() {
        Season season = new Season("ramsons", List.of(
                new Season.Flowering(day("2024-04-20"), day("2024-05-01"), day("2024-05-20")),
                new Season.Flowering(day("2025-04-22"), null, null),
                new Season.Flowering(null, null, day("2026-05-24"))), null, List.of());
        FloweringWindow window = Woods.ramsons(season, "2027-05-01");
        assertEquals(3, window.past().size());
        assertEquals(day("2027-05-03"), window.peak().day());
    }

    @Test
    void tellsOfASeasonThatIsRecordedTwice() {
        FloweringWindow window = Woods.ramsons(Woods.records("2024-05-04", "2024-05-10", "2025-05-07", "2026-05-06"),
                "2027-05-01");
        assertEquals(List.of(SeasonAdvice.RecordsTwice.class), Samples.kinds(window.findings()));
        assertEquals(day("2027-05-07"), window.peak().day());
    }

    @Test
    void givesNoChanceToADayOfAnotherSeason() {
        FloweringWindow window = Woods.ramsons(Woods.records("2024-05-04", "2025-05-05", "2026-05-06"), "2027-05-05");
        assertTrue(window.chanceOn(day("2027-05-05")) > 0.5);
        assertEquals(0, window.chanceOn(day("2028-05-05")));
        assertEquals(0, window.chanceOn(day("2027-12-24")), 0.01);
        assertNotEquals(window.best(), window.first().day());
        assertFalse(window.best().isBefore(window.fullFrom()) || window.best().isAfter(window.fullTo()));
    }
}
