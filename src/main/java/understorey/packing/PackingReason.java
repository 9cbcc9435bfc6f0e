package understorey.packing;

import understorey.reason.Reason;

/** What the bag as a whole lacks, and why something stays at home that no lens decides. */
public enum PackingReason implements Reason.Kind {
    /** A long time on legs, and nothing to let go with. */
    HELP_RELEASE,
    /** A way is dark and no extra is called a lamp. */
    HELP_LAMP,
    HELP_CARDS,
    HELP_BATTERIES,
    /** The same, for the cold's sake alone. */
    BATTERIES_COLD,
    /** The only picture that it is for cannot be taken in the light there will be. */
    LEFT_NO_LIGHT
}
