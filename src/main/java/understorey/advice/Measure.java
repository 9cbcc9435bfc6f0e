package understorey.advice;

/** What a figure measures, and the unit it is held in; decides the unit that readers see, and the rounding. */
public enum Measure {
    /** Focal lengths and sensor sizes, mm. */
    MILLIMETRES,
    /** Distances and heights, m. */
    METRES,
    F_NUMBER,
    /** Shutter speed, s. */
    SHUTTER_SECONDS,
    ISO,
    STOPS,
    MEGAPIXELS,
    /** Power of a close-up lens, 1/m. */
    DIOPTRES,
    /** A plain ratio such as 1.4 times. */
    TIMES,
    /** A share, 0 to 1. */
    SHARE,
    EV100,
    DEGREES,
    /** A bearing in degrees, shown as one of 16 points of the compass. */
    COMPASS,
    /** Colour temperature, K. */
    KELVIN,
    METRES_PER_SECOND,
    /** Wind at 10 m in the open, m/s, shown with its force in words; wind elsewhere is {@link #METRES_PER_SECOND}. */
    WIND,
    /** A temperature or a difference of two, °C. */
    CELSIUS,
    /** Cloud cover, 0 to 8. */
    OKTA,
    COUNT,
    GRAMS,
    KILOGRAMS,
    MINUTES,
    /** Days, shown whole. */
    DAYS,
    /** Days, shown to a tenth. */
    DAYS_TO_TENTH,
    /** A {@link java.time.LocalDate}, shown without its year. */
    DAY_OF_YEAR
}
