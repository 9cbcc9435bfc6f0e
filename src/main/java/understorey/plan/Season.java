package understorey.plan;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Flowering of one subject at a site, as far as it is known.
 *
 * @param subject      the key of the subject
 * @param records      past years, as written
 * @param temperatures daily means measured near the site
 * @param seen         stages seen this year
 */
public record Season(String subject, List<Flowering> records, @Nullable Temperatures temperatures, List<Sighting> seen) {

    /** One past year; each date is null if it was not seen. */
    public record Flowering(@Nullable LocalDate first, @Nullable LocalDate full, @Nullable LocalDate over) {
    }

    /** Stage seen on a date of this year. */
    public record Sighting(LocalDate date, Stage stage) {
    }

    /** Stages of flowering: BBCH 51-59, 60-61, 65, 67 and 69. */
    public enum Stage {
        IN_BUD("in bud"), FIRST_FLOWERS("first flowers"), FULL_FLOWER("full flower"), FADING("fading"), OVER("over");

        private final String word;

        Stage(String word) {
            this.word = word;
        }

        /** The word in the plan's format. */
        @Override
        public String toString() {
            return word;
        }
    }
}
