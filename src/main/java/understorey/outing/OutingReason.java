package understorey.outing;

import understorey.reason.Reason;

/** What there is to say about the order of the day and of the story. */
public enum OutingReason implements Reason.Kind {
    /** The visit would end before this picture is done. */
    NO_TIME_LEFT,
    /** The walk brings you there after the time the picture is pinned to. */
    PIN_MISSED,
    /** A walk that nobody timed and no positions give. */
    WALK_ASSUMED,
    BEFORE_OPENING,
    AFTER_CLOSING,
    CAR_PARK_CLOSES,
    /** A role that no picture plays. */
    ROLE_MISSING
}
