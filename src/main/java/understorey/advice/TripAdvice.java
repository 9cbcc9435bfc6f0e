package understorey.advice;

import static understorey.advice.Measure.COUNT;
import static understorey.advice.Measure.DAY_OF_YEAR;
import static understorey.advice.Measure.METRES_PER_SECOND;
import static understorey.advice.Measure.SHARE;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;

/** What concerns the plan as a whole. */
public sealed interface TripAdvice extends Advice {

    /** May spoil the visit or endanger people. */
    sealed interface Warning extends TripAdvice {

        @Override
        default Severity severity() {
            return Severity.WARNING;
        }
    }

    /** No wind is forecast: settings are for an assumed one. */
    record WindAssumed(@In(METRES_PER_SECOND) double wind) implements TripAdvice {
    }

    /** Several days were offered, and the best of them is planned. */
    record BestDayPlanned(@In(COUNT) int days, LocalDate from, LocalDate to, LocalDate date) implements TripAdvice {
    }

    /** Other days of the season are clearly better than the one planned. */
    record BetterDays(String subject, @In(SHARE) double chance, @In(DAY_OF_YEAR) LocalDate from, @In(DAY_OF_YEAR) LocalDate to,
            @In(SHARE) double most) implements TripAdvice {

        /** Below this chance the flowers are past, or not there yet. */
        private static final double HARDLY = 0.1;

        @Override
        public Severity severity() {
            return chance < HARDLY ? Severity.WARNING : Severity.NOTE;
        }
    }

    record MonthsUnknown(String subject) implements TripAdvice {
    }

    /** Trees and leaves of the wood that a flower grows in. */
    record WoodAssumed(String subject, Enum<?> trees, Enum<?> from, Enum<?> to) implements TripAdvice {
    }

    record EvergreensAssumed(String subject) implements TripAdvice {
    }

    record CanopyUnknown() implements TripAdvice {
    }

    record ClocksGoForward(LocalTime from, LocalTime to) implements TripAdvice {
    }

    record ClocksGoBack(LocalTime from, LocalTime to) implements TripAdvice {
    }

    record SunDoesNotRise() implements TripAdvice {
    }

    record SunDoesNotSet() implements TripAdvice {
    }

    record SkyUnknown() implements TripAdvice {
    }

    /** The forecast of a day would give the day away. */
    record ForecastWithheld() implements TripAdvice {
    }

    record ForecastSilent(String shot) implements TripAdvice, OfShot {
    }

    /** No hour of the forecast is one of the visit. */
    record ForecastOfOtherHours(ZonedDateTime arrive, ZonedDateTime leave) implements Warning {
    }

    record ForecastEndsEarly(ZonedDateTime end, ZonedDateTime leave) implements Warning {
    }

    /** A clearing has no effect without the height of the trees around it. */
    record ClearingWithoutHeight(String spot) implements TripAdvice {
    }

    /** The light wished for is poor at the time planned, and better at another. */
    record LightPoorNow(String shot, ZonedDateTime from, ZonedDateTime to) implements TripAdvice, OfShot {
    }

    /** The light wished for comes after the visit; leaving then is late enough to take the picture in it. */
    record LightAfterTheVisit(String shot, Enum<?> grade, ZonedDateTime from, ZonedDateTime to, ZonedDateTime leave) implements TripAdvice, OfShot {
    }

    /** The light wished for comes before the visit; arriving then is early enough to take the picture in it. */
    record LightBeforeTheVisit(String shot, Enum<?> grade, ZonedDateTime from, ZonedDateTime to, ZonedDateTime arrive) implements TripAdvice, OfShot {
    }

    /** The day does not have the light wished for. */
    record LightPoorAllDay(String shot, Advice why) implements Warning, OfShot {
    }

    record ShotCannot(String shot) implements Warning, OfShot {
    }

    /** The camera serves the picture, but the light of its time does not. */
    record ShotCannotInLight(String shot) implements Warning, OfShot {
    }

    record ShotCompromise(String shot, Advice why) implements TripAdvice, OfShot {
    }

    /** The lens fits, but the shutter speed is too slow for hand or wind. */
    record ShotAtItsLimit(String shot) implements TripAdvice, OfShot {
    }

    /** The tilt leaves nothing of the ground with the flowers in the frame. */
    record NoGroundInFrame(String shot) implements Warning, OfShot {
    }
}
