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
    HELP_LONGER,
    HELP_WIDER,
    HELP_TUBE,
    HELP_CLOSE_UP_LENS,
    HELP_STEP_UP_RING(true),
    HELP_POLARISER,
    HELP_SUPPORT,
    /** There is no body that takes the lens. */
    NO_CAMERA;

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
