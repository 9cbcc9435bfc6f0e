package understorey.plan;

import org.jspecify.annotations.Nullable;

/**
 * A filter, a step-up ring, a close-up lens or an extension tube.
 *
 * @param kind         what it is
 * @param threadMm     of the filter itself; null for a ring or a tube
 * @param lossStops    light loss; 0 for none
 * @param lensThreadMm side towards the lens of a step-up ring; null otherwise
 * @param filterThreadMm side towards the filter of a step-up ring; null otherwise
 * @param dioptres     of a close-up lens; null otherwise
 * @param lengthMm     of an extension tube; null otherwise
 */
public record Filter(String name, Kind kind, @Nullable Double threadMm, double lossStops, @Nullable Double lensThreadMm,
                     @Nullable Double filterThreadMm, @Nullable Double dioptres, @Nullable Double lengthMm,
                     @Nullable Double weightG) {

    public enum Kind {
        POLARISER("polariser"), NEUTRAL_DENSITY("neutral density"), STEP_UP_RING("step-up ring"), CLOSE_UP_LENS("close-up lens"), EXTENSION_TUBE("extension tube");

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
