package understorey.advice;

/** What a figure measures, and the unit it is held in; decides the unit that readers see, and the rounding. */
public enum Measure {
    /** A name, a time or a sentence: its type decides how it is shown. */
    WORD,
    /** Focal lengths, threads and sensor sizes, mm, which no other set of units changes. */
    MILLIMETRES,
    /** Distances and heights, m. */
    METRES,
    /** Heights of land and trees, and distances that are fixed, m, shown whole. */
    WHOLE_METRES,
    /** Far limit of what is sharp, m; beyond 1 km it is shown as the horizon. */
    FAR_LIMIT,
    /** A distance on the ground in a straight line, m, as exact as a walk needs. */
    WALK_METRES,
    /** Length of the bar of a scale, m, a round figure of its unit. */
    SCALE_BAR,
    /** Width of a print, m. */
    PRINT_WIDTH,
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
    /** A ratio without a unit, shown as a number. */
    RATIO,
    MAGNIFICATION,
    /** A share, 0 to 1. */
    SHARE,
    EV100,
    /** The number of {@link #EV100} alone, where its letters are shown before. */
    EV100_NUMBER,
    DEGREES,
    /** Altitude of the sun above the horizon, °. */
    ALTITUDE,
    /** Phase of the moon, °, from new through full. */
    PHASE,
    /** A direction from north through east, °, shown below 360. */
    BEARING,
    /** A direction from north through east, °, shown as one of the 16 compass points. */
    COMPASS,
    /** Colour temperature, K. */
    KELVIN,
    METRES_PER_SECOND,
    /** Wind at 10 m in the open, m/s, shown with its force in words; wind elsewhere is {@link #METRES_PER_SECOND}. */
    WIND,
    /** A temperature, °C. */
    CELSIUS,
    /** A difference of two temperatures, °C. */
    CELSIUS_APART,
    /** Cloud cover, 0 to 8. */
    OKTA,
    /** Rain, mm. */
    RAIN,
    COUNT,
    /** Height of plants, m, shown in whole centimetres. */
    PLANT_HEIGHT,
    /** Stems on a square metre. */
    STEM_DENSITY,
    GRAMS,
    KILOGRAMS,
    GIGABYTES,
    MINUTES,
    /** Days, shown whole. */
    DAYS,
    /** Days, shown to a tenth. */
    DAYS_TO_TENTH,
    /** A {@link java.time.LocalDate}, shown without its year. */
    DAY_OF_YEAR;

    /** A point farther away, m, is as sharp as the horizon. */
    public static final double FAR_M = 1000;

    /** True for a figure, which a table aligns right; words, directions and winds with their force are read from the left. */
    public boolean isFigure() {
        return switch (this) {
            case WORD, BEARING, COMPASS, WIND, DAY_OF_YEAR -> false;
            default -> true;
        };
    }
}
