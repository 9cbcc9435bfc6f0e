package understorey.plan;

import java.time.LocalTime;
import org.jspecify.annotations.Nullable;

/**
 * Parking, where the walk begins and ends.
 *
 * @param spot   spot of the car park; null for the site itself
 * @param closes local time; null when it does not close
 * @param fee    in the words of the author
 */
public record Parking(@Nullable String spot, @Nullable LocalTime closes, @Nullable String fee) {
}
