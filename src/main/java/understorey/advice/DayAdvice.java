package understorey.advice;

import static understorey.advice.Measure.DAYS;
import static understorey.advice.Measure.DAY_OF_YEAR;
import static understorey.advice.Measure.MINUTES;
import static understorey.advice.Measure.SHARE;
import static understorey.advice.Measure.WIND;

import java.time.DayOfWeek;
import java.time.LocalDate;

/** What speaks for or against a day. */
public sealed interface DayAdvice extends Advice {

    /** May spoil the visit or endanger people. */
    sealed interface Warning extends DayAdvice {

        @Override
        default Severity severity() {
            return Severity.WARNING;
        }
    }

    /** Of a day: how likely the flowers are full, or by how far they are not. */
    record DayFull(String subject, @In(SHARE) double chance) implements DayAdvice {
    }

    record DayPerhapsFull(String subject, @In(SHARE) double chance) implements DayAdvice {
    }

    record DayTooEarly(@In(DAYS) double days, String subject, @In(SHARE) double chance) implements DayAdvice {
    }

    record DayTooLate(@In(DAYS) double days, String subject, @In(SHARE) double chance) implements DayAdvice {
    }

    record DayFlowersUnknown() implements DayAdvice {
    }

    record DayAvoided() implements DayAdvice {
    }

    /** Something was seen on it or later: it is over. */
    record DayPast(LocalDate seen) implements DayAdvice {
    }

    record DayWrongWeekday(DayOfWeek weekday) implements DayAdvice {
    }

    /** No hour is left between opening, daylight and the times of the trip. */
    record DayClosed() implements DayAdvice {
    }

    record DayHoursShort(@In(MINUTES) long have, @In(MINUTES) long want) implements DayAdvice {
    }

    record DayRain(@In(SHARE) double share) implements DayAdvice {
    }

    record DayWind(@In(WIND) double wind) implements DayAdvice {
    }

    record DayWithoutForecast() implements DayAdvice {
    }

    /** As good as the best one. */
    record DayAsGoodMoreFlowers(@In(DAY_OF_YEAR) LocalDate other) implements DayAdvice {
    }

    record DayAsGoodEarlier(@In(DAY_OF_YEAR) LocalDate other) implements DayAdvice {
    }

    /** Every day is past, avoided or on a weekday that is not wanted. */
    record NoDayWanted(@In(DAY_OF_YEAR) LocalDate date) implements Warning {
    }
}
