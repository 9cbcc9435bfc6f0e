package understorey.plan;

/**
 * A camera support.
 *
 * @param kind      of support
 * @param lowestM   lens axis at its lowest, head included; null when not given
 * @param highestM  lens axis at its highest; null when not given
 * @param carriesKg load; null when not given
 * @param weightG   null when not given
 */
public record Support(String name, Kind kind, Double lowestM, Double highestM, Double carriesKg, Double weightG) {

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
