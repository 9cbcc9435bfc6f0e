package understorey.plan;

import java.time.LocalTime;

/**
 * Where the walk begins and ends.
 *
 * @param spot   the spot it lies at; null for the site itself
 * @param closes local time; null when it does not close
 * @param fee    in the author's words; null when not said
 */
public record Parking(String spot, LocalTime closes, String fee) {
}
