package understorey.season.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import understorey.plan.Season;
import understorey.plan.Temperatures;

class SumStartTest {

    @ParameterizedTest
    @CsvSource({"52, 5, 2027, 2027-01-01", "52, 5, 2028, 2028-01-01", "52, 2, 2028, 2028-01-01", "-35, 11, 2027, 2027-07-01",
            "-35, 11, 2028, 2028-07-01", "-35, 3, 2027, 2026-07-01", "-35, 3, 2028, 2027-07-01"})
    void isADateInLeapYearsToo(double latitude, int month, int season, LocalDate start) {
        SeasonScale scale = new SeasonScale(MonthDay.of(month, 5));
        assertEquals(start, scale.date(season, SumStart.at(latitude, scale).day(season)));
    }

    /**
     * Each day has 10 °C, and the first day of the sum that many days' worth more by year. The flowers come with the
     * 1200 °C·d (north) or 2500 °C·d (south), so the sum of all past years is the same only if that day counts in each.
     */
    @ParameterizedTest
    @CsvSource({"52, 1, 120", "-35, 7, 250"})
    void countsTheFirstDayInLeapYearsToo(double latitude, int month, int days) {
        List<Temperatures.Day> means = new ArrayList<>();
        List<Season.Flowering> records = new ArrayList<>();
        for (int year = 2019; year <= 2025; year++) {
            LocalDate start = LocalDate.of(year, month, 1);
            int more = year * 7 % 11;
            for (LocalDate day = start; day.isBefore(start.plusYears(1)); day = day.plusDays(1)) {
                means.add(new Temperatures.Day(day, day.equals(start) ? 10.0 + 10 * more : 10.0));
            }
            records.add(new Season.Flowering(null, start.plusDays(days - 1 - more), null));
        }
        PastYears past = PastYears.of(records, null, null);
        Springs springs = new Springs(past.scale(), new Temperatures("even.csv", means));
        SpringModels.Trial best = new SpringModels(past, springs, SumStart.at(latitude, past.scale())).best();
        assertInstanceOf(SpringModel.Thermal.class, best.model());
        assertEquals(0, best.rmseD(), 1e-9);
    }
}
