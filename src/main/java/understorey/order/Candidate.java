package understorey.order;

import java.time.Duration;
import understorey.plan.Shot;

/**
 * A picture to be placed in the order of the day.
 *
 * @param mounted body and lens on the support; a different one between two pictures is a change of lens
 * @param quality of the light for it
 */
public record Candidate(Shot shot, Duration duration, int priority, String mounted, Quality quality) {

    String name() {
        return shot.name();
    }
}
