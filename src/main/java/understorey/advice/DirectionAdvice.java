package understorey.advice;

import static understorey.advice.Measure.DEGREES;

/** Where the sun is, seen from the camera. */
public sealed interface DirectionAdvice extends Advice {

    /** Back light. */
    record SunAhead(@In(DEGREES) double angle, @In(DEGREES) double altitude) implements DirectionAdvice {
    }

    /** Side light. */
    record SunBeside(@In(DEGREES) double bearing, Enum<?> hand, @In(DEGREES) double altitude) implements DirectionAdvice {
    }

    /** Front light. */
    record SunBehindYou(@In(DEGREES) double altitude) implements DirectionAdvice {
    }

    record SunOverhead(@In(DEGREES) double altitude) implements DirectionAdvice {
    }

    /** The skyline hides the sun: there is neither direct light nor flare. */
    record SunHiddenByLand(@In(DEGREES) double bearing, Enum<?> hand) implements DirectionAdvice {
    }

    /** Cloud or leaves leave hardly any direct light. */
    record SunVeiled(@In(DEGREES) double bearing, Enum<?> hand) implements DirectionAdvice {
    }

    record SunInFrame(Enum<?> part) implements DirectionAdvice {
    }

    /** The sun is near enough to the frame to flare. */
    record SunNearFrame(@In(DEGREES) double off) implements DirectionAdvice {
    }
}
