package understorey.season;

import understorey.reason.Reason;

/** How a flowering window was found, and what speaks for or against a day. */
public enum SeasonReason implements Reason.Kind {
    /** The months of the catalogue alone. */
    BY_CATALOGUE,
    /** Moved by latitude and height (bioclimatic law). */
    CATALOGUE_LATER,
    CATALOGUE_EARLIER,
    /** One or two years: no interval can be worked out of them. */
    BY_FEW_RECORDS,
    BY_MEAN,
    BY_WINDOW,
    BY_THERMAL_TIME,
    /** Nothing but what was seen this year. */
    BY_SIGHTINGS_ALONE,
    /** A model with temperatures misses years it was not shown by less than their mean does. */
    TEMPERATURE_HELPED,
    TEMPERATURE_DID_NOT_HELP,
    TEMPERATURE_TOO_FEW_YEARS,
    TEMPERATURE_NONE_THIS_YEAR,
    /** Colder or warmer than any year on record. */
    OUTSIDE_RECORDED_RANGE,
    REST_AS_USUAL,
    SPRING_EARLIER,
    SPRING_LATER,
    SIGHTINGS_USED,
    COURSE_ASSUMED,
    /** A later stage seen before an earlier one. */
    SIGHTINGS_DISAGREE,
    /** Two entries for one season. */
    RECORDS_TWICE,
    /** Of a day: how likely the flowers are full, or by how far they are not. */
    DAY_FULL,
    DAY_PERHAPS_FULL,
    DAY_TOO_EARLY,
    DAY_TOO_LATE,
    DAY_FLOWERS_UNKNOWN,
    DAY_AVOIDED,
    /** Something was seen on it or later: it is over. */
    DAY_PAST,
    DAY_WRONG_WEEKDAY,
    /** No hour is left between opening, daylight and the times of the trip. */
    DAY_CLOSED,
    DAY_HOURS_SHORT,
    DAY_RAIN,
    DAY_WIND,
    DAY_WITHOUT_FORECAST,
    /** As good as the best one. */
    DAY_AS_GOOD_MORE_FLOWERS,
    DAY_AS_GOOD_EARLIER,
    /** Every day is past, avoided or on a weekday that is not wanted. */
    NO_DAY_WANTED
}
