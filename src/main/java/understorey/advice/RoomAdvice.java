package understorey.advice;

import static understorey.advice.Measure.COUNT;
import static understorey.advice.Measure.MINUTES;

import java.time.ZonedDateTime;

/** What would make room for every must-have picture. */
public sealed interface RoomAdvice extends Advice {

    @Override
    default Severity severity() {
        return Severity.WARNING;
    }

    /** Every must-have picture would fit with an earlier arrival. */
    record RoomByArriving(@In(MINUTES) long minutes, ZonedDateTime arrive) implements RoomAdvice {
    }

    record RoomByArrivingInTheDark(@In(MINUTES) long minutes, ZonedDateTime arrive) implements RoomAdvice {
    }

    /** Every must-have picture would fit with a later end. */
    record RoomByLeaving(@In(MINUTES) long minutes, ZonedDateTime leave) implements RoomAdvice {
    }

    record RoomByLeavingInTheDark(@In(MINUTES) long minutes, ZonedDateTime leave) implements RoomAdvice {
    }

    /** Every must-have picture would fit if one of them took less time. */
    record RoomByShortening(String shot, @In(MINUTES) long minutes) implements RoomAdvice {
    }

    /** No such change makes room for every must-have picture. */
    record NoRoom() implements RoomAdvice {
    }

    /** There are more must-have pictures than can be ordered exactly, and not all fit. */
    record MustsTooMany(@In(COUNT) int count) implements RoomAdvice {
    }
}
