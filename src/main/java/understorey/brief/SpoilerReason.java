package understorey.brief;

import understorey.reason.Reason;

/** What could spoil a day. */
public enum SpoilerReason implements Reason.Kind {
    /** The chance of full flower is low. */
    FLOWERS_UNLIKELY,
    /** The chance of full flower is high; shown where no risk is greater. */
    FLOWERS_LIKELY,
    FLOWERS_UNKNOWN,
    /** The bag has no lens that fits these pictures. */
    PICTURES_IMPOSSIBLE,
    /** The visit has no time for these pictures. */
    PICTURES_LEFT_OUT,
    /** The pictures are not quite as asked. */
    PICTURES_COMPROMISED,
    /** The light that these pictures want is poor when they are taken. */
    LIGHT_POOR,
    /** The flowers are sharp only in a lull. */
    WIND_BLURS,
    /** The strongest wind of the visit; shown where no risk is greater. */
    WIND_FORECAST,
    NO_WIND_FORECAST,
    RAIN_PERHAPS,
    /** Rain whose chance is not given. */
    RAIN_FORECAST,
    /** Mist is needed, with a chance that is not high. */
    MIST_MAY_FAIL,
    /** Mist is needed and not expected. */
    MIST_NOT_EXPECTED,
    /** Mist is needed, and the forecast does not give enough to estimate it. */
    MIST_NOT_ESTIMATED,
    /** Sun is needed while mist is likely. */
    MIST_HIDES_SUN,
    NO_FORECAST,
    /** A gate closes soon after the way back. */
    CLOSING_SOON
}
