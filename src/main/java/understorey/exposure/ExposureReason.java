package understorey.exposure;

import understorey.reason.Reason;

/** Why an aperture, a time or an ISO was chosen. */
public enum ExposureReason implements Reason.Kind {
    /** The aperture that holds the sharpness asked. */
    APERTURE_FOR_DEPTH,
    /** Further down than the sharpness asked needs: both of its ends gain. */
    APERTURE_BALANCED,
    /** Opened from there for a shorter time, within the sharpness asked. */
    APERTURE_OPENED,
    /** The lens is sharp enough wide open. */
    APERTURE_WIDE_OPEN,
    /** Smaller would blur everything by diffraction. */
    APERTURE_AT_LIMIT,
    /** Each frame of a stack at its sharpest. */
    APERTURE_FOR_STACK,
    /** Smaller for a time that a shutter goes down to. */
    STOPPED_DOWN,
    /** The same close up, where more of the background shows for it. */
    STOPPED_DOWN_SHOWS,
    /** A neutral density filter lengthens a time that no shutter goes down to. */
    DIMMED_BY_FILTER,
    DIMMED_BY_FILTER_AND_RING,
    /** There is one aperture only. */
    APERTURE_FIXED,
    /** One frame cannot hold the depth, these can: even steps. */
    STACK,
    /** The same over a view, whose steps grow with distance. */
    STACK_VIEW,
    /** Nearer, or farther, than the focus ring goes: the whole camera moves. */
    STACK_BY_RAIL,
    /** It would take more frames than anybody stacks. */
    ONE_FRAME_TOO_MANY(true),
    /** Gusts shift the frames of a stack. */
    ONE_FRAME_IN_WIND,
    /** Hands shift them. */
    ONE_FRAME_BY_HAND,
    BACKGROUND_MELTS,
    BACKGROUND_SHOWS,
    /** It shows though the lens is open all the way. */
    BACKGROUND_SHOWS_WIDE_OPEN,
    /** Steady, so the lowest ISO. */
    ISO_BASE_STEADY,
    /** Fast enough for the hand at the lowest ISO. */
    ISO_BASE_HAND_HELD,
    /** The same on a monopod. */
    ISO_BASE_MONOPOD,
    /** Raised until the hand holds. */
    ISO_FOR_HAND,
    ISO_FOR_MONOPOD,
    /** Even the highest ISO leaves a time too long for the hand. */
    HAND_TOO_SLOW(true),
    MONOPOD_TOO_SLOW(true),
    /** Raised until the frame takes minutes, not an hour. */
    ISO_FOR_DARK,
    /** Raised until the camera counts the time by itself, since nothing lets bulb go. */
    ISO_WITHOUT_RELEASE,
    /** Raised until the stems stand. */
    ISO_FOR_WIND,
    /** Raised until the stems stand in a lull. */
    ISO_FOR_LULL,
    /** Light wind: wait until the stems stand, the time is longer than their sway allows. */
    WAIT_FOR_LULL,
    /** The same, and even the highest ISO leaves a smear without one. */
    WAIT_OR_SMEAR,
    /** Even the highest ISO leaves a time too long for the stems. */
    WIND_TOO_STRONG(true),
    /** The stems are still enough for the time. */
    STEMS_STILL,
    FILTER_TAKES,
    CLOSENESS_TAKES,
    /** Shorter than a shutter goes, whatever the lens does. */
    TOO_BRIGHT(true),
    /** Longer than any frame makes sense. */
    TOO_DARK(true),
    /** Longer than the camera's own scale. */
    BULB,
    /** The same at the highest ISO, and nothing in the bag keeps the shutter open. */
    BULB_WITHOUT_RELEASE(true),
    LET_GO_BY_REMOTE,
    LET_GO_BY_TIMER,
    /** A time in which the shake of putting the camera up still shows. */
    SETTLE_FIRST,
    FRAME_HOLDS_SUN,
    BRACKET,
    /** One frame holds flecks and shade when it is exposed for the flecks. */
    EXPOSE_FOR_FLECKS,
    /** Where the petals stand in the histogram. */
    PETALS_BRIGHT,
    PETALS_MIDDLE,
    PETALS_DARK,
    NO_RAW;

    private final boolean against;

    ExposureReason() {
        this(false);
    }

    ExposureReason(boolean against) {
        this.against = against;
    }

    /** True for what makes a picture a compromise or rules it out. */
    public boolean against() {
        return against;
    }
}
