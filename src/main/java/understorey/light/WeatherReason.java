package understorey.light;

import understorey.reason.Reason;

/** Why mist or drops are likely, and how long they stay. */
public enum WeatherReason implements Reason.Kind {
    /** The published index. */
    MIST_INDEX,
    /** No index, for want of the air aloft. */
    MIST_BY_RULE,
    MIST_AIR_DAMP,
    MIST_AIR_DRY,
    MIST_CALM,
    MIST_WINDY,
    MIST_WIND_UNKNOWN,
    MIST_SKY_CLEAR,
    MIST_SKY_CLOUDY,
    MIST_SKY_UNKNOWN,
    /** The forecast begins after sunrise. */
    MIST_FORECAST_LATE,
    /** Nobody told how damp the air is. */
    MIST_UNKNOWN,
    MIST_NO_SUNRISE,
    /** By the sun on the floor. */
    MIST_CLEARS,
    /** By the hours since sunrise, where the land keeps the sun away. */
    MIST_CLEARS_IN_SHADE,
    DROPS_AFTER_RAIN,
    DROPS_OF_DEW,
    /** Still there where the forecast or the date ends. */
    DROPS_OUTLAST,
    /** How sure the rain is. */
    DROPS_IF_IT_RAINS,
    DROPS_BY_DAMP,
    DROPS_BY_RULE,
    DROPS_WIND_UNKNOWN,
    DROPS_NONE,
    /** Nobody told of rain. */
    DROPS_UNKNOWN
}
