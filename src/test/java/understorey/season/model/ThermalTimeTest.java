package understorey.season.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Against Vaccinium corymbosum at Harvard Forest, 1990 to 2001: what pyPhenology printed, and sums worked out by hand. */
class ThermalTimeTest {

    private static final Map<Integer, DailyMeans> HARVARD = Phenology.harvard();
    private static final DegreeDays FROM_NEW_YEAR = new DegreeDays(DegreeDays.Rule.ABOVE_BASE, 1, 5);
    private static final double PRINTED_START = 27.33480003499163;
    private static final double PRINTED_THRESHOLD = 5.507956473407982;
    private static final double PRINTED_SUM = 356.9379498434921;

    private record Years(DailyMeans[] means, double[] days) {
    }

    private static Years years(int phase) {
        Map<Integer, List<Integer>> plants = new LinkedHashMap<>();
        Phenology.plants(phase).stream().sorted(java.util.Comparator.comparing(Phenology.Plant::year))
                .forEach(plant -> plants.computeIfAbsent(plant.year(), y -> new ArrayList<>()).add(plant.day()));
        return new Years(plants.keySet().stream().map(HARVARD::get).toArray(DailyMeans[]::new),
                plants.values().stream().mapToDouble(days -> days.stream().mapToInt(d -> d).average().orElseThrow())
                        .toArray());
    }

    /** pyPhenology, quickstart: 48 predicted days and their root mean square error. */
    @Test
    void foretellsAllFortyEightPrintedDaysByTheThresholdRule() {
        DegreeDays rule = new DegreeDays(DegreeDays.Rule.WHOLE_FROM_THRESHOLD, PRINTED_START, PRINTED_THRESHOLD);
        List<Integer> printed = new ArrayList<>();
        List<Integer> foretold = new ArrayList<>();
        double squares = 0;
        for (Phenology.Plant plant : Phenology.plants(501)) {
            int day = rule.dayReaching(PRINTED_SUM, HARVARD.get(plant.year()));
            printed.add(plant.printed());
            foretold.add(day);
            squares += Math.pow(plant.day() - day, 2);
        }
        assertEquals(48, foretold.size());
        assertEquals(printed, foretold);
        assertEquals(2.846781808756454, Math.sqrt(squares / 48), 1e-9);
    }

    /** The formula that the same package documents is another model: 22.5 days out with the figures of the first. */
    @Test
    void isWeeksOutWhereTheTwoRulesAreTakenForOne() {
        DegreeDays rule = new DegreeDays(DegreeDays.Rule.ABOVE_BASE, PRINTED_START, PRINTED_THRESHOLD);
        double squares = 0;
        for (Phenology.Plant plant : Phenology.plants(501)) {
            squares += Math.pow(plant.day() - rule.dayReaching(PRINTED_SUM, HARVARD.get(plant.year())), 2);
        }
        assertEquals(22.5, Math.sqrt(squares / 48), 0.05);
    }

    @ParameterizedTest
    @CsvSource({"501, 187.4817, 1.9271, 2.1518", "371, 86.8200, 4.7958, 4.7958"})
    void sumsDegreeDaysFromNewYearAsWorkedOut(int phase, double required, double rmse, double leftOut) {
        Years years = years(phase);
        ThermalTime fit = ThermalTime.of(FROM_NEW_YEAR, years.means(), years.days());
        assertEquals(12, fit.n());
        assertEquals(required, fit.required(), 0.0001);
        assertEquals(rmse, fit.rmseD(), 0.0001);
        assertEquals(leftOut, fit.leftOutD(), 0.0001);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/degree-days.csv")
    void foretellsEachYearAsWorkedOut(int year, int plants, double mean, int rounded, double sum, int predicted,
            int without) {
        Years years = years(501);
        int i = year - 1990;
        assertEquals(plants, Phenology.plants(501).stream().filter(plant -> plant.year() == year).count());
        assertEquals(mean, years.days()[i]);
        assertEquals(rounded, ThermalTime.wholeDay(mean));
        double reached = FROM_NEW_YEAR.sumTo(rounded, HARVARD.get(year));
        assertEquals(sum, reached, 0.005);
        double required = ThermalTime.of(FROM_NEW_YEAR, years.means(), years.days()).required();
        assertEquals(predicted, FROM_NEW_YEAR.dayReaching(required, HARVARD.get(year)));
        assertEquals(without, FROM_NEW_YEAR.dayReaching((required * 12 - reached) / 11, HARVARD.get(year)));
    }

    @Test
    void foretellsANewYearWithTheErrorOfTheYearsLeftOut() {
        Years years = years(501);
        ThermalTime fit = ThermalTime.of(FROM_NEW_YEAR, years.means(), years.days());
        Prediction next = fit.next(HARVARD.get(1998));
        assertEquals(126, next.day());
        assertEquals(2.1518 * Math.sqrt(12 / 11.0), next.errorD(), 0.0001);
        assertEquals(11, next.freedom());
    }

    @Test
    void givesNothingWhereADayIsMissingOrTheSumIsNeverReached() {
        DailyMeans gap = new DailyMeans(1, new double[] {9, Double.NaN, 9, 9});
        DailyMeans whole = new DailyMeans(1, new double[] {9, 9, 9, 9});
        assertTrue(Double.isNaN(FROM_NEW_YEAR.sumTo(3, gap)));
        assertNull(FROM_NEW_YEAR.dayReaching(10, gap));
        assertEquals(3, FROM_NEW_YEAR.dayReaching(10, whole));
        assertNull(FROM_NEW_YEAR.dayReaching(17, whole));
        assertNull(ThermalTime.of(FROM_NEW_YEAR, new DailyMeans[] {gap, whole}, new double[] {3, 3}));
        assertNotNull(ThermalTime.of(FROM_NEW_YEAR, new DailyMeans[] {whole, whole}, new double[] {2, 3}));
    }
}
