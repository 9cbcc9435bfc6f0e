package understorey.reason;

/**
 * A value that a sentence will show, and what it measures.
 *
 * @param value   a number, a text, an enum constant, a clock time or a list of numbers, as the measure says
 * @param measure decides unit and rounding
 */
public record Figure(Object value, Measure measure) {

    /** What a figure measures, and in which unit it is held. */
    public enum Measure {
        /** Focal lengths and sensor sizes, mm. */
        MILLIMETRES,
        /** Distances and heights, m. */
        METRES,
        F_NUMBER,
        /** Exposure time, s. */
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
        /** A {@link java.time.ZonedDateTime} or {@link java.time.LocalTime}, shown to the minute. */
        CLOCK,
        /** A {@link java.time.LocalDate}. */
        DATE,
        /** A {@link java.time.LocalDate} whose year goes without saying. */
        DAY_OF_YEAR,
        /** A name or a word of the author's. */
        TEXT,
        /** An enum constant, worded by its name. */
        WORD,
        /** Another {@link Reason}, told within the sentence. */
        REASON,
        /** A list of the numbers of pictures. */
        PICTURES
    }

    public static Figure of(double value, Measure measure) {
        return new Figure(value, measure);
    }

    public static Figure word(Enum<?> constant) {
        return new Figure(constant, Measure.WORD);
    }

    public static Figure text(String value) {
        return new Figure(value, Measure.TEXT);
    }
}
