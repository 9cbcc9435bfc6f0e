package understorey.order;

import java.time.Duration;
import java.time.ZonedDateTime;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;

/**
 * One stretch of the visit.
 *
 * @param spot of the leg, or at the end of the walk; null for the site itself
 * @param shot the picture that it is for; null on the way back, and at the gate before it opens
 * @param why  reason for a wait; null for anything else
 */
public record Leg(ZonedDateTime from, ZonedDateTime to, What what, @Nullable String spot, @Nullable String shot,
                  @Nullable Advice why) {

    public enum What { WALK, SET_UP, SHOOT, WAIT }

    /** A leg without a reason. */
    public Leg(ZonedDateTime from, ZonedDateTime to, What what, @Nullable String spot, @Nullable String shot) {
        this(from, to, what, spot, shot, null);
    }

    /** Whole minutes, to the nearest. */
    public long minutes() {
        return Math.round(Duration.between(from, to).toSeconds() / 60.0);
    }
}
