package understorey.pages.words;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Month;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import understorey.advice.Measure;

/**
 * The units in which readers see figures. Lengths, weights, temperatures, speeds, rain and densities differ from one set of units to
 * another, so that another set is one class; every other kind of value reads the same in all of them.
 */
public interface Units {

    Units METRIC = new MetricUnits();

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

    /**
     * A value with its unit, if it has one.
     *
     * @param measure null where the type says it all
     */
    default String of(Object value, @Nullable Measure measure) {
        if (value instanceof Number number) {
            return of(number.doubleValue(), Objects.requireNonNull(measure, "a figure has a measure"));
        }
        if (value instanceof ZonedDateTime time) {
            return Dates.clock(time);
        }
        if (value instanceof LocalTime time) {
            return time.truncatedTo(ChronoUnit.MINUTES).toString();
        }
        if (value instanceof LocalDate date) {
            return measure == Measure.DAY_OF_YEAR ? Dates.dayMonth(date) : Dates.day(date);
        }
        if (value instanceof Enum<?> constant) {
            return constant instanceof Month || constant instanceof DayOfWeek ? Words.name(constant) : Words.word(constant);
        }
        if (value instanceof List<?> list) {
            return list.get(0) instanceof String ? names(list) : Words.pictures(list);
        }
        return String.valueOf(value);
    }

    /** {@code “One head”}, {@code “One head” or “The floor”}. */
    private static String names(List<?> names) {
        return names.stream().map(name -> "“" + name + "”").collect(Collectors.joining(" or "));
    }
}
