package understorey.kit;

import understorey.reason.Reason;

/** What speaks for or against a lens, a support or a filter on a picture. */
public enum FitReason implements Reason.Kind {
    /** The focal length asked is within the lens. */
    FOCAL_REACHED,
    /** A fixed focal length frames the picture from this distance. */
    FRAMED_FROM,
    /** Shorter than asked: crop. */
    FOCAL_SHORT,
    /** Longer than asked: step back, and see less. */
    FOCAL_LONG,
    /** The picture is smaller than the lens focuses: crop. */
    MAGNIFICATION_SHORT,
    /** The distance asked is nearer than the lens focuses. */
    TOO_NEAR,
    /** Too few pixels are left after the crop. */
    PIXELS_SHORT,
    /** Too few pixels for the print asked. */
    PRINT_SOFT,
    /** The front of the lens stands over the flower. */
    WORKING_DISTANCE_SMALL,
    /** The sharpness asked is held at a usable aperture. */
    DEPTH_HELD,
    /** The sharpness asked needs a smaller aperture than is of use. */
    DEPTH_SHORT,
    /** The one aperture of a built-in lens holds less than was asked. */
    DEPTH_FIXED,
    /** An attachment brings the lens this close. */
    WITH_ATTACHMENT,
    /** The polariser goes on straight, or by a ring. */
    POLARISER_ON,
    POLARISER_BY_RING,
    POLARISER_MISSING,
    POLARISER_NO_THREAD,
    /** Nothing in the bag holds the camera. */
    NO_SUPPORT,
    SUPPORT_HOLDS,
    SUPPORT_TOO_TALL,
    SUPPORT_TOO_SHORT,
    SUPPORT_OVERLOADED,
    /** No remote release: use the self-timer. */
    NO_RELEASE,
    HELP_LONGER,
    HELP_WIDER,
    HELP_TUBE,
    HELP_CLOSE_UP_LENS,
    HELP_STACK,
    HELP_STEP_UP_RING,
    HELP_POLARISER,
    HELP_SUPPORT,
    /** There is no body that takes the lens. */
    NO_CAMERA
}
