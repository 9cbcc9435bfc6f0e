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

    /** Neither direct light nor flare. */
    record SunHiddenByLand(@In(DEGREES) double bearing, Enum<?> hand) implements DirectionAdvice {
    }

    /** Hardly any direct light. */
    record SunVeiled(@In(DEGREES) double bearing, Enum<?> hand) implements DirectionAdvice {
    }

    record SunInFrame(Enum<?> part) implements DirectionAdvice {
    }

    /** Near enough to flare. */
    record SunNearFrame(@In(DEGREES) double off) implements DirectionAdvice {
    }
}
