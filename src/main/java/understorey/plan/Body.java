package understorey.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A camera body; a phone is a body whose lenses are built in.
 *
 * @param name            as in the bag
 * @param sensor          null for a body with fixed lenses, each of which has its own
 * @param pixelsMpx       megapixels
 * @param mount           null for a body with fixed lenses
 * @param baseIso         lowest native ISO
 * @param topIso          the highest ISO that the author accepts
 * @param stabilisedStops gained by image stabilisation in the body; 0 for none
 * @param rawSizeMb       megabytes per RAW frame; null if the body has no RAW or it is not given
 * @param batteryFrames   frames per battery
 * @param fixedLenses     empty for a body with a mount
 */
public record Body(String name, @Nullable Sensor sensor, double pixelsMpx, @Nullable String mount, int baseIso, int topIso,
                   double stabilisedStops, @Nullable Double rawSizeMb, @Nullable Integer batteryFrames, @Nullable Double weightG,
                   List<Lens> fixedLenses) {
}
