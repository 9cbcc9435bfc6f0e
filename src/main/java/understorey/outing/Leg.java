package understorey.outing;

import java.time.ZonedDateTime;

/**
 * One stretch of the visit.
 *
 * @param spot where it takes place, or where the walk leads; null for the site itself
 * @param shot the picture it is for; null for the way back
 */
public record Leg(ZonedDateTime from, ZonedDateTime to, What what, String spot, String shot) {

    public enum What { WALK, SET_UP, SHOOT, WAIT }
}
