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

/** The units in which readers see figures; every other kind of value reads the same in all of them. */
public interface Units {

    Units METRIC = new MetricUnits();

    /** A figure with its unit, rounded to what it is good for. */
    String of(double value, Measure measure);

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
