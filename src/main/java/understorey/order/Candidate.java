package understorey.order;

import java.time.Duration;
import understorey.plan.Shot;

/**
 * A picture to be placed in the order of the day.
 *
 * @param mounted what is on the support; between two pictures where it differs there is a change of lens
 * @param quality of the light for it
 */
public record Candidate(Shot shot, Duration duration, int priority, String mounted, Quality quality) {

    String name() {
        return shot.name();
    }
}
