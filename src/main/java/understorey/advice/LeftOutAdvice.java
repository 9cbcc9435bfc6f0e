package understorey.advice;

import static understorey.advice.Measure.MINUTES;

import java.time.ZonedDateTime;

/** Why a picture is left out of the order of the day. */
public sealed interface LeftOutAdvice extends Advice, OfShot {

    /** Name of the picture. */
    String shot();

    /** May spoil the visit or endanger people. */
    sealed interface Warning extends LeftOutAdvice {

        @Override
        default Severity severity() {
            return Severity.WARNING;
        }
    }

    record NoTimeForMust(String shot, ZonedDateTime leave) implements Warning {
    }

    /** No settings make it sharp in the light and wind of the visit. */
    record NoSettingSucceeds(String shot) implements Warning {
    }

    /** The visit has no light for this picture when there is time for it. */
    record VisitTooDark(String shot) implements Warning {
    }

    /** With the pictures taken, the visit would end before this one is done. */
    record NoTimeLeft(String shot, ZonedDateTime leave) implements Warning {
    }

    /** Even alone it is not done before the visit ends. */
    record LongerThanVisit(String shot, @In(MINUTES) long minutes, ZonedDateTime leave) implements Warning {
    }

    /** There is time for it, but the others would have worse light. */
    record LeftForLight(String shot) implements Warning {
    }

    /** The walk arrives after the fixed time of the picture. */
    record PinMissed(String shot, ZonedDateTime pin, ZonedDateTime ready) implements Warning {
    }

    /** The visit ends before a picture with a fixed time is done. */
    record PinTooLate(String shot, ZonedDateTime pin, ZonedDateTime leave) implements Warning {
    }

    record PinsClash(String shot, ZonedDateTime pin, String other) implements Warning {
    }

    /** A picture with a fixed time comes after this one, which cannot be done by then. */
    record PinBeforeIt(String other, ZonedDateTime pin, String shot) implements Warning {
    }

    /** This picture comes after one with a fixed time, after which no time is left. */
    record PinLeavesTooLittle(String shot, String other, ZonedDateTime pin, ZonedDateTime leave) implements Warning {
    }

    /** The picture that it was to come after is left out. */
    record FollowsNothing(String shot, String other) implements LeftOutAdvice {
    }
}
