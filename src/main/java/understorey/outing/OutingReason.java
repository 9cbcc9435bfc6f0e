package understorey.outing;

import understorey.reason.Reason;

/** What there is to say about the order of the day and of the story. */
public enum OutingReason implements Reason.Kind {
    /** The visit would end before this picture is done. */
    NO_TIME_LEFT,
    /** The same of one that must be taken. */
    NO_TIME_FOR_MUST,
    /** The visit has no light for this picture. */
    VISIT_TOO_DARK,
    /** The walk brings you there after the time the picture is pinned to. */
    PIN_MISSED,
    /** The visit ends before a pinned picture is done. */
    PIN_TOO_LATE,
    /** Two pins that nobody can keep both. */
    PINS_CLASH,
    /** Every must would fit if one arrived earlier. */
    ROOM_BY_ARRIVING,
    /** Every must would fit if one left later. */
    ROOM_BY_LEAVING,
    /** Every must would fit if one of them took less time. */
    ROOM_BY_SHORTENING,
    /** No such change lets every must fit. */
    NO_ROOM,
    WAIT_FOR_OPENING,
    WAIT_FOR_PIN,
    WAIT_FOR_SUNRISE,
    /** The sun clears the land where the picture is taken. */
    WAIT_FOR_SUN,
    WAIT_FOR_LIGHT,
    /** The same, and what spoils it before. */
    WAIT_FOR_BETTER_LIGHT,
    /** A wait long enough for an extra at that spot; {@code why} is what it is for. */
    WAIT_WITH_EXTRA,
    /** A wait by day that is long enough for a picture that is not in the plan. */
    WAIT_WITH_ROOM,
    /** Nobody said where the walk begins. */
    NO_PARKING,
    /** Where the spots are is withheld, and with it how long the walks take. */
    WALKS_WITHHELD,
    /** A walk that nobody timed and no positions give. */
    WALK_ASSUMED,
    BEFORE_OPENING,
    AFTER_CLOSING,
    CAR_PARK_CLOSES,
    /** Whoever waits for word would wait in vain. */
    BACK_TOO_LATE,
    /** The same for who stays as long as the visit allows. */
    STAY_TOO_LATE,
    /** Home after the light. */
    BACK_IN_THE_DARK,
    /** A role that no picture plays. */
    ROLE_MISSING,
    HEIGHTS_ALIKE,
    DISTANCES_ALIKE,
    VIEWS_ALIKE,
    ORIENTATIONS_ALIKE,
    /** Two pictures of one role, subject and spot that differ in nothing. */
    PICTURES_ALIKE
}
