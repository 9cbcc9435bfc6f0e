package understorey.plan;

import java.time.LocalTime;

/**
 * Parking, where the walk begins and ends.
 *
 * @param spot   spot of the car park; null for the site itself
 * @param closes local time; null when it does not close
 * @param fee    in the words of the author; null if not given
 */
public record Parking(String spot, LocalTime closes, String fee) {
}
