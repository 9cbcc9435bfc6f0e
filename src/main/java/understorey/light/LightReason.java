package understorey.light;

import understorey.reason.Reason;

/** Why the light of an hour is what a picture wished for, or what spoils it. */
public enum LightReason implements Reason.Kind {
    SUN_IS_LOW,
    SUN_TOO_HIGH,
    SUN_NOT_YET_UP,
    SUN_BEHIND_LAND,
    SUN_BEHIND_CLOUD,
    FLECKS_TOO_FEW,
    /** The sun stands where the wish wants it. */
    AHEAD_AS_WISHED,
    ASIDE_AS_WISHED,
    BEHIND_YOU_AS_WISHED,
    /** It stands elsewhere. */
    SUN_OFF_THE_SIDE_WISHED,
    /** The picture faces nowhere in particular: turn. */
    FACE_INTO_SUN,
    FACE_ACROSS_SUN,
    FACE_AWAY_FROM_SUN,
    /** Too steep to come from any side. */
    SUN_TOO_STEEP,
    SUN_IS_HIGH,
    SUN_NOT_HIGH,
    SOFT_WITHOUT_SUN,
    SOFT_UNDER_CLOUD,
    SOFT_UNDER_LEAVES,
    HARSH,
    MIST_LIKELY,
    MIST_POSSIBLE,
    MIST_UNLIKELY,
    /** Nobody told how damp the air is. */
    MIST_NOT_JUDGED,
    DROPS_THERE,
    DROPS_DRYING,
    DROPS_GONE,
    /** Nobody told of rain. */
    DROPS_NOT_JUDGED,
    TWILIGHT_NOW,
    NOT_TWILIGHT,
    LIGHT_GONE
}
