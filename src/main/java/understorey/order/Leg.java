package understorey.order;

import java.time.ZonedDateTime;
import understorey.advice.Advice;

/**
 * One stretch of the visit.
 *
 * @param spot where it takes place, or where the walk leads; null for the site itself
 * @param shot the picture it is for; null for the way back, and at the gate before it opens
 * @param why  what a wait is for; null for anything else
 */
public record Leg(ZonedDateTime from, ZonedDateTime to, What what, String spot, String shot, Advice why) {

    public enum What { WALK, SET_UP, SHOOT, WAIT }

    /** One that needs no reason. */
    public Leg(ZonedDateTime from, ZonedDateTime to, What what, String spot, String shot) {
        this(from, to, what, spot, shot, null);
    }
}
