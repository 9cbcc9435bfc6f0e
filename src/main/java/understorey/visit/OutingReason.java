package understorey.visit;

import understorey.reason.Reason;

/** What there is to say about the order of the day and of the story. */
public enum OutingReason implements Reason.Kind {
    /** Beside the pictures taken the visit would end before this one is done. */
    NO_TIME_LEFT,
    /** The same of one that must be taken. */
    NO_TIME_FOR_MUST,
    /** Not even alone is it done before the visit ends. */
    LONGER_THAN_VISIT,
    /** There is time for it, but the others would have worse light. */
    LEFT_FOR_LIGHT,
    /** The visit has no light for this picture when there is time for it. */
    VISIT_TOO_DARK,
    /** The walk brings you there after the time the picture is pinned to. */
    PIN_MISSED,
    /** The visit ends before a pinned picture is done. */
    PIN_TOO_LATE,
    /** Two pins that nobody can keep both. */
    PINS_CLASH,
    /** A pinned picture waits for this one, which cannot be done by then. */
    PIN_BEFORE_IT,
    /** This one waits for a pinned picture, after which no time is left. */
    PIN_LEAVES_TOO_LITTLE,
    /** The picture that it was to come after is left out. */
    FOLLOWS_NOTHING,
    /** Every must would fit if one arrived earlier. */
    ROOM_BY_ARRIVING,
    /** The same, but it is dark then, as it is not when the visit begins. */
    ROOM_BY_ARRIVING_IN_THE_DARK,
    /** Every must would fit if one left later. */
    ROOM_BY_LEAVING,
    /** The same, but it is dark then, as it is not when the visit ends. */
    ROOM_BY_LEAVING_IN_THE_DARK,
    /** Every must would fit if one of them took less time. */
    ROOM_BY_SHORTENING,
    /** No such change lets every must fit. */
    NO_ROOM,
    /** More musts than can be ordered exactly do not all fit. */
    MUSTS_TOO_MANY,
    WAIT_FOR_OPENING,
    WAIT_FOR_PIN,
    WAIT_FOR_SUNRISE,
    /** The sun clears the land where the picture is taken. */
    WAIT_FOR_SUN,
    /** The visit has no light for the picture, but daylight from then on. */
    WAIT_FOR_DAY,
    /** Poor light or stems that smear, a little less so then. */
    WAIT_FOR_LITTLE,
    WAIT_FOR_LIGHT,
    /** The same, and what spoils it before. */
    WAIT_FOR_BETTER_LIGHT,
    /** A wait by day that is long enough for a picture that is not in the plan; {@code why} is what it is for. */
    WAIT_WITH_ROOM,
    /** The first picture is taken long after one is ready for it. */
    COULD_ARRIVE_LATER,
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
    /** The visit lasts beyond the word due, which limits how long one stays. */
    STAY_TOO_LATE,
    /** Home after the light. */
    BACK_IN_THE_DARK,
    /** A role that no picture plays. */
    ROLE_MISSING,
    HEIGHTS_ALIKE,
    DISTANCES_ALIKE,
    VIEWS_ALIKE,
    ORIENTATIONS_ALIKE,
    /** Every picture looks one way, and all of them say which. */
    FACINGS_ALIKE,
    /** Two pictures of one subject and spot that differ in nothing. */
    PICTURES_ALIKE
}
