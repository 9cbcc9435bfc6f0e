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

    /** Every must would fit if one arrived earlier. */
    record RoomByArriving(@In(MINUTES) long minutes, ZonedDateTime arrive) implements RoomAdvice {
    }

    record RoomByArrivingInTheDark(@In(MINUTES) long minutes, ZonedDateTime arrive) implements RoomAdvice {
    }

    /** Every must would fit if one left later. */
    record RoomByLeaving(@In(MINUTES) long minutes, ZonedDateTime leave) implements RoomAdvice {
    }

    record RoomByLeavingInTheDark(@In(MINUTES) long minutes, ZonedDateTime leave) implements RoomAdvice {
    }

    /** Every must would fit if one of them took less time. */
    record RoomByShortening(String shot, @In(MINUTES) long minutes) implements RoomAdvice {
    }

    /** No such change lets every must fit. */
    record NoRoom() implements RoomAdvice {
    }

    /** More musts than can be ordered exactly do not all fit. */
    record MustsTooMany(@In(COUNT) int count) implements RoomAdvice {
    }
}
