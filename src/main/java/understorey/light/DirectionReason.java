package understorey.light;

import understorey.reason.Reason;

/** How the sun lights a picture, what a polariser does for it, and the colour of its light. */
public enum DirectionReason implements Reason.Kind {
    /** Back light. */
    SUN_AHEAD,
    /** Side light. */
    SUN_BESIDE,
    /** Front light. */
    SUN_BEHIND_YOU,
    SUN_OVERHEAD,
    /** Neither direct light nor flare. */
    SUN_HIDDEN_BY_LAND,
    /** Hardly any direct light. */
    SUN_VEILED,
    SUN_IN_FRAME,
    /** Near enough to flare. */
    SUN_NEAR_FRAME,
    POLARISER_SKY,
    /** Darker in one part of the frame than in another. */
    POLARISER_SKY_UNEVEN,
    /** Too near the sun, or straight away from it. */
    POLARISER_SKY_LITTLE,
    /** Too little blue. */
    POLARISER_SKY_CLOUDED,
    /** The camera looks down past the horizon. */
    POLARISER_NO_SKY,
    /** Sheen in the middle and at the foot of the frame. */
    POLARISER_LEAVES,
    /** Sheen at the foot only: the middle looks no lower than the horizon. */
    POLARISER_LEAVES_FOOT,
    /** Looked at in another way the leaves would shine less. */
    POLARISER_LEAVES_BEST,
    POLARISER_LOSS,
    WHITE_BALANCE_SUN,
    WHITE_BALANCE_SHADE,
    /** Sun and cloud by turns. */
    WHITE_BALANCE_BROKEN,
    WHITE_BALANCE_CLOUD,
    WHITE_BALANCE_MOON,
    /** Leaves overhead. */
    GREEN_CAST
}
