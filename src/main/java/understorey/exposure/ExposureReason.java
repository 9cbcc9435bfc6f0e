package understorey.exposure;

import understorey.reason.Reason;

/** Why an aperture, a time or an ISO was chosen. */
public enum ExposureReason implements Reason.Kind {
    /** The aperture that holds the sharpness asked. */
    APERTURE_FOR_DEPTH,
    /** The lens is sharp enough wide open. */
    APERTURE_WIDE_OPEN,
    /** Smaller would blur everything by diffraction. */
    APERTURE_AT_LIMIT,
    /** There is one aperture only. */
    APERTURE_FIXED,
    /** Steady, so the lowest ISO. */
    ISO_BASE_STEADY,
    /** Fast enough for the hand at the lowest ISO. */
    ISO_BASE_HAND_HELD,
    /** Raised until the hand holds. */
    ISO_FOR_HAND,
    /** Even the highest ISO leaves a time too long for the hand. */
    HAND_TOO_SLOW,
    /** Raised until the stems stand. */
    ISO_FOR_WIND,
    /** Light wind: wait until the stems stand, the time is longer than their sway allows. */
    WAIT_FOR_LULL,
    /** Even the highest ISO leaves a time too long for the stems. */
    WIND_TOO_STRONG,
    /** The stems are still enough for the time. */
    STEMS_STILL,
    FILTER_TAKES,
    CLOSENESS_TAKES,
    /** Longer than any frame makes sense. */
    TOO_DARK,
    /** Longer than the camera's own scale. */
    BULB,
    LET_GO_BY_REMOTE,
    LET_GO_BY_TIMER,
    BRACKET
}
