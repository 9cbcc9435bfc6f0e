package understorey.pages.words;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Month;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import understorey.advice.Measure;
import understorey.plan.Display;
import understorey.sky.Interval;

/** Values of every kind as one reader sees them. */
record Values(Units units, ClockWords clock) {

    static Values of(Display display) {
        return new Values(Units.of(display.units()), new ClockWords(display.clock()));
    }

    /**
     * A value with its unit, if it has one.
     *
     * @param measure null where the type says it all
     */
    String of(Object value, @Nullable Measure measure) {
        if (value instanceof Number number) {
            return units.of(number.doubleValue(), Objects.requireNonNull(measure, "a figure has a measure"));
        }
        if (value instanceof ZonedDateTime time) {
            return clock.of(time);
        }
        if (value instanceof LocalTime time) {
            return clock.of(time);
        }
        if (value instanceof Interval span) {
            return clock.span(span);
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
