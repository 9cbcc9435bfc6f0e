package understorey.plan;

import java.time.LocalDate;
import java.util.List;

/**
 * Daily temperatures near a site.
 *
 * @param file name of the CSV file, in the folder of the site's file
 * @param days in order of date, each once; days without a measurement are left out
 */
public record Temperatures(String file, List<Day> days) {

    /** Mean temperature of one day, °C. */
    public record Day(LocalDate date, double meanC) {
    }
}
