package understorey.plan;

import org.jspecify.annotations.Nullable;

/**
 * A camera support.
 *
 * @param kind      of support
 * @param lowestM   lens axis at its lowest, head included
 * @param highestM  lens axis at its highest
 * @param carriesKg load
 */
public record Support(String name, Kind kind, @Nullable Double lowestM, @Nullable Double highestM, @Nullable Double carriesKg,
                   @Nullable Double weightG) {

    public enum Kind {
        TRIPOD("tripod"), MONOPOD("monopod"), BEANBAG("beanbag"), GROUND_PLATE("ground plate");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The word in the plan's format. */
        @Override
        public String toString() {
            return word;
        }
    }
}
