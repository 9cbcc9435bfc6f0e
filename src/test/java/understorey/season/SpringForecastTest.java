package understorey.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.advice.Advice;
import understorey.advice.SeasonAdvice;
import understorey.plan.Season;
import understorey.plan.Site;
import understorey.plan.Temperatures;

/** Invented springs: a wave over the year, with each year so much warmer or colder as a whole. */
class SpringForecastTest {

    private static final double[] WARMTH = {-1.5, 0.5, 2, -0.5, 1, -2, 0.2};
    private static final int FIRST_YEAR = 2020;

    private static Temperatures springs(double[] warmth, LocalDate last) {
        List<Temperatures.Day> days = new ArrayList<>();
        for (LocalDate day = LocalDate.of(FIRST_YEAR, 1, 1); !day.isAfter(last); day = day.plusDays(1)) {
            double wave = 9 - 8 * Math.cos(2 * Math.PI * (day.getDayOfYear() - 20) / 365);
            double wobble = 1.5 * Math.sin(day.toEpochDay() * 0.9);
            days.add(new Temperatures.Day(day, wave + wobble + warmth[day.getYear() - FIRST_YEAR]));
        }
        return new Temperatures("springs.csv", days);
    }

    /** Five days earlier a degree, and a day or two of chance. */
    private static String[] fulls() {
        String[] fulls = new String[WARMTH.length];
        int[] chance = {1, -1, 0, 2, -2, 1, -1};
        for (int i = 0; i < fulls.length; i++) {
            fulls[i] = LocalDate.of(FIRST_YEAR + i, 5, 5).plusDays(Math.round(-5 * WARMTH[i]) + chance[i]).toString();
        }
        return fulls;
    }

    private static FloweringWindow window(Temperatures temperatures, Double springWarmerC, String... fulls) {
        Site site = Woods.wood(53, 200.0, Woods.season(temperatures, List.of(), fulls));
        return FloweringWindow.of(site, Woods.RAMSONS, LocalDate.of(2027, 5, 5), springWarmerC);
    }

    private static boolean says(FloweringWindow window, Class<? extends Advice> kind) {
        return window.reasons().stream().anyMatch(kind::isInstance);
    }

    @Test
    void takesTemperaturesWhereTheyBeatTheMeanOfTheYears() {
        double[] warmth = java.util.Arrays.copyOf(WARMTH, 8);
        warmth[7] = 1.5;
        FloweringWindow window = window(springs(warmth, LocalDate.of(2027, 5, 3)), null, fulls());
        FloweringWindow mean = window(null, null, fulls());
        assertTrue(window.method() == FloweringWindow.Method.TEMPERATURE_WINDOW
                || window.method() == FloweringWindow.Method.THERMAL_TIME, window.method().name());
        assertEquals(LocalDate.of(2027, 4, 28).toEpochDay(), window.peak().day().toEpochDay(), 3);
        assertTrue(window.errorD() < mean.errorD() / 2);
        assertTrue(says(window, SeasonAdvice.TemperatureHelped.class));
    }

    @Test
    void saysThatTemperatureDidNotHelpAndTakesTheMean() {
        String[] unmoved = {"2020-05-05", "2021-05-03", "2022-05-06", "2023-05-02", "2024-05-07", "2025-05-04", "2026-05-05"};
        double[] warmth = java.util.Arrays.copyOf(WARMTH, 8);
        FloweringWindow window = window(springs(warmth, LocalDate.of(2027, 5, 3)), null, unmoved);
        assertEquals(FloweringWindow.Method.MEAN, window.method());
        assertEquals(window(null, null, unmoved).peak(), window.peak());
        assertTrue(says(window, SeasonAdvice.TemperatureDidNotHelp.class) && says(window, SeasonAdvice.ByMean.class));
    }

    @Test
    void takesTheMeanAslongAsNothingOfThisSpringIsKnown() {
        FloweringWindow window = window(springs(WARMTH, LocalDate.of(2026, 12, 31)), null, fulls());
        assertEquals(FloweringWindow.Method.MEAN, window.method());
        assertTrue(says(window, SeasonAdvice.TemperatureNoneThisYear.class));
    }

    @Test
    void takesTheAuthorsWordForTheSpringThatIsNotMeasured() {
        Temperatures past = springs(WARMTH, LocalDate.of(2026, 12, 31));
        FloweringWindow usual = window(past, 0.0, fulls());
        FloweringWindow warm = window(past, 1.5, fulls());
        assertTrue(warm.method() != FloweringWindow.Method.MEAN);
        assertEquals(7.5, usual.peak().day().toEpochDay() - warm.peak().day().toEpochDay(), 3);
    }

    @Test
    void isLessSureEarlierInTheSpring() {
        double[] warmth = java.util.Arrays.copyOf(WARMTH, 8);
        FloweringWindow early = window(springs(warmth, LocalDate.of(2027, 4, 6)), null, fulls());
        FloweringWindow late = window(springs(warmth, LocalDate.of(2027, 5, 3)), null, fulls());
        assertTrue(early.errorD() > late.errorD(), early.errorD() + " and " + late.errorD());
        assertTrue(says(early, SeasonAdvice.RestAsUsual.class));
    }

    @Test
    void warnsOfASpringUnlikeAnyOnRecord() {
        double[] warmth = java.util.Arrays.copyOf(WARMTH, 8);
        warmth[7] = 6;
        FloweringWindow window = window(springs(warmth, LocalDate.of(2027, 5, 3)), null, fulls());
        assertTrue(says(window, SeasonAdvice.OutsideRecordedRange.class)
                || window.method() == FloweringWindow.Method.THERMAL_TIME);
    }

    @Test
    void wantsFourYearsWithTemperatures() {
        Temperatures one = new Temperatures("one.csv", List.of(new Temperatures.Day(LocalDate.of(2027, 4, 1), 8)));
        FloweringWindow window = window(one, null, fulls());
        assertEquals(FloweringWindow.Method.MEAN, window.method());
        assertTrue(says(window, SeasonAdvice.TemperatureTooFewYears.class));
        assertTrue(says(window(new Temperatures("none.csv", List.of()), null, fulls()), SeasonAdvice.TemperatureTooFewYears.class));
    }

    /** A gap of five days is bridged; a year with a longer one within its window is left out. */
    @Test
    void bridgesShortGapsAndLeavesAYearWithALongOneOut() {
        double[] warmth = java.util.Arrays.copyOf(WARMTH, 8);
        List<Temperatures.Day> days = new ArrayList<>(springs(warmth, LocalDate.of(2027, 5, 3)).days());
        days.removeIf(day -> !day.date().isBefore(LocalDate.of(2022, 4, 10)) && !day.date().isAfter(LocalDate.of(2022, 4, 14)));
        FloweringWindow bridged = window(new Temperatures("short.csv", days), null, fulls());
        assertEquals(7, years(bridged));
        days.removeIf(day -> day.date().equals(LocalDate.of(2022, 4, 15)));
        assertEquals(6, years(window(new Temperatures("long.csv", days), null, fulls())));
    }

    private static int years(FloweringWindow window) {
        return Samples.the(SeasonAdvice.TemperatureHelped.class, window.reasons()).years();
    }

    @Test
    void worksInASouthernSpringToo() {
        List<Temperatures.Day> days = new ArrayList<>();
        for (Temperatures.Day day : springs(java.util.Arrays.copyOf(WARMTH, 8), LocalDate.of(2027, 5, 3)).days()) {
            days.add(new Temperatures.Day(day.date().plusDays(184), day.meanC()));
        }
        String[] fulls = fulls();
        for (int i = 0; i < fulls.length; i++) {
            fulls[i] = LocalDate.parse(fulls[i]).plusDays(184).toString();
        }
        Site site = Woods.wood(-53, 200.0, Woods.season(new Temperatures("south.csv", days), List.of(), fulls));
        FloweringWindow window = FloweringWindow.of(site, Woods.RAMSONS, LocalDate.of(2027, 11, 5), null);
        assertTrue(window.method() != FloweringWindow.Method.MEAN, window.reasons().toString());
        Season none = Woods.season(null, List.of(), fulls);
        assertTrue(window.errorD() < FloweringWindow.of(Woods.wood(-53, 200.0, none), Woods.RAMSONS,
                LocalDate.of(2027, 11, 5), null).errorD());
    }
}
