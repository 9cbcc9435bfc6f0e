package understorey.plan;

import java.time.LocalDate;
import java.util.List;

/**
 * Daily temperatures near a site.
 *
 * @param file its name, beside the site's own
 * @param days in order of date, each once; days that nobody measured are left out
 */
public record Temperatures(String file, List<Day> days) {

    /** The mean of one day, °C. */
    public record Day(LocalDate date, double meanC) {
    }
}
