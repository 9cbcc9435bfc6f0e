package understorey.pages.words;

import understorey.advice.Measure;
import understorey.plan.Display;

/**
 * The units in which readers see figures. Lengths, weights, temperatures, speeds, rain and densities differ from one set of units to
 * another, so that another set is one class; every other kind of value reads the same in all of them.
 */
public interface Units {

    Units METRIC = new MetricUnits();
    Units IMPERIAL = new ImperialUnits();

    /** The units of a system. */
    static Units of(Display.UnitSystem system) {
        return switch (system) {
            case METRIC -> METRIC;
            case IMPERIAL -> IMPERIAL;
        };
    }

    /** The unit, m, that the scale of a drawing counts in where it is so long. */
    double scaleUnitM(double longestM);

    /** A length, weight, temperature, speed, amount of rain or density with its unit, rounded to what it is good for. */
    String figure(double value, Measure measure);

    /** The unit of the plain figures of a temperature, a speed, an amount of rain, a height of plants or a density. */
    String unit(Measure measure);

    /** A figure without its {@link #unit}, which is given elsewhere. */
    String plain(double value, Measure measure);

    /** A figure with its unit, rounded to what it is good for. */
    default String of(double value, Measure measure) {
        return switch (measure) {
            case MILLIMETRES -> Words.millimetres(value);
            case METRES -> Double.isInfinite(value) ? "the horizon" : figure(value, measure);
            case FAR_LIMIT -> of(value > Measure.FAR_M ? Double.POSITIVE_INFINITY : value, Measure.METRES);
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
            case OKTA -> Words.plain(Words.number(value, 1)) + " okta";
            case COUNT -> Words.number(value, 0);
            case GIGABYTES -> Words.number(value, 1) + " GB";
            case MINUTES -> Words.minutes(Math.round(value));
            case DAYS -> Words.days(value);
            case DAYS_TO_TENTH -> Words.number(value, 1) + " days";
            case WORD, DAY_OF_YEAR -> throw new IllegalArgumentException(measure + " is not a number");
            default -> figure(value, measure);
        };
    }
}
