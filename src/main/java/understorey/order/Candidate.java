package understorey.order;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.List;
import understorey.plan.Shot;

/**
 * A picture to be placed in the order of the day.
 *
 * @param mounted body and lens on the support; a different one between two pictures is a change of lens
 * @param skies   quality of the light for it under each sky that may come; all are equally likely
 */
public record Candidate(Shot shot, Duration duration, int priority, String mounted, List<Quality> skies) {

    String name() {
        return shot.name();
    }

    /** Minutes that it takes, rounded up. */
    int minutes() {
        return (int) Math.max(1, (duration.toSeconds() + 59) / 60);
    }

    /** Quality of the light × feasibility at a time, under the best sky that may come. */
    double best(ZonedDateTime time) {
        return skies.stream().mapToDouble(sky -> sky.at(time) * sky.feasibility(time)).max().orElse(0);
    }
}
