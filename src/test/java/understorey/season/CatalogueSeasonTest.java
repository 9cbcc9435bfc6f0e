package understorey.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import understorey.Samples;
import understorey.advice.SeasonAdvice;
import understorey.plan.Subject;
import understorey.reading.subject.SubjectCatalogue;

/** Peaks of the catalogue, moved to other places: against {@code reference/subjects-more.csv} and {@code peaks-elsewhere.csv}. */
class CatalogueSeasonTest {

    private static Subject subject(String key) {
        return SubjectCatalogue.builtIn().find(key);
    }

    private static FloweringWindow window(String key, double latitude, Double elevationM, LocalDate near) {
        return FloweringWindow.of(Woods.wood(latitude, elevationM), subject(key), near, null);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/subjects-more.csv", numLinesToSkip = 2)
    void peaksAtThePlaceOfTheReferenceOnItsDay(String key, String peak, String place, double latitude, double elevationM, String mark, double sdD) {
        LocalDate day = MonthDay.parse("--" + peak).atYear(2027);
        FloweringWindow window = window(key, latitude, elevationM, day);
        assertTrue(Math.abs(ChronoUnit.DAYS.between(day, window.peak().day())) <= 1, key + window.peak());
        assertTrue(window.errorD() >= 1.2816 * Math.max(10, sdD) - 0.5, key + " is surer than ±10 days, or than years are alike");
        assertTrue(window.chanceOn(day) < 0.8, key + ": no day is likely from the catalogue alone, but " + window.chanceOn(day));
    }

    /** Two places in three within 10 days, four in five within the likely span; introduced plants of the other hemisphere less. */
    @Test
    void meetsTheDatesOfOtherPlacesWithinItsError() throws IOException {
        int within = 0;
        double squares = 0;
        List<String> off = new ArrayList<>();
        List<String> rows = Files.readAllLines(Path.of("src/test/resources/reference/peaks-elsewhere.csv")).stream()
                .filter(row -> !row.startsWith("#")).toList();
        for (String row : rows) {
            String[] cells = row.split(",");
            LocalDate seen = MonthDay.parse("--" + cells[3]).atYear(2027);
            FloweringWindow window = window(cells[0], Double.parseDouble(cells[1]), Double.valueOf(cells[2]), seen);
            long miss = ChronoUnit.DAYS.between(window.peak().day(), seen);
            boolean likely = !seen.isBefore(window.peak().from()) && !seen.isAfter(window.peak().to());
            within += likely ? 1 : 0;
            squares += cells[1].startsWith("-") ? 0 : miss * miss;
            off.add(cells[0] + " " + miss + " of ±" + Math.round(window.errorD()));
        }
        assertTrue(within >= 0.8 * rows.size(), off.toString());
        assertTrue(Math.sqrt(squares / (rows.size() - 2)) < 8, off.toString());
    }

    /** Foxglove peaks in June in England and bluebell at the end of April, whatever the middle of their months says. */
    @Test
    void takesThePeakAndNotTheMiddleOfTheMonths() {
        assertEquals(6, window("foxglove", 51.5, 80.0, LocalDate.of(2027, 6, 15)).peak().day().getMonthValue());
        LocalDate bluebell = window("bluebell", 51.5, 50.0, LocalDate.of(2027, 5, 1)).peak().day();
        assertTrue(Math.abs(ChronoUnit.DAYS.between(LocalDate.of(2027, 5, 1), bluebell)) <= 10, bluebell.toString());
    }

    /** In the months of the flora, but weeks after the peak. */
    @ParameterizedTest
    @CsvSource({"foxglove, 2027-09-10", "bluebell, 2027-05-30", "snowdrop, 2027-04-15"})
    void givesASmallChanceFarFromThePeakWithinTheMonths(String key, LocalDate date) {
        assertTrue(Flowering.of(subject(key), 51.5, date).inSeason() || key.equals("snowdrop"));
        assertTrue(window(key, 51.5, 80.0, date).chanceOn(date) < 0.1);
    }

    @Test
    void saysHowWeakItIs() {
        FloweringWindow window = window("bluebell", 53, 50.0, LocalDate.of(2027, 5, 1));
        SeasonAdvice.ByCataloguePeak weak = Samples.the(SeasonAdvice.ByCataloguePeak.class, window.reasons());
        assertEquals("Hallerbos, Belgium", weak.place());
        assertTrue(weak.error() >= 10 && weak.error() <= window.errorD() + 0.5, weak + " " + window.errorD());
        assertEquals(22, Samples.the(SeasonAdvice.CourseByCatalogue.class, window.reasons()).rise(), 0);
        FloweringWindow south = window("fly-agaric", -39, 50.0, LocalDate.of(2027, 4, 20));
        assertTrue(Samples.the(SeasonAdvice.ByMirroredPeak.class, south.reasons()).error() > 25, south.reasons().toString());
    }
}
