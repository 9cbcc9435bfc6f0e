package understorey.pages.words;

import understorey.advice.Measure;
import understorey.weather.Beaufort;

/** Metres, grams, degrees Celsius. */
final class MetricUnits implements Units {

    @Override
    public String of(double value, Measure measure) {
        return switch (measure) {
            case MILLIMETRES -> Words.millimetres(value);
            case METRES -> Words.metres(value);
            case FAR_LIMIT -> Words.farLimit(value);
            case WALK_METRES -> walk(value);
            case F_NUMBER -> Words.fNumber(value);
            case SHUTTER_SECONDS -> Words.shutter(value);
            case ISO -> "ISO " + Words.number(value, 0);
            case STOPS -> Words.stops(value);
            case MEGAPIXELS -> Words.tenths(value) + " Mpx";
            case DIOPTRES -> Words.number(value, 1) + " dpt";
            case TIMES -> (value < 1.1 ? Words.number(value, 2) : Words.tenths(value)) + "×";
            case RATIO -> Words.tenths(value);
            case MAGNIFICATION -> Words.number(value, 2) + "×";
            case SHARE -> Words.percent(value);
            case EV100 -> "EV " + Words.number(value, 1);
            case EV100_NUMBER -> Words.ev(value);
            case DEGREES, ALTITUDE, PHASE -> Words.degrees(value);
            case BEARING -> Words.bearing(value);
            case COMPASS -> Words.compass(value);
            case KELVIN -> Words.number(value, 0) + " K";
            case METRES_PER_SECOND -> Words.number(value, 1) + " m/s";
            case WIND -> wind(value);
            case CELSIUS -> Words.number(value, 1) + " °C";
            case OKTA -> Words.plain(Words.number(value, 1)) + " okta";
            case RAIN -> Words.number(value, 1) + " mm";
            case COUNT -> Words.number(value, 0);
            case PER_SQUARE_METRE -> value < 0.05 ? "under 0.1" : value == Math.rint(value) ? Words.number(value, 0) : Words.tenths(value);
            case GRAMS -> Words.weight(value);
            case KILOGRAMS -> Words.number(value, 1) + " kg";
            case GIGABYTES -> Words.number(value, 1) + " GB";
            case MINUTES -> minutes(Math.round(value));
            case DAYS -> days(value);
            case DAYS_TO_TENTH -> Words.number(value, 1) + " days";
            case WORD, DAY_OF_YEAR -> throw new IllegalArgumentException(measure + " is not a number");
        };
    }

    /** From an hour on in hours and what is left. */
    private static String minutes(long minutes) {
        return minutes < 60 ? minutes + " min" : minutes / 60 + " h" + (minutes % 60 == 0 ? "" : " " + minutes(minutes % 60));
    }

    /** Whole days: {@code 1 day}, {@code 12 days}. */
    private static String days(double days) {
        String whole = Words.number(days, 0);
        return whole + (whole.equals("1") ? " day" : " days");
    }

    /** To ten metres, short ways to one, long ones to a hundred. */
    private static String walk(double m) {
        return m < 9.5 ? Words.number(m, 0) + " m" : m < 995 ? Words.number(m / 10, 0) + "0 m" : Words.number(m / 1000, 1) + " km";
    }

    /** With the force of the speed that is shown. */
    private static String wind(double speedMs) {
        return Words.number(speedMs, 1) + " m/s, " + Words.word(Beaufort.of(Figures.rounded(speedMs, 1).doubleValue()));
    }
}
