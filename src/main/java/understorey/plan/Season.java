package understorey.plan;

import java.time.LocalDate;
import java.util.List;

/**
 * What is known of one subject's flowering at a site.
 *
 * @param subject      the key of the subject
 * @param records      past years, as written
 * @param temperatures daily means measured near the site; null when there are none
 * @param seen         this year, so far
 */
public record Season(String subject, List<Flowering> records, Temperatures temperatures, List<Sighting> seen) {

    /** One past year: each date is null when nobody saw it. */
    public record Flowering(LocalDate first, LocalDate full, LocalDate over) {
    }

    /** What was seen on a day of this year. */
    public record Sighting(LocalDate date, Stage stage) {
    }

    /** BBCH 51-59, 60-61, 65, 67 and 69. */
    public enum Stage { IN_BUD, FIRST_FLOWERS, FULL_FLOWER, FADING, OVER }
}
