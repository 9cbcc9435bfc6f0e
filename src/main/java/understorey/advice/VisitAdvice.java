package understorey.advice;

import static understorey.advice.Measure.MINUTES;

import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.List;

/** Arrival, walks, gates and the return. */
public sealed interface VisitAdvice extends Advice {

    /** May spoil the visit or endanger people. */
    sealed interface Warning extends VisitAdvice {

        @Override
        default Severity severity() {
            return Severity.WARNING;
        }
    }

    /** A gate closes, or a check-in is due, before the return. */
    sealed interface TooLate extends Warning {
    }

    /** The first picture is taken long after you are ready for it. */
    record CouldArriveLater(ZonedDateTime start, @In(MINUTES) long minutes, ZonedDateTime arrive) implements VisitAdvice {
    }

    /** What the running order makes as large as it can. */
    record OrderObjective() implements VisitAdvice {
    }

    /** The walk is back long before the end of the visit. */
    record TimeLeft(@In(MINUTES) long minutes) implements VisitAdvice {
    }

    /** The walk could be back later, and some pictures still have their light then. */
    record TimeLeftFor(@In(MINUTES) long minutes, List<String> shots) implements VisitAdvice {
    }

    /** The positions of the spots are withheld, and so are the times of the walks. */
    record WalksWithheld() implements VisitAdvice {
    }

    record NoParking() implements VisitAdvice {
    }

    record WalkAssumed(String from, String to) implements VisitAdvice {
    }

    record BeforeOpening(ZonedDateTime arrive, LocalTime opens) implements Warning {
    }

    record AfterClosing(ZonedDateTime leave, LocalTime closes) implements TooLate {
    }

    record CarParkCloses(ZonedDateTime leave, LocalTime closes) implements TooLate {
    }

    /** The contact would expect a check-in before the walk is over. */
    record BackTooLate(ZonedDateTime back, ZonedDateTime by) implements TooLate {
    }

    /** The visit would last beyond the check-in time, which limits the stay. */
    record StayTooLate(ZonedDateTime end, ZonedDateTime by) implements Warning {
    }

    /** The way home is in the dark. */
    record BackInTheDark(@In(MINUTES) long minutes) implements VisitAdvice {
    }
}
