package understorey.plan;

import java.util.List;

/**
 * A camera body; a phone is a body whose lenses are built in.
 *
 * @param name            as the bag calls it
 * @param sensor          null for a body with fixed lenses, each of which has its own
 * @param pixelsMpx       megapixels
 * @param mount           null for a body with fixed lenses
 * @param baseIso         lowest native ISO
 * @param topIso          the highest ISO that the author accepts
 * @param stabilisedStops gained by the body's stabiliser; 0 for none
 * @param rawSizeMb       megabytes a RAW frame; null when the body keeps no RAW or it is not given
 * @param batteryFrames   frames a battery; null when not given
 * @param weightG         null when not given
 * @param fixedLenses     empty for a body with a mount
 */
public record Body(String name, Sensor sensor, double pixelsMpx, String mount, int baseIso, int topIso,
                   double stabilisedStops, Double rawSizeMb, Integer batteryFrames, Double weightG,
                   List<Lens> fixedLenses) {
}
