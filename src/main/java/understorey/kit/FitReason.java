package understorey.kit;

import understorey.reason.Reason;

/** What speaks for or against a lens, a support or a filter on a picture, and what would help. */
public enum FitReason implements Reason.Kind {
    /** The focal length asked is within the lens. */
    FOCAL_REACHED,
    /** Nobody asked for a focal length: the one for a floor of flowers, or for the way in. */
    PROPOSED_FLOOR,
    PROPOSED_WAY_IN,
    /** Nobody framed the picture: a plant, or a head of flowers. */
    PROPOSED_PLANT,
    PROPOSED_HEAD,
    /** Shorter than what melts the background behind a plant. */
    BACKGROUND_WIDE(true),
    /** The nearest to a focal length that nobody asked for, on its wide side. */
    PROPOSED_WIDER,
    /** The same on its long side. */
    PROPOSED_LONGER,
    /** The lens frames the picture from this distance. */
    FRAMED_FROM,
    /** An attachment brings the lens this close. */
    WITH_ATTACHMENT,
    /** With its attachment the lens no longer sees so far. */
    ATTACHMENT_TOO_CLOSE(true),
    /** Shorter than asked: crop. */
    FOCAL_SHORT(true),
    /** Longer than asked: step back, and see less. */
    FOCAL_LONG(true),
    /** The picture is smaller than the lens focuses: crop. */
    MAGNIFICATION_SHORT(true),
    /** The distance asked is nearer than the lens focuses. */
    TOO_NEAR(true),
    /** Too few pixels for the print asked. */
    PRINT_SOFT(true),
    /** The front of the lens stands over the flower. */
    WORKING_DISTANCE_SMALL,
    /** The sharpness asked needs a smaller aperture than is of use. */
    DEPTH_SHORT(true),
    /** The sharpness proposed, which nobody asked for, needs a smaller aperture than there is. */
    DEPTH_PROPOSED_SHORT,
    /** The one aperture of a built-in lens holds less than was asked. */
    DEPTH_FIXED(true),
    /** The polariser goes on straight, or by a ring. */
    POLARISER_ON,
    POLARISER_BY_RING,
    POLARISER_MISSING(true),
    POLARISER_NO_THREAD(true),
    /** Nothing in the bag holds the camera. */
    NO_SUPPORT,
    SUPPORT_TOO_TALL,
    SUPPORT_TOO_SHORT,
    SUPPORT_OVERLOADED,
    /** It would hold the camera, and is left at home. */
    SUPPORT_AT_HOME,
    /** Left at home: a lighter bag takes the picture as well. */
    LENS_AT_HOME(true),
    HELP_LONGER,
    HELP_WIDER,
    /** Something in the bag brings the lens closer. */
    HELP_ATTACH,
    HELP_TUBE,
    HELP_CLOSE_UP_LENS,
    HELP_STEP_UP_RING(true),
    HELP_POLARISER,
    HELP_SUPPORT,
    /** Legs that carry more. */
    HELP_STRONGER_SUPPORT,
    /** From the distance asked the lens does not focus: step back, and crop. */
    HELP_CROP,
    /** Another spot: nearer, farther, or with nothing so near. */
    HELP_SPOT_NEARER,
    HELP_SPOT_FARTHER,
    HELP_SPOT_CLEAR,
    HELP_SMALLER_PRINT,
    /** A companion has what is missing. */
    BORROW,
    /** A companion's own camera takes it. */
    BORROW_CAMERA,
    /** There is no body that takes the lens. */
    NO_CAMERA,
    /** Why a thing stays at home: no body takes it, it suits no picture, a lighter one does, it weighs too much. */
    LEFT_NO_BODY,
    LEFT_UNASKED,
    LEFT_SPARED,
    LEFT_TOO_HEAVY,
    /** It would serve a picture, as well as or worse than what is carried. */
    LEFT_AS_WELL,
    LEFT_COMPROMISE;

    private final boolean against;

    FitReason() {
        this(false);
    }

    FitReason(boolean against) {
        this.against = against;
    }

    /** True for what makes a lens a compromise or rules it out. */
    public boolean against() {
        return against;
    }
}
